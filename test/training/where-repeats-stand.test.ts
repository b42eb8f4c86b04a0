import { expect, test } from 'vitest';
import { alikeRepeats } from '../../src/training/alike-repeats.ts';
import { model, panelIds, readingAt, surveyOf } from './true-class.ts';

test('repeats that are all alike are told at the first reading of the face, of a layer or an edge none', () => {
  const films = [108.4, 113.7, 110.2, 115.9, 111.6];
  const face = panelIds.flatMap((panel, i) =>
    films.flatMap((film, k) =>
      [1, 2, 3].map((repeat) => readingAt(panel, `${k + 1}`, repeat, film + i, { line: 40 + i })),
    ),
  );
  const [first] = face;
  if (first === undefined) throw new Error('the car was read');
  const aside = { ...first, point: '9', origin: { ...first.origin, line: 7 } };
  const told = alikeRepeats(
    surveyOf([{ ...aside, place: 'edge' }, { ...aside, layer: 'clear' }, ...face]),
    model,
  );
  expect(told).toMatchObject({ code: 'repeats-alike', file: 'a.csv', line: 40 });
});
