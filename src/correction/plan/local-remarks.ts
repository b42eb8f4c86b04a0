/** What is to be said of a spot at a deep defect: what comes of it, what may go there, why no milder and no more. */
import { at } from '../../base/at.ts';
import { type Remark, remark, saying } from '../../base/remark.ts';
import { LEAST_TOLD, shown } from '../../base/rounding.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { PlaceWorked } from '../../film/film-model.ts';
import type { Defect } from '../defects.ts';
import { keepsFilm, keepsTechnique, type Spot, type SpotPlace } from './local-spot.ts';
import type { PanelPlan } from './plan.ts';
import { DEEPER_THAN_CLEAR, throughClear } from './plan-remarks.ts';

const named = ({ kind, grade }: Defect): string => `${kind.name} of grade ${grade}`;

const percent = (share: number): string => `${shown(100 * share, 0)} %`;

/** Why the mark stays as it is: what a spot would clear, or why there can be none. */
function whyLeft({ none, kept, wasted, isHeldByFilm }: SpotChoice): Sentence {
  if (wasted.length > 0) return says`a spot ${clearsForFilm(mostOf(wasted))}`;
  const { budget } = tightestOf(none).allowance;
  if (budget === 0) return says`nothing may go there`;
  const most = Math.max(...kept.map(({ correction }) => correction));
  if (most > 0) {
    return says`${isHeldByFilm ? 'what may go there' : 'a spot by what the shop has'} clears ${percent(most)} of such marks at most`;
  }
  return isHeldByFilm
    ? says`the mildest spot takes more than the ${um(budget, 2)} that may go there`
    : says`the shop has nothing that ends a spot without haze`;
}

const mostOf = (spots: readonly Spot[]): Spot =>
  spots.reduce((one, other) => (other.correction > one.correction ? other : one));

function clearsForFilm(spot: Spot): Sentence {
  const { removal, allowance } = tightestOf(spot);
  return says`would clear ${percent(spot.correction)} of such marks for ${um(removal.median, 2)} of the ${um(allowance.budget, 2)} that may go there: not worth its film`;
}

/** What was taken of what keeps to film and technique; whether some other spot is kept back by the film alone. */
export type SpotChoice = {
  readonly taken: Spot;
  readonly none: Spot;
  readonly kept: readonly Spot[];
  /** Those of them that clear much, and yet too little for what they take of their place; none where the aim is reached. */
  readonly wasted: readonly Spot[];
  readonly isHeldByFilm: boolean;
};

export const clearCoatFailed = (defect: Defect): Remark =>
  remark('local-left', `${named(defect)}: left, the clear coat has failed`);

export const overCut = (defect: Defect): Remark =>
  remark(
    'local-over-cut',
    `${named(defect)}: left, as more came off this panel on record than might, and nothing more may go`,
  );

/** It may be the same mark, or lie beside it: by how much that place is thinner nobody read. */
export const placeUnread = (defect: Defect, { date, point, median, high }: PlaceWorked): Remark =>
  remark(
    'local-place-unread',
    says`${named(defect)}: left, as a spot on this panel${date === null ? '' : ` on ${date}`} was to take ${um(median, 2)} (up to ${um(high)}) more at its place, and nobody has read that since: read it first, as a point called “${point}”`,
    high,
  );

export function whatComesOfIt(
  defect: Defect,
  choice: SpotChoice,
  parts: readonly Pick<PanelPlan, 'survey'>[],
): Remark {
  const { taken, none } = choice;
  const alone = percent(none.correction);
  if (taken.steps.length > 0) {
    const text = `${named(defect)}: a spot clears ${percent(taken.correction)} (the panel’s own steps ${alone})`;
    return remark('local-spot', text);
  }
  const { depth } = defect;
  const deep = parts.map(({ survey }) => throughClear(defect, survey));
  if (depth !== null && deep.every((one) => one !== null)) {
    return remark(DEEPER_THAN_CLEAR, says`${named(defect)}: left, ${at(deep, 0)}`, depth);
  }
  if (none.removal.median === 0) {
    return remark('local-left', says`${named(defect)}: left, as ${whyLeft(choice)}`);
  }
  const own = says`${named(defect)}: no spot, the panel’s own steps clear ${alone} of such marks`;
  return remark(
    'local-left',
    choice.wasted.length === 0 ? own : says`${own}; one ${clearsForFilm(mostOf(choice.wasted))}`,
  );
}

