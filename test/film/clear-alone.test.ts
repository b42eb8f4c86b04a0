import { expect, test } from 'vitest';
import { panelOf, plainPanel, reading, surveyOf } from './car-builder.ts';

test('a clear that is read by itself is known with its doubt on a car of which no total was read', () => {
  const clear = [41, 45, 43, 44, 40].map((um, i) =>
    reading('roof', `${i + 1}`, um, { layer: 'clear' }),
  );
  const { facts } = panelOf(surveyOf({ panels: [plainPanel('roof')], readings: clear }), 'roof');
  expect(facts.clear?.mean).toBeCloseTo(42.6, 12);
  expect(facts.clear?.sd).toBeGreaterThan(0);
  expect(facts.clear?.sd).toBeLessThan(5);
  expect(facts.clear?.within?.sd).toBeGreaterThan(0);
});
