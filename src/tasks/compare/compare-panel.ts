/** A compared panel or zone → what is left on it, what one more set would do, and the word on it. */

import { effectiveDegreesOfFreedom } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { type GoOnCase, type GoOnVerdict, goOn, riskOfOneMore } from '../../correction/go-on.ts';
import {
  type AgainstPlan,
  againstPlan,
  heldRemoval,
  type MeasuredRemoval,
} from '../../correction/removal/measured-removal.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import { paintGained } from '../../film/compare/paint-gain.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { type AllowanceGrounds, allowanceAgain } from '../../film/limits/allowance-at.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import { factsAfter, isStatedClear } from './compare-left.ts';
import { allowsLess, lessReasons, moreReasons, moreThanBefore } from './compare-left-reasons.ts';
import type { MarksOnly } from './compare-marks.ts';
import { byMarksAlone, isUntold, lessGone, unsaidByMarks } from './compare-marks-left.ts';
import { type Allowed, isOver, isOverUnknown, isPerhapsOver, overruns } from './compare-overrun.ts';
import { reasonsFor, riseReasons } from './compare-part-reasons.ts';
import { keepingPlaces, overAtPlaces } from './compare-places.ts';
import type { PlaceRead } from './compare-places-read.ts';
import { type MeasuredPart, mainStep, measuredOf, type SeenRates } from './compare-plan.ts';
import type { OneMoreSet, PartLeft, Rise } from './part-left.ts';

/** A part of the vehicle in its surveys. */
export type Surveys = {
  readonly before: PanelSurvey | undefined;
  /** What stands there now, by all that was read at both times, with what came off at marked points on record. */
  readonly standing: PanelSurvey | undefined;
  /** As whoever asks after this visit is told: by the later readings, with what came off on record. */
  readonly asked: PanelSurvey | undefined;
};

export type PartCase = {
  readonly comparison: PanelComparison;
  readonly planned: ForetoldPanel | undefined;
  readonly foretold: ForetoldPanel | undefined;
  readonly measured: MeasuredPart | undefined;
  readonly rise: Rise | null;
  /** Which zone they lie in nobody says, so each holds them all. */
  readonly places: readonly PlaceRead[];
  readonly surveys: Surveys;
  readonly seen: SeenRates;
  readonly mildest: OneMoreSet | null;
  readonly grounds: AllowanceGrounds;
  /** Whether the plan was made of these readings: another bears out nothing here, frees nothing, and is no forecast. */
  readonly isOwnPlan: boolean;
  readonly marks: MarksOnly;
};

export function partLeft(part: PartCase): PartLeft {
  const { change } = part.comparison;
  const { before, standing, asked } = part.surveys;
  const oneMore = nextSet(part);
  return change === null || standing === undefined || asked === undefined || oneMore === null
    ? notTold(part, oneMore)
    : told(part, { change, standing: asBefore(standing, before), asked, oneMore });
}

/** What is held to have come off takes the place of what was measured: its record goes back to before the work. */
const asBefore = (standing: PanelSurvey, before: PanelSurvey | undefined): PanelSurvey => ({
  ...standing,
  facts: { ...standing.facts, recorded: before?.facts.recorded ?? null },
});

/** Nothing was compared, or no step is known that one more set could be of. */
function notTold(part: PartCase, oneMore: OneMoreSet | null): PartLeft {
  const { comparison, planned = null, foretold = null } = part;
  return {
    comparison,
    planned,
    foretold,
    against: null,
    allowed: allowedBefore(part),
    rise: part.rise,
    places: part.places,
    overruns: [],
    held: null,
    left: null,
    oneMore,
    riskOneMore: null,
    isRiskUnknown: true,
    verdict: 'unresolved',
    reasons: reasonsFor(comparison, null, oneMore),
  };
}

type Compared = {
  readonly change: FilmChange;
  readonly standing: PanelSurvey;
  readonly asked: PanelSurvey;
  readonly oneMore: OneMoreSet;
};

