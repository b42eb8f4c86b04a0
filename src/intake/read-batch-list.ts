/**
 * A list of jobs as a table: a row a job, its columns named by what they say. Which columns there are
 * is the caller's to know. One that is near one of them is refused, for a misspelt one would leave every
 * job at what is usual; any other is the shop's own, told and left alone.
 */

import {
  type Diagnostic,
  error,
  found,
  hasErrors,
  type Outcome,
  type Place,
  refused,
  warning,
} from '../base/diagnostics.ts';
import { closest } from '../base/did-you-mean.ts';
import { type DecodeOptions, decode, type GaugeFileText } from './bytes/decode.ts';
import { chooseDialect, type Dialect } from './rows/dialect.ts';
import { cellText } from './rows/row.ts';
import type { Source } from './rows/source.ts';
import { cellSpan, type Row, tokenize } from './rows/tokens.ts';

export type ListCell = { readonly text: string; readonly at: Place };

/** What a job says, by column: a text, or several; a column left empty says nothing. */
export type ListedJob = {
  readonly at: Place;
  readonly cells: ReadonlyMap<string, readonly ListCell[]>;
};

export type ListColumns = {
  readonly columns: readonly string[];
  readonly needed: readonly string[];
  /** Columns whose cells may hold several texts, with a semicolon between them. */
  readonly several: readonly string[];
  /** Names that say nothing of one job, though something: of an option for all. */
  readonly others?: readonly string[];
};

/** `Risk-Pct ` → `risk_pct`. */
export const columnKey = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_');

/** Nothing where the text is no list of jobs: no row of it names the columns that are `needed`. */
export function readBatchList(
  file: GaugeFileText,
  { columns, needed, several, others = [] }: ListColumns,
  options: DecodeOptions = {},
): Outcome<readonly ListedJob[]> {
  const decoded = decode(file, options);
  if (decoded.value === undefined) return refused(...decoded.diagnostics);
  const { source } = decoded.value;
  const dialect = chooseDialect(
    source,
    undefined,
    (cells) => {
      const keys = cells.map(columnKey);
      return needed.every((key) => keys.includes(key))
        ? keys.filter((key) => columns.includes(key)).length
        : 0;
    },
    (rows, delimiter) => [noHeader(source, rows[0], delimiter, { columns, needed })],
  );
  if (dialect.value === undefined) return refused(...dialect.diagnostics);
  const split = tokenize(source, dialect.value.delimiter, dialect.value.start);
  if (split.value === undefined) return refused(...split.diagnostics);
  const table = { source, ...dialect.value };
  const rows = split.value.filter(({ line }) => line > table.header.line);
  const diagnostics = [
    ...headerFaults(table, { columns, others }),
    ...rows.flatMap((row) => tooLong(table, row)),
  ];
  return hasErrors(diagnostics)
    ? refused(...diagnostics)
    : found(
        rows.map((row) => listedJob(table, row, several)),
        diagnostics,
      );
}

function noHeader(
  source: Source,
  row: Row | undefined,
  delimiter: Dialect['delimiter'],
  { columns, needed }: Pick<ListColumns, 'columns' | 'needed'>,
): Diagnostic {
  const span = row === undefined ? { offset: 0, length: 1 } : cellSpan(source, row, 0, delimiter);
  const there = row?.cells.map(columnKey) ?? [];
  const lacking = needed.filter((key) => !there.includes(key));
  const near = there.findIndex((key) => closest(key, lacking) !== undefined);
  const at = row !== undefined && near > 0 ? cellSpan(source, row, near, delimiter) : span;
  return error('column-missing', `the list names no column ${lacking.join(' and ')}`, {
    at: source.placeAt(at.offset, at.length),
    hint:
      near !== -1
        ? `did you mean "${closest(there[near] ?? '', lacking)}" by "${there[near]}"?`
        : `its first line names the columns, of ${columns.join(', ')}`,
  });
}

type Table = Dialect & { readonly source: Source };

function placeOf({ source, delimiter }: Table, row: Row, column: number): Place {
  const { offset, length } = cellSpan(source, row, column, delimiter);
  return source.placeAt(offset, length);
}

type Known = Pick<ListColumns, 'columns' | 'others'>;

function headerFaults(table: Table, known: Known): readonly Diagnostic[] {
  const { columns } = known;
  const keys = table.header.cells.map(columnKey);
  return keys.flatMap((key, k) => {
    if (key === '') return [];
    const at = placeOf(table, table.header, k);
    const text = table.header.cells[k]?.trim();
    if (!columns.includes(key)) {
      return [unknownColumn(`${text}`, at, known)];
    }
    return keys.indexOf(key) === k
      ? []
      : [
          error('column-repeated', `the column "${text}" stands there twice`, {
            at,
            hint: 'keep one',
          }),
        ];
  });
}

/**
 * Of a column, or a key of a list as JSON, that is none: what is meant to act must not be left out in silence; what is
 * near nothing is the shop's own.
 */
export function unknownColumn(text: string, at: Place, known: Known): Diagnostic {
  const { columns, others = [] } = known;
  const key = columnKey(text);
  const near = closest(key, columns) ?? columns.find((column) => sharesWord(key, column));
  const isOption = others.some((name) => key === name || key.startsWith(`${name}_`));
  if (near === undefined && !isOption) {
    return warning('column-unknown', `column "${text}" is not read`, { at });
  }
  const hint =
    near === undefined ? `columns of a list are ${columns.join(', ')}` : `did you mean "${near}"?`;
  return error('batch-column-unknown', `"${text}" is no column of a list of jobs`, { at, hint });
}

/** `risk` and `risk_pct`, `flor` and `floor_um`: a short word is meant where it is the same. */
const sharesWord = (key: string, column: string): boolean => {
  const words = column.split('_');
  return key
    .split('_')
    .some(
      (word) => words.includes(word) || (word.length > 3 && closest(word, words) !== undefined),
    );
};

function tooLong(table: Table, row: Row): readonly Diagnostic[] {
  const width = table.header.cells.length;
  const extra = row.cells.findIndex((cell, k) => k >= width && cell.trim() !== '');
  if (extra === -1) return [];
  const message = `the row has ${row.cells.length} cells, the header names ${width} columns`;
  const at = placeOf(table, row, extra);
  return [error('row-too-long', message, { at, hint: 'quote a cell that holds the delimiter' })];
}

/** A number has its unit in its name; an aim is a word or a number. */
const ofNumber = /_(?:pct|um)$|^aim$/;

/** `3,5` where no comma parts the columns: fewer than three digits behind it are decimals. */
const withPoint = (text: string, key: string, delimiter: Dialect['delimiter']): string =>
  delimiter !== ',' && ofNumber.test(key) ? text.replace(/^(\d+),(\d{1,2})$/, '$1.$2') : text;

function listedJob(table: Table, row: Row, several: readonly string[]): ListedJob {
  const cells = table.header.cells.flatMap((name, k): [string, readonly ListCell[]][] => {
    const key = columnKey(name);
    const text = withPoint(cellText(row, k), key, table.delimiter);
    if (text === '') return [];
    const texts = several.includes(key) ? text.split(';').map((one) => one.trim()) : [text];
    const at = placeOf(table, row, k);
    return [[key, texts.filter((one) => one !== '').map((one) => ({ text: one, at }))]];
  });
  return { at: placeOf(table, row, 0), cells: new Map(cells) };
}