/**
 * A place is as thick as any where the panel is held to its thinnest 5 %, so more may go there as a rule. Less, where the
 * spot takes a step that is known less well than the panel's own, as one that was not tried on this paint; or where so
 * little is risked that it counts how thin a single place may be.
 */
export function lessThanOnPanel(
  { steps, places, heldTo }: Spot,
  none: Spot,
  parts: readonly Pick<PanelPlan, 'survey'>[],
): readonly Remark[] {
  if (steps.length === 0) return [];
  const why =
    none.heldTo > 0 && heldTo > none.heldTo
      ? 'what a spot takes is foretold less well'
      : 'a single place may be thinner than the panel’s thinnest part is taken to be';
  const less = places.flatMap(({ allowance: { budget } }, i) => {
    const ofPanel = at(parts, i).survey.budget;
    return ofPanel - budget < LEAST_TOLD ? [] : [ofPanel];
  });
  return less.length === 0
    ? []
    : [
        remark(
          'local-less',
          says`that is less than the ${um(Math.max(...less), 2)} that may go by the panel’s own steps, as ${why}`,
        ),
      ];
}

/** A harsher pad for no more of the mark is taken where the panel's own steps take less there. */
export const mildestOfItsKind = ({ steps }: Spot, mostSets: number): readonly Remark[] =>
  steps.length === 0
    ? []
    : [
        remark(
          'local-mildest',
          `the mildest combination of the smallest pad that clears as much in up to ${mostSets} sets: the less the panel’s own steps take there, the more is left to the spot`,
        ),
      ];

/** Nothing keeps a spot from clearing more but the aim: said where that is much. */
export function heldToAim(
  taken: Spot,
  kept: readonly Spot[],
  { aim, leastCorrection }: { readonly aim: number; readonly leastCorrection: number },
): readonly Remark[] {
  const most = Math.max(...kept.map(({ correction }) => correction));
  if (most - taken.correction < leastCorrection) return [];
  return [
    remark(
      'local-aim',
      `held to the aim of ${shown(100 * aim, 0)} %: a spot could clear up to ${shown(100 * most, 0)} % of such marks`,
      100 * most,
    ),
  ];
}

/** The place on which a spot may lie that has the least left over. */
export const tightestOf = ({ places }: Spot): SpotPlace =>
  places.reduce((one, other) => (leftAt(other) < leftAt(one) ? other : one));

const leftAt = ({ removal, allowance }: SpotPlace): number => allowance.budget - removal.median;

/** Nothing but the film of its place speaks against it. */
export const isKeptByFilm = (spot: Spot): boolean => keepsTechnique(spot) && !keepsFilm(spot);

/** What keeps a spot from clearing more: the film of its place, else the haze it would leave. */
export function heldBack(taken: Spot, spots: readonly Spot[]): readonly Remark[] {
  const better = spots.filter(({ correction }) => correction > taken.correction);
  if (better.some(isKeptByFilm)) {
    const place = tightestOf(taken);
    const { budget, boundBy } = place.allowance;
    return [remark('local-limit', says`${moreAt(place)}: ${saying(boundBy)}`, budget)];
  }
  return better.some((spot) => !keepsTechnique(spot))
    ? [remark('local-haze', 'stronger sets would leave haze that nothing else clears there')]
    : [];
}

/** A step comes in whole sets: what is left may be less than the next one takes. */
function moreAt(place: SpotPlace): Sentence {
  const left = leftAt(place);
  if (place.allowance.budget === 0) return says`nothing may go there`;
  return left < LEAST_TOLD
    ? says`no more may go there`
    : says`${um(left, 2)} more may go there, and whatever clears more takes more than that`;
}
