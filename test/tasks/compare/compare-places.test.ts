/** A place that the plan worked deeper than its panel is not read: nothing more goes there, and the record keeps it. */
import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordFile, filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import {
  compared,
  panelLeft,
  readingsText,
  requestOf,
  soundFilm,
  toldBy,
  worked,
} from '../comparing.ts';
import { planOfRoof } from './plan-of-roof.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const visits = [readingsText(soundFilm), readingsText(worked(soundFilm, () => 1))];

const spot = (budget: number) => ({
  defect: 'deep-scratches',
  grade: 4,
  steps: [{ machine: 'da-small', pad: 'wool', product: 'heavy', sets: 3 }],
  removal_um: { median: 3, mean: 3.3, low: 1.4, high: 7 },
  at_place: { removal_um: 4, budget_um: budget },
});

/** 1 µm was to go from the roof and 3 µm more at one place of it, where so much might go. */
const planWith = (local: readonly unknown[], rest: object = {}): string =>
  planOfRoof({ sets: 2, removal: 1, logSd: 0.4, budget: 4.5 }, { local, ...rest });
const resultWith = (budget: number): CompareResult =>
  compared({ visits, job, plan: planWith([spot(budget)]) });
const pageOf = (result: CompareResult): string =>
  renderText(compareBlocks(result, { unit: 'um', verbose: false }), {
    width: 80,
    paint: (text: string) => text,
  }).replace(/\s+/gu, ' ');
const recordOf = (result: CompareResult, earlier?: string) =>
  filmRecordFile(
    result,
    '2026-11-24',
    earlier === undefined ? undefined : readFilmRecord('film.json', earlier).value?.value,
  );

describe('a spot at a deep defect that the plan held', () => {
  test('allows no further set beyond what the plan leaves at its place, and says what is first to be read', () => {
    const without = panelLeft(compared({ visits, job, plan: planWith([]) }), 'roof');
    expect(without.verdict).toBe('go-on');
    const perSet = without.oneMore?.removal.median ?? 0;
    const result = resultWith(4.3);
    const roof = panelLeft(result, 'roof');
    expect(perSet).toBeGreaterThan(0.3);
    expect(roof.left?.budget).toBeLessThan(0.31);
    expect([roof.verdict, roof.left?.boundBy.code]).toEqual(['unresolved', 'place']);
    expect(pageOf(result)).toContain(
      'Not read: roof, deep scratches: 3.0 (up to 7.0) µm more by a spot; read these places before more comes off there, as points called “deep scratches 1”.',
    );
    expect(pageOf(result)).toContain(
      'Cannot tell: roof: a place of it was to be worked deeper: first read that place.',
    );
  });

  test('hinders no set that its place has room for', () => {
    const roof = panelLeft(resultWith(40), 'roof');
    expect([roof.verdict, roof.left?.boundBy.code]).toEqual([
      'go-on',
      expect.not.stringMatching('place'),
    ]);
  });

  test('leaves less there by what the panel lost beyond its plan', () => {
    const deep = [readingsText(soundFilm), readingsText(worked(soundFilm, () => 2))];
    const left = (of: readonly string[]): number =>
      panelLeft(compared({ visits: of, job, plan: planWith([spot(6)]) }), 'roof').left?.budget ?? 9;
    expect(left(visits)).toBeCloseTo(2, 6);
    expect(left(deep)).toBeLessThan(1.5);
  });

  test('leaves nothing where the plan does not say what might go there', () => {
    const { at_place: _, ...old } = spot(9);
    const roof = panelLeft(compared({ visits, job, plan: planWith([old]) }), 'roof');
    expect([roof.verdict, roof.left?.budget]).toEqual(['unresolved', 0]);
  });

  test('is nothing where the defect was left', () => {
    const result = compared({ visits, job, plan: planWith([{ ...spot(4.3), steps: [] }]) });
    expect(result.places).toEqual([]);
    expect(panelLeft(result, 'roof').verdict).toBe('go-on');
    expect(recordOf(result).visits[0]?.places).toBeUndefined();
  });
});

