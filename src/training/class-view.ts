/** What the surveys of a class say together: how it scatters, which panels are hard, who agrees. */
import { groupBy } from '../base/group-by.ts';
import type { RobustSummary } from '../base/stats/algorithm-a.ts';
import { exactInterval } from '../base/stats/proportion-interval.ts';
import { robustSummary } from '../base/stats/robust-summary.ts';
import { mean, median } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import { micrometres } from '../base/units.ts';
import { type ClassGaugeRr, gaugeRrOfClass } from './class-gauge-rr.ts';
import {
  type ConditionAgreement,
  conditionAgreement,
  conditionPairs,
} from './condition-agreement.ts';
import type { Found } from './found.ts';
import type { Grade } from './grade-trainee.ts';
import { type GradedSurvey, readPanels } from './graded-survey.ts';
import type { SigmaPt } from './panel-score.ts';
import { isCopied, isMadeUp, isSlip, type Reason } from './reasons.ts';
import type { Reference, ReferencePanel } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export type ClassPanel = {
  readonly reference: ReferencePanel;
  /** Surveys that read it, those with slips, made-up values or another’s values left out. */
  readonly count: number;
  /** Of their means; null for fewer than two. */
  readonly robust: RobustSummary | null;
  /** Share of them that are satisfactory on it; null where nobody read it. */
  readonly satisfactory: number | null;
  /** The share that is usual of those who read it, over the panels that they read: who is off everywhere makes no panel hard. */
  readonly usual: number | null;
};

/** Of all low spots, or repaired panels, that all surveys were to find. */
export type FoundByClass = {
  readonly found: number;
  readonly of: number;
  /** Exact (Clopper & Pearson), 95 %; null where there is nothing to find. */
  readonly interval: readonly [low: number, high: number] | null;
};

export type ClassView = {
  readonly panels: readonly ClassPanel[];
  readonly lowSpots: FoundByClass;
  readonly repairs: FoundByClass;
  readonly gaugeRr: ClassGaugeRr | null;
  /** Surveys that the figures of panels and of the gauge leave out, or of the gauge alone. */
  readonly leftOut: readonly LeftOut[];
  /** Of the condition words of all surveys against the reference, slips and all, copies of one file once. */
  readonly conditions: ConditionAgreement | null;
};

/**
 * A slip says how somebody writes, not how hard a panel is; values that were made up, or are another’s, say nothing of
 * who wrote them; a gauge that drifts makes panels hard by when they were read; half a car leaves too few panels that everybody read; repeats that are all alike say nothing of the
 * gauge; who read few of the marks twice would leave few for all.
 */
export type LeftOut = {
  readonly survey: GradedSurvey;
  readonly why: Unsound | 'half-unread' | 'repeats-alike' | 'few-marks';
};

type Unsound = 'slip' | 'made-up' | 'copied' | 'gauge-drift' | 'not-following';

type Graded = {
  readonly survey: GradedSurvey;
  readonly grade: Grade;
  /** Its readings are those of a survey before it: what was found is counted once. */
  readonly again?: boolean;
};

/**
 * The standard deviation that scores are measured by, from the class: the mean of s* over the panels that enough
 * surveys read. (Of few surveys s* scatters much: the root of its mean square would be a quarter too large at three.)
 * Undefined where no panel is.
 */
export function sigmaOfClass(
  surveys: readonly GradedSurvey[],
  reference: Reference,
  { leastSurveys }: TrainingModel['class'],
): SigmaPt | undefined {
  const deviations = [...reference.panels.keys()].flatMap((id) => {
    const means = meansOf(surveys, id);
    return means.length < Math.max(2, leastSurveys) ? [] : [robustSummary(means).sd];
  });
  const sd = deviations.length === 0 ? 0 : mean(deviations);
  return sd === 0 ? undefined : { value: micrometres(sd), from: 'class' };
}

