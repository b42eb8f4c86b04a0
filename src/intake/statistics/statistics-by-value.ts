/**
 * Rows of statistics that no known word gives away: an unknown word, or none, beside values that are
 * the mean, the deviation … of the readings above.
 *
 * They are looked for at the end of a table only, among rows that no known panel and no point names.
 * All of these rows must be some statistic of every column, and one of them be proved one
 * (`row-as-statistic.ts`); proved twice over where the rows lack nothing that the readings have. Where
 * some are proved and others are nothing known, the file is refused: half a summary is no panel.
 */

import { mean as meanOf } from '../../base/stats/summary.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import {
  type JudgedRow,
  type ProvableStatistic,
  rowAsStatistic,
  statedIn,
} from './row-as-statistic.ts';
import { step } from './statistics-check.ts';
import { lacksWhatReadingsHave, trailingRows } from './trailing-rows.ts';

export type RowByValue = {
  readonly column: number;
  readonly statistic: ProvableStatistic;
  readonly why: string;
};

const said: Readonly<Record<ProvableStatistic, string>> = {
  mean: 'the mean',
  deviation: 'the standard deviation',
  median: 'the median',
  least: 'the least',
  most: 'the largest',
  count: 'the count',
  sum: 'the sum',
};

const fewestReadings = 3;
/** A longer table is no sheet with a summary that somebody typed in below it. */
const mostReadings = 5000;
export function statisticsByValue(
  table: Table,
  isNamed: (row: Row) => boolean,
  isPanel: (label: string) => boolean,
  findings: Findings,
): ReadonlyMap<Row, RowByValue> {
  const apart = namelessMeans(table);
  if (apart !== undefined) return new Map([apart]);
  const end = trailingRows(table, isNamed, isPanel);
  let odd: Row | undefined;
  let doubtful: Row | undefined;
  for (let k = 0; k < end.rows.length; k += 1) {
    const rows = end.rows.slice(k);
    const unnamed = rows.filter((row) => !isNamed(row));
    if (unnamed.length === 0) break;
    const above = table.rows.slice(0, -rows.length).filter((row) => !isNamed(row));
    if (above.length < fewestReadings || above.length > mostReadings) continue;
    const judged = unnamed.map((row) => rowAsStatistic(table, row, above));
    const bare = unnamed.every((row) => lacksWhatReadingsHave(table, above, row, end.labelAt));
    const proofs =
      judged.reduce((sum, one) => sum + one.proofs, 0) + (bare ? rows.length - unnamed.length : 0);
    if (proofs === 1 && !bare) doubtful ??= judged.find((one) => one.proofs > 0)?.row;
    if (proofs < (bare ? 1 : 2)) continue;
    const strange = judged.find(({ statistic }) => statistic === undefined);
    if (strange === undefined) return new Map(judged.flatMap((one) => entryOf(one, end.labelAt)));
    odd ??= strange.row;
  }
  if (odd !== undefined) tellOdd(table, odd, end.labelAt, findings);
  else if (doubtful !== undefined) tellDoubtful(table, doubtful, end.labelAt, findings);
  return new Map();
}

function entryOf(
  { row, statistic }: JudgedRow,
  labelAt: number,
): readonly (readonly [Row, RowByValue])[] {
  if (statistic === undefined) return [];
  const label = cellText(row, labelAt);
  const name = label === '' ? 'without a name' : `named "${label}"`;
  const why = `a row ${name} whose values are ${said[statistic]} of the readings above: no readings`;
  return [[row, { column: labelAt, statistic, why }]];
}

function tellOdd(table: Table, row: Row, labelAt: number, findings: Findings): void {
  const label = cellText(row, labelAt);
  findings.add('error', 'statistics-unnamed', () => ({
    message: `"${label}" stands among statistics of the readings, and its values are none of them`,
    at: placeOf(table, row, labelAt),
    hint: 'take the row out if it is no reading; else give it a panel and a point as the others have',
  }));
}

/** One such row may be a panel that nobody here knows. */
function tellDoubtful(table: Table, row: Row, labelAt: number, findings: Findings): void {
  const label = cellText(row, labelAt);
  findings.add('warning', 'statistics-unnamed', () => ({
    message: `"${label}" is read as a reading, and its value is the mean or spread of those above`,
    at: placeOf(table, row, labelAt),
    hint: 'if it is no reading, take it out',
  }));
}

/**
 * A last row apart from the others, without a name, that holds the mean of every column: that all
 * agree to the last digit is no chance.
 */
function namelessMeans({ layout, rows }: Table): readonly [Row, RowByValue] | undefined {
  const [before, row] = rows.slice(-2);
  if (row === undefined || before === undefined || row.line === before.line + 1) return undefined;
  const columns = layout.readings.map(({ column }) => column);
  if (columns.length < 2 || rows.length < 3) return undefined;
  const above = rows.slice(0, -1);
  const means = columns.every((column) => {
    const text = cellText(row, column);
    const stated = statedIn(text);
    const values = above.flatMap((row) => numberShape(cellText(row, column)) ?? []).map(numberOf);
    if (stated === undefined || values.length === 0) return false;
    return Math.abs(stated - meanOf(values)) <= step(text) / 2 + 1e-9;
  });
  if (!means) return undefined;
  const why = 'a last row of the means of the columns: they are no readings';
  return [row, { column: columns[0] ?? 0, statistic: 'mean', why }];
}
