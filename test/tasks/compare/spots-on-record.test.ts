/** Test spots of one visit, known to the next by the film record alone, by their own file again, or by both. */
import { describe, expect, test } from 'vitest';
import type { FilmRecordFile } from '../../../src/formats/film-record.ts';
import { filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import {
  type Comparing,
  compared,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';

const job = { vehicle: { id: 'FH-7' }, finish: 'clear-over-base', taken_um: 0 };
const before = readingsText(soundFilm);
const after = readingsText(worked(soundFilm, () => 1));
const head =
  'spot,panel,machine,pad,product,sets,mark,before_um,after_um,cleared_pct,haze_grade,colour_on_pad,place';
/** Each at a place of its own. */
const tried = (spot: string, panel: string, took: number, rest = '45,1,no'): string =>
  [1, 2, 3, 4, 5]
    .map(
      (mark) =>
        `${spot},${panel},da,foam-medium,medium,2,${mark},118,${118 - took},${rest},at ${spot}`,
    )
    .join('\n');
const table = (...spots: readonly string[]): string => [head, ...spots].join('\n');
const spots = table(tried('A', 'boot', 2.5), tried('B', 'boot', 1.5), tried('C', 'roof', 1));

const recordOf = (comparing: Partial<Comparing>, date = '2026-01-10'): string => {
  const request = { visits: [before, after], job, ...comparing };
  return filmRecordText(compared(request), date, requestOf(request).filmRecord?.value);
};

function surveyed(known: Partial<Comparing>, keys: Comparing['job'] = {}) {
  const outcome = surveyFiles(requestOf({ visits: [after], job: { ...job, ...keys }, ...known }));
  const [vehicle] = outcome.value ?? [];
  if (vehicle === undefined) throw new Error(outcome.diagnostics[0]?.message);
  const { survey, assumptions } = vehicle.result;
  const panelOf = (id: string) => {
    const found = survey.panels.find(({ panel }) => panel.id === id);
    if (found === undefined) throw new Error(`no ${id}`);
    return found;
  };
  return {
    panelOf,
    budget: (id: string) => panelOf(id).budget,
    gone: (id: string) => panelOf(id).facts.recorded?.mean,
    overruns: survey.notes.filter(({ code }) => code.endsWith('overrun')).map(({ text }) => text),
    said: assumptions.map(({ code, text }) => `${code}: ${text}`),
  };
}

/** Without what the comparison left, which stands beside all that is known of spots and paint. */
const withoutLeft = (record: string): string =>
  JSON.stringify(JSON.parse(record), (key, value) => (key.startsWith('left_') ? undefined : value));

const withSpots = recordOf({ spots });
const without = recordOf({});

describe('test spots on record', () => {
  test('count at the next visit as they did with their own file', () => {
    const byRecord = surveyed({ filmRecord: withSpots });
    const byFile = surveyed({ filmRecord: without, spots });
    const forgotten = surveyed({ filmRecord: without });
    // The boot lost 1 µm all over and 2.5 µm at its deepest spot; C took 1 µm of the roof.
    expect(byRecord.gone('boot')).toBeCloseTo(3.5, 1);
    expect(byRecord.gone('roof')).toBeCloseTo(2, 1);
    for (const id of ['boot', 'roof', 'bonnet']) {
      const [one, other] = [byRecord.panelOf(id).facts.recorded, byFile.panelOf(id).facts.recorded];
      expect(one?.mean).toBeCloseTo(other?.mean ?? Number.NaN, 5);
      expect(one?.sd).toBeCloseTo(other?.sd ?? Number.NaN, 5);
      expect(one?.allOver ?? one).toMatchObject({ mean: expect.closeTo(1, 0) });
    }
    expect(byRecord.budget('boot')).toBeLessThan(forgotten.budget('boot') - 1);
    expect(byRecord.said).toContain(
      'spots-on-record: test spots on record count as gone from their places, on boot lid (A, B of 2026-01-10), roof (C of 2026-01-10); what they showed of the paint counts only with --spots',
    );
  });

  test('count once where their file is given as well, and teach as it does', () => {
    const both = surveyed({ filmRecord: withoutLeft(withSpots), spots });
    const byFile = surveyed({ filmRecord: withoutLeft(without), spots });
    expect(both.gone('boot')).toBeCloseTo(byFile.gone('boot') ?? Number.NaN, 5);
    expect(both.budget('boot')).toBeCloseTo(byFile.budget('boot'), 5);
    expect(both.said).toContain(
      'spots-counted-once: test spots of --spots that are on record too count once, and are not held against what may go now, on boot lid (A, B of 2026-01-10), roof (C of 2026-01-10)',
    );
    expect(both.said.join()).not.toContain('spots-on-record');
  });

  test('made since come off what the comparison left, and no others do', () => {
    const left = surveyed({ filmRecord: without }).budget('boot');
    const since = surveyed({ filmRecord: without, spots: table(tried('A', 'boot', 1)) });
    expect(since.budget('boot')).toBeLessThanOrEqual(left - 1 + 0.1);
    const known = surveyed({ filmRecord: withSpots });
    expect(known.budget('boot')).toBeGreaterThan(0);
    const { budget } = surveyed({ filmRecord: withSpots, spots });
    // Their file teaches what they showed of the paint as well.
    expect(budget('boot')).toBeGreaterThan(known.budget('boot') - 1e-5);
    // One of a later visit on record is made since as well.
    const later = JSON.parse(without) as FilmRecordFile;
    const ofLater = JSON.parse(recordOf({ spots: table(tried('A', 'boot', 1)) })) as FilmRecordFile;
    const visit = { date: '2026-02-02', panels: [], spots: ofLater.visits[0]?.spots };
    const both = JSON.stringify({ ...later, visits: [...later.visits, visit] });
    expect(surveyed({ filmRecord: both }).budget('boot')).toBeLessThanOrEqual(left - 1 + 0.1);
  });

  test('add to another trial of their name: only one that was read alike is the same', () => {
    const again = table(tried('A', 'boot', 2));
    const both = surveyed({ filmRecord: withSpots, spots: again });
    expect(both.gone('boot')).toBeCloseTo(5.5, 1);
    expect(both.panelOf('boot').facts.recorded?.by).toBe('film record and test spots');
  });

  test('that were sound when they were made are no overrun once the car was worked, as new ones would be', () => {
    const deep = table(tried('A', 'boot', 4), tried('B', 'boot', 1.5));
    const all = readingsText(worked(soundFilm, () => 3));
    const record = recordOf({ spots: deep, visits: [before, all] });
    const [first, next] = [{ visits: [before] }, { visits: [all], filmRecord: record }];
    expect(surveyed({ ...first, spots: deep }).overruns).toEqual([]);
    expect(surveyed({ ...next, spots: deep }).overruns).toEqual([]);
    // Its name and haze may be put right since: its marks are the same.
    expect(surveyed({ ...next, spots: table(tried('Z', 'boot', 4)) }).overruns).toEqual([]);
    const made = table(tried('N', 'boot', 3.9));
    expect(surveyed({ ...next, spots: made }).overruns).toEqual([
      expect.stringMatching(
        /test spot N\): 3\.9 µm .* might go.* If it was made before the work on record, compare that visit again with --spots$/,
      ),
    ]);
    const fresh = surveyed({ ...first, spots: table(tried('N', 'boot', 5.2)) }).overruns;
    expect(fresh).toEqual([expect.stringMatching(/before any panel is worked$/)]);
  });

  test('are compared by eye where no film was read', () => {
    const byEye = table('A,boot,da,foam-medium,medium,2,,,,45,1,no,');
    const record = recordOf({ spots: byEye });
    const once = surveyed({ filmRecord: record });
    expect(once.gone('boot')).toBeGreaterThan(1.2);
    const named = surveyed({ filmRecord: record, spots: byEye });
    expect(named.gone('boot')).toBeCloseTo(once.gone('boot') ?? Number.NaN, 5);
    const another = table('A,boot,da,foam-medium,medium,2,,,,60,1,no,');
    const twice = surveyed({ filmRecord: record, spots: another });
    expect(twice.gone('boot')).toBeGreaterThan((once.gone('boot') ?? 0) + 0.2);
  });

  test('of two visits add up, as the later may stand where the earlier did', () => {
    const second = recordOf(
      { filmRecord: withSpots, spots: table(tried('D', 'boot', 1.5)), visits: [after, after] },
      '2026-05-05',
    );
    expect(surveyed({ filmRecord: second }).gone('boot')).toBeCloseTo(1 + 2.5 + 1.5, 1);
  });

  test('of a panel that was not read again, or of no other work, are kept too', () => {
    const part = readingsText({ roof: soundFilm['roof'] ?? [] });
    const record = recordOf({ spots, visits: [part, part] });
    expect(surveyed({ filmRecord: record }).gone('boot')).toBeCloseTo(2.5, 1);
  });

  test('are refused where they name no panel of the template, in their own line', () => {
    const wrong = withSpots.replace(
      '"panel": "roof",\n          "combination"',
      '"panel": "rof",\n          "combination"',
    );
    expect(wrong).not.toBe(withSpots);
    const { diagnostics } = surveyFiles(requestOf({ visits: [after], job, filmRecord: wrong }));
    expect(diagnostics.map(({ code, at }) => [code, at?.line])).toEqual([
      ['settings-panel-unknown', wrong.split('\n').findIndex((line) => line.includes('"rof"')) + 1],
    ]);
  });
});

describe('a spot on record that left colour', () => {
  const coloured = table(tried('A', 'boot', 2.5, '45,1,yes'));
  const record = recordOf({ spots: coloured });

  test('lets nothing go from its panel, and is told with its day', () => {
    const { panelOf, budget } = surveyed({ filmRecord: record });
    expect(budget('boot')).toBe(0);
    expect(panelOf('boot').boundBy).toMatchObject({
      code: 'colour-at-spot',
      text: expect.stringContaining('test spot A of 2026-01-10'),
    });
  });

  test('holds the other panels of that paint too, but one with a spot of its own without colour', () => {
    const alone = surveyed({ filmRecord: record });
    for (const id of ['roof', 'bonnet']) expect(alone.budget(id)).toBe(0);
    expect(alone.panelOf('roof').boundBy.text).toContain(
      'test spot A of 2026-01-10 on the boot lid',
    );
    const [borneOut, unsaid] = ['45,1,no', '45,1,'].map((rest) =>
      surveyed({ filmRecord: record, spots: table(tried('C', 'roof', 1, rest)) }),
    );
    expect(borneOut?.budget('roof')).toBeGreaterThan(0);
    expect(borneOut?.budget('bonnet')).toBe(0);
    expect(unsaid?.budget('roof')).toBe(0);
    const read = surveyed({ filmRecord: record }, { panels: { roof: { clear_um: 45 } } });
    expect(read.budget('roof')).toBeGreaterThan(0);
    expect(read.budget('bonnet')).toBe(0);
  });

  test('does so where its file, given again, no longer says it, and with another trial', () => {
    const denied = table(tried('A', 'boot', 2.5));
    expect(surveyed({ filmRecord: record, spots: denied }).budget('boot')).toBe(0);
    const fresh = table(tried('N', 'boot', 0.5));
    expect(surveyed({ filmRecord: record, spots: fresh }).budget('boot')).toBe(0);
  });

  test('is told once where its file says it too', () => {
    const { panelOf } = surveyed({ filmRecord: record, spots: coloured });
    expect(panelOf('boot').facts.recorded?.colourAt).toEqual(['A of 2026-01-10']);
  });

  test('is none of paint without a clear', () => {
    const { budget } = surveyed(
      { filmRecord: withoutLeft(record) },
      { finish: 'single-stage-solid' },
    );
    expect(budget('boot')).toBeGreaterThan(0);
  });
});

describe('a record of a visit with test spots', () => {
  const visitsOf = (text: string): FilmRecordFile['visits'] => JSON.parse(text).visits;

  test('keeps each trial with what it took and its doubt', () => {
    expect(visitsOf(withSpots)[0]?.spots?.[0]).toEqual({
      spot: 'A',
      panel: 'boot',
      combination: 'da/foam-medium/medium',
      sets: 2,
      marks: [1, 2, 3, 4, 5].map((mark) => ({
        mark: `${mark}`,
        before_um: 118,
        after_um: 115.5,
      })),
      cleared_pct: 45,
      haze_grade: 1,
      colour_on_pad: false,
      place: 'at A',
      taken_um: 2.5,
      taken_sd_um: expect.closeTo(0.5, 0),
    });
    expect(visitsOf(without)[0]).not.toHaveProperty('spots');
  });

  test('stays as it is when it is written once more, with the spots or without', () => {
    expect(recordOf({ filmRecord: withSpots, spots })).toBe(withSpots);
    expect(recordOf({ filmRecord: withSpots })).toBe(withSpots);
  });

  test('is given the spots that were forgotten, whatever its visits note', () => {
    const noted = without.replace('"date"', '"note": "wet day",\n      "date"');
    const [visit, ...more] = visitsOf(recordOf({ filmRecord: noted, spots }));
    expect(more).toEqual([]);
    expect(visit?.note).toBe('wet day');
    expect(visit?.spots).toEqual(visitsOf(withSpots)[0]?.spots);
  });

  test('gives a comparison made once more the spots of that visit, with no word of doubt', () => {
    const again = compared({ visits: [before, after], job, filmRecord: withSpots });
    const first = compared({ visits: [before, after], job, spots });
    // What might go before the work knows of the spots, and not yet of the work; a record teaches nothing of the paint.
    const mightGo = (one: typeof again) => panelLeft(one, 'boot').allowed?.most;
    expect(mightGo(again)).toBeLessThan(mightGo(first) ?? Number.NaN);
    expect(mightGo(again)).toBeGreaterThan((mightGo(first) ?? Number.NaN) - 0.5);
    expect(mightGo(again)).toBeLessThan(
      (mightGo(compared({ visits: [before, after], job })) ?? 0) - 1,
    );
    expect(toldBy({ visits: [before, after], job, filmRecord: withSpots })).toEqual([]);
  });
});
