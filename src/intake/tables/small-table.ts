/**
 * A small table that people fill in by hand: its columns by role, its rows, and what is wrong with either.
 *
 * Read in any dialect that exports of gauges come in. A doubled column and a row longer than its header
 * are refused; a column that means nothing is named and left out. What a cell holds is its reader's to say.
 */

import { error, type Outcome, type Place, refused } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { type Micrometres, micrometres, milToMicrometres } from '../../base/units.ts';
import { decode, type GaugeFileText } from '../bytes/decode.ts';
import { type DecimalDecision, decideDecimal } from '../cells/decimal.ts';
import { numberShape } from '../cells/numbers.ts';
import { settleNumber } from '../cells/settled-number.ts';
import { largestIn, type ReadingUnit, unitNamed } from '../cells/unit.ts';
import { createFindings, type Findings } from '../findings.ts';
import { type HeaderCell, headerReader, type Vocabulary } from '../header/header.ts';
import { chooseDialect } from '../rows/dialect.ts';
import { cellText } from '../rows/row.ts';
import { cellSpan, type Row, tokenize } from '../rows/tokens.ts';
import { explainHeader, otherWithMore } from './why-no-header.ts';

export type SmallTableForm<Role extends string> = {
  readonly vocabulary: Vocabulary<Role>;
  readonly needed: readonly Role[];
  /** The columns as they are best written, for the hint where there is no header. */
  readonly columns: string;
};

export type SmallTable<Role extends string> = {
  /** Rows that are no longer than the header. */
  readonly rows: readonly Row[];
  readonly findings: Findings;
  readonly has: (role: Role) => boolean;
  /** The cell without blanks around it; empty where there is no such column. */
  readonly textOf: (row: Row, role: Role) => string;
  readonly placeOf: (row: Row, role: Role) => Place;
  /** Where the column is named. */
  readonly headingOf: (role: Role) => Place;
  /** Refuses a cell. */
  readonly invalid: (row: Row, role: Role, message: string, hint: string) => null;
  /** The unit of a column of lengths; refused where neither its name nor `otherwise` says it. */
  readonly unitOf: (role: Role, otherwise?: ReadingUnit) => ReadingUnit | undefined;
  /** What a mark in the numbers of these columns means. */
  readonly decimalOf: (
    roles: readonly Role[],
    unit: ReadingUnit,
    largest: Micrometres,
  ) => DecimalDecision;
};

export function readSmallTable<Role extends string>(
  file: GaugeFileText,
  { vocabulary, needed, columns }: SmallTableForm<Role>,
): Outcome<SmallTable<Role>> {
  const readCell = headerReader(vocabulary);
  const readHeader = (cells: readonly string[]) => cells.map(readCell);
  const decoded = decode(file);
  if (decoded.value === undefined) return refused(...decoded.diagnostics);
  const { source } = decoded.value;
  const score = (cells: readonly string[]): number => {
    const roles = new Set(readHeader(cells).flatMap(({ role }) => role ?? []));
    return needed.every((role) => roles.has(role)) ? roles.size : 0;
  };
  const dialect = chooseDialect(source, undefined, score, (rows, delimiter) =>
    explainHeader(source, rows, delimiter, {
      vocabulary,
      read: readHeader,
      needed,
      otherwise: `the first line names the columns: ${columns}`,
    }),
  );
  if (dialect.value === undefined) return refused(...dialect.diagnostics);
  const { delimiter, start, header: headerRow } = dialect.value;
  const split = tokenize(source, delimiter, start);
  if (split.value === undefined) return refused(...split.diagnostics);

  const findings = createFindings(file.name);
  const header = readHeader(headerRow.cells);
  const cellPlace = (row: Row, column: number): Place => {
    const { offset, length } = cellSpan(source, row, column, delimiter);
    return source.placeAt(offset, length);
  };
  const other = otherWithMore(header, needed, (column) => cellPlace(headerRow, column));
  if (other !== undefined) return refused(other);
  tellColumns(header, columns.split(','), (column) => cellPlace(headerRow, column), findings);
  const columnOf = (role: Role): number => header.findIndex((cell) => cell.role === role);
  const textOf = (row: Row, role: Role): string => cellText(row, columnOf(role));
  const placeOf = (row: Row, role: Role): Place => cellPlace(row, columnOf(role));
  const rows = split.value
    .filter(({ line }) => line > headerRow.line)
    .filter((row) => !isTooLong(row, header.length, cellPlace, findings));
  const value: SmallTable<Role> = {
    rows,
    findings,
    has: (role) => columnOf(role) !== -1,
    textOf,
    placeOf,
    headingOf: (role) => placeOf(headerRow, role),
    invalid: (row, role, message, hint) => {
      findings.add('error', 'cell-invalid', () => ({ message, at: placeOf(row, role), hint }));
      return null;
    },
    unitOf: (role, otherwise) => {
      const cell = header[columnOf(role)];
      if (cell === undefined) return undefined;
      const unit = cell.unit ?? otherwise;
      if (unit === 'um' || unit === 'mil') return unit;
      findings.addAll([unitProblem(role, cell, placeOf(headerRow, role))]);
      return undefined;
    },
    decimalOf: (roles, unit, largest) =>
      decideDecimal(
        textCounts(rows.flatMap((row) => roles.map((role) => textOf(row, role)))),
        largestIn(unit, largest),
        undefined,
        // Nothing here is a film: no thinnest one decides what a mark means.
        0,
      ),
  };
  return { value, diagnostics: [] };
}

