/** A panel that was worked and not read after: what the plan foretold of it is on record, and counts the next time. */
import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordFile } from '../../../src/report/compare/film-record-file.ts';
import { compareFiles } from '../../../src/tasks/compare/compare-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import {
  type Comparing,
  compared,
  readingsText,
  requestOf,
  soundFilm,
  worked,
} from '../comparing.ts';
import { planOfRoof } from './plan-of-roof.ts';

const LOG_SD = 0.5;
const plan = planOfRoof({ sets: 2, removal: 2, logSd: LOG_SD, budget: 4 });
const { roof, ...others } = soundFilm;
const before = readingsText(soundFilm);
const after = readingsText(worked(others, () => 1));
const visits = [before, after];
const job = { finish: 'clear-over-base', taken_um: 0 };

const recordOf = (comparing: Comparing, date = '2026-03-31') =>
  filmRecordFile(compared({ job, ...comparing }), date, requestOf(comparing).filmRecord?.value);

const ofRoof = (comparing: Comparing) =>
  recordOf(comparing).visits.flatMap(({ panels }) =>
    panels.filter(({ panel }) => panel === 'roof'),
  );

const toldOf = (comparing: Comparing) =>
  compareFiles({ ...requestOf({ job, ...comparing }), recording: true, date: '2026-03-31' })
    .diagnostics.filter(
      ({ code }) => code === 'compare-worked-unread' || code === 'compare-not-recorded',
    )
    .map(({ severity, code, message }) => `${severity} ${code}: ${message}`);

const roofNow = (filmRecord: string | undefined) => {
  const request = requestOf({
    visits: [before],
    job,
    ...(filmRecord === undefined ? {} : { filmRecord }),
  });
  const [vehicle] = surveyFiles(request).value ?? [];
  const found = vehicle?.result.survey.panels.find(({ panel }) => panel.id === 'roof');
  if (found === undefined) throw new Error('no survey of the roof');
  return found;
};

