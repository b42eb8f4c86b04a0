import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { Condition } from '../../src/film/condition/condition.ts';
import { conditionAgreement } from '../../src/training/condition-agreement.ts';
import { plainPanel } from '../film/car-builder.ts';

const pairs = (...words: readonly (readonly [Condition, Condition])[]) =>
  words.map(([own, theirs], i) => ({
    panel: plainPanel(`p${i}`),
    own,
    theirs,
    ownBudget: micrometres(0),
    theirBudget: null,
  }));

test('conditions agree beyond chance by Cohen’s kappa, and those that differ are named', () => {
  const found = conditionAgreement(
    pairs(
      ['original', 'original'],
      ['original', 'original'],
      ['refinished', 'refinished'],
      ['refinished', 'original'],
    ),
  );
  // p_o = 3/4, p_e = (2·3 + 2·1)/16 = 1/2.
  expect(found).toMatchObject({ of: 4, alike: 3, kappa: 0.5 });
  expect(found?.otherwise.map(({ panel }) => panel.id)).toEqual(['p3']);
});

test('there is no kappa where one of the two has one word for all panels, and nothing without panels', () => {
  const theirs = pairs(['original', 'original'], ['thin', 'original'], ['original', 'original']);
  expect(conditionAgreement(theirs)).toMatchObject({ alike: 2, kappa: null });
  const own = pairs(['original', 'original'], ['original', 'refinished']);
  expect(conditionAgreement(own)).toMatchObject({ alike: 1, kappa: null });
  expect(conditionAgreement([])).toBeNull();
});
