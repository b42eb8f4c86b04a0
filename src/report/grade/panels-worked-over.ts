/**
 * Panels that read as another condition than the reference says, and so let more be taken off than the reference does, or
 * would where their condition is settled by these readings: it costs no marks, and would cost a car its clear coat.
 */
import { type Sentence, says, thicknessText, um } from '../../base/sentence.ts';
import type { ConditionPair } from '../../training/condition-agreement.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { ReasonCode } from '../../training/reasons.ts';

/** By what they say of a panel nobody works on it as it reads. */
const SAID_ALREADY: readonly ReasonCode[] = ['low-spot-missed', 'repair-missed'];

export type WorkedOver = {
  /** Its low spot was found, and what is beside it passes for the panel. */
  readonly isSpot: boolean;
  readonly said: Sentence;
};

type Known = ConditionPair & { readonly theirBudget: NonNullable<ConditionPair['theirBudget']> };

/** The largest difference first; none of a panel that a slip spoils, which is not the film of that panel. */
export function panelsWorkedOver(grade: Grade, against: string): readonly WorkedOver[] {
  const isSaid = (id: string): boolean =>
    grade.slipped.some((one) => one.id === id) ||
    grade.reasons.some(({ code, panels }) => SAID_ALREADY.includes(code) && panels.includes(id));
  const more = ({ ownBudget, theirBudget }: Known): number => ownBudget - theirBudget;
  return (grade.conditions?.otherwise ?? [])
    .filter((one): one is Known => one.theirBudget !== null)
    .filter((one) => letsMoreGo(one) && !isSaid(one.panel.id))
    .toSorted((one, other) => more(other) - more(one))
    .map((one) => {
      const isSpot = hasSpotFound(grade, one.panel.id);
      return { isSpot, said: workedOver(one, { isSpot, grade }, against) };
    });
}

/** A panel cut back lets less go than an original one, also where in doubt neither does. */
const letsMoreGo = (one: Known): boolean =>
  areShownApart(one)
    ? one.ownBudget > one.theirBudget
    : one.own === 'original' && one.theirs === 'cut-back';

const areShownApart = ({ ownBudget, theirBudget }: Known): boolean =>
  thicknessText(ownBudget, 'um') !== thicknessText(theirBudget, 'um');

const hasSpotFound = ({ scores, lowSpots }: Grade, id: string): boolean =>
  scores.some(({ panel, reference }) => panel.id === id && reference.lowSpot !== null) &&
  !lowSpots.missed.some(({ panel }) => panel.id === id);

function workedOver(
  one: Known,
  { isSpot, grade }: { readonly isSpot: boolean; readonly grade: Pick<Grade, 'scores'> },
  against: string,
): Sentence {
  const { panel, own, theirs, ownBudget, theirBudget } = one;
  const reads = isSpot
    ? `has its low spot found and reads as ${own} all the same`
    : `reads as ${own}`;
  if (!areShownApart(one)) {
    const score = grade.scores.find((each) => each.panel.id === panel.id);
    const means =
      score === undefined
        ? says``
        : says` (mean ${um(score.mean)} and ${um(score.reference.mean)})`;
    return says`${panel.name} ${reads}, ${against} as ${theirs}${means}: ${um(theirBudget)} may go by either as long as that is in doubt, and more once it counts as ${own}`;
  }
  return says`${panel.name} ${reads}, ${against} as ${theirs}: ${um(ownBudget)} may go by your readings, ${um(theirBudget)} by ${against}`;
}
