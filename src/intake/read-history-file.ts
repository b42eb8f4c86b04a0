/**
 * Hours that jobs took: `job,stage,estimated_min,actual_min,date` → rows. A row without a stage is of
 * the whole job. The day is for people: nothing is read from it.
 */

import { found, type Outcome, refused } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import { micrometres } from '../base/units.ts';
import type { GaugeFileText } from './bytes/decode.ts';
import type { DecimalDecision } from './cells/decimal.ts';
import { numberShape } from './cells/numbers.ts';
import { settleNumber } from './cells/settled-number.ts';
import { meansNoReading } from './cells/words.ts';
import type { Vocabulary } from './header/header.ts';
import type { Row } from './rows/tokens.ts';
import { readSmallTable, type SmallTable } from './tables/small-table.ts';

const historyVocabulary = {
  job: 'job number|vehicle|order|car',
  stage: 'work|task|step',
  estimated: 'estimated min|estimate min|estimate|planned min|planned',
  actual: 'actual min|taken min|actual|taken',
  date: 'day|on',
} as const satisfies Vocabulary<string>;
type Role = keyof typeof historyVocabulary;

export type HistoryRow = {
  readonly job: string;
  readonly stage: string | null;
  readonly estimated: number;
  readonly actual: number;
};

/** A month of days and nights: more is no job. */
const MOST_MINUTES = 43_200;

/** `stages` are the ids that a row may name. */
export function readHistoryFile(
  file: GaugeFileText,
  stages: readonly string[],
): Outcome<readonly HistoryRow[]> {
  const { value: table, diagnostics } = readSmallTable<Role>(file, {
    vocabulary: historyVocabulary,
    needed: ['job', 'estimated', 'actual'],
    columns: 'job,stage,estimated_min,actual_min,date',
  });
  if (table === undefined) return refused(...diagnostics);
  const decimal = table.decimalOf(['estimated', 'actual'], 'um', micrometres(MOST_MINUTES));
  const rows = table.rows.flatMap((row) => readRow(table, row, decimal, stages) ?? []);
  const { findings } = table;
  return findings.hasErrors() ? refused(...findings.list()) : found(rows, findings.list());
}

function readRow(
  table: SmallTable<Role>,
  row: Row,
  decimal: DecimalDecision,
  stages: readonly string[],
): HistoryRow | null {
  const job = table.textOf(row, 'job');
  if (job === '') {
    return table.invalid(row, 'job', 'the row names no job', 'name it, or remove the row');
  }
  const stage = readStage(table, row, stages);
  const estimated = readMinutes(table, row, 'estimated', decimal);
  const actual = readMinutes(table, row, 'actual', decimal);
  return stage === undefined || estimated === null || actual === null
    ? null
    : { job, stage, estimated, actual };
}

/** Null is the whole job; undefined one that was refused. */
function readStage(
  table: SmallTable<Role>,
  row: Row,
  stages: readonly string[],
): string | null | undefined {
  const text = table.textOf(row, 'stage');
  if (meansNoReading(text)) return null;
  if (stages.includes(text)) return text;
  const near = suggest(text, stages);
  const hint = near ?? `stages are ${stages.join(', ')}; empty for the whole job`;
  table.invalid(row, 'stage', `"${text}" is not a stage of a job`, hint);
  return undefined;
}

function readMinutes(
  table: SmallTable<Role>,
  row: Row,
  role: 'estimated' | 'actual',
  decimal: DecimalDecision,
): number | null {
  const text = table.textOf(row, role);
  const hint = `minutes, more than 0 and at most ${MOST_MINUTES}`;
  const refuse = (): null => table.invalid(row, role, `"${text}" is not a time in minutes`, hint);
  const shape = numberShape(text);
  if (shape === undefined || !/^(?:min)?$/i.test(shape.suffix.trim())) return refuse();
  const settled = settleNumber(text, shape, () => MOST_MINUTES, decimal);
  if (settled.value === undefined) {
    return table.invalid(row, role, settled.message, settled.hint);
  }
  return settled.value > 0 && settled.value <= MOST_MINUTES ? settled.value : refuse();
}