/** Doubled columns are refused, unknown ones named: one that is misspelt would be missed in silence else. */
function tellColumns<Role extends string>(
  header: readonly HeaderCell<Role>[],
  known: readonly string[],
  at: (column: number) => Place,
  findings: Findings,
): void {
  for (const [column, { role, text }] of header.entries()) {
    if (role === undefined) {
      if (text === '') continue;
      const message = `column "${text}" is not read`;
      const hint = suggest(text, known);
      findings.add('warning', 'column-unknown', () => ({
        message,
        at: at(column),
        ...(hint === undefined ? {} : { hint }),
      }));
      continue;
    }
    const first = header.findIndex((cell) => cell.role === role);
    if (first === column) continue;
    const message = `"${text}" and "${header[first]?.text}" both name the ${role}`;
    findings.add('error', 'column-repeated', () => ({ message, at: at(column) }));
  }
}

function isTooLong(
  row: Row,
  width: number,
  placeOf: (row: Row, column: number) => Place,
  findings: Findings,
): boolean {
  const extra = row.cells.findIndex((cell, k) => k >= width && cell.trim() !== '');
  if (extra === -1) return false;
  findings.add('error', 'row-too-long', () => ({
    message: `the row has ${row.cells.length} cells, the header names ${width} columns`,
    at: placeOf(row, extra),
    hint: 'quote a cell that holds the delimiter',
  }));
  return true;
}

function unitProblem(role: string, { unit, unitText }: HeaderCell<string>, at: Place) {
  if (unit !== undefined) {
    return error('unit-unknown', `"${unitText}" is not a unit of film thickness`, { at });
  }
  const hint = `name the column ${role}_um or ${role}_mil`;
  return error('unit-missing', `nothing says whether the ${role} is in µm or mil`, { at, hint });
}

function textCounts(texts: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return counts;
}

/** A length in the unit of its column, or what to say of a cell that holds none. */
export type ReadLength =
  | { readonly value: Micrometres }
  | { readonly value?: undefined; readonly message: string; readonly hint?: string };

/** `what` is how a message calls it: "a depth". Within `least` and `most`, the most that the unit can be. */
export function readLength(
  text: string,
  unit: ReadingUnit,
  rules: DecimalDecision,
  { what, least, most }: { readonly what: string; readonly least: number; readonly most: number },
): ReadLength {
  const shape = numberShape(text);
  const foreign = shape !== undefined && shape.suffix !== '' && unitNamed(shape.suffix) !== unit;
  if (shape === undefined || foreign) return { message: `"${text}" is not ${what}` };
  const settled = settleNumber(text, shape, largestIn(unit, micrometres(most)), rules);
  if (settled.value === undefined) return settled;
  const length = unit === 'mil' ? milToMicrometres(settled.value) : micrometres(settled.value);
  return length < least || length > most
    ? { message: `"${text}" is not ${what}` }
    : { value: length };
}
