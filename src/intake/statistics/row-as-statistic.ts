/**
 * Which statistic of the readings above a row of values is, and how surely.
 *
 * One number may be a mean by chance, and a least value is always some reading too. A mean or a
 * deviation proves its row where no reading shows it and a hundred other values could have stood for
 * it, all columns together; where a thousand could, and two columns agree, it does so twice over. A
 * count proves it where no film among these readings is half as thin.
 */

import { numberOf, numberShape } from '../cells/numbers.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';
import { answersOf, step } from './statistics-check.ts';

/** In this order: of two that agree the surer one is said. */
const tried = ['mean', 'deviation', 'median', 'least', 'most', 'count', 'sum'] as const;
export type ProvableStatistic = (typeof tried)[number];

export type JudgedRow = {
  readonly row: Row;
  /** Absent where the values are none that is known. */
  readonly statistic?: ProvableStatistic;
  readonly proofs: 0 | 1 | 2;
};

const [leastChoice, sureChoice] = [100, 1000];

type Column = {
  readonly text: string;
  readonly texts: readonly string[];
  readonly values: readonly number[];
};

export function rowAsStatistic(table: Table, row: Row, above: readonly Row[]): JudgedRow {
  const columns = columnsOf(table, row, above);
  const statistic = tried.find((name) =>
    columns.every(({ text, texts }) => {
      const stated = statedIn(text);
      if (stated === undefined) return false;
      const slack = step(text) / 2 + 1e-9;
      return answersOf(name, texts).some(({ value }) => Math.abs(value - stated) <= slack);
    }),
  );
  if (statistic === undefined) return { row, proofs: 0 };
  return { row, statistic, proofs: proofsOf(statistic, columns) };
}

/** The columns that have readings. */
function columnsOf({ layout }: Table, row: Row, above: readonly Row[]): readonly Column[] {
  return layout.readings.flatMap(({ column }) => {
    const texts = above.map((row) => cellText(row, column));
    const values = texts.flatMap((text) => numberShape(text) ?? []).map(numberOf);
    return values.length === 0 ? [] : [{ text: cellText(row, column), texts, values }];
  });
}

function proofsOf(statistic: ProvableStatistic, columns: readonly Column[]): 0 | 1 | 2 {
  const stated = columns.map(({ text }) => statedIn(text) ?? Number.NaN);
  if (statistic === 'count') {
    const thin = columns.every(({ values }, k) => (stated[k] ?? 0) * 2 < Math.min(...values));
    return thin ? 1 : 0;
  }
  const unlike = columns.some(({ values }, k) => !values.includes(stated[k] ?? Number.NaN));
  if (!unlike || (statistic !== 'mean' && statistic !== 'deviation')) return 0;
  const choice = columns.reduce(
    (all, { text, values }) => all * (1 + (Math.max(...values) - Math.min(...values)) / step(text)),
    1,
  );
  if (choice < leastChoice) return 0;
  return columns.length > 1 && choice >= sureChoice ? 2 : 1;
}

/** A number and nothing behind it. */
export function statedIn(text: string): number | undefined {
  const shape = numberShape(text);
  return shape === undefined || shape.suffix !== '' ? undefined : numberOf(shape);
}