describe('a panel that was worked by the plan and not read after', () => {
  test('is on the record by the mean and spread of what was foretold, marked as not read', () => {
    const mean = 2 * Math.exp(LOG_SD ** 2 / 2);
    const [entry] = ofRoof({ visits, plan });
    expect(entry).toMatchObject({ not_read: true, allowed_um: 4, over_allowed: null });
    expect(entry?.taken_um).toBeCloseTo(mean, 3);
    expect(entry?.taken_sd_um).toBeCloseTo(mean * Math.sqrt(Math.exp(LOG_SD ** 2) - 1), 3);
    expect(entry?.points).toBeUndefined();
  });

  test('is told, as a doubt', () => {
    expect(toldOf({ visits, plan })).toEqual([
      'warning compare-worked-unread: planned and not compared, so held on the film record to have lost what the plan foretold: roof (2.3 ± 1.2 µm, SD)',
    ]);
  });

  test('stands on the page, in its unit, and only where a plan works it', () => {
    const pageOf = (unit: 'um' | 'mil', comparing: Comparing) =>
      renderText(compareBlocks(compared({ job, ...comparing }), { unit, verbose: false }), {
        width: 80,
        paint: (piece) => piece,
      }).replace(/\s+/gu, ' ');
    expect(pageOf('um', { visits, plan })).toContain(
      'Planned and not compared: roof 2.3 ± 1.2 µm (SD): a film record holds that to be gone, by the plan.',
    );
    expect(pageOf('mil', { visits, plan })).toContain('roof 0.09 ± 0.05 mil (SD)');
    expect(pageOf('um', { visits })).not.toContain('Planned and not compared');
  });

  test('was never read before either, and counts as much', () => {
    expect(ofRoof({ visits: [readingsText(others), after], plan })).toEqual(
      ofRoof({ visits, plan }),
    );
  });

  test('counts by the sets that were worked of it, and not at all where none were', () => {
    const [whole] = ofRoof({ visits, plan });
    const [half] = ofRoof({ visits, plan, workedSets: 'panel,step,sets\nroof,1,1\n' });
    expect(half?.taken_um).toBeCloseTo((whole?.taken_um ?? 0) / 2, 5);
    const none = { visits, plan, workedSets: 'panel,step,sets\nroof,1,0\n' };
    expect(ofRoof(none)).toEqual([]);
    expect(toldOf(none)).toEqual([]);
  });

  test('of two zones counts as the one that was to lose more', () => {
    const zone = (name: string, removal: number) => ({
      ...JSON.parse(planOfRoof({ sets: 2, removal, logSd: LOG_SD, budget: 4 })).panels[0],
      zone: name,
    });
    const zoned = planOfRoof(
      { sets: 2, removal: 2, logSd: LOG_SD, budget: 4 },
      { zones: [zone('thinner', 1), zone('thicker', 3)] },
    );
    const [entry] = ofRoof({ visits, plan: zoned });
    expect(entry?.taken_um).toBeCloseTo(3 * Math.exp(LOG_SD ** 2 / 2), 3);
    expect(entry?.allowed_um).toBeNull();
  });

  test('that is not in the plan is told, as nothing is known of what went', () => {
    const workedSets = 'panel,step,sets\nroof,1,2\nbonnet,1,3\n';
    const { bonnet, ...rest } = others;
    const told = toldOf({
      visits: [before, readingsText(worked(rest, () => 1))],
      plan,
      workedSets,
    });
    expect(told).toContainEqual(
      'warning compare-not-recorded: not on the film record: bonnet (worked, by what is said, and not read after; the plan works nothing on it)',
    );
  });

  test('may lose less the next time, and no more than one that was read', () => {
    const record = recordOf({ visits, plan });
    const readToo = readingsText(worked(soundFilm, (panel) => (panel === 'roof' ? 2.2 : 1)));
    const measured = recordOf({ visits: [before, readToo], plan });
    const [free, held, read] = [undefined, record, measured].map((one) =>
      roofNow(one === undefined ? undefined : JSON.stringify(one)),
    );
    expect(held?.budget).toBeLessThan((free?.budget ?? 0) - 1);
    expect(held?.budget).toBeLessThanOrEqual(read?.budget ?? 0);
    expect(held?.evidence.map(({ code, text }) => `${code}: ${text}`)).toContainEqual(
      'worked-unread: on 2026-03-31 it was worked and not read after: 2.3 ± 1.2 µm (SD) are held to be gone by the plan, not measured, and count in its limits',
    );
    expect(read?.evidence.map(({ code }) => code)).not.toContain('worked-unread');
  });

  test('is no part of its paint once it was painted', () => {
    const filmRecord = JSON.stringify(recordOf({ visits, plan }));
    const painted = { ...job, panels: { roof: { painted_days_ago: 200 } } };
    const [vehicle] =
      surveyFiles(requestOf({ visits: [before], job: painted, filmRecord })).value ?? [];
    const found = vehicle?.result.survey.panels.find(({ panel }) => panel.id === 'roof');
    expect(found?.evidence.map(({ code }) => code)).not.toContain('worked-unread');
  });
});

