/**
 * A file that was cut off in its last reading: no line end stands behind it, it is the last cell of its row, and it is
 * unlike all the others in what a cut does to a number. It has fewer decimals than every other reading, which all
 * have as many; or it is less than a third of the least of them; or its row ends before the columns that all
 * other rows fill. Such a number may be any that begins so: it is left out, and told.
 */

import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { type ExcludedCell, ofNoPanel, placeOf, type Table } from '../tables/table.ts';

/** So many other readings are enough to know how the file writes them. */
const fewest = 3;
/** No film beside others is so much thinner by chance. */
const farBelow = 3;

export type Cut = { readonly tables: readonly Table[]; readonly excluded: readonly ExcludedCell[] };

/** The tables without a reading that the end of the file cut off. */
export function withoutCutReading(tables: readonly Table[], findings: Findings): Cut {
  const table = tables.at(-1);
  const row = table?.rows.at(-1);
  const column = (row?.cells.length ?? 0) - 1;
  const why = table === undefined || row === undefined ? undefined : whyCut(table, row, column);
  if (table === undefined || row === undefined || why === undefined) {
    return { tables, excluded: [] };
  }
  const text = cellText(row, column);
  const reason = `the file ends within this line, and "${text}" ${why}: it may be cut off`;
  const at = placeOf(table, row, column);
  findings.add('warning', 'reading-doubted', () => ({
    message: `${reason}; the cell is left out`,
    at,
    hint: 'export the file again; if it is complete, add a line break at its end',
  }));
  const { file, line = 0, column: first = 0 } = at;
  const cell = { file, line, column: first, text } as const;
  const excluded = [{ ...cell, class: 'error', reason, ...ofNoPanel } as const];
  return { tables: [...tables.slice(0, -1), withoutCell(table, row, column)], excluded };
}

/** The row goes as well where it holds no other reading. */
function withoutCell(table: Table, row: Row, column: number): Table {
  const others = table.layout.readings.some(
    (one) => one.column !== column && cellText(row, one.column) !== '',
  );
  const rest = table.rows.slice(0, -1);
  return {
    ...table,
    rows: others ? [...rest, { ...row, cells: row.cells.slice(0, column) }] : rest,
  };
}

function whyCut(table: Table, row: Row, column: number): string | undefined {
  const text = row.cells[column] ?? '';
  const shape = numberShape(text.trim());
  if (shape === undefined || !table.source.text.endsWith(text)) return undefined;
  if (!table.layout.readings.some((one) => one.column === column)) return undefined;
  if (table.rows.length <= fewest && table.layout.readings.length === 1) return undefined;
  const others = otherNumbers(table, text);
  const [first] = others;
  if (first === undefined || others.reduce((sum, { count }) => sum + count, 0) < fewest) {
    return undefined;
  }
  const { length } = shape.fraction;
  if (length < first.decimals && others.every(({ decimals }) => decimals === first.decimals)) {
    return 'has fewer decimals than every other reading';
  }
  // As many decimals as all others have are whole ones.
  if (length > 0 && others.every(({ decimals }) => decimals === length)) return undefined;
  const least = Math.min(...others.map(({ value }) => value));
  if (shape.suffix === '' && numberOf(shape) * farBelow < least) {
    return 'is less than a third of every other reading';
  }
  if (length > 0) return undefined;
  const rest = table.rows.slice(0, -1);
  const isShort = rest.every(({ cells }) =>
    cells.slice(column + 1).some((cell) => cell.trim() !== ''),
  );
  return isShort ? 'ends a row before the columns that all others fill' : undefined;
}

function otherNumbers({ layout, rows }: Table, text: string) {
  return layout.readings
    .flatMap((one) => [...columnTexts(rows, one.column)])
    .flatMap(([other, { count }]) => {
      const shape = other === text.trim() ? undefined : numberShape(other);
      return shape === undefined
        ? []
        : [{ decimals: shape.fraction.length, value: numberOf(shape), count }];
    });
}
