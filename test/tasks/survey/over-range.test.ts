/** What a file writes where the film was beyond the range of the gauge, and what becomes of the panel. */
import { expect, test } from 'vitest';
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { overRangeIn } from '../../../src/tasks/survey/over-range-in.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';

const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });

const ROWS = [
  'panel,point,reading_um,place',
  ...['roof', 'door-front-left', 'door-front-right', 'bumper-front'].flatMap((panel) =>
    [112, 114, 110, 113, 111].map((film, i) => `${panel},${i + 1},${film},face`),
  ),
  ...[118, 121, 119, 122].map((film, i) => `bonnet,${i + 1},${film},face`),
];

/** A car of which the bonnet has these rows besides. */
function bonnetWith(...rows: readonly string[]) {
  const text = [...ROWS, ...rows].join('\n');
  const { value = [], diagnostics } = surveyFiles({
    files: [{ name: 'car.csv', bytes: new TextEncoder().encode(text), sha256: '' }],
    templates: builtInTemplates,
    templateId: 'saloon',
    intake: { plausible: settings.film.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
    settings,
    job: undefined,
    filmRecord: undefined,
    panels: [],
  });
  const car = value[0]?.result;
  if (car === undefined) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  const panel = (id: string) => car.survey.panels.find((one) => one.panel.id === id);
  return { bonnet: panel('bonnet'), bumper: panel('bumper-front'), leftOut: car.leftOut };
}

test.each(['OL', 'over range', '>2000', '2000+', 'inf', '65535'])(
  '%s on metal is filler till the point is read again',
  (text) => {
    const { bonnet } = bonnetWith(`bonnet,5,${text},face`);
    expect([bonnet?.condition, bonnet?.budget]).toEqual(['filler', 0]);
    expect(bonnet?.overRange).toEqual([expect.objectContaining({ point: '5', text })]);
    expect(bonnet?.advice[0]?.code).toBe('read-again');
  },
);

test.each(['', '---', 'n/a', 'E04', 'deleted', '0'])(
  'a lifted probe, an error or nothing ("%s") tells nothing of the film',
  (text) => {
    const { bonnet } = bonnetWith(`bonnet,5,${text},face`);
    expect([bonnet?.condition, bonnet?.overRange]).toEqual(['original', []]);
    expect(bonnet?.budget).toBeGreaterThan(3);
  },
);

test('film read at the same point settles it, before or after', () => {
  const after = bonnetWith('bonnet,5,OL,face', 'bonnet,5,120,face').bonnet;
  const before = bonnetWith('bonnet,5,120,face', 'bonnet,5,OL,face').bonnet;
  expect([after?.condition, before?.condition]).toEqual(['original', 'original']);
});

test('a point at an edge is none of the face, whatever it is called', () => {
  const { bonnet } = bonnetWith('bonnet,1,OL,edge');
  expect(bonnet?.condition).toBe('filler');
  expect(bonnet?.evidence[0]?.text).toContain('point 1 (edge)');
});

test('on plastic it tells nothing', () => {
  expect(bonnetWith('bumper-front,6,OL,face').bumper).toEqual(bonnetWith().bumper);
});

test('a cell of no panel is of none', () => {
  const { leftOut } = bonnetWith('bonnet,5,OL,face');
  const [cell] = leftOut;
  if (cell === undefined) throw new Error('nothing was left out');
  expect(overRangeIn([{ ...cell, panel: null }])).toEqual([]);
});
