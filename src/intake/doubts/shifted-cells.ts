/**
 * Decimal commas that nobody quoted, in a table separated by commas.
 *
 * `roof,1,101,5` may be 101.5 on the roof, or 101 and a note "5": the cells after the mark have
 * moved by one. A row too long for its header shows it; so does a bare number among free texts.
 */

import type { Findings } from '../findings.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic, statisticOf } from '../statistics/statistic-words.ts';
import { placeOf, type Table } from '../tables/table.ts';

const whole = (text: string | undefined): boolean => /^\d+$/u.test((text ?? '').trim());
const fraction = (text: string | undefined): boolean => /^\d{1,2}$/u.test((text ?? '').trim());

/** Whether blank cells beyond the header may be those that an unquoted decimal comma pushed out. */
export function mayBeShifted({ delimiter, layout }: Table, { cells }: Row): boolean {
  if (delimiter !== ',') return false;
  const columns = new Set(layout.readings.map(({ column }) => column));
  return layout.readings.some(({ column }) => {
    const [here, next] = [cells[column], cells[column + 1]];
    if (!whole(here)) return false;
    return columns.has(column + 1) ? /^\s*\d\s*$/u.test(next ?? '') : fraction(next);
  });
}

/** Roles whose cells may well be numbers: a badge, a trainee, a layer. */
const numberedRoles: ReadonlySet<GaugeRole> = new Set(['operator', 'vehicle', 'layer']);
const textRoles: ReadonlySet<GaugeRole> = new Set(['note', 'time', 'substrate']);

/**
 * The columns after a reading in which a number of one or two digits may be its decimals: a note,
 * or a column of numbered people in which other cells are no such numbers, or a 0.
 */
export function doubtfulColumns({ delimiter, layout, rows }: Table): readonly number[] {
  if (delimiter !== ',') return [];
  return layout.readings
    .map(({ column }) => column)
    .filter((column) => {
      const next = layout.header[column + 1];
      if (next === undefined || layout.readings.some((r) => r.column === column + 1)) return false;
      // Of a statistic its value is the witness: one that does not agree is refused (`statistics-check.ts`).
      if (next.role === undefined && isChecked(next.label)) return false;
      if (next.role !== undefined && textRoles.has(next.role)) return true;
      if (next.role !== undefined && !numberedRoles.has(next.role)) return false;
      return rows.some((row) => {
        const text = cellText(row, column + 1);
        return text === '' || text === '0' || !whole(text);
      });
    });
}

const isChecked = (label: string): boolean =>
  namesStatistic(label) && statisticOf(label) !== 'other';

/** Whether a reading and the number after it may be one. */
export const mayBeOne = ({ cells }: Row, column: number): boolean =>
  whole(cells[column]) && fraction(cells[column + 1]);

/** `104,5,106,2`: in every row each second cell is one digit, as of a decimal, and the others are films. */
export function doubtPairs(table: Table, findings: Findings): void {
  const { delimiter, layout, rows } = table;
  const columns = layout.readings.map(({ column }) => column);
  const [row] = rows;
  // Of columns named by panels there are as many as panels; numbered ones may be twice too many.
  if (layout.kind === 'wide' || delimiter !== ',') return;
  if (columns.length < 2 || columns.length % 2 === 1) return;
  if (
    row === undefined ||
    columns.some((column, k) => k > 0 && column !== (columns[k - 1] ?? 0) + 1)
  )
    return;
  const inPairs = ({ cells }: Row): boolean =>
    columns.every((column, k) =>
      k % 2 === 0
        ? /^\s*\d{2,4}\s*$/u.test(cells[column] ?? '')
        : /^\s*\d\s*$/u.test(cells[column] ?? ''),
    );
  if (!rows.every(inPairs)) return;
  const [first = 0] = columns;
  const [before, after] = [first, first + 1].map((k) => cellText(row, k));
  findings.add('error', 'reading-ambiguous', () => ({
    message: `"${before},${after}" may be ${before}.${after}, or two readings: every second one has a single digit`,
    at: placeOf(table, row, first),
    hint: 'quote the decimal commas, or separate the cells by semicolons',
  }));
}
