/**
 * What else was looked at for a part of a panel, and why it was not taken: the reasons are those of the
 * search, in its order. Technique first, then the limits of film, then correction, the strongest step,
 * film, time and name.
 */
import { valueAt } from '../../base/at.ts';
import { groupBy } from '../../base/group-by.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { bare, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Combination } from '../removal/combination.ts';
import { ladderOn, strongestTried } from '../removal/removal-knowledge.ts';
import { medianRemoval, type Step, stepsId, strongestRung } from '../removal/step.ts';
import { allowedRemoval } from './allowed-removal.ts';
import { type By, paceOf, rungsBy, techniqueOn, waysToWork } from './candidate-search.ts';
import {
  allRated,
  type ChoiceLimits,
  mostTaken,
  type RatedCandidate,
  removalBinOf,
  takesNoMore,
  wholeMinutes,
} from './choose-steps.ts';
import { bestWays, choiceLimits, generalDepth, hasFailed, waysWithin } from './decide-part.ts';
import { type PanelPlan, type Plan, workedParts } from './plan.ts';
import type { PlanRequest } from './plan-request.ts';
import { inReach, sequences, technique } from './step-search.ts';

/** Against what the plan takes: by its strongest step, then by film; or in whole minutes. */
export type RejectedKind = 'milder' | 'stronger' | 'quicker';

export type Rejected = {
  readonly kind: RejectedKind;
  readonly steps: readonly Step[];
  readonly removal: Micrometres;
  /** Machine time on the part, whole minutes. */
  readonly minutes: number;
  /** Share of the general defects it would clear; null where technique refuses it. */
  readonly expected: number | null;
  readonly reason: Remark;
};

export type PartWhy = {
  readonly plan: PanelPlan;
  /** Median depth of the deepest general defect; 0 where there is none. */
  readonly depth: Micrometres;
  /** Sequences of steps that were looked at. */
  readonly lookedAt: number;
  readonly rejected: readonly Rejected[];
};

/** Rejected sequences that are kept of one kind and one reason: the nearest in removal. */
export const MOST_OF_A_REASON = 3;

/**
 * What a part's plan was chosen from; nothing where no plan was looked for. `car` is the plan of the whole
 * car that it is part of.
 */
export function whyNot(
  part: PanelSurvey,
  plan: PanelPlan,
  car: Pick<Plan, 'panels'>,
  request: PlanRequest,
): PartWhy {
  const defects = request.defectsOf(part.panel.id);
  const depth = micrometres(generalDepth(defects));
  if (hasFailed(part, defects) || depth === 0) return { plan, depth, lookedAt: 0, rejected: [] };
  const find = waysToWork(part, request);
  const within = waysWithin(part, depth, request);
  const best = bestWays(part, within, request);
  const ways: readonly By[] =
    best.hand === undefined && !isLeft(plan) ? ['machine'] : ['machine', 'hand'];
  const looks = ways.flatMap((by) => {
    const known = allRated(find(by, depth, request.hazeAllowed));
    const rated = new Map(known.map((one) => [stepsId(one.steps), one]));
    const allowed = allowedRemoval(part, request.allowanceAt);
    const limits = choiceLimits(part, request);
    const grounds: Grounds = {
      limits,
      allowed,
      boundBy: plan.survey.boundBy.code,
      enough: Math.min(limits.aim, within[by]().mostCleared),
      chosen: isBy(by, plan) ? rated.get(stepsId(plan.steps)) : undefined,
      instead: best[by]?.instead,
      proven: within[by]().proven?.cares,
      elsewhere: combinationsOf(workedParts(car).filter((other) => other !== plan)),
      leastCorrection: request.model.correction.leastCorrection,
    };
    return looksOf(by, part, request)
      .filter(({ id }) => id !== stepsId(plan.steps))
      .map((look) => judged(look, rated, grounds));
  });
  return {
    plan,
    depth,
    lookedAt: looks.length,
    rejected: nearest(looks, plan, part, request.model),
  };
}

const isLeft = ({ steps }: PanelPlan): boolean => steps.length === 0;

const isBy = (by: By, plan: PanelPlan): boolean =>
  !isLeft(plan) && (plan.verdict === 'hand') === (by === 'hand');

type Look = {
  readonly id: string;
  readonly steps: readonly Step[];
  /** Why technique refuses it. */
  readonly refused: ReturnType<typeof technique>;
};

