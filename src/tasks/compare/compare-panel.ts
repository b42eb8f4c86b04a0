/** A compared panel or zone → what is left on it, what one more set would do, and the word on it. */
import { type Remark, remark } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { effectiveDegreesOfFreedom } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { type GoOnVerdict, goOn, riskOfOneMore } from '../../correction/go-on.ts';
import {
  type AgainstPlan,
  againstPlan,
  heldRemoval,
  type MeasuredRemoval,
} from '../../correction/removal/measured-removal.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PanelComparison } from '../../film/compare/compare-surveys.ts';
import { keyingQuestion } from '../../film/condition/keying-slips.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { type AllowanceGrounds, allowanceAgain } from '../../film/limits/allowance-at.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import { factsAfter } from './compare-left.ts';
import { allowsLess, lessReasons, moreReason } from './compare-left-reasons.ts';
import { type Allowed, overruns } from './compare-overrun.ts';
import { type MeasuredPart, mainStep, measuredOf, type SeenRates } from './compare-plan.ts';

export type OneMoreSet = {
  readonly combination: string;
  readonly removal: ExpectedRemoval;
  /** The step of the plan, or the mildest that the shop has. */
  readonly from: 'plan' | 'mildest';
};

/** A panel, or a zone of it, as it stands after what came off. */
export type PartLeft = {
  readonly comparison: PanelComparison;
  readonly planned: ForetoldPanel | null;
  /** The plan with the sets that were worked of it: all of them, where nothing else is said. */
  readonly foretold: ForetoldPanel | null;
  /** Null without a plan of it. */
  readonly against: AgainstPlan | null;
  /** What might go before the work. */
  readonly allowed: Allowed | null;
  /** More came off than might go, or a limit is passed; nothing where all was kept. */
  readonly overruns: readonly Remark[];
  /** What is held of the removal: as foretold, by what was measured. */
  readonly held: RecordedRemoval | null;
  /**
   * Limits and budget once that is gone: what a survey of the later readings says with this visit on record, or
   * what is known besides, if that allows less. Null where nothing was compared.
   */
  readonly left: Allowance | null;
  readonly oneMore: OneMoreSet | null;
  /** Chance of clear under its floor after one more set. */
  readonly riskOneMore: number | null;
  readonly verdict: GoOnVerdict;
  readonly reasons: readonly Remark[];
};

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
  readonly surveys: Surveys;
  readonly seen: SeenRates;
  readonly mildest: OneMoreSet | null;
  readonly grounds: AllowanceGrounds;
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
    overruns: [],
    held: null,
    left: null,
    oneMore,
    riskOneMore: null,
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
  // Its topcoat is known by all that was read and stated, whoever asks.
  const left: Allowance = isLess ? known : { ...allowanceOf(asked), topcoat: known.topcoat };
  const against = foretold === null || comparison.gained ? null : judge(foretold, measured, change);
  const vaguer = terms !== grounds.terms;
  const allowed = allowedBefore(part);
  const over = comparison.gained ? [] : overruns({ change, allowed, left, grounds });
  return {
    comparison,
    planned,
    foretold,
    against,
    allowed,
    overruns: over,
    held,
    left,
    oneMore,
    riskOneMore: riskOfOneMore(left, oneMore.removal),
    verdict: goOn({
      left: {
        held: left,
        atLeast: leftAfter(exactly(change.low)),
        atMost: leftAfter(exactly(change.high)),
      },
      set: oneMore.removal,
      known: change.resolved || (part.measured !== undefined && against === 'as-foretold'),
      gained: comparison.gained,
      overrun: over.length > 0,
    }),
    reasons: [
      ...over,
      ...reasonsFor(comparison, left, oneMore),
      ...(isLess ? lessReasons({ asked, standing, known, held, comparison, vaguer }) : []),
      ...moreReason(part.surveys.before, left),
    ],
  };
}

/** By the plan that was worked to, else by the survey of the readings before the work. */
function allowedBefore({ planned, surveys: { before } }: PartCase): Allowed | null {
  const { allowed = null } = planned ?? {};
  if (allowed !== null) return { most: allowed, by: 'plan' };
  return before === undefined ? null : { most: before.budget, by: 'survey' };
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

function nextSet({ planned, seen, mildest }: PartCase): OneMoreSet | null {
  const step = planned === undefined ? undefined : mainStep(planned);
  return step === undefined
    ? mildest
    : { combination: step.combination, removal: seen.oneMoreSet(step), from: 'plan' };
}

function reasonsFor(
  { change, gained, by, slips }: PanelComparison,
  left: Allowance | null,
  oneMore: OneMoreSet | null,
): readonly Remark[] {
  if (change === null) {
    return slips.length > 0
      ? slips.map(keyingQuestion)
      : [remark('not-compared', 'no points to compare by')];
  }
  return [
    ...(gained
      ? [
          remark(
            'film-gained',
            says`reads ${um(-change.removed.value)} more than before: the gauge moved, wax or coating lies on it, or other places were read`,
            -change.removed.value,
          ),
        ]
      : []),
    ...(!gained && !change.resolved
      ? [
          remark(
            'change-not-resolved',
            says`a change under ${um(change.detectable.surely)} may go unseen here: ${by === 'pairs' ? 'more marked points would show it' : 'points marked before the work would show it'}`,
            change.detectable.surely,
          ),
        ]
      : []),
    ...(left === null || oneMore === null
      ? []
      : [
          remark(
            'one-more-set',
            says`one more set of ${oneMore.combination} takes ${um(oneMore.removal.median, 2)} in the middle, ${um(left.budget, 2)} may go`,
            left.budget,
          ),
          left.boundBy,
        ]),
  ];
}

/** Degrees of freedom of a change, as machines want them; null where nothing limits them. */
export const changeDof = ({ removed }: FilmChange): number | null => {
  const dof = effectiveDegreesOfFreedom(removed);
  return Number.isFinite(dof) ? dof : null;
};
