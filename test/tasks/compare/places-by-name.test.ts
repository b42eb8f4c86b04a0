/** Points called by a defect, without a plan or a record that knows them: none that tells what the panel lost. */
import { expect, test } from 'vitest';
import { compared, panelLeft, readingsText, soundFilm, worked } from '../comparing.ts';

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
