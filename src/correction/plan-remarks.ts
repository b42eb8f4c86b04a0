/** What a panel's plan has to say: why it is as it is, what is local work, what to mind. */
import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { Defect } from './defects.ts';
import type { Verdict } from './plan.ts';
import type { Step } from './step.ts';
import type { Choice } from './step-search.ts';

export function nothingFits(
  { boundBy, budget }: PanelSurvey,
  best: Choice | undefined,
  machineWays: number,
): Remark {
  if (budget === 0) {
    return remark(`limit-${boundBy.code}`, `nothing may go: ${boundBy.text}`, 0);
  }
  if (machineWays === 0) {
    return remark(
      'no-technique',
      'no machine of the shop lies flat here and ends without rotary holograms',
    );
  }
  return best === undefined
    ? remark('nothing-fits', `${shown(budget, 2)} µm may go, the mildest steps take more`, budget)
    : remark(
        'not-worth-it',
        `the ${shown(budget, 2)} µm that may go would clear ${shown(100 * best.correction, 0)} % of the marks: not worth the film`,
        budget,
      );
}

export function choiceReasons(
  verdict: Verdict,
  { budget, boundBy }: PanelSurvey,
): readonly Remark[] {
  if (verdict === 'lighter') {
    return [
      remark(
        'aim-out-of-reach',
        `the aim takes more than the ${shown(budget, 2)} µm that may go: ${boundBy.text}`,
        budget,
      ),
    ];
  }
  return verdict === 'hand'
    ? [remark('by-hand', 'by hand: no pad lies flat, or the mildest machine step takes too much')]
    : [];
}

export function defectRemarks(defects: readonly Defect[]): readonly Remark[] {
  return defects
    .filter(({ grade }) => grade > 0)
    .flatMap(({ kind, grade }) => {
      if (kind.scope === 'local') {
        return [remark('local-defect', `${kind.name} of grade ${grade}: local work or left`)];
      }
      return kind.scope === 'not-polishing'
        ? [remark('not-polishing', `${kind.name} is not a polishing matter`)]
        : [];
    });
}

export function cautionsOf(survey: PanelSurvey, steps: readonly Step[]): readonly Remark[] {
  const cautions: Remark[] = [];
  if (survey.otherPoints.some(({ place }) => place === 'edge')) {
    cautions.push(remark('edges-read', 'edge points were read apart: pad off the outer 25 mm'));
  }
  if (survey.lowPoints.length > 0) {
    cautions.push(
      remark('low-points', `low at ${survey.lowPoints.join(', ')}: fewer passes there`),
    );
  }
  if (survey.facts.finish.startsWith('single-stage')) {
    cautions.push(remark('colour-on-pad', 'colour on the pad is normal on single-stage paint'));
  }
  if (steps.some(({ combination }) => combination.machine.motion.kind === 'rotary')) {
    cautions.push(remark('rotary-heat', 'rotary: keep it moving, feel for heat, stop at 43 °C'));
  }
  return cautions;
}
