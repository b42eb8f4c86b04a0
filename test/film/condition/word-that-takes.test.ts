/** Which word takes from what may go: the one across the line, or what the panel may be besides. */
import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { Condition } from '../../../src/film/condition/condition.ts';
import type { OtherSide } from '../../../src/film/condition/condition-sureness.ts';
import {
  HELD_BACK,
  isAlike,
  likeliestBesides,
  wordThatTakes,
} from '../../../src/film/condition/other-side.ts';
import { amongSound, fiveAround } from '../car-builder.ts';

const { topcoat } = amongSound(fiveAround('tested', 112)).panel;
if (topcoat === null) throw new Error('factory film has a topcoat');
const besides = (...all: readonly (readonly [Condition, number])[]) => ({
  ...topcoat,
  besides: all.map(([condition, chance]) => ({ condition, chance, topcoat: null })),
});
const across = (budget: number | null, ifWordHolds: number): OtherSide => ({
  condition: 'cut-back',
  budget: budget === null ? null : micrometres(budget),
  boundBy: null,
  ifWordHolds: micrometres(ifWordHolds),
});
const likely = besides(['refinished', 0.02], ['filler', 0.3], ['cut-back', 0.1]);

describe('the word that takes from what may go', () => {
  test('is the one across the line where less may go there, or where it has no one figure', () => {
    expect(wordThatTakes({ otherSide: across(1, 4), topcoat: likely })).toBe('cut-back');
    expect(wordThatTakes({ otherSide: across(null, 4), topcoat: likely })).toBe('cut-back');
  });

  test('is the likeliest besides where as much may go there', () => {
    expect(likeliestBesides(likely)).toMatchObject({ condition: 'filler', chance: 0.3 });
    expect(wordThatTakes({ otherSide: across(4, 4), topcoat: likely })).toBe('filler');
    expect(wordThatTakes({ otherSide: across(4, 4), topcoat: besides() })).toBe('cut-back');
    expect(wordThatTakes({ otherSide: across(4, 4), topcoat: null })).toBe('cut-back');
    expect(likeliestBesides(null)).toBeUndefined();
  });

  test('is none where the panel is not near its line', () => {
    expect(wordThatTakes({ otherSide: null, topcoat: likely })).toBeNull();
  });

  test('two figures are alike under a hundredth of a µm apart, either way round', () => {
    const apart = (by: number) => isAlike(across(4 + by, 4));
    expect([0, 0.9 * HELD_BACK, -0.9 * HELD_BACK].map(apart)).toEqual([true, true, true]);
    expect([1.1 * HELD_BACK, -1.1 * HELD_BACK].map(apart)).toEqual([false, false]);
  });
});
