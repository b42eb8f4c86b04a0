/** Stated layers that cannot both be true of what was read are not averaged: the least that either allows counts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { PanelFacts, StatedLayer } from '../../src/film/film-model.ts';
import type { PanelSurvey } from '../../src/film/survey.ts';
import { evenly } from '../evenly.ts';
import { amongSound, fiveAround } from './car-builder.ts';

const stated = (mean: number, sd: number): StatedLayer => ({
  mean: micrometres(mean),
  sd: micrometres(sd),
  of: 'panel',
});
const tested = (facts: Partial<PanelFacts>, centre = 112): PanelSurvey =>
  amongSound(fiveAround('tested', centre), {
    factsOf: (id) => (id === 'tested' ? { taken: micrometres(0), ...facts } : {}),
  }).panel;

const clear = stated(60, 3);
const under = stated(100, 4);

describe('a clear and what lies under it, both stated', () => {
  test('of which their sum is far over the total allow what the worse of them allows', () => {
    const both = tested({ clear, under });
    expect(both.budget).toBe(tested({ under }).budget);
    expect(both.budget).toBeLessThan(tested({ clear }).budget);
    // 60 − (112 − 100) over √(3² + 4² + u² + s̃²/n), u = 1.8706 and s̃²/n = 16/5
    expect(both.topcoat?.apart?.sds).toBeCloseTo(48 / Math.sqrt(9 + 16 + 1.8706 ** 2 + 3.2), 1);
    expect(both.boundBy.text).toMatch(/by the total less what is stated under it/);
  });

  test('of which their sum is far under the total allow what the clear alone does', () => {
    const [thin, little] = [stated(30, 3), stated(40, 4)];
    const both = tested({ clear: thin, under: little });
    expect(both.budget).toBe(tested({ clear: thin }).budget);
    expect(both.topcoat?.told.knowledge.statedUnder).toBeNull();
    expect(both.topcoat?.apart?.sds).toBeGreaterThan(5);
  });

  test('that agree with the total are held together, as they were', () => {
    const both = tested({ clear: stated(42, 3), under: stated(70, 4) });
    expect(both.topcoat?.apart).toBeUndefined();
    expect(both.boundBy.text).not.toMatch(/not by what is stated/);
  });

  test('never allow more than the lesser of them, once they are apart', () => {
    fc.assert(
      fc.property(evenly(25, 90), evenly(30, 110), (one, other) => {
        const facts = { clear: stated(one, 3), under: stated(other, 4) };
        const both = tested(facts);
        if (both.topcoat?.apart === undefined) return;
        const alone = [tested({ clear: facts.clear }), tested({ under: facts.under })];
        expect(both.budget).toBeLessThanOrEqual(Math.min(...alone.map(({ budget }) => budget)));
      }),
      { numRuns: 25 },
    );
  });
});

test('a clear that leaves the layers under it next to nothing allows no more than the total without it', () => {
  const thick = tested({ clear: stated(95, 3) }, 118);
  expect(thick.budget).toBeLessThanOrEqual(tested({}, 118).budget);
  expect(thick.topcoat?.told.knowledge.statedClear).toBeNull();
  expect(thick.boundBy.text).toMatch(/by the total, not by what is stated/);
  expect(tested({ clear: stated(30, 3) }, 150).topcoat?.apart).toBeUndefined();
});
