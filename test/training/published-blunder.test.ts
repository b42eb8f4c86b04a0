/** The one blunder that is published of Youden's class, in classes drawn to what is published of its other readings. */
import { describe, expect, test } from 'vitest';
import { sampleVariance } from '../../src/base/stats/summary.ts';
import { micrometres } from '../../src/base/units.ts';
import { consensusReference } from '../../src/training/reference.ts';
import { youdenPaper } from '../reference/proficiency.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { gradeAgainst, model, type Random, readingAt, surveyOf } from './true-class.ts';

const UM = 1000;
const CLASSES = 100;
const { operators, readings: each, blunder } = youdenPaper;

/** What is left of the published repeatability for the operators who made no blunder, in µm. */
const ownSd = (() => {
  const withBlunder = (each - 1) * operators * (youdenPaper.repeatability * UM) ** 2;
  const ofBlunder = (1 - 1 / each) * ((youdenPaper.mean - blunder.reading) * UM) ** 2;
  return Math.sqrt((withBlunder - ofBlunder) / ((each - 1) * (operators - 1)));
})();

/** Micrometres of paper, as each operator of a class reads them four times at one point. */
const drawClass = (random: Random): readonly (readonly number[])[] =>
  Array.from({ length: operators }, (_, operator) => {
    const own =
      youdenPaper.mean * UM + Math.sqrt(youdenPaper.betweenVariance) * UM * normal(random);
    return Array.from({ length: each }, (__, reading) =>
      operator === blunder.operator - 1 && reading === blunder.replicate - 1
        ? blunder.reading * UM
        : own + ownSd * normal(random),
    );
  });

describe('Youden’s 24 student operators, one of whom slipped at the fourth reading', () => {
  const named = new Map<number, number>();
  const random = seededRandom(1962);
  for (let k = 0; k < CLASSES; k += 1) {
    const surveys = drawClass(random).map((values) =>
      surveyOf(
        values.map((value, i) => readingAt('bonnet', '1', i + 1, value)),
        micrometres(ownSd),
      ),
    );
    const reference = consensusReference(surveys, model.class);
    surveys.forEach((survey, operator) => {
      const { reasons } = gradeAgainst(survey, reference);
      if (reasons.some(({ code }) => code === 'repeats-apart')) {
        named.set(operator + 1, (named.get(operator + 1) ?? 0) + 1);
      }
    });
  }

  test('the one who slipped is told in every class that the readings of one point differ', () => {
    expect(named.get(blunder.operator)).toBe(CLASSES);
  });
  test('the others are told so no more often than in the five cases of 100 that the limit is set for', () => {
    const others = [...named].filter(([operator]) => operator !== blunder.operator);
    const told = others.reduce((sum, [, count]) => sum + count, 0);
    expect(told / (CLASSES * (operators - 1))).toBeLessThan(0.065);
    expect(told).toBeGreaterThan(0);
  });
  test('more than half of the published scatter within operators is the work of that one reading', () => {
    const four = [...Array.from({ length: each - 1 }, () => youdenPaper.mean), blunder.reading];
    const share = sampleVariance(four) / (operators * youdenPaper.repeatability ** 2);
    expect(share).toBeGreaterThan(0.6);
    expect(share).toBeLessThan(0.65);
  });
});