/** Sequences of what lies flat here, and each combination that does not, by itself. */
function looksOf(by: By, part: PanelSurvey, request: PlanRequest): readonly Look[] {
  const { model, paintOf, hazeAllowed } = request;
  const rungs = rungsBy(by, ladderOn(paintOf(part), model));
  const context = techniqueOn(part.panel.flatWidth, hazeAllowed, rungs, model);
  const usable = inReach(rungs, context);
  const out = rungs.filter((one) => !usable.includes(one));
  const all = [
    ...sequences(usable, model.correction.mostSets),
    ...out.map((combination) => [{ combination, sets: 1 }]),
  ];
  const byId = new Map(all.filter(isOfDifferent).map((steps) => [stepsId(steps), steps]));
  const most = strongestTried(paintOf(part), rungs);
  return [...byId].map(([id, steps]) => ({
    id,
    steps,
    refused: technique(steps, context) ?? strongerThanTried(steps, most),
  }));
}

/** On repaint, or what may be repaint, nothing is worked that is stronger than what was tried there. */
const strongerThanTried = (
  steps: readonly Step[],
  most: Combination | undefined,
): Look['refused'] =>
  most === undefined || strongestRung(steps) <= most.rung
    ? undefined
    : {
        constraint: 'stronger-than-tried',
        reason: `stronger than ${most.id}, the strongest that was tried on this panel: try it there first`,
      };

/** Twice the same combination is one step of more sets. */
const isOfDifferent = (steps: readonly Step[]): boolean =>
  new Set(steps.map(({ combination }) => combination.id)).size === steps.length;

/** What the candidates of one way of working are judged by. */
type Grounds = {
  readonly limits: ChoiceLimits;
  readonly allowed: (heldTo: number) => number;
  /** The limit that binds the plan. */
  readonly boundBy: string;
  /** The correction that can be had, up to the aim. */
  readonly enough: number;
  /** What the plan takes, if it is worked this way. */
  readonly chosen: RatedCandidate | undefined;
  /** What the plan would take but for what was tried on this paint. */
  readonly instead: RatedCandidate | undefined;
  /** Strongest steps that were tried, by the order of care. */
  readonly proven: ReadonlySet<number> | undefined;
  /** Combinations that the rest of the car is worked with. */
  readonly elsewhere: ReadonlySet<string>;
  readonly leastCorrection: number;
};

type Judged = Omit<Rejected, 'kind' | 'minutes' | 'removal'>;

function judged(
  { id, steps, refused }: Look,
  rated: ReadonlyMap<string, RatedCandidate>,
  grounds: Grounds,
): Judged {
  if (refused !== undefined) {
    return { steps, expected: null, reason: remark(refused.constraint, refused.reason) };
  }
  const one = valueAt(rated, id);
  return { steps, expected: one.correction, reason: reasonAgainst(one, grounds) };
}

const percent = (share: number): string => `${shown(100 * share, 1)} %`;

/** Two digits after the point may show what differs by less as one and the same figure. */
const LEAST_SHOWN = 0.02;

/** Why a sequence that technique allows was not taken. */
function reasonAgainst(one: RatedCandidate, grounds: Grounds): Remark {
  const { limits, allowed, boundBy, enough, chosen, leastCorrection } = grounds;
  const over = one.removal.median - allowed(one.heldTo);
  if (over > 0) {
    const allowance = um(one.removal.median - over, 2);
    // A line is a line, but figures that are known to a tenth are not told apart by their fourth digit.
    const text =
      over < LEAST_SHOWN
        ? says`takes a hair over the ${allowance} that may go (${boundBy})`
        : says`takes ${um(one.removal.median, 2)}, ${allowance} may go (${boundBy})`;
    return remark('within-budget', text, over);
  }
  if (chosen === undefined) {
    const text = `clears ${percent(one.correction)}: under ${percent(leastCorrection)} is not worth its film`;
    return remark('not-worth-it', text, 100 * one.correction);
  }
  const missing = enough - one.correction;
  if (missing > limits.equalShortfall) {
    const text = `clears ${percent(one.correction)}, ${shown(100 * missing, 1)} points less than the ${percent(enough)} that can be had`;
    return remark('clears-less', text, 100 * missing);
  }
  return reasonAmongEquals(one, chosen, grounds);
}