describe('the film record of that visit', () => {
  const place = { panel: 'roof', defect: 'deep-scratches', median_um: 3, high_um: 7 };

  test('keeps what was planned at the place, once, however often it is written', () => {
    const first = recordOf(resultWith(4.3));
    expect(first.visits.map(({ places }) => places)).toEqual([[place]]);
    const text = JSON.stringify(first);
    const again = compared({ visits, job, plan: planWith([spot(4.3)]), filmRecord: text });
    expect(again.again).toBe(0);
    expect(recordOf(again, text)).toEqual(first);
    // Without its plan the visit keeps what stands there.
    const later = compared({ visits, job, filmRecord: text });
    expect(recordOf(later, text).visits[0]?.places).toEqual([place]);
  });

  test('keeps it of a panel that was not read after the work', () => {
    const { roof: _, ...others } = worked(soundFilm, () => 1);
    const result = compared({
      visits: [readingsText(soundFilm), readingsText(others)],
      job,
      plan: planWith([spot(4.3)]),
    });
    expect(result.visit.some(({ panel }) => panel === 'roof')).toBe(false);
    expect(recordOf(result).visits[0]?.places).toEqual([place]);
    expect(pageOf(result)).toContain('Not read: roof, deep scratches');
  });

  test('lets the next survey allow as much as without, and say that a place was worked deeper', () => {
    const surveyed = (record: string) => {
      const request = requestOf({ visits: [visits[1] ?? ''], job, filmRecord: record });
      const [one] = surveyFiles({ ...request, why: [] }).value ?? [];
      const roof = one?.result.survey.panels.find(({ panel }) => panel.id === 'roof');
      return { budget: roof?.budget, told: roof?.evidence.map(({ text }) => text).join('; ') };
    };
    const [withPlace, without] = [
      surveyed(filmRecordText(resultWith(4.3), '2026-11-24', undefined)),
      surveyed(
        filmRecordText(compared({ visits, job, plan: planWith([]) }), '2026-11-24', undefined),
      ),
    ];
    expect(withPlace.budget).toBeGreaterThan(0);
    expect(withPlace.budget).toBe(without.budget);
    expect(withPlace.told).toContain(
      'on 2026-11-24 a spot at deep scratches was to take 3.0 µm more (up to 7.0 µm) at one place',
    );
    expect(without.told).not.toContain('a spot at');
  });
});

/** The same readings, the place of the spot read besides as a point of its name. */
const withPlace = (text: string, film: number, point = 'deep scratches 1'): string =>
  `${text}\nroof,${point},${film.toFixed(1)}\n`;
const placeOf = (result: CompareResult) => result.places[0]?.place ?? null;

