/**
 * A last column without a name that holds the mean of the readings before it in every row, on three rows and more:
 * a spreadsheet computed it, and taken as a reading it would count the others twice. It is known as a statistic from
 * here on, left out aloud and held against the readings as those with a name are.
 */
import { numberIn } from '../cells/numbers.ts';
import { isMean } from '../statistics/mean-of.ts';
import { type Table, widest } from './table.ts';

/** Rows on which chance does not explain it any more. */
const PROOF = 3;

export function leaveOutNamelessMean(
  table: Table,
): { readonly table: Table; readonly evidence: string } | undefined {
  const { layout, rows } = table;
  const first = layout.readings[0]?.column;
  const column = widest(rows) - 1;
  const named = layout.header[column];
  if (first === undefined || layout.kind === 'wide' || layout.header.length === 0) return undefined;
  if (rows.length < PROOF || column < first + 2) return undefined;
  if (named !== undefined && (named.text !== '' || named.unit !== undefined)) return undefined;
  const own = new Set(layout.readings.map((reading) => reading.column));
  const before = Array.from({ length: column - first }, (_, k) => first + k).filter(
    (k) => own.has(k) || (layout.header[k]?.text ?? '') === '',
  );
  const means = rows.every(({ cells }) => {
    const [mean, ...others] = [column, ...before].map((k) => numberIn(cells[k] ?? ''));
    return isMean(mean, others);
  });
  if (!means) return undefined;
  const header = [...layout.header];
  for (let k = header.length; k <= column; k += 1) header.push({ text: '', label: '' });
  return {
    table: {
      ...table,
      layout: {
        ...layout,
        header: header.with(column, { text: '', label: 'mean' }),
        unknown: [...layout.unknown, column],
      },
    },
    evidence: `column ${column + 1} has no name and is the mean of the readings beside it in every row`,
  };
}
