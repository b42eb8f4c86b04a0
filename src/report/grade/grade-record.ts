import type { Kappa } from '../../base/stats/kappa.ts';
import type { Agreement } from '../../base/stats/limits-of-agreement.ts';
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { CarBias } from '../../training/car-bias.ts';
import type { ClassGaugeRr, ClassPanel, FoundByClass } from '../../training/class-view.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { CriterionMark } from '../../training/mark.ts';
import type { PanelScore } from '../../training/panel-score.ts';
import type { Reason } from '../../training/reasons.ts';
import type { Criterion } from '../../training/training-model.ts';
import { envelope, machine, machineOrNull, type RecordContext } from '../envelope.ts';
import type { DataTable, MachineRecord } from '../model.ts';
import { verdictOf } from './grade-words.ts';

/** `leastcut/grade/1`, the record; of one trainee where a sheet was asked for. */
export const gradeRecord = (graded: GradedClass, context: RecordContext): MachineRecord => ({
  ...ownEnvelope(graded, context),
  reference: {
    kind: graded.reference.kind,
    file: graded.referenceFile,
    assessor: graded.assessor,
    date: graded.date,
  },
  sigma_pt_um: machine(graded.sigmaPt.value),
  sigma_pt_from: graded.sigmaPt.from,
  rubric: graded.rubric,
  pass_mark_pct: machine(100 * graded.marking.passMark),
  trainees: askedTrainees(graded).map(traineeRecord),
  class: classRecord(graded),
});

/** A record of one trainee speaks of no file of the others. */
function ownEnvelope(graded: GradedClass, { version, diagnostics }: RecordContext): MachineRecord {
  if (graded.asked === null) return envelope('grade', graded, { version, diagnostics });
  const own = new Set(askedTrainees(graded).map(({ file }) => file));
  const others = new Set(graded.trainees.map(({ file }) => file).filter((file) => !own.has(file)));
  const isOwn = (file: string | undefined): boolean => file === undefined || !others.has(file);
  return envelope(
    'grade',
    {
      ...graded,
      inputs: graded.inputs.filter(({ file }) => isOwn(file)),
      assumptions: graded.assumptions.filter(
        ({ code, text }) =>
          code !== 'own-gauge' || graded.asked === null || text.startsWith(`${graded.asked} `),
      ),
    },
    { version, diagnostics: diagnostics.filter(({ at }) => isOwn(at?.file)) },
  );
}

/** The one whose sheet is asked for, with every attempt; else everybody. */
export const askedTrainees = ({ trainees, asked }: GradedClass): readonly GradedTrainee[] =>
  trainees.filter(({ name }) => asked === null || name === asked);

const pct = (share: number | null): number | null => (share === null ? null : machine(100 * share));

const traineeRecord = (trainee: GradedTrainee) => ({
  trainee: trainee.name,
  attempt: trainee.attempt,
  attempts: trainee.attempts,
  file: trainee.file,
  date: trainee.date,
  verdict: verdictOf(trainee),
  ...(trainee.grade === null ? nothing : gradeKeys(trainee.grade)),
});

const gradeKeys = (grade: Grade) => ({
  verdict_because: grade.grounds,
  mark_pct: pct(grade.mark.share),
  criteria: grade.mark.criteria.map(markRecord),
  scores: grade.scores.map(scoreRecord),
  coverage_pct: pct(grade.coverage.share),
  panels_read: grade.coverage.panelsRead,
  points_read: grade.coverage.pointsRead,
  bias: grade.bias === null ? null : biasRecord(grade.bias),
  agreement: grade.agreement === null ? null : agreementRecord(grade.agreement),
  slipped_panels: grade.slipped.map(({ id }) => id),
  repeatability_um: machineOrNull(grade.repeatability?.sd),
  repeatability_dof: grade.repeatability?.dof ?? null,
  low_spots: foundRecord(grade.lowSpots),
  repaired_panels: foundRecord(grade.repairs),
  missed: missedOf(grade),
  conditions: grade.kappa === null ? null : kappaRecord(grade.kappa, grade.conditions.length),
  reasons: grade.reasons.map(reasonRecord),
});

