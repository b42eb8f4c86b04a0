import type { Diagnostic } from '../../base/diagnostics.ts';
import type { Agreement } from '../../base/stats/limits-of-agreement.ts';
import { sum } from '../../base/sum.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { CarBias } from '../../training/car-bias.ts';
import type { ConditionAgreement } from '../../training/condition-agreement.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { CriterionMark, Mark } from '../../training/mark.ts';
import type { PanelScore } from '../../training/panel-score.ts';
import type { Reason } from '../../training/reasons.ts';
import type { Criterion } from '../../training/training-model.ts';
import { envelope, type RecordContext } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { classRecord, foundRecord, kappaRecord, pct } from './class-record.ts';
import { BIAS_HINT, hintedBias, verdictOf } from './grade-words.ts';

/** `leastcut/grade/1`, the record; of one trainee where a sheet was asked for. */
export const gradeRecord = (graded: GradedClass, context: RecordContext): MachineRecord => ({
  ...ownEnvelope(graded, context),
  reference: {
    kind: graded.reference.kind,
    file: graded.referenceFile,
    assessor: graded.assessor,
    date: graded.date,
  },
  sigma_pt_um: recorded(graded.sigmaPt.value),
  sigma_pt_from: graded.sigmaPt.from,
  rubric: graded.rubric,
  pass_mark_pct: recorded(100 * graded.marking.passMark),
  trainees: askedTrainees(graded).map(traineeRecord),
  class: classRecord(graded),
});

/** A record of one trainee speaks of no file of the others. */
function ownEnvelope(graded: GradedClass, { version, diagnostics }: RecordContext): MachineRecord {
  if (graded.asked === null) return envelope('grade', graded, { version, diagnostics });
  const own = new Set(askedTrainees(graded).map(({ file }) => file));
  const others = new Set(graded.trainees.map(({ file }) => file).filter((file) => !own.has(file)));
  const ownGauges = new Set(
    askedTrainees(graded).flatMap(({ ownGauge }) => ownGauge.map(({ text }) => text)),
  );
  const isOwn = (file: string | undefined): boolean => file === undefined || !others.has(file);
  return envelope(
    'grade',
    {
      ...graded,
      inputs: graded.inputs.filter(({ file }) => isOwn(file)),
      assumptions: graded.assumptions.filter(
        ({ code, text }) => code !== 'own-gauge' || ownGauges.has(text),
      ),
    },
    { version, diagnostics: diagnostics.filter(({ at }) => isOwn(at?.file)) },
  );
}

/** The one whose sheet is asked for, with every attempt; else everybody. */
export const askedTrainees = ({ trainees, asked }: GradedClass): readonly GradedTrainee[] =>
  trainees.filter(({ name }) => asked === null || name === asked);

const traineeRecord = (trainee: GradedTrainee) => ({
  trainee: trainee.name,
  attempt: trainee.attempt,
  attempts: trainee.attempts,
  file: trainee.file,
  date: trainee.date,
  verdict: verdictOf(trainee),
  ...(trainee.grade === null
    ? { ...nothing, reasons: trainee.notRead.filter(isSaid).map(notReadRecord) }
    : gradeKeys(trainee.grade)),
});

/** Why a file cannot be read, as far as it is more than a remark. */
const isSaid = ({ severity }: Diagnostic): boolean => severity !== 'note';

const notReadRecord = ({ code, message, hint, at }: Diagnostic) => ({
  code,
  text: hint === undefined ? message : `${message}: ${hint}`,
  file: at?.file ?? null,
  line: at?.line ?? null,
  panels: [],
});