const meansOf = (surveys: readonly GradedSurvey[], id: string): readonly number[] =>
  surveys
    .flatMap(readPanels)
    .filter(({ panel }) => panel.id === id)
    .map(({ statistics }) => statistics.mean);

export function classView(
  graded: readonly Graded[],
  reference: Reference,
  { readShare }: TrainingModel['verdict'],
): ClassView {
  const sound = graded.filter(({ grade }) => whyUnsound(grade) === null);
  const full = sound.filter(({ grade }) => isFull(grade, readShare) && !hasAlikeRepeats(grade));
  const once = graded.filter(({ again }) => again !== true);
  const gaugeRr = gaugeRrOfClass(
    full.map(({ survey }) => survey),
    reference,
  );
  return {
    panels: [...reference.panels.values()].map((panel) => classPanel(panel, sound)),
    lowSpots: foundByClass(once.map(({ grade }) => grade.lowSpots)),
    repairs: foundByClass(once.map(({ grade }) => grade.repairs)),
    gaugeRr,
    leftOut: graded.flatMap((one): readonly LeftOut[] => {
      const { survey, grade } = one;
      if (!full.includes(one)) return [{ survey, why: whyLeftOut(grade, readShare) }];
      return gaugeRr?.without.includes(survey) ? [{ survey, why: 'few-marks' }] : [];
    }),
    conditions: conditionAgreement(once.flatMap(({ survey }) => conditionPairs(survey, reference))),
  };
}

const UNSOUND: readonly (readonly [Unsound, (one: Reason) => boolean])[] = [
  ['slip', isSlip],
  ['made-up', isMadeUp],
  ['copied', isCopied],
  ['gauge-drift', ({ code }) => code === 'gauge-drift'],
  ['not-following', ({ code }) => code === 'not-following'],
];

const whyUnsound = ({ reasons }: Grade): Unsound | null =>
  UNSOUND.find(([, is]) => reasons.some(is))?.[0] ?? null;

const hasAlikeRepeats = ({ reasons }: Grade): boolean =>
  reasons.some(({ code }) => code === 'repeats-alike');

function whyLeftOut(grade: Grade, readShare: number): LeftOut['why'] {
  return whyUnsound(grade) ?? (isFull(grade, readShare) ? 'repeats-alike' : 'half-unread');
}

/** As in the verdict, one point of a panel is not half of it. */
const isFull = ({ coverage: { panels, panelsWithSpread } }: Grade, readShare: number): boolean =>
  panelsWithSpread >= readShare * panels;

function foundByClass(all: readonly Found[]): FoundByClass {
  const [found, of] = [sum(all.map((one) => one.found)), sum(all.map((one) => one.of))];
  return { found, of, interval: of === 0 ? null : exactInterval(found, of) };
}

function classPanel(reference: ReferencePanel, graded: readonly Graded[]): ClassPanel {
  const { id } = reference.panel;
  const means = meansOf(
    graded.map(({ survey }) => survey),
    id,
  );
  const readers = graded.filter(({ grade }) => grade.scores.some(({ panel }) => panel.id === id));
  const shares = [...satisfactoryBy(readers)];
  return {
    reference,
    count: means.length,
    robust: means.length < 2 ? null : robustSummary(means),
    satisfactory: shares.find(([panel]) => panel === id)?.[1] ?? null,
    usual: shares.length === 0 ? null : median(shares.map(([, share]) => share)),
  };
}

/** By the id of the panel, the share of those who read it that are satisfactory on it. */
function satisfactoryBy(graded: readonly Graded[]): ReadonlyMap<string, number> {
  const scores = groupBy(
    graded.flatMap(({ grade }) => grade.scores),
    ({ panel }) => panel.id,
  );
  return new Map(
    [...scores].map(([id, some]) => [
      id,
      some.filter(({ verdict }) => verdict === 'satisfactory').length / some.length,
    ]),
  );
}
