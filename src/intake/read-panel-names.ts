/**
 * Names of panels as a table of two columns: the word of the export, and the panel it means.
 *
 * A first row whose second cell is "panel" names the columns. The delimiter is the one that makes
 * two cells of every row.
 */
import { error, found, hasErrors, type Outcome, refused } from '../base/diagnostics.ts';
import { decode, type GaugeFileText } from './bytes/decode.ts';
import { delimiters } from './rows/dialect.ts';
import type { Source } from './rows/source.ts';
import { type Delimiter, type Row, tokenize } from './rows/tokens.ts';
import { placeOf } from './tables/table.ts';

export function readPanelNames(file: GaugeFileText): Outcome<ReadonlyMap<string, string>> {
  const decoded = decode(file);
  if (decoded.value === undefined) return { diagnostics: decoded.diagnostics };
  const { source } = decoded.value;
  const tables = delimiters.map((delimiter) => ({ delimiter, rows: rowsOf(source, delimiter) }));
  const fitting = tables.filter(({ rows }) => rows.every(({ cells }) => cells.length === 2));
  const [only, second] = fitting.filter(({ rows }) => rows.length > 0);
  if (only === undefined || second !== undefined) return refused(noTwoColumns(tables, source));
  return namesIn(only.rows, { source, delimiter: only.delimiter });
}

const rowsOf = (source: Source, delimiter: Delimiter): readonly Row[] =>
  tokenize(source, delimiter, { offset: 0, line: 1 }).value ?? [];

function noTwoColumns(
  tables: readonly { readonly delimiter: Delimiter; readonly rows: readonly Row[] }[],
  source: Source,
) {
  const most = ({ rows }: (typeof tables)[number]): number =>
    rows.filter(({ cells }) => cells.length === 2).length;
  const [nearest] = [...tables].sort((a, b) => most(b) - most(a));
  const row = nearest?.rows.find(({ cells }) => cells.length !== 2);
  const at =
    row === undefined || nearest === undefined
      ? source.placeAt(0, 1)
      : placeOf({ source, delimiter: nearest.delimiter }, row, 0);
  const message = 'names of panels stand in two columns: the name in the file, and the panel';
  return error('cell-invalid', message, { at, hint: 'write each row as: Haube,bonnet' });
}

function namesIn(
  rows: readonly Row[],
  table: { readonly source: Source; readonly delimiter: Delimiter },
): Outcome<ReadonlyMap<string, string>> {
  const [first] = rows;
  const body = first?.cells[1]?.trim().toLowerCase() === 'panel' ? rows.slice(1) : rows;
  const names = new Map<string, string>();
  const diagnostics = body.flatMap((row) => {
    const [name = '', panel = ''] = row.cells.map((cell) => cell.trim());
    const at = placeOf(table, row, panel === '' ? 1 : 0);
    if (panel === '') {
      return [error('cell-invalid', `no panel stands beside "${name}"`, { at, hint: 'name one' })];
    }
    const before = names.get(name);
    names.set(name, panel);
    if (before === undefined || before === panel) return [];
    const message = `"${name}" is said to be ${before} and ${panel}`;
    return [error('cell-invalid', message, { at, hint: 'keep one of the two' })];
  });
  return hasErrors(diagnostics) ? { diagnostics } : found(names);
}