/** A survey that could not be read. */
const nothing = {
  verdict_because: [],
  mark_pct: null,
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

const markRecord = ({ criterion, weight, share }: CriterionMark) => ({
  criterion: CRITERIA[criterion],
  weight: machine(weight),
  reached_pct: pct(share),
});

const scoreRecord = (score: PanelScore) => ({
  panel: score.panel.id,
  n: score.count,
  mean_um: machine(score.mean),
  reference_um: machine(score.reference.mean),
  difference_um: machine(score.difference),
  shared_points: score.shared,
  score: score.kind,
  z: machine(score.z),
  zeta: machineOrNull(score.zeta),
  en: machineOrNull(score.en),
  verdict: score.verdict,
});

const biasRecord = ({ mean, low, high, z, verdict }: CarBias) => ({
  mean_um: machine(mean),
  low_um: machine(low),
  high_um: machine(high),
  z: machine(z),
  verdict,
});

const span = ([low, high]: readonly [number, number]) => ({
  low_um: machine(low),
  high_um: machine(high),
});

const agreementRecord = (agreement: Agreement) => ({
  n: agreement.count,
  mean_um: machine(agreement.mean),
  sd_um: machine(agreement.sd),
  ...span(agreement.limits),
  low_limit: span(agreement.lowerInterval),
  high_limit: span(agreement.upperInterval),
});

const foundRecord = ({ found, of, interval }: FoundByClass) => ({
  found,
  out_of: of,
  low_pct: pct(interval?.[0] ?? null),
  high_pct: pct(interval?.[1] ?? null),
});

const missedOf = ({ coverage, lowSpots, repairs }: Grade) => [
  ...coverage.unread.map(({ id }) => ({ panel: id, what: 'panel' })),
  ...lowSpots.missed.map(({ panel: { id } }) => ({ panel: id, what: 'low-spot' })),
  ...repairs.missed.map(({ panel: { id } }) => ({ panel: id, what: 'repair' })),
];

const kappaRecord = ({ kappa, observed }: Kappa, panels: number) => ({
  n_panels: panels,
  alike_pct: pct(observed),
  kappa: machineOrNull(kappa),
});

const reasonRecord = ({ code, text, file, line, panels }: Reason) => ({
  code,
  text,
  file,
  line,
  panels,
});

/** The class as a whole; of names only those of a page for everybody. */
const classRecord = ({ view, copied, trainees, asked, leftOut }: GradedClass) => ({
  n_trainees: new Set(trainees.map(({ name }) => name)).size,
  n_graded: new Set(trainees.filter(({ grade }) => grade !== null).map(({ name }) => name)).size,
  panels: view.panels.map(classPanelRecord),
  low_spots: foundRecord(view.lowSpots),
  repaired_panels: foundRecord(view.repairs),
  conditions: view.kappa === null ? null : kappaRecord(view.kappa, view.conditions.of),
  gauge_rr: view.gaugeRr === null ? null : gaugeRrRecord(view.gaugeRr),
  left_out:
    asked === null ? leftOut.map(({ trainee, why }) => ({ trainee, left_out_as: why })) : [],
  copied:
    asked === null
      ? copied.map(({ trainees: [one, other], same, of, apart }) => ({
          trainees: [one, other],
          same,
          out_of: of,
          apart_um: machineOrNull(apart?.sd),
          usual_um: machineOrNull(apart?.usual),
        }))
      : [],
});

const classPanelRecord = ({ reference, count, robust, satisfactory }: ClassPanel) => ({
  panel: reference.panel.id,
  reference_um: machine(reference.mean),
  reference_u_um: machine(reference.uncertainty),
  n_points: reference.count,
  condition: reference.condition,
  low_spot: reference.lowSpot?.point ?? null,
  n_trainees: count,
  robust_mean_um: machineOrNull(robust?.mean),
  robust_sd_um: machineOrNull(robust?.sd),
  satisfactory_pct: pct(satisfactory),
});

const gaugeRrRecord = ({ result, parts, counts }: ClassGaugeRr) => ({
  parts_are: parts === 'panels' ? 'panels' : 'marked-points',
  n_parts: counts.parts,
  n_trainees: counts.trainees,
  n_trials: counts.trials,
  repeatability_um: machine(result.sd.ev),
  reproducibility_um: machine(result.sd.av),
  interaction_um: machine(result.sd.int),
  interaction_prob: machine(result.interactionChance),
  interaction_pooled: result.pooled,
  rr_um: machine(result.sd.grr),
  part_um: machine(result.sd.pv),
  total_um: machine(result.sd.tv),
  study_variation_pct: pct(result.studyVariation),
  ndc: result.ndc,
});

const COLUMNS = [
  'trainee',
  'attempt',
  'file',
  'date',
  'trainee_verdict',
  'mark_pct',
  'panel',
  'n',
  'mean_um',
  'reference_um',
  'difference_um',
  'shared_points',
  'score',
  'z',
  'zeta',
  'en',
  'verdict',
] as const;

/** A row for each trainee and panel of the reference; one without a panel where a file could not be read. */
export const gradeTable = (graded: GradedClass): DataTable => ({
  columns: COLUMNS,
  rows: askedTrainees(graded).flatMap((trainee) => traineeRows(trainee, graded)),
});

function traineeRows(
  trainee: GradedTrainee,
  { reference }: GradedClass,
): readonly (readonly (string | number | null)[])[] {
  const { grade } = trainee;
  const own = {
    trainee: trainee.name,
    attempt: trainee.attempt,
    file: trainee.file,
    date: trainee.date,
    trainee_verdict: verdictOf(trainee),
    mark_pct: grade === null ? null : pct(grade.mark.share),
  };
  const row = (panel: Partial<ReturnType<typeof scoreRecord>>) => {
    const all: Partial<Record<(typeof COLUMNS)[number], string | number | null>> = {
      ...own,
      ...panel,
    };
    return COLUMNS.map((column) => all[column] ?? null);
  };
  if (grade === null) return [row({})];
  return [...reference.panels.values()].map(({ panel, mean }) => {
    const score = grade.scores.find((one) => one.panel.id === panel.id);
    return row(
      score === undefined ? { panel: panel.id, reference_um: machine(mean) } : scoreRecord(score),
    );
  });
}
