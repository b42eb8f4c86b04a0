/** Grades for a spreadsheet. */
import type { GradedClass, GradedTrainee } from '../../tasks/grade/grade-request.ts';
import type { DataTable } from '../model.ts';
import { recorded } from '../recorded.ts';
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
      score === undefined ? { panel: panel.id, reference_um: recorded(mean) } : scoreRecord(score),
    );
  });
}
