/**
 * Colour on the pad where the car's finish has no clear. Of its own paint that is normal; of repaint it may be a base coat
 * under clear. A trial does not know which of them it was made on: a survey does.
 */
import { type Remark, remark } from '../../base/remark.ts';
import type { FinishOf } from '../../correction/spot/spot-next.ts';
import type { SpotTrial } from '../../correction/spot/spot-trial.ts';
import { isColourNormal } from '../../film/limits/colour-at-spot.ts';

export const isColourUnsettled = ({ colourOnPad, panel }: SpotTrial, finishOf: FinishOf): boolean =>
  colourOnPad === true && isColourNormal(finishOf(panel));

export function colourRemarks(
  trials: readonly SpotTrial[],
  nameOf: (panel: string) => string,
): readonly Remark[] {
  const names = [...new Set(trials.map(({ panel }) => nameOf(panel)))];
  const [first, second] = names;
  if (first === undefined) return [];
  const which = second === undefined ? `the ${first}` : `any of ${names.join(', ')}`;
  return [
    remark(
      'spot-colour-repaint',
      `if ${which} is repaint, stop: there colour on the pad may be a base coat under clear, and counts only once the job states the finish of that panel itself`,
    ),
  ];
}