function told(part: PartCase, { change, standing, asked, oneMore }: Compared): PartLeft {
  const { comparison, planned = null, foretold = null, grounds } = part;
  const measured = measuredOf(change);
  const held = heldOf(part, measured);
  const terms = leastSure(grounds.terms, oneMore.removal);
  const leftAfter = (removed: RecordedRemoval): Allowance =>
    allowanceAgain(
      { ...standing, facts: factsAfter(standing.facts, removed) },
      { ...grounds, terms },
    );
  const known = leftAfter(held);
  const isLess = allowsLess(known, asked);
  const surveyed: Allowance = isLess
    ? known
    : { ...allowanceOf(asked), topcoat: topcoatLeft(part, known, asked) };
  const against =
    foretold === null || comparison.gained || !part.isOwnPlan
      ? null
      : judge(foretold, measured, change);
  const vaguer = terms !== grounds.terms;
  const allowed = allowedBefore(part);
  const isPaired = comparison.by === 'pairs';
  const over = comparison.gained
    ? []
    : [
        ...overruns({
          ...{ change, isPaired, allowed, grounds },
          ...{ left: surveyed, before: part.surveys.before },
        }),
        ...overAtPlaces(part.places, change, allowed),
      ];
  const byMarks = leftByMarks(part, allowed, { asked, leftAfter });
  const gone = micrometres(Math.max(held.mean, change.removed.value));
  const isOfMarks = byMarks === null && isOfFewMarks(part);
  const onPanel =
    byMarks?.(exactly(gone), held) ?? (isOfMarks ? unsaidByMarks(surveyed) : surveyed);
  const more =
    byMarks === null ? moreThanBefore(part.surveys.before, onPanel, oneMore.removal) : 'no';
  // Of too few points a survey says that nothing may go, as it knows nothing: that is no reason to stop.
  const isUnsaid =
    (isOfMarks && isUntold(onPanel)) ||
    (byMarks === null && hasFew('after', part) && onPanel.boundBy.code === 'readings');
  const left = keepingPlaces(onPanel, part.places, gone);
  const isDoubted =
    part.rise !== null ||
    isPerhapsOver(over) ||
    isOverUnknown(comparison, allowed, over) ||
    left.budget < Math.min(onPanel.budget, oneMore.removal.median) ||
    more === 'in-doubt';
  return {
    comparison,
    planned,
    foretold,
    against,
    allowed,
    rise: part.rise,
    places: part.places,
    overruns: over,
    held,
    left,
    oneMore,
    riskOneMore: riskOfOneMore(left, oneMore.removal),
    isRiskUnknown: asked.topcoat === null || part.surveys.before?.topcoat === null,
    verdict: firstSettled(
      part,
      { isDoubted, isUnsaid },
      {
        left: {
          held: onPanel,
          atLeast: (byMarks ?? leftAfter)(exactly(change.low)),
          atMost: (byMarks ?? leftAfter)(exactly(change.high)),
        },
        set: oneMore.removal,
        known: change.resolved || (isBorneOut(part) && against === 'as-foretold'),
        gained: comparison.gained,
        overrun: isOver(over),
      },
    ),
    reasons: [
      ...over,
      ...riseReasons(part.rise),
      ...reasonsFor(comparison, left, oneMore),
      ...(isLess && byMarks === null
        ? lessReasons({ asked, standing, known, held, comparison, vaguer })
        : []),
      ...moreReasons(part.surveys.before, onPanel, more),
    ],
  };
}

/** Fewer points than machine work takes are no survey of a panel, whatever was read of the others. */
const hasFew = (at: 'before' | 'after', { comparison, grounds }: PartCase): boolean =>
  comparison.counts[at] < grounds.model.reading.leastPoints;

/** Without a plan that they were read for, marks say neither go on nor stop. */
const isOfFewMarks = (part: PartCase): boolean =>
  part.comparison.by === 'pairs' &&
  hasFew('after', part) &&
  (part.marks.before || hasFew('before', part));

/** By what was held of it, what is left where only marks were read at a visit; null where both were surveys. */
function leftByMarks(
  part: PartCase,
  allowed: Allowed | null,
  {
    asked,
    leftAfter,
  }: { readonly asked: PanelSurvey; readonly leftAfter: (removed: RecordedRemoval) => Allowance },
): ((gone: RecordedRemoval, held?: RecordedRemoval) => Allowance) | null {
  if (part.comparison.by !== 'pairs' || allowed === null) return null;
  if (part.marks.before) {
    return part.isOwnPlan && allowed.by === 'plan'
      ? ({ mean }) => lessGone(byMarksAlone(asked), allowed, mean)
      : null;
  }
  return part.marks.after && !hasFew('before', part)
    ? (gone, held = gone) => lessGone(leftAfter(held), allowed, gone.mean)
    : null;
}

