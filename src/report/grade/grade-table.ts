/** Grades for a spreadsheet. */
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { codesOf } from '../table-of.ts';
import { pct } from './class-record.ts';
import { askedTrainees, scoreRecord } from './grade-record.ts';
import { verdictOf } from './grade-words.ts';

const COLUMNS = [
  'trainee',
  'attempt',
  'file',
  'date',
  'trainee_verdict',
  'mark_pct',
  'mark_if_sound_pct',
  'verdict_because',
  'bias_mean_um',
  'repeatability_um',
  'reasons',
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
  'void_as',
] as const;

/** A row for each trainee and panel of the reference; one without a panel where a file could not be read. */
export const gradeTable = (graded: GradedClass): DataTable => ({
  columns: COLUMNS,
  rows: askedTrainees(graded).flatMap((trainee) => traineeRows(trainee, graded)),
});

const gradeColumns = ({ mark, markIfSound, grounds, bias, repeatability, reasons }: Grade) => ({
  mark_pct: pct(mark.share),
  mark_if_sound_pct: pct(markIfSound?.share ?? null),
  verdict_because: grounds.join(' '),
  bias_mean_um: recordedOrNull(bias?.mean),
  repeatability_um: recordedOrNull(repeatability?.sd),
  reasons: codesOf(reasons),
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
    ...(grade === null ? { reasons: codesOf(trainee.notRead) } : gradeColumns(grade)),
  };
  const row = (panel: Partial<ReturnType<typeof scoreRecord>> & { void_as?: string | null }) => {
    const all: Partial<Record<(typeof COLUMNS)[number], string | number | null>> = {
      ...own,
      ...panel,
    };
    return COLUMNS.map((column) => all[column] ?? null);
  };
  if (grade === null) return [row({})];
  return [...reference.panels.values()].map(({ panel, mean }) => {
    const score = grade.scores.find((one) => one.panel.id === panel.id);
    const voidAs = grade.voided.find((one) => one.panel.id === panel.id)?.as ?? null;
    return row(
      score === undefined
        ? { panel: panel.id, reference_um: recorded(mean) }
        : { ...scoreRecord(score), void_as: voidAs },
    );
  });
}
