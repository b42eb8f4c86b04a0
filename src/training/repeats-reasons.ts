/** How well readings of one point repeat: a hand that is unsteady, or one figure that is not what the gauge showed. */
import { figure } from '../base/rounding.ts';
import { bare, type Sentence, says, um } from '../base/sentence.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { Panel } from '../film/template/template.ts';
import type { FaultsOf } from './faults-of.ts';
import {
  faceReadings,
  type GradedSurvey,
  ownRepeatability,
  pointKey,
  readPanels,
} from './graded-survey.ts';
import { allowedRepeatability } from './mark.ts';
import { type Reason, reason } from './reasons.ts';

export function repeatabilityReasons({
  judged: { repeatability },
  repeatsAlike,
  trainee,
  keyed,
  wholeSurvey,
}: FaultsOf): readonly Reason[] {
  if (repeatsAlike !== null) return [repeatsAlike];
  if (repeatability === null) {
    // In another unit, or by a decimal mark, they say nothing of the hand.
    if (wholeSurvey && ownRepeatability(trainee) !== null) return [];
    return [
      reason(
        'not-repeated',
        'no point was read twice, so nobody can say how well your readings repeat: read each point three times',
        { at: faceReadings(trainee)[0] },
      ),
    ];
  }
  const { sd, allowed, dof } = repeatability;
  if (sd <= allowed) return [];
  const widest = widestPoint(trainee, keyed);
  const mend =
    oneRepeat(widest, trainee, keyed) ??
    says`lift and set the probe down at the very same place, square and without sliding`;
  return [
    reason(
      'repeats-apart',
      says`readings of one point differ by ${um(sd, 2)} (SD of ${figure(dof)} repeats), up to ${um(allowed, 2)} is usual: ${mend}`,
      {
        at: faceReadings(trainee, widest.panel.id).find(({ point }) => point === widest.point),
      },
    ),
  ];
}

type Repeated = Pick<PanelPoint, 'point' | 'repeats'> & { readonly panel: Panel };

const apartIn = ({ repeats }: Pick<Repeated, 'repeats'>): number =>
  Math.max(...repeats) - Math.min(...repeats);

/** The point whose repeats are farthest apart; there is one where repeats are too far apart. */
const widestPoint = (trainee: GradedSurvey, keyed: ReadonlySet<string>): Repeated =>
  readPanels(trainee)
    .flatMap(({ panel, points }) => points.map(({ point, repeats }) => ({ panel, point, repeats })))
    .filter(({ panel, point }) => !keyed.has(pointKey(panel.id, point)))
    .reduce((most, one) => (apartIn(one) > apartIn(most) ? one : most));

/** Where all other points repeat as is usual, it is that one and not the hand. */
function oneRepeat(
  { panel, point, repeats }: Repeated,
  trainee: GradedSurvey,
  keyed: ReadonlySet<string>,
): Sentence | null {
  const rest = ownRepeatability(trainee, new Set([...keyed, pointKey(panel.id, point)]));
  if (rest === null || rest.sd > allowedRepeatability(rest, trainee.repeatability).allowed) {
    return null;
  }
  const ends = [Math.min(...repeats), Math.max(...repeats)] as const;
  return says`most of it is point ${point} of the ${panel.name} (${bare(ends[0])} and ${um(ends[1])}), without it they differ by ${um(rest.sd, 2)}: read it again, and look at the gauge before you write`;
}
