import { expect, test } from 'vitest';
import { wordsIn } from '../../../src/intake/cells/word-list.ts';
import {
  behindNames,
  besideNames,
  onlyAlone,
} from '../../../src/intake/statistics/statistic-vocabulary.ts';
import { namesStatistic, statisticNamed } from '../../../src/intake/statistics/statistic-words.ts';

const words = [besideNames, behindNames, onlyAlone].flatMap((group) =>
  Object.entries(group).flatMap(([kind, list]) =>
    wordsIn(list).map((word) => [word, kind] as const),
  ),
);

test('every word of statistics names its own, in whatever script it is written', () => {
  expect(words.length).toBeGreaterThan(300);
  expect(words.filter(([word, kind]) => statisticNamed(word) !== kind)).toEqual([]);
});

test('a word for the mean behind the name of a panel is one of statistics in other languages as well', () => {
  for (const name of ['Haube Mittel', 'capot moy', 'huv medel', 'капот среднее', 'maska suma'])
    expect(namesStatistic(name), name).toBe(true);
  expect(namesStatistic('Haube Mitte')).toBe(false);
});