describe('a visit with such a panel, compared once more', () => {
  const record = recordOf({ visits, plan });
  const filmRecord = JSON.stringify(record);

  test('is known again, and its record stays as it was', () => {
    expect(recordOf({ visits, plan, filmRecord })).toEqual(record);
    expect(recordOf({ visits, filmRecord })).toEqual(record);
    expect(toldOf({ visits, filmRecord })).toEqual([]);
  });

  test('takes what is read of it by then, in place of what was foretold', () => {
    const readToo = readingsText(worked(soundFilm, () => 1));
    const [entry, ...more] = ofRoof({ visits: [before, readToo], plan, filmRecord });
    expect(more).toEqual([]);
    expect(entry?.not_read).toBeUndefined();
    expect(entry?.points).toHaveLength(5);
  });

  describe('with readings of just that panel', () => {
    const rest = readingsText({ roof: worked(soundFilm, () => 1)['roof'] ?? [] });

    test.each([
      ['without its plan', {}],
      ['with its plan', { plan }],
    ])('takes them in place of what was foretold, and keeps the others: %s', (_, named) => {
      const again = { visits: [before, rest], filmRecord, ...named };
      const [visit, ...more] = recordOf(again).visits;
      expect(more).toEqual([]);
      const others = (one: typeof visit) => one?.panels.filter(({ panel }) => panel !== 'roof');
      expect(others(visit)).toEqual(others(record.visits[0]));
      const [entry, ...twice] = ofRoof(again);
      expect(twice).toEqual([]);
      expect(entry).toMatchObject({ panel: 'roof', taken_um: 1 });
      expect(entry?.not_read).toBeUndefined();
      expect(toldOf(again)).toEqual([]);
    });

    test('keeps what was read at the place of a spot of another panel', () => {
      const spot = {
        ...{ defect: 'deep-scratches', grade: 4, at_place: { removal_um: 4, budget_um: 9 } },
        steps: [{ machine: 'da-small', pad: 'wool', product: 'heavy', sets: 3 }],
        removal_um: { median: 3, mean: 3.3, low: 1.4, high: 7 },
      };
      const { panels, ...head } = JSON.parse(plan);
      const bonnet = { ...panels[0], panel: 'bonnet', local: [spot] };
      const ofBoth = JSON.stringify({ ...head, panels: [...panels, bonnet] });
      const [atFirst, atLast] = [118, 113].map((film) => `\nbonnet,deep scratches 1,${film}.0`);
      const then = recordOf({ visits: [`${before}${atFirst}`, `${after}${atLast}`], plan: ofBoth });
      const known = then.visits[0]?.places;
      expect(known).toEqual([expect.objectContaining({ panel: 'bonnet', taken_um: 4 })]);
      const again = { visits: [before, rest], plan: ofBoth, filmRecord: JSON.stringify(then) };
      expect(recordOf(again).visits[0]?.places).toEqual(known);
      expect(ofRoof(again)).toEqual([expect.not.objectContaining({ not_read: true })]);
    });

    test('is not refused, and told as what it is', () => {
      const request = { ...requestOf({ visits: [before, rest], job, plan, filmRecord }) };
      const told = compareFiles({ ...request, recording: true, date: '2026-03-31' });
      expect(told.diagnostics.map(({ severity, message }) => `${severity}: ${message}`)).toEqual([
        'note: the film record has this visit already, of 2026-03-31: what is measured now takes the place of what its plan foretold',
      ]);
      const later = compareFiles({ ...request, recording: true, date: '2026-04-02' });
      expect(later.diagnostics.map(({ severity, message }) => `${severity}: ${message}`)).toEqual([
        expect.stringMatching(/^warning: .*of 2026-03-31: it is not added again as of 2026-04-02/u),
      ]);
    });

    test('is refused beside panels that were measured, and the way out is named', () => {
      const anew = readingsText(worked(soundFilm, () => 1.1, 1.2));
      const request = requestOf({ visits: [before, anew], job, plan, filmRecord });
      const told = compareFiles({ ...request, recording: true, date: '2026-03-31' });
      expect(told.diagnostics.map(({ code }) => code)).toContain('compare-visit-twice');
      expect(told.diagnostics.map(({ hint }) => hint).join()).toContain(
        'of roof, not read after it, compare the readings alone: they take the place of its forecast',
      );
    });

    test('is what the doubt asks for', () => {
      const request = requestOf({ visits, job, plan });
      const told = compareFiles({ ...request, recording: true, date: '2026-03-31' }).diagnostics;
      expect(told.find(({ code }) => code === 'compare-worked-unread')?.hint).toBe(
        'read them, as rest.csv, and leastcut read visit-2.csv rest.csv --format csv -o all.csv; then compare visit-1.csv with all.csv once more, the record that is written now as --film-record; of a panel that was not worked say 0 sets with --worked',
      );
    });
  });

  test('forgets what was foretold where it was not worked after all', () => {
    const workedSets = 'panel,step,sets\nroof,1,0\n';
    expect(ofRoof({ visits, plan, filmRecord, workedSets })).toEqual([]);
  });
});

test('a visit that nothing was measured at is not known again by that', () => {
  const text = JSON.stringify({
    schema: 'leastcut/film-record/1',
    visits: [
      {
        date: '2026-01-01',
        panels: [{ panel: 'roof', taken_um: 2, taken_sd_um: 1, not_read: true }],
      },
    ],
  });
  expect(readFilmRecord('record.json', text).value?.value.panels[0]?.taken.unread).toEqual([
    { date: '2026-01-01', mean: 2, sd: 1 },
  ]);
  expect(compared({ visits, job, filmRecord: text }).again).toBeNull();
});
