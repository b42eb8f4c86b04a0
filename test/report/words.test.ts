import { expect, test } from 'vitest';
import { counted } from '../../src/base/counted.ts';
import { gluedUnits } from '../../src/report/words.ts';

test('one thing is singular, none and several are plural', () => {
  expect([0, 1, 2].map((n) => counted(n, 'panel'))).toEqual(['0 panels', '1 panel', '2 panels']);
});

test('a word that begins as a unit does is none, in whatever script it goes on', () => {
  for (const text of ['5 mètres', '5 mя', '5 m\u{1d400}', '3 hµ']) {
    expect(gluedUnits(text)).toBe(text);
  }
  expect(gluedUnits('5 m')).toBe('5\u00a0m');
  expect(gluedUnits('5 m’s')).toBe('5\u00a0m’s');
});

test('a number keeps its unit and its sign, and no other word', () => {
  const glued = gluedUnits(
    '5 % of 22.3 µm in 3 h, 2 mil, 4 meals, 6 hands, 150 mm, 10 min, 2 minds, mean ± sd, ± 1.5',
  );
  expect(glued.replaceAll('\u00a0', '_')).toBe(
    '5_% of 22.3_µm in 3_h, 2_mil, 4 meals, 6 hands, 150_mm, 10_min, 2 minds, mean ± sd, ±_1.5',
  );
});
