/**
 * Local work at named deep defects: extra sets with the shop's smallest pad on one spot, never a deeper
 * cut over the panel.
 *
 * The spot is worked first and the panel's own steps pass over it afterwards, so what goes there is both
 * together, and the place must keep every limit with both gone. Nobody read that place: its clear is that
 * of any place of the panel (`allowanceOnPlace`). What is taken is chosen as for a panel (shortfall, rung,
 * removal, time, name), and it must clear so much more than the panel's own steps that a plan for that
 * alone would be worth its film.
 */
import type { Remark } from '../../base/remark.ts';
import { overrunNotes } from '../../film/overrun-note.ts';
import { unreadPlaces } from '../../film/place-note.ts';
import { type Defect, medianDepth } from '../defects.ts';
import { foretell, workableOn } from '../removal/removal-knowledge.ts';
import type { Step } from '../removal/step.ts';
import { rungsBy } from './candidate-search.ts';
import { chooseSteps, inClasses, ranked, within } from './choose-steps.ts';
import { hasFailed } from './decide-part.ts';
import {
  clearCoatFailed,
  heldBack,
  heldToAim,
  isKeptByFilm,
  lessThanOnPanel,
  mildestOfItsKind,
  overCut,
  placeUnread,
  type SpotChoice,
  tightestOf,
  whatComesOfIt,
} from './local-remarks.ts';
import { keepsFilm, keepsTechnique, type Spot, spotRisk, spotWith } from './local-spot.ts';
import { forecast, NO_REMOVAL, plannedStep } from './panel-plan.ts';
import type { LocalWork, PanelPlan } from './plan.ts';
import type { PlanRequest } from './plan-request.ts';

/** For each deep defect of a panel, by the plans of its parts, in the order of the record. */
export const localWork = (
  parts: readonly [PanelPlan, ...PanelPlan[]],
  defects: readonly Defect[],
  request: PlanRequest,
): readonly LocalWork[] =>
  defects
    .filter(({ kind, grade }) => kind.scope === 'local' && grade > 0)
    .map((defect) => {
      if (hasFailed(parts[0].survey, defects)) return left(defect, clearCoatFailed(defect));
      if (parts.some(isSpentByOverrun)) return left(defect, overCut(defect));
      const [unread] = parts.flatMap(({ survey }) => unreadPlaces(survey.facts));
      return unread === undefined
        ? spotFor(defect, parts, request)
        : left(defect, placeUnread(defect, unread));
    });

/** Cut too far at a visit on record, and nothing may go from it: a thicker place of it is not sought either. */
const isSpentByOverrun = ({ survey }: PanelPlan): boolean =>
  survey.budget === 0 && overrunNotes(survey).length > 0;

const left = (defect: Defect, reason: Remark): LocalWork => ({
  defect,
  steps: [],
  removal: NO_REMOVAL,
  cleared: 0,
  risk: null,
  place: null,
  reasons: [reason],
});

/** The ways to work a spot, and which of them is taken; `none` leaves it to the panel's own steps. */
type Chosen = Pick<SpotChoice, 'taken' | 'none' | 'kept'> & {
  readonly spots: readonly Spot[];
  readonly worth: readonly Spot[];
};

/** Which of two zones a defect lies in nobody says: a spot keeps the limits of both. */
function chooseSpot(
  defect: Defect,
  parts: readonly [PanelPlan, ...PanelPlan[]],
  request: PlanRequest,
): Chosen {
  const { correction } = request.model;
  const { localSection: area, choice } = correction;
  const spotOf = (extra: readonly Step[]): Spot =>
    spotWith(extra, medianDepth(defect), parts, request);
  const none = spotOf([]);
  const spots = stepsOnSpot(parts[0], request).map((step) => spotOf([step]));
  const kept = [none, ...spots.filter((spot) => keepsFilm(spot) && keepsTechnique(spot))];
  const worth = kept.filter((spot) => isWorthItsPlace(spot, correction));
  const heldTo = worth.map((spot) => spot.heldTo);
  const found = ranked(inClasses(worth, choice), heldTo, (spot) => spot);
  const all = within(found, () => Infinity);
  const best = chooseSteps(all, { aim: request.aim, area, ...choice })?.best;
  const spot = worth.reduce((found, one) => (one === best ? one : found), none);
  const taken = clearsMuch(spot, none, correction) ? spot : none;
  return { taken, none, kept, spots, worth };
}

/** More than the panel's own steps do by themselves. */
const clearsMuch = (
  spot: Spot,
  none: Spot,
  { leastCorrection }: PlanRequest['model']['correction'],
): boolean => spot.correction - none.correction >= leastCorrection;

function spotFor(
  defect: Defect,
  parts: readonly [PanelPlan, ...PanelPlan[]],
  request: PlanRequest,
): LocalWork {
  const { model, aim, paintOf } = request;
  const { localSection: area, choice, leastCorrection, mostSets } = model.correction;
  const { taken, none, kept, spots, worth } = chooseSpot(defect, parts, request);
  const place = tightestOf(taken);
  const isEnough = taken.correction >= aim - choice.equalShortfall;
  const wasted = kept.filter(
    (one) => clearsMuch(one, none, model.correction) && !worth.includes(one),
  );
  const isHeldByFilm = spots.some(isKeptByFilm);
  const choices = { taken, none, kept, wasted: isEnough ? [] : wasted, isHeldByFilm };
  return {
    defect,
    steps: taken.steps.map((step) => plannedStep(step, area, model)),
    removal: forecast(foretell(taken.steps, paintOf(parts[0].survey), model.removal.stepLogSd)),
    cleared: taken.correction,
    risk: spotRisk(taken),
    place: { removal: place.removal.median, budget: place.allowance.budget },
    reasons: [
      whatComesOfIt(defect, choices, parts),
      ...lessThanOnPanel(taken, none, parts),
      ...mildestOfItsKind(taken, mostSets.cut),
      ...(isEnough ? heldToAim(taken, kept, { aim, leastCorrection }) : heldBack(taken, spots)),
    ],
  };
}

/** Film is never refilled: the more of a place's a spot spends, the more of the mark is to go. */
const isWorthItsPlace = (
  spot: Spot,
  { leastForPlace }: PlanRequest['model']['correction'],
): boolean =>
  spot.steps.length === 0 ||
  spot.places.every(
    ({ removal, allowance }) =>
      spot.correction >= (leastForPlace * removal.median) / allowance.budget,
  );

/**
 * One combination of the smallest pad that lies flat, or by hand, in so many sets. A rotary cannot end a spot: it takes
 * the place of no larger pad of a machine that can, nor of the hand.
 */
function stepsOnSpot({ survey }: PanelPlan, { model, paintOf }: PlanRequest): readonly Step[] {
  const { flatWidth } = survey.panel;
  const rungs = workableOn(paintOf(survey), model);
  const flat = rungsBy('machine', rungs).filter(({ machine }) => machine.padDiameter <= flatWidth);
  const ending = flat.filter(({ machine }) => machine.motion.kind !== 'rotary');
  const smallest = Math.min(
    ...(ending.length === 0 ? flat : ending).map(({ machine }) => machine.padDiameter),
  );
  const usable = [
    ...(ending.length === 0 ? rungsBy('hand', rungs) : []),
    ...flat.filter(({ machine }) => machine.padDiameter <= smallest),
  ];
  const counts = Array.from({ length: model.correction.mostSets.cut }, (_, i) => i + 1);
  return usable.flatMap((combination) => counts.map((sets) => ({ combination, sets })));
}
