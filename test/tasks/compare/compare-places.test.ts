/** A place that the plan worked deeper than its panel is not read: nothing more goes there, and the record keeps it. */
import { describe, expect, test } from 'vitest';
import { readFilmRecord } from '../../../src/formats/film-record.ts';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordFile, filmRecordText } from '../../../src/report/compare/film-record-file.ts';
import type { CompareResult } from '../../../src/tasks/compare/compare-files.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { compared, panelLeft, readingsText, requestOf, soundFilm, worked } from '../comparing.ts';
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
      'Not read: roof, deep scratches: 3.0 (up to 7.0) µm more by a spot; read these places before more comes off there.',
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