/** Why one of those that clear as much was not taken. */
function reasonAmongEquals(one: RatedCandidate, chosen: RatedCandidate, grounds: Grounds): Remark {
  const { limits, elsewhere } = grounds;
  const untried = reasonBeforeTried(one, chosen, grounds);
  if (untried !== undefined) return untried;
  if (one.strongest > chosen.strongest) {
    return remark(
      'stronger-step',
      strongestRung(one.steps) > strongestRung(chosen.steps)
        ? 'clears as much, with a harsher strongest step'
        : 'clears as much by a rotary, which is milder by less than its rate is known to, and brings heat',
    );
  }
  if (removalBinOf(one, limits) > removalBinOf(chosen, limits)) {
    const more = one.mean - chosen.mean;
    return remark('more-film', says`clears as much and takes ${um(more, 2)} more`, more);
  }
  const minutes = wholeMinutes(one, limits) - wholeMinutes(chosen, limits);
  if (minutes > 0) {
    return remark('more-time', `as good, and takes ${minutes} min more`, minutes);
  }
  const setUps = ({ steps }: RatedCandidate): number =>
    new Set([...elsewhere, ...combinationsOf([{ steps }])]).size;
  return setUps(one) > setUps(chosen)
    ? remark('more-set-ups', 'as good here, and the car as a whole would need more set-ups')
    : remark('by-name', 'as good in all: of such the first by name is taken');
}

/** Why not one that would stand before what was tried on this paint; undefined where that is not what decides. */
function reasonBeforeTried(
  one: RatedCandidate,
  chosen: RatedCandidate,
  { instead, proven, limits }: Grounds,
): Remark | undefined {
  const isLater =
    one.strongest > chosen.strongest ||
    (one.strongest === chosen.strongest &&
      removalBinOf(one, limits) > removalBinOf(chosen, limits));
  if (instead === undefined || proven === undefined || isLater) return undefined;
  const beside = says`${um(one.removal.median, 2)}, nine cases of ten up to ${um(mostTaken(one), 2)}, against ${bare(chosen.removal.median, 2)} and ${bare(mostTaken(chosen), 2)}`;
  if (!proven.has(one.strongest)) {
    return remark(
      'not-tried-here',
      says`clears as much by a step not tried on this paint: ${beside}`,
    );
  }
  return takesNoMore(one, instead)
    ? undefined
    : remark('may-take-more', says`clears as much and may take more: ${beside}`);
}

const combinationsOf = (parts: readonly { readonly steps: readonly Step[] }[]) =>
  new Set(parts.flatMap(({ steps }) => steps.map(({ combination }) => combination.id)));

/** By kind and reason the few that are nearest in removal; one may be of two kinds. */
function nearest(
  looks: readonly Judged[],
  plan: PanelPlan,
  { panel }: PanelSurvey,
  model: PlanRequest['model'],
): readonly Rejected[] {
  const minutesOf = (steps: readonly Step[]): number =>
    wholeMinutes({ pace: steps.reduce((sum, step) => sum + paceOf(step, model), 0) }, panel);
  const taken = {
    strongest: strongestRung(plan.steps),
    removal: medianRemoval(plan.steps),
    minutes: minutesOf(plan.steps),
  };
  const all = looks.flatMap((look): readonly Rejected[] => {
    const removal = medianRemoval(look.steps);
    const minutes = minutesOf(look.steps);
    const harder = strongestRung(look.steps) - taken.strongest || removal - taken.removal;
    const kinds: readonly RejectedKind[] = [
      harder < 0 ? 'milder' : 'stronger',
      ...(minutes < taken.minutes ? (['quicker'] as const) : []),
    ];
    return kinds.map((kind) => ({ kind, ...look, removal, minutes }));
  });
  const groups = groupBy(all, ({ kind, reason }) => `${kind} ${reason.code}`);
  const distance = ({ removal }: Rejected): number => Math.abs(removal - taken.removal);
  const near = (one: Rejected, other: Rejected): number =>
    distance(one) - distance(other) || (stepsId(one.steps) < stepsId(other.steps) ? -1 : 1);
  return KINDS.flatMap((kind) =>
    [...groups.values()]
      .flatMap((group) => [...group].sort(near).slice(0, MOST_OF_A_REASON))
      .filter((one) => one.kind === kind)
      .sort((one, other) => byTechnique(one) - byTechnique(other) || near(one, other)),
  );
}

/** What technique refuses comes after what the limits and the choice refuse. */
const byTechnique = ({ expected }: Rejected): number => (expected === null ? 1 : 0);

const KINDS: readonly RejectedKind[] = ['milder', 'stronger', 'quicker'];
