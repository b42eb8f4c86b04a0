import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { CorrectionModel, Stage } from '../../src/correction/removal/catalogue.ts';
import { paintKnowledge } from '../../src/correction/removal/removal-knowledge.ts';
import { strongestRung } from '../../src/correction/removal/step.ts';
import { assessFilm } from '../../src/film/assess-film.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { amongSound, fiveAround, knownFacts, standardTerms } from '../film/car-builder.ts';
import { defect, planned, planOf, shopWith, stepsOf } from './shop.ts';

const { survey } = amongSound(fiveAround('tested', 112));

/** A panel with swirl marks of a grade, as if so much might go. */
const planFor = (grade: number, model: CorrectionModel, hardness: 'hard' | 'unknown' = 'unknown') =>
  planned(
    planOf(survey, {
      model,
      defectsOf: () => [defect('swirl-marks', grade)],
      paintOf: () => paintKnowledge([], hardness, model),
      allowanceAt: (part) => ({ ...part, budget: micrometres(6) }),
    }),
    'tested',
  );

/** Only these pads, each kept to its stages. */
const withPads = (
  model: CorrectionModel,
  stages: Readonly<Record<string, readonly Stage[]>>,
): CorrectionModel => ({
  ...model,
  pads: model.pads.flatMap((pad) => {
    const kept = stages[pad.id];
    return kept === undefined ? [] : [{ ...pad, stages: kept }];
  }),
});

describe('common practice', () => {
  it('starts mild: lighter marks get no harsher a step than deeper ones, and light ones no compound', () => {
    const model = shopWith('rotary', 'da');
    const plans = [1, 1.5, 2, 2.5, 3, 3.5, 4].map((grade) => planFor(grade, model));
    const rungs = plans.map(({ steps }) => strongestRung(steps));
    expect(rungs).toEqual([...rungs].sort((a, b) => a - b));
    expect(new Set(rungs).size).toBeGreaterThan(1);
    expect(plans[0]?.steps.some((step) => step.combination.product.id === 'heavy')).toBe(false);
  });

  it('on old hard clear that dual action does not clear, steps up to a stronger product on a softer pad by rotary, then refines on a medium pad with a medium polish by dual action', () => {
    const mild = withPads(shopWith('da'), { 'foam-medium': ['cut', 'refine'] });
    const polish = mild.products.filter(({ id }) => id !== 'heavy');
    const da = planFor(3.5, { ...mild, products: polish }, 'hard');
    expect(da.verdict).toBe('lighter');
    const both = withPads(shopWith('rotary', 'da'), {
      'foam-soft': ['cut'],
      'foam-medium': ['refine'],
    });
    const plan = planFor(3.5, both, 'hard');
    expect(plan.verdict).toBe('polish');
    expect(stepsOf(plan)).toEqual([
      expect.stringMatching(/^rotary\/foam-soft\/heavy × [1-3]$/),
      expect.stringMatching(/^da\/foam-medium\/medium × [12]$/),
    ]);
    expect(plan.expected).toBeGreaterThan(da.expected + 0.05);
  });

  it('takes a full-size pad wherever one lies flat, and a small one or the hand in tight places', () => {
    for (const template of builtInTemplates.filter(({ id }) => id === 'saloon')) {
      const whole = assessFilm({
        template,
        readings: template.panels.flatMap(({ id }) => fiveAround(id, 118)),
        factsOf: () => knownFacts,
        terms: standardTerms,
        model: filmModel,
      });
      for (const { survey: part, steps } of planOf(whole).panels) {
        for (const { combination } of steps) {
          const { motion, padDiameter } = combination.machine;
          if (part.panel.flatWidth >= 150) expect(padDiameter).toBe(150);
          else expect(motion.kind === 'hand' || padDiameter <= part.panel.flatWidth).toBe(true);
        }
      }
    }
  });
});