/**
 * By all that was read and stated, whoever asks. By means it stands without what came off on record, so that a loss
 * makes the panel look cut back by itself: the later readings with it on record say more, but where a clear is stated.
 */
const topcoatLeft = ({ comparison }: PartCase, known: Allowance, asked: PanelSurvey) =>
  comparison.by === 'means' && !isStatedClear(asked.facts) ? asked.topcoat : known.topcoat;

/** What is not known yet: whether all is well, and whether anything may go at all. */
type Open = { readonly isDoubted: boolean; readonly isUnsaid: boolean };

/** A panel in doubt is not gone on with, nor one that was painted: what forbids that stands. */
function firstSettled(part: PartCase, { isDoubted, isUnsaid }: Open, one: GoOnCase): GoOnVerdict {
  if (paintGained(part) !== null) return 'stop';
  const verdict = goOn(one);
  const isOpen = verdict === 'go-on' ? isDoubted : isUnsaid && !one.overrun;
  return isOpen ? 'unresolved' : verdict;
}

/** Whether a forecast of this very work is there to be borne out. */
const isBorneOut = ({ measured, isOwnPlan }: PartCase): boolean =>
  measured !== undefined && isOwnPlan;

/**
 * By the plan that was worked to, else by the survey of the readings before the work; by the lesser of them where the
 * plan is not of these readings.
 */
function allowedBefore({ planned, surveys: { before }, isOwnPlan }: PartCase): Allowed | null {
  const bySurvey = before === undefined ? null : ({ most: before.budget, by: 'survey' } as const);
  const { allowed = null } = planned ?? {};
  if (allowed === null) return bySurvey;
  return bySurvey !== null && !isOwnPlan && bySurvey.most < allowed
    ? bySurvey
    : { most: allowed, by: 'plan' };
}

const allowanceOf = ({ topcoat, limits, budget, boundBy }: PanelSurvey): Allowance => ({
  topcoat,
  limits,
  budget,
  boundBy,
});

/** A step that is known less well than is usual leaves room for that; one known better gains nothing here. */
const leastSure = (terms: RemovalTerms, { logSd }: ExpectedRemoval): RemovalTerms =>
  logSd > terms.logSd ? { ...terms, logSd } : terms;

const exactly = (removed: Micrometres): RecordedRemoval => ({
  mean: micrometres(Math.max(0, removed)),
  sd: micrometres(0),
});

/** A panel that was left alone was to lose nothing. */
const judge = (
  { removal }: ForetoldPanel,
  measured: MeasuredRemoval,
  { resolved }: FilmChange,
): AgainstPlan => {
  if (removal !== null) return againstPlan(removal, measured);
  return resolved ? 'more' : 'as-foretold';
};

/** By the plan and what the other panels showed of its rates; film that came on measures no removal. */
function heldOf({ comparison, measured, seen, foretold }: PartCase, value: MeasuredRemoval) {
  if (comparison.gained) {
    const { removal } = foretold ?? { removal: null };
    return removal === null ? exactly(micrometres(0)) : asForetold(removal);
  }
  return heldRemoval(measured === undefined ? null : seen.byTheOthers(measured), value);
}

/** Mean and SD of a lognormal. */
function asForetold({ median, logSd }: ExpectedRemoval): RecordedRemoval {
  const mean = median * Math.exp(logSd ** 2 / 2);
  return {
    mean: micrometres(mean),
    sd: micrometres(mean * Math.sqrt(Math.exp(logSd ** 2) - 1)),
  };
}

function nextSet({ planned, measured, seen, mildest }: PartCase): OneMoreSet | null {
  const step = planned === undefined ? undefined : mainStep(planned);
  return step === undefined
    ? mildest
    : { combination: step.combination, removal: seen.oneMoreSet(step, measured), from: 'plan' };
}

/** Degrees of freedom of a change, as machines want them; null where nothing limits them. */
export const changeDof = ({ removed }: FilmChange): number | null => {
  const dof = effectiveDegreesOfFreedom(removed);
  return Number.isFinite(dof) ? dof : null;
};
