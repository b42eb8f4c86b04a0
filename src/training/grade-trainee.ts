/** One survey against the reference: scores, blunders, what was found, the mark and the verdict. */

import { classTable, cohenKappa, type Kappa } from '../base/stats/kappa.ts';
import { type Agreement, limitsOfAgreement } from '../base/stats/limits-of-agreement.ts';
import type { Condition } from '../film/condition/condition.ts';
import type { Panel } from '../film/template/template.ts';
import { type CarBias, carBias } from './car-bias.ts';
import { coverageOf } from './coverage.ts';
import { faultReasons } from './fault-reasons.ts';
import { lowSpotsFound, repairsFound } from './found.ts';
import {
  conditionWord,
  type GradedSurvey,
  ownRepeatability,
  readPanel,
  readPanels,
} from './graded-survey.ts';
import { keyingFactors } from './keying-factors.ts';
import { madeUpValues } from './made-up-values.ts';
import { allowedRepeatability, type Judged, type Mark, markOf } from './mark.ts';
import { overallVerdict, type VerdictGround } from './overall-verdict.ts';
import { type PanelScore, type Scoring, scorePanel } from './panel-score.ts';
import type { Reason } from './reasons.ts';
import type { Reference } from './reference.ts';
import type { ScoreVerdict } from './scores.ts';
import { swappedSides } from './swapped-sides.ts';
import type { Marking, TrainingModel } from './training-model.ts';

export type Grade = Judged & {
  readonly verdict: ScoreVerdict;
  /** What makes the verdict; none of a satisfactory one. */
  readonly grounds: readonly VerdictGround[];
  readonly mark: Mark;
  readonly bias: CarBias | null;
  /**
   * Over the panels that both read, those with a slip left out; null with fewer than three, and where more are left
   * out than stay: limits of the rest would flatter.
   */
  readonly agreement: Agreement | null;
  /** Panels that a slip explains: no limits of agreement count them. */
  readonly slipped: readonly Panel[];
  /** Of the conditions that both surveys give the panels; null where none was read. */
  readonly kappa: Kappa | null;
  readonly conditions: readonly (readonly [trainee: Condition, reference: Condition])[];
  readonly reasons: readonly Reason[];
};

export type GradeRequest = Scoring & {
  readonly marking: Marking;
  readonly model: TrainingModel;
  /** What comparing the surveys of the class with each other showed. */
  readonly fromClass?: readonly Reason[];
};

/** Differences of fewer panels have no limits worth telling. */
const LEAST_FOR_AGREEMENT = 3;

export function gradeTrainee(request: GradeRequest): Grade {
  const { trainee, reference, marking, model, fromClass = [] } = request;
  const scores = readPanels(trainee).flatMap((read): readonly PanelScore[] => {
    const panel = reference.panels.get(read.panel.id);
    return panel === undefined ? [] : [scorePanel(read, panel, request, model.scores)];
  });
  const keyed = keyingFactors(trainee, reference, model.slips);
  const repeated = ownRepeatability(trainee, keyed.points);
  const judged: Judged = {
    scores,
    coverage: coverageOf(trainee, reference),
    lowSpots: lowSpotsFound(trainee, reference),
    repairs: repairsFound(trainee, reference),
    repeatability: repeated === null ? null : allowedRepeatability(repeated, trainee.repeatability),
  };
  const bias = carBias(scores, { ...request, calibration: calibrationOf(request) }, model.scores);
  const blunders = [
    ...keyed.reasons,
    ...swappedSides(request, model),
    ...madeUpValues(trainee, reference, { ...model.slips, keyed: keyed.panels }),
    ...fromClass,
  ];
  const explained = new Set(blunders.filter(isKeyed).flatMap(({ panels }) => panels));
  const agreeing = scores.filter(({ panel }) => !explained.has(panel.id));
  const mark = markOf(judged, marking);
  const conditions = conditionPairs(trainee, reference);
  return {
    ...judged,
    bias,
    mark,
    ...overallVerdict({ judged, bias, blunders, mark }, marking),
    slipped: scores.map(({ panel }) => panel).filter(({ id }) => explained.has(id)),
    agreement:
      agreeing.length < LEAST_FOR_AGREEMENT || 2 * agreeing.length < scores.length
        ? null
        : limitsOfAgreement(agreeing.map(({ difference }) => difference)),
    conditions,
    kappa: conditions.length === 0 ? null : cohenKappa(classTable(conditions)),
    reasons: [
      ...blunders,
      ...faultReasons({
        trainee,
        reference,
        judged,
        bias,
        explained,
        wholeSurvey: blunders.some((one) => isKeyed(one) && one.panels.length === 0),
      }),
    ],
  };
}

/** A slip that explains how far off a panel is. */
const isKeyed = ({ code }: Reason): boolean =>
  code === 'unit-slip' || code === 'decimal-slip' || code === 'sides-swapped';

/** Of both gauges, where they are not one: the largest over the panels. */
function calibrationOf({ trainee, reference, gauges }: Scoring): number {
  if (gauges.same) return 0;
  return readPanels(trainee).reduce((most, { panel, film }) => {
    const theirs = reference.panels.get(panel.id);
    return theirs === undefined
      ? most
      : Math.max(most, Math.hypot(film.calibration, theirs.calibration));
  }, 0);
}

const conditionPairs = (
  trainee: GradedSurvey,
  reference: Reference,
): readonly (readonly [Condition, Condition])[] =>
  [...reference.panels.values()].flatMap(({ panel, condition }) => {
    const read = readPanel(trainee, panel.id);
    return read === undefined ? [] : [[conditionWord(read), condition] as const];
  });
