/**
 * A column that says which rows count by a name that is no word of deletion: `Include`, `Keep`, `Omit`.
 *
 * It is obeyed where each of its cells is a plain yes or no in words and some row says each; where one is anything else,
 * a number too, it may say another thing of its row, and is asked about (`judging-columns.ts`).
 */
import { meansDeleted, meansInvalid } from '../cells/words.ts';
import { plainNames, plainWords } from '../header/header.ts';
import { columnTexts } from '../rows/column-texts.ts';
import type { Table } from './table.ts';

const takes = plainNames(
  `ignore|omit|skip|drop|discard|leave out|ignorieren|auslassen|weglassen|ignorer|omettre|ignorar|omitir|ignorare|
  omettere|negeren|weglaten|pominąć|ignorovat|無視|忽略`,
);
const keeps = plainNames(
  `use|used|include|keep|in average|in mean|for mean|in mittelwert|im mittelwert|in mw|in moyenne|in media|verwenden|
  benutzen|behalten|werten|nutzen|garder|utiliser|incluir|usare|tenere|includere|gebruiken|meetellen|uwzględnić|
  použít|採用|使用`,
);

export type KeepingColumn = { readonly table: Table; readonly evidence: string };

export function adoptKeepingColumn(table: Table): KeepingColumn | undefined {
  const { layout, rows } = table;
  if (layout.columns.has('deleted') || layout.columns.has('valid')) return undefined;
  const column = layout.unknown.find((k) => roleOf(table, k) !== undefined);
  const cell = column === undefined ? undefined : layout.header[column];
  const role = column === undefined ? undefined : roleOf(table, column);
  if (column === undefined || cell === undefined || role === undefined) return undefined;
  const texts = [...columnTexts(rows, column).keys()];
  const answers = new Set(texts.map((text) => answerOf(role, text, cell.label)));
  if (answers.has(undefined) || answers.size < 2) return undefined;
  const columns = new Map([...layout.columns, [role, column] as const]);
  const unknown = layout.unknown.filter((k) => k !== column);
  // A cell that repeats the heading says yes to it.
  const named = rows.map((row) =>
    isHeading(row.cells[column] ?? '', cell.label)
      ? { ...row, cells: row.cells.with(column, 'x'), quoted: true }
      : row,
  );
  const header = layout.header.with(column, { ...cell, role });
  return {
    table: { ...table, rows: named, layout: { ...layout, header, columns, unknown } },
    evidence: `"${cell.text}" says of each row whether it counts`,
  };
}

function roleOf({ layout }: Table, column: number): 'deleted' | 'valid' | undefined {
  const name = plainWords((layout.header[column]?.label ?? '').replace(/\?$/u, ''));
  return takes.has(name) ? 'deleted' : keeps.has(name) ? 'valid' : undefined;
}

const isHeading = (text: string, label: string): boolean =>
  text.trim() !== '' && plainWords(text) === plainWords(label);

/** Whether the row is left out; undefined where the cell does not say. */
function answerOf(role: 'deleted' | 'valid', text: string, label: string): boolean | undefined {
  if (/\d/u.test(text)) return undefined;
  if (role === 'valid') return text === '' ? undefined : meansInvalid(text);
  return isHeading(text, label) ? true : meansDeleted(text);
}
