import { describe, expect, it } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import {
  type PlaceToRead,
  readSurveyFile,
  type SurveyedPanel,
} from '../../../src/formats/survey-file.ts';
import { followUp, notOnSheet } from '../../../src/tasks/template/follow-up.ts';

const saloon = (() => {
  const found = builtInTemplates.find(({ id }) => id === 'saloon');
  if (found === undefined) throw new Error('the saloon is built in');
  return found;
})();

const surveyed = (panel: string, rest: Partial<SurveyedPanel> = {}): SurveyedPanel => ({
  panel,
  pointCount: 5,
  points: ['1', '2', '3', '4', '5'],
  condition: 'original',
  advice: [],
  zones: [],
  ...rest,
});
const sheet = (...panels: readonly SurveyedPanel[]) => followUp({ panels, toRead: [] }, saloon);

describe('what a survey asks to be read next', () => {
  it('is nothing on a panel where nothing more is to be learned with the gauge', () => {
    expect(sheet(surveyed('bonnet'))).toEqual([]);
  });
  it('is so many further points as the survey advises, numbered on from those there are', () => {
    const [bonnet] = sheet(
      surveyed('bonnet', {
        pointCount: 3,
        points: ['1', '2', '3'],
        advice: [{ code: 'more-points', points: 2, gain: 0.4 }],
      }),
    );
    expect(bonnet?.panel.points.map(({ point }) => point)).toEqual(['4', '5']);
    expect(bonnet?.why).toBe('2 further points');
  });
  it('is no further point where it frees less than a tenth of a micrometre', () => {
    const advice = [{ code: 'more-points', points: 4, gain: 0.08 }];
    expect(sheet(surveyed('bonnet', { advice }))).toEqual([]);
  });
  it('is all points of metal panels that are unread, and none of plastic ones', () => {
    const unread = { pointCount: 0, condition: 'unread' };
    const panels = sheet(surveyed('roof', unread), surveyed('mirror-left', unread));
    const plastic = saloon.panels.find(({ id }) => id === 'mirror-left')?.substrate;
    expect(plastic).toBe('plastic');
    expect(panels.map(({ panel }) => panel.id)).toEqual(['roof']);
    expect(panels[0]?.panel.points).toHaveLength(
      saloon.panels.find(({ id }) => id === 'roof')?.points.length ?? 0,
    );
  });
  it('is closer points between the zones of a mixed panel', () => {
    const [roof] = sheet(
      surveyed('roof', {
        condition: 'mixed',
        zones: [
          ['1', '2'],
          ['3', '4', '5'],
        ],
      }),
    );
    expect(roof?.why).toContain('between its two zones');
    expect(roof?.panel.points.map(({ point }) => point)).toEqual(['e1', 'e2']);
  });
  it('gives no new place the name of a point that was read, or tried, before', () => {
    const namesOf = (rest: Partial<SurveyedPanel>) =>
      sheet(surveyed('roof', rest))[0]?.panel.points.map(({ point }) => point);
    const more = [{ code: 'more-points', points: 2, gain: 0.4 }];
    expect(
      namesOf({ advice: [{ code: 'repair-edge' }], points: ['1', '2', 'e1', 'e2', 'e4'] }),
    ).toEqual(['e5', 'e6', 'e7', 'e8']);
    expect(
      namesOf({
        zones: [
          ['1', 'e1'],
          ['3', '4', '5', 'e2'],
        ],
        points: ['1', 'e1', 'e2'],
      })?.[0],
    ).toBe('e3');
    expect(namesOf({ advice: more, pointCount: 3, points: ['2', '4', '7'] })).toEqual(['8', '9']);
    expect(namesOf({ advice: more, pointCount: 3, points: ['A', 'B', 'C'] })).toEqual(['4', '5']);
  });
  it('is closer points where a repair has an edge somewhere', () => {
    const [wing] = sheet(
      surveyed('wing-front-left', { condition: 'filler', advice: [{ code: 'repair-edge' }] }),
    );
    expect(wing?.panel.points).toHaveLength(4);
    expect(wing?.why).toContain('edge of the repair');
  });
});