describe('a place that is read before and after the work', () => {
  const reading = (after: number, point?: string): CompareResult =>
    compared({
      visits: [withPlace(visits[0] ?? '', 118, point), withPlace(visits[1] ?? '', after, point)],
      job,
      plan: planWith([spot(6)]),
    });

  test('tells nothing of what its panel lost', () => {
    const lost = (result: CompareResult) =>
      panelLeft(result, 'roof').comparison.change?.removed.value;
    expect(lost(reading(109))).toBe(lost(reading(117)));
    expect(panelLeft(reading(109), 'roof').comparison.pairs).toHaveLength(5);
  });

  test.each(['deep scratches', 'Deep-Scratches 1', 'deep_scratches_1'])(
    'is known by its point %s, and says what the spot took beyond the panel',
    (point) => {
      const read = placeOf(reading(114, point))?.read;
      // 4 µm less 1 µm of the panel, each way a reading of 1.5 µm.
      expect(read?.measured.value).toBeCloseTo(3, 1);
      expect(read?.measured.standardError).toBeGreaterThan(1.5 * Math.SQRT2);
      expect(read?.taken.mean).toBeGreaterThan(2.5);
    },
  );

  test('leaves less there the more it lost', () => {
    const left = [117, 114, 111, 108, 105].map((after) => {
      const { limits = [] } = panelLeft(reading(after), 'roof').left ?? {};
      return limits.find(({ code }) => code === 'place')?.value ?? Number.NaN;
    });
    expect(left).toEqual([...left].sort((a, b) => b - a));
    expect(left.at(-1)).toBe(0);
    // One reading of a small place bears no less than the middle of the plan.
    expect(left[0]).toBeCloseTo(2, 6);
  });

  test('is told with what went there, and asked for no more', () => {
    const page = pageOf(reading(114));
    expect(page).toContain('Read at the spots: roof, deep scratches: ');
    expect(page).not.toContain('Not read: roof');
  });

  test('at which more went than might go is told as any other overrun, and the record holds its panel', () => {
    const of = (film: number) => {
      const result = reading(film);
      const [panel] = (
        filmRecordFile(result, '2026-11-24', undefined).visits[0]?.panels ?? []
      ).filter((one) => one.panel === 'roof');
      const { overruns, verdict } = panelLeft(result, 'roof');
      return [overruns.map(({ code }) => code), panel?.over_allowed, verdict];
    };
    // 6 µm might go there: 5 are gone, then 7 with a doubt of some 4 µm, then 16.
    expect(of(113)).toEqual([[], false, expect.any(String)]);
    expect(of(111)).toEqual([['perhaps-more-than-allowed'], 'perhaps', 'unresolved']);
    expect(of(102)).toEqual([['more-than-allowed'], true, 'stop']);
    expect(pageOf(reading(102))).toMatch(
      /Too much came off: roof: at deep scratches 1 16\.0 ± \d\.\d µm came off in all, 6\.00 µm might go there/,
    );
    const record = filmRecordText(reading(102), '2026-11-24', undefined);
    expect(roofOf(visits[1] ?? '', record).told).toMatch(
      /on 2026-11-24 more came off than might go, 16\.0 ± \d\.\d µm \(SD\)/,
    );
  });

  test('has its number where the panel has several of its kind', () => {
    const two = compared({
      visits: [
        withPlace(visits[0] ?? '', 118, 'deep scratches 2'),
        withPlace(visits[1] ?? '', 114, 'deep scratches 2'),
      ],
      job,
      plan: planWith([spot(6), spot(6)]),
    });
    const page = pageOf(two);
    expect(page).toContain('Read at the spots: roof, deep scratches 2: ');
    expect(page).toContain('Not read: roof, deep scratches 1: ');
    const said = (panelLeft(two, 'roof').left?.limits ?? []).map(({ text }) => text).join('; ');
    expect(said).toContain('a spot at deep scratches 1 was to take');
    expect(said).toContain('a spot at deep scratches 2 took');
  });

  test('is kept on the record with what was measured, and counts at the next visit', () => {
    const result = reading(114);
    const record = filmRecordFile(result, '2026-11-24', undefined);
    const [place] = record.visits[0]?.places ?? [];
    expect(place?.taken_um).toBeCloseTo(3, 1);
    expect(place?.taken_sd_um).toBeGreaterThan(2);
    const roof = roofOf(visits[1] ?? '', JSON.stringify(record));
    expect(roof.told).toContain('by what was read there');
    expect(roof.told).not.toContain('keep off it');
  });
});

const roofOf = (readings: string, record: string) => {
  const request = requestOf({ visits: [readings], job, filmRecord: record });
  const [one] = surveyFiles({ ...request, why: [] }).value ?? [];
  const roof = one?.result.survey.panels.find(({ panel }) => panel.id === 'roof');
  return {
    budget: roof?.budget ?? Number.NaN,
    gone: roof?.facts.recorded?.mean ?? Number.NaN,
    told: roof?.evidence.map(({ text }) => text).join('; ') ?? '',
  };
};

