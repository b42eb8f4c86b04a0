/** The usual film of a car as repaint: what is held of it, and how it is told. */
import { describe, expect, it } from 'vitest';
import { filmModel } from '../../src/formats/models.ts';
import { fiveAround, panelOf, plainPanel, surveyOf } from './car-builder.ts';

const THICK = [142, 145, 141, 143, 140, 146, 142, 144, 141, 143];
const THICKER = THICK.map((film) => film + 12);
type Conditions = Partial<(typeof filmModel)['conditions']>;
const withThin = (thin: number, conditions: Conditions = {}, thick = THICK) =>
  surveyOf({
    panels: [thin, ...thick].map((_, i) => plainPanel(`p${i}`)),
    readings: [thin, ...thick].flatMap((film, i) => fiveAround(`p${i}`, film)),
    model: { ...filmModel, conditions: { ...filmModel.conditions, ...conditions } },
  });
const chanceOf = (survey: ReturnType<typeof withThin>): number =>
  panelOf(survey, 'p1').sides.lost.find(({ shownBy }) => shownBy !== undefined)?.otherSide ?? 0;

describe('that the usual film is repaint', () => {
  it('is no likelier than nobody knows which, unless the numbers say so', () => {
    expect(chanceOf(withThin(100, {}, THICKER))).toBe(0.5);
    expect(chanceOf(withThin(100, { paintedOverMost: 0.3 }, THICKER))).toBe(0.3);
    expect(chanceOf(withThin(100, { paintedOverMost: 0.6 }, THICKER))).toBeGreaterThan(0.5);
  });
  it('is told by the thin panel the more, the less a panel lies about the film of its car', () => {
    const [near, as, far] = [0.1, 0.5, 1].map((aboutItsCar) =>
      chanceOf(withThin(118, { aboutItsCar })),
    ) as [number, number, number];
    // (112 + 2·118)/3 ± 11.7/√3 of what factories paint; nearer 118 it explains more of 142.
    expect(near).toBeLessThan(as);
    expect(as).toBeLessThan(far);
  });
  it('takes from what may go the more, the thinner that panel: nowhere all at once', () => {
    const budgets = Array.from(
      { length: 401 },
      (_, i) => panelOf(withThin(134 - i / 20), 'p1').budget,
    );
    const falls = budgets.slice(1).map((budget, i) => (budgets[i] ?? budget) - budget);
    expect(budgets[0]).toBeGreaterThan(3);
    expect(budgets.at(-1)).toBe(0);
    expect(Math.min(...falls)).toBeGreaterThan(-0.01);
    expect(Math.max(...falls)).toBeLessThan(1);
  });
  it('is one chance among the words for what is expected, beside the panel’s own', () => {
    const survey = surveyOf({
      panels: [115, ...THICK].map((_, i) => plainPanel(`p${i}`)),
      readings: [115, ...THICK].flatMap((film, i) => fiveAround(`p${i}`, i === 1 ? 181 : film)),
    });
    const { limits } = panelOf(survey, 'p1');
    const clear = limits.find(({ code }) => code === 'near-line' || code === 'clear')?.text ?? '';
    expect(clear.match(/none to go by if refinished/gu)).toHaveLength(1);
  });
});
