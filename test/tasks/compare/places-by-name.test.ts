/** Points called by a defect, without a plan or a record that knows them: none that tells what the panel lost. */
import { describe, expect, test } from 'vitest';
import { renderText } from '../../../src/render/text.ts';
import { compareBlocks } from '../../../src/report/compare/compare-blocks.ts';
import { filmRecordFile } from '../../../src/report/compare/film-record-file.ts';
import { surveyFiles } from '../../../src/tasks/survey/survey-files.ts';
import { compared, panelLeft, readingsText, requestOf, soundFilm, worked } from '../comparing.ts';

const job = { finish: 'clear-over-base', taken_um: 0 };
const [before, after] = [readingsText(soundFilm), readingsText(worked(soundFilm, () => 1))];
const withPoint = (point: string, [first, last]: readonly [number, number], panel = 'roof') => [
  `${before}\n${panel},${point},${first.toFixed(1)}`,
  `${after}\n${panel},${point},${last.toFixed(1)}`,
];
const resultOf = (visits: readonly string[]) => compared({ visits, job, marked: true });
const changeOf = (visits: readonly string[]) => {
  const { change, pairs } = panelLeft(resultOf(visits), 'roof').comparison;
  return { points: pairs.length, removed: change?.removed.value };
};
const toldOf = (visits: readonly string[]): readonly string[] =>
  resultOf(visits).assumptions.flatMap(({ code, text }) => (code === 'place-by-name' ? text : []));

test.each(['deep scratches 1', 'Deep_Scratches 2', 'bird-etching 1'])(
  'a point called %s is left out of what the panel lost, and that is said',
  (name) => {
    const visits = withPoint(name, [118, 112]);
    expect(changeOf(visits)).toEqual(changeOf([before, after]));
    expect(toldOf(visits)).toEqual([
      `“${name}” of roof: by the name the place of a spot, and left out of what came off the panel`,
    ]);
  },
);

test.each(['6', 'deep scratches', 'near the aerial 1'])(
  'a point called %s counts as any other, and nothing is said',
  (name) => {
    const visits = withPoint(name, [118, 117]);
    expect(changeOf(visits).points).toBe(6);
    expect(toldOf(visits)).toEqual([]);
  },
);

test('where a visit has no other points on the panel they count, as nothing else tells of it', () => {
  const named = (text: string): string => text.replaceAll(/roof,(\d)/gu, 'roof,deep scratches $1');
  const visits = [named(before), named(after)];
  expect(changeOf(visits)).toEqual(changeOf([before, after]));
  expect(toldOf(visits)).toEqual([]);
});

describe('film that went at a marked place called by a defect', () => {
  const many = withPoint('deep scratches 1', [118, 109]);
  const recordOf = (visits: readonly string[]) =>
    filmRecordFile(resultOf(visits), '2026-03-31', undefined).visits[0];

  test('is told where it is more than might go, as at any other point', () => {
    const { overruns, verdict, left } = panelLeft(resultOf(many), 'roof');
    expect(overruns.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^at deep scratches 1 9\.0 ± .* came off in all, .* might go there$/u),
    ]);
    expect(verdict).toBe('unresolved');
    expect(left?.budget).toBe(0);
  });

  test('stands on the page', () => {
    const blocks = compareBlocks(resultOf(many), { unit: 'um', verbose: false });
    const page = renderText(blocks, { width: 80, paint: (piece) => piece });
    expect(page.replace(/\s+/gu, ' ')).toContain(
      'Read at the spots: roof, deep scratches: 8.0 ± 2.1 µm more than the panel are held to be gone, by no plan at hand.',
    );
  });

  test('leaves less of the panel where it kept to that, and more than a loss beyond it', () => {
    const budget = (last: number) =>
      panelLeft(resultOf(withPoint('deep scratches 1', [118, last])), 'roof').left?.budget ?? 0;
    const plain = panelLeft(resultOf([before, after]), 'roof').left?.budget ?? 0;
    expect(budget(115.5)).toBeLessThan(plain - 1);
    expect(budget(115.5)).toBeGreaterThan(0);
    expect(budget(117)).toBeLessThanOrEqual(plain);
  });

  test('stands on the record and counts at the next visit', () => {
    expect(recordOf(many)?.places).toEqual([
      expect.objectContaining({
        panel: 'roof',
        defect: 'deep-scratches',
        median_um: 0,
        taken_um: 8,
      }),
    ]);
    expect(recordOf([before, after])?.places).toBeUndefined();
    const filmRecord = JSON.stringify(filmRecordFile(resultOf(many), '2026-03-31', undefined));
    const [vehicle] = surveyFiles(requestOf({ visits: [after], job, filmRecord })).value ?? [];
    const roof = vehicle?.result.survey.panels.find(({ panel }) => panel.id === 'roof');
    expect(roof?.facts.recorded?.mean).toBeGreaterThan(8);
    expect(roof?.evidence.map(({ text }) => text).join()).toContain(
      'on 2026-03-31 more went at one place of deep scratches than of the rest of the panel: by what was read there 8.0',
    );
  });

  test('is nothing to tell where it was read once, or was not marked', () => {
    const once = [before, withPoint('deep scratches 1', [118, 109])[1] ?? ''];
    expect(recordOf(once)?.places).toBeUndefined();
    const unmarked = compared({ visits: many, job, marked: false });
    expect(filmRecordFile(unmarked, '2026-03-31', undefined).visits[0]?.places).toBeUndefined();
  });
});