describe('a place on record that a later survey reads', () => {
  const record = filmRecordText(resultWith(4.3), '2026-11-24', undefined);
  const last = visits[1] ?? '';
  const unread = roofOf(last, record);

  test('counts as what went at one place of the panel, and is no longer to be kept off', () => {
    const read = roofOf(withPlace(last, 114), record);
    expect(unread.told).toContain(
      'keep off it till it is read, as a point called “deep scratches 1”',
    );
    expect(read.told).not.toContain('keep off it');
    expect(read.gone).toBeGreaterThan(unread.gone + 2);
    expect(read.budget).toBeLessThan(unread.budget);
  });

  test('frees no more than the middle of the plan where the reading does not bear it', () => {
    // Beside the place nothing is gone: one reading among film that varies proves little.
    const beside = roofOf(withPlace(last, 119), record);
    expect(beside.gone).toBeGreaterThanOrEqual(unread.gone + 2.99);
  });

  test('is no place read since by readings of an earlier day', () => {
    const dated = withPlace(last, 114)
      .trim()
      .split('\n')
      .map((line, i) => `${line},${i === 0 ? 'time' : '2026-11-20'}`)
      .join('\n');
    expect(roofOf(dated, record).told).toContain('keep off it');
  });

  test('allows no more of the same readings than the comparison did that read it, nor of some of them', () => {
    const last = withPlace(visits[1] ?? '', 114);
    const result = compared({
      visits: [withPlace(visits[0] ?? '', 118), last],
      job,
      plan: planWith([spot(4.3)]),
    });
    const { budget = Number.NaN, boundBy } = panelLeft(result, 'roof').left ?? {};
    expect(boundBy?.code).toBe('place');
    const written = filmRecordText(result, '2026-11-24', undefined);
    for (const readings of [last, visits[1] ?? '']) {
      expect(roofOf(readings, written).budget).toBeCloseTo(budget, 5);
    }
    // Another reading says anew what may go.
    expect(roofOf(withPlace(last, 121, '9'), written).budget).toBeGreaterThan(budget);
  });

  test('stays read on the record that the next comparison writes', () => {
    const first = withPlace(last, 114);
    const after = readingsText(worked(soundFilm, () => 2));
    const result = compared({ visits: [first, after], job, filmRecord: record });
    const known = readFilmRecord('film.json', record).value?.value;
    const written = filmRecordFile(result, '2026-12-24', known);
    expect(written.visits[0]?.places?.[0]?.taken_um).toBeGreaterThan(0);
    expect(roofOf(after, JSON.stringify(written)).told).not.toContain('keep off it');
  });
});

describe('sets of a spot that were worked', () => {
  const said = (rows: string): CompareResult =>
    compared({
      visits,
      job,
      plan: planWith([spot(4.3)]),
      workedSets: `panel,step,sets\n${rows}`,
    });

  test.each(['roof,deep scratches,0', 'roof,deep-scratches,0', 'roof,,0'])(
    'are none by `%s`: nothing is read there, or kept',
    (row) => {
      const result = said(row);
      expect(result.places).toEqual([]);
      expect(pageOf(result)).not.toContain('Not read: roof');
      expect(recordOf(result).visits[0]?.places).toBeUndefined();
    },
  );

  test('take in proportion where they were fewer', () => {
    expect(placeOf(said('roof,deep scratches,1'))).toMatchObject({ sets: 1, median: 1, inAll: 2 });
    expect(placeOf(said('roof,1,2'))).toMatchObject({ sets: 3, median: 3 });
  });

  test('take away what was kept of a spot before it was said to be none', () => {
    const first = JSON.stringify(recordOf(resultWith(4.3)));
    const again = compared({
      ...{ visits, job, plan: planWith([spot(4.3)]), filmRecord: first },
      workedSets: 'panel,step,sets\nroof,deep scratches,0',
    });
    expect(again.again).toBe(0);
    expect(recordOf(again, first).visits[0]?.places).toBeUndefined();
  });

  test('are refused where they are said twice, or of a spot that the plan has not', () => {
    const told = (rows: string) =>
      toldBy({
        ...{ visits, job, plan: planWith([spot(4.3)]) },
        workedSets: `panel,step,sets\n${rows}`,
      }).join('; ');
    expect(told('roof,deep scratches,1\nroof,deep scratches,0')).toContain(
      'roof: the spot at deep scratches 1 is said twice',
    );
    expect(told('roof,bird etching,0')).toContain(
      'the plan of the roof has no step "bird etching"',
    );
  });
});