describe('a place that lies off those of the template', () => {
  const asked = (panels: readonly SurveyedPanel[], ...toRead: readonly PlaceToRead[]) =>
    followUp({ panels, toRead }, saloon).map(({ panel: { id, off, points }, why }) => ({
      ...{ id, off, why },
      points: points.map(({ point }) => point),
    }));
  const shut = (panel: string): PlaceToRead => ({ panel, point: null, place: 'shut' });
  const why = 'its door shut, under the rubber: tells whether the side was painted again';

  it('is the shut of a door of a side in doubt, in walking order, beside the points of its face', () => {
    const more = [{ code: 'more-points', points: 2, gain: 0.4 }];
    expect(
      asked(
        [surveyed('door-rear-right', { pointCount: 3, points: ['1', '2', '3'], advice: more })],
        shut('door-rear-left'),
        shut('door-rear-right'),
      ),
    ).toEqual([
      { id: 'door-rear-right', off: undefined, why: '2 further points', points: ['4', '5'] },
      { id: 'door-rear-right', off: 'shut', why, points: ['shut 1'] },
      { id: 'door-rear-left', off: 'shut', why, points: ['shut 1'] },
    ]);
  });

  it('has the name of no point that was read in the shut before', () => {
    const read = surveyed('door-rear-right', { points: ['1', 'shut 1', 'shut 2'] });
    expect(asked([read], shut('door-rear-right'))[0]?.points).toEqual(['shut 3']);
  });

  it('is what was worked deeper before and not read since, each by the name of its point', () => {
    const worked = (point: string): PlaceToRead => ({ panel: 'bonnet', point, place: 'face' });
    expect(asked([surveyed('bonnet')], worked('bird etching 1'), worked('water spots 1'))).toEqual([
      {
        ...{ id: 'bonnet', off: 'worked', why: 'worked deeper before, and not read since' },
        points: ['bird etching 1', 'water spots 1'],
      },
    ]);
  });

  it('is on no panel that the gauge does not read', () => {
    expect(asked([surveyed('mirror-left')], shut('mirror-left'))).toEqual([]);
  });
});

describe('a survey read back', () => {
  const record = {
    schema: 'leastcut/survey/1',
    vehicle: null,
    template: 'saloon',
    later: 1,
    panels: [
      {
        panel: 'bonnet',
        n_points: 3,
        points: ['1', '2', '3'],
        other_points: [{ point: '4', place: 'edge' }],
        excluded: [{ point: null }, { point: '5' }],
        condition: 'original',
        advice: [{ code: 'more-points', text: '', value: 0.3, points: 2, minutes: 2 }],
        zones: [],
      },
    ],
  };
  it('is known by its panels and its advice, whatever keys it has besides', () => {
    const { value } = readSurveyFile('survey.json', JSON.stringify(record));
    expect(value?.value.panels).toEqual([
      surveyed('bonnet', {
        pointCount: 3,
        points: ['1', '2', '3', '4', '5'],
        advice: [{ code: 'more-points', points: 2, gain: 0.3 }],
      }),
    ]);
  });
  it('has the places that are to be read besides, and none where an earlier version wrote it', () => {
    const to_read = [
      { panel: 'door-front-left', point: null, place: 'shut' },
      { panel: 'roof', point: 'swirl marks 1', place: 'face' },
    ];
    const read = (keys: object) => readSurveyFile('survey.json', JSON.stringify(keys)).value?.value;
    expect(read({ ...record, to_read })?.toRead).toEqual(to_read);
    expect(read(record)?.toRead).toEqual([]);
  });
  it('may come from a version that did not name the points', () => {
    const [{ points: _, other_points: __, excluded: ___, ...panel }] = record.panels as [
      (typeof record.panels)[number],
    ];
    const { value } = readSurveyFile('survey.json', JSON.stringify({ ...record, panels: [panel] }));
    expect(value?.value.panels[0]?.points).toEqual([]);
  });
  it('is refused where it is a record of something else', () => {
    const plan = JSON.stringify({ ...record, schema: 'leastcut/plan/1' });
    const { value, diagnostics } = readSurveyFile('plan.json', plan);
    expect(value).toBeUndefined();
    expect(diagnostics.length).toBeGreaterThan(0);
  });
});

describe('what a sheet for a survey leaves out', () => {
  const placed = (...panels: readonly SurveyedPanel[]) => ({
    value: { vehicle: null, template: 'saloon', panels, toRead: [] },
    placeOf: (path: readonly (string | number)[]) => ({
      file: 's.json',
      line: Number(path[1]) + 5,
    }),
  });
  const panelOf = (id: string) => saloon.panels.filter((panel) => panel.id === id);

  it('is said of a panel of the survey that the template has not, with its place', () => {
    expect(notOnSheet(placed(surveyed('bonnet'), surveyed('cab-roof')), saloon, [])).toEqual([
      {
        code: 'panel-unknown',
        severity: 'warning',
        message:
          '"cab-roof" of the survey is no panel of the saloon template: it is not on the sheet',
        at: { file: 's.json', line: 6 },
        hint: 'leave the template out, and the one that the survey names is taken',
      },
    ]);
  });

  it('is said of a panel asked for by name, with the reason why it has no row', () => {
    const named = ['bonnet', 'roof', 'bumper-front', 'boot'].flatMap(panelOf);
    const survey = placed(
      surveyed('bonnet'),
      surveyed('bumper-front', { pointCount: 0 }),
      surveyed('boot', { pointCount: 0 }),
    );
    expect(notOnSheet(survey, saloon, named).map(({ code, message }) => [code, message])).toEqual([
      [
        'sheet-nothing-more',
        'bonnet: the survey asks for nothing more there, so it is not on the sheet',
      ],
      ['sheet-nothing-more', 'roof: the survey does not have it, so it is not on the sheet'],
      [
        'sheet-nothing-more',
        'front bumper: of plastic, which this gauge does not read, so it is not on the sheet',
      ],
    ]);
  });

  it('is nothing where every panel of the survey is on the template and none is named', () => {
    expect(notOnSheet(placed(surveyed('bonnet')), saloon, [])).toEqual([]);
  });
});