const gradeKeys = (grade: Grade) => ({
  verdict_because: grade.grounds,
  mark_pct: pct(grade.mark.share),
  void_panels: grade.voided.map(({ panel: { id }, as }) => ({ panel: id, void_as: as })),
  mark_if_sound_pct: pct(grade.markIfSound?.share ?? null),
  criteria: grade.mark.criteria.map((one) => markRecord(one, grade.mark)),
  scores: grade.scores.map(scoreRecord),
  coverage_pct: pct(grade.coverage.share),
  panels_read: grade.coverage.panelsRead,
  points_read: grade.coverage.pointsRead,
  bias: grade.bias === null ? null : biasRecord(grade.bias, hintedBias(grade) !== null),
  agreement: grade.agreement === null ? null : agreementRecord(grade.agreement),
  slipped_panels: grade.slipped.map(({ id }) => id),
  repeatability_um: recordedOrNull(grade.repeatability?.sd),
  repeatability_dof: grade.repeatability?.dof ?? null,
  low_spots: foundRecord(grade.lowSpots),
  repaired_panels: foundRecord(grade.repairs),
  missed: missedOf(grade),
  conditions: grade.conditions === null ? null : conditionsRecord(grade.conditions),
  reasons: grade.reasons.map(reasonRecord),
});

/** A survey that could not be read. */
const nothing = {
  verdict_because: [],
  mark_pct: null,
  void_panels: [],
  mark_if_sound_pct: null,
  criteria: [],
  scores: [],
  coverage_pct: null,
  panels_read: null,
  points_read: null,
  bias: null,
  agreement: null,
  slipped_panels: [],
  repeatability_um: null,
  repeatability_dof: null,
  low_spots: null,
  repaired_panels: null,
  missed: [],
  conditions: null,
  reasons: [],
} satisfies Record<keyof ReturnType<typeof gradeKeys>, unknown>;

const CRITERIA: Readonly<Record<Criterion, string>> = {
  accuracy: 'accuracy',
  coverage: 'coverage',
  lowPoints: 'low_points',
  repairs: 'repairs',
  repeatability: 'repeatability',
};

const markRecord = ({ criterion, weight, share }: CriterionMark, { criteria }: Mark) => ({
  criterion: CRITERIA[criterion],
  weight: recorded(weight),
  counted_pct: share === null ? null : pct(weight / judgedWeight(criteria)),
  reached_pct: pct(share),
});

/** Of what could be judged; a rubric may weigh nothing of it. */
const judgedWeight = (criteria: readonly CriterionMark[]): number =>
  sum(criteria.filter(({ share }) => share !== null).map(({ weight }) => weight)) || 1;

export const scoreRecord = (score: PanelScore) => ({
  panel: score.panel.id,
  n: score.count,
  mean_um: recorded(score.mean),
  reference_um: recorded(score.reference.mean),
  difference_um: recorded(score.difference),
  shared_points: score.shared,
  score: score.kind,
  z: recorded(score.z),
  zeta: recordedOrNull(score.zeta),
  en: recordedOrNull(score.en),
  verdict: score.verdict,
});

const biasRecord = (bias: CarBias, isHinted: boolean) => ({
  mean_um: recorded(bias.mean),
  low_um: recorded(bias.low),
  high_um: recorded(bias.high),
  z: recorded(bias.z),
  verdict: bias.verdict,
  hint: isHinted ? BIAS_HINT : null,
});

const span = ([low, high]: readonly [number, number]) => ({
  low_um: recorded(low),
  high_um: recorded(high),
});

const agreementRecord = (agreement: Agreement) => ({
  n: agreement.count,
  mean_um: recorded(agreement.mean),
  sd_um: recorded(agreement.sd),
  ...span(agreement.limits),
  low_limit: span(agreement.lowerInterval),
  high_limit: span(agreement.upperInterval),
});

const missedOf = ({ coverage, lowSpots, repairs }: Grade) => [
  ...coverage.unread.map(({ id }) => ({ panel: id, what: 'panel' })),
  ...lowSpots.missed.map(({ panel: { id } }) => ({ panel: id, what: 'low-spot' })),
  ...repairs.missed.map(({ panel: { id } }) => ({ panel: id, what: 'repair' })),
];

const conditionsRecord = (conditions: ConditionAgreement) => ({
  ...kappaRecord(conditions),
  otherwise: conditions.otherwise.map(({ panel, own, theirs }) => ({
    panel: panel.id,
    condition: own,
    reference_condition: theirs,
  })),
});

const reasonRecord = ({ code, text, file, line, panels }: Reason) => ({
  code,
  text,
  file,
  line,
  panels,
});
