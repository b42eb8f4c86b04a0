/**
 * One reading in two units, side by side: `reading (µm);reading (mil)`.
 *
 * The column in µm is taken, else the first. Each row must prove that the other says the same, within
 * what both were rounded to; a row that does not holds two readings, and the file is refused there.
 */

import { joined, maySeparateThousands, numberOf, numberShape } from '../cells/numbers.ts';
import { micrometresPer, type TableUnit, unitSign } from '../cells/unit.ts';
import { meansNoReading } from '../cells/words.ts';
import type { Findings } from '../findings.ts';
import { withoutRole } from '../header/header.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

type UnitColumn = { readonly column: number; readonly unit: TableUnit };

/** Undefined where no column repeats the readings in another unit. */
export function takeOneUnit(
  table: Table,
  findings: Findings,
): { readonly table: Table; readonly evidence: string } | undefined {
  const { layout, rows } = table;
  const [reading, second] = layout.readings;
  const again = layout.repeated.filter((column) => layout.header[column]?.role === 'reading');
  if (reading === undefined || second !== undefined || again.length === 0) return undefined;
  const all = [reading.column, ...again].flatMap((column): readonly UnitColumn[] => {
    const unit = layout.header[column]?.unit;
    return unit === undefined || unit === 'other' ? [] : [{ column, unit }];
  });
  const units = new Set(all.map(({ unit }) => unit));
  if (all.length < again.length + 1 || units.size < all.length) return undefined;
  const taken = all.find(({ unit }) => unit === 'um') ?? all[0];
  if (taken === undefined) return undefined;
  const others = all.filter((own) => own !== taken);
  let agreeing = 0;
  for (const row of rows) {
    for (const other of others) {
      const agrees = saysTheSame(row, taken, other);
      if (agrees === false) tellTwo(table, row, taken, other, findings);
      if (agrees === true) agreeing += 1;
    }
  }
  if (agreeing === 0) return undefined;
  const names = others.map(({ column }) => `"${layout.header[column]?.text ?? ''}"`).join(' and ');
  const evidence = `the readings stand there in ${unitSign[taken.unit]} and again in ${names}, which agrees in every row: ${unitSign[taken.unit]} is read`;
  return { table: withOneReading(table, taken.column, others), evidence };
}

function withOneReading(table: Table, column: number, others: readonly UnitColumn[]): Table {
  const { layout } = table;
  const left = new Set(others.map((other) => other.column));
  const header = layout.header.map((cell, k) => (left.has(k) ? withoutRole(cell) : cell));
  return {
    ...table,
    layout: {
      ...layout,
      header,
      columns: new Map([...layout.columns, ['reading', column]]),
      readings: [{ column, panel: null, number: null }],
      repeated: layout.repeated.filter((own) => !left.has(own) && own !== column),
    },
  };
}

/** Undefined where one of them is empty beside a reading, or neither is a number. */
function saysTheSame(row: Row, taken: UnitColumn, other: UnitColumn): boolean | undefined {
  const [text, again] = [cellText(row, taken.column), cellText(row, other.column)];
  const [own, second] = [lengthsOf(text, taken.unit), lengthsOf(again, other.unit)];
  if (own.length === 0) return second.length === 0 ? undefined : false;
  if (second.length === 0) return meansNoReading(again) ? undefined : false;
  return own.some((one) =>
    second.some((two) => Math.abs(one.um - two.um) <= one.slack + two.slack + 1e-6),
  );
}

type Length = { readonly um: number; readonly slack: number };

function lengthsOf(text: string, unit: TableUnit): readonly Length[] {
  const shape = numberShape(text);
  if (shape === undefined) return [];
  const per = micrometresPer[unit];
  const written = { um: numberOf(shape) * per, slack: (per * 10 ** -shape.fraction.length) / 2 };
  return maySeparateThousands(shape)
    ? [written, { um: joined(shape) * per, slack: per / 2 }]
    : [written];
}

function tellTwo(
  table: Table,
  row: Row,
  taken: UnitColumn,
  other: UnitColumn,
  findings: Findings,
): void {
  const shown = ({ column, unit }: UnitColumn): string =>
    `"${cellText(row, column)}" ${unitSign[unit]}`;
  findings.add('error', 'unit-conflict', () => ({
    message: `${shown(taken)} and ${shown(other)} in one row are not one reading`,
    at: placeOf(table, row, other.column),
    hint: 'delete the column that is not meant, or mend the cell',
  }));
}
