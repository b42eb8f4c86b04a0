/**
 * Rows of a known layout → readings, and the cells that give none, each with its reason.
 *
 * A point is named by its column or, without one, by its order on the panel; readings of one point
 * are repeats in order of appearance. Every bad cell is reported, not only the first.
 */

import type { Reading } from '../../film/reading.ts';
import type { NumberRules } from '../cells/reading-cell.ts';
import type { TableUnit } from '../cells/unit.ts';
import { doubtfulColumns } from '../doubts/shifted-cells.ts';
import type { Findings } from '../findings.ts';
import type { ReadingColumn } from '../header/layout.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { countLineEnds } from '../rows/lines.ts';
import { cellColumn, cellText } from '../rows/row.ts';
import { cellSpan, type Row } from '../rows/tokens.ts';
import { type RowShape, rowShape, tellShape } from '../tables/row-shape.ts';
import { type ExcludedCell, placeOf, type Table } from '../tables/table.ts';
import type { UnitsByColumn } from '../units/units-by-column.ts';
import {
  leaveOutDeleted,
  tellDoubtful,
  tellNoPanel,
  tellTaken,
  tellWrong,
} from './cell-messages.ts';
import { type CellReader, cellReader } from './cell-reader.ts';
import { createPointNames, type PointNames } from './point-names.ts';
import {
  type AboutRow,
  type KeptTexts,
  type RowReader,
  rowReader,
  type Spelling,
} from './row-columns.ts';
import { unitOfRow } from './row-unit.ts';

/** A table with all that is decided about its numbers. */
export type SettledTable = {
  readonly table: Table;
  readonly rules: NumberRules;
  /** Whether each row has the unit its column of units names. */
  readonly unitByRow: boolean;
  readonly unitsByColumn?: UnitsByColumn;
  /** Whether the rows are points of their panel, and the columns repeats there. */
  readonly rowsArePoints: boolean;
  /** Whether each column of readings is a point that is called after its place. */
  readonly placesArePoints: boolean;
};

export type Collector = {
  readonly readings: Reading[];
  readonly excluded: ExcludedCell[];
  readonly names: PointNames;
  readonly spelling: Spelling;
  readonly findings: Findings;
};

export const createCollector = (
  spelling: Spelling,
  severalOperators: boolean,
  findings: Findings,
): Collector => ({
  readings: [],
  excluded: [],
  names: createPointNames(severalOperators),
  spelling,
  findings,
});

/** Keeps the names of a point column from being given to rows without one. */
export function reservePoints({ layout, rows }: Table, { names, spelling }: Collector): void {
  const column = layout.columns.get('point');
  if (column === undefined) return;
  for (const text of columnTexts(rows, column).keys()) {
    names.reserve(spelling.point(spelling.name(text)));
  }
}

type Reader = {
  readonly settled: SettledTable;
  readonly collector: Collector;
  readonly about: RowReader;
  readonly shape: RowShape;
  readonly cell: CellReader;
  /** Columns whose number may be the decimals of the reading before it. */
  readonly doubtful: readonly number[];
};

export function collectTable(settled: SettledTable, collector: Collector): void {
  const { table, rules } = settled;
  const reader: Reader = {
    settled,
    collector,
    about: rowReader(table, collector.spelling, (...cell) =>
      tellWrong(table, cell, collector.findings),
    ),
    shape: rowShape(table),
    cell: cellReader(rules),
    doubtful: rules.decimal.given === '.' ? [] : doubtfulColumns(table),
  };
  for (const row of table.rows) collectRow(row, reader);
}

function collectRow(row: Row, reader: Reader): void {
  const { settled, collector, shape } = reader;
  const { table } = settled;
  const misfit = shape(row);
  if (misfit !== undefined) {
    tellShape(table, row, misfit, collector.findings);
    return;
  }
  const about = reader.about(row);
  for (const column of reader.doubtful) tellDoubtful(table, row, column, collector.findings);
  const unit = settled.unitByRow ? unitOfRow(row, table, collector.findings) : settled.rules.unit;
  if (unit === undefined) return;
  const { readings, header } = table.layout;
  let point = about.point;
  for (const column of readings) {
    if (column.column >= row.cells.length && (header[column.column]?.text ?? '') === '') break;
    const own = point === about.point ? about : { ...about, point };
    const ofColumn = settled.unitsByColumn?.get(column.column) ?? unit;
    const named = readCell(row, column, own, ofColumn, reader);
    if (settled.rowsArePoints) point = named ?? point;
  }
}

/** Takes one cell, and says which point it was. */
function readCell(
  row: Row,
  reading: ReadingColumn,
  about: AboutRow,
  unit: TableUnit,
  { settled, collector, cell }: Reader,
): string | undefined {
  const { findings, names, readings, excluded } = collector;
  const { table } = settled;
  const { column, panel: ofColumn } = reading;
  const text = cellText(row, column);
  const told = cell(text, unit);
  const panel = ofColumn === null ? about.panel : collector.spelling.panel(ofColumn);
  // Nothing names the panel of a bare list, which is said of all of it.
  if (panel === '' && table.given.panel !== '') tellNoPanel(table, row, column, told, findings);
  if (told.complaint !== undefined) {
    const { severity, code, message, hint } = told.complaint;
    findings.add(severity, code, () => ({
      message,
      at: placeOf(table, row, column),
      ...(hint === undefined ? {} : { hint }),
    }));
  }
  if (told.kind === 'wrong') return undefined;
  const counts = told.kind === 'reading' && about.deleted === undefined;
  const { vehicle, layer, place, marked, curved } = about;
  const written = pointOfColumn(reading, settled, collector) ?? about.point;
  const { point, repeat, taken } = names.next(vehicle, panel, written, layer, counts, about.repeat);
  const origin = originOf(table, row, column);
  const at = place === 'face' ? {} : { place };
  const whose = { vehicle, panel: panel === '' ? null : panel, point, ...at };
  if (told.kind === 'excluded') {
    excluded.push({ ...origin, text, class: told.class, reason: told.reason, ...whose });
    return point;
  }
  if (about.deleted !== undefined) {
    const reason = leaveOutDeleted(table, row, about.deleted, findings);
    excluded.push({ ...origin, text, class: about.deleted.class, reason, ...whose });
    return point;
  }
  if (taken) tellTaken(table, row, { point, repeat, panel }, findings);
  const { thickness, decimals } = told;
  const plain = {
    vehicle,
    panel,
    point,
    repeat,
    thickness,
    decimals,
    layer,
    place,
    marked,
    curved,
    origin,
  };
  const kept = told.note === undefined ? about.kept : withNote(about.kept, told.note);
  readings.push(kept === undefined ? plain : { ...plain, ...kept });
  return point;
}

const withNote = (kept: KeptTexts | undefined, note: string): KeptTexts => ({
  ...kept,
  note: kept?.note === undefined ? note : `${kept.note}; ${note}`,
});

/** The point that a column is, where its name says so. */
function pointOfColumn(
  { number, place }: ReadingColumn,
  { table, placesArePoints }: SettledTable,
  { spelling }: Collector,
): string | undefined {
  if (table.layout.series === 'point' && number !== null) return String(number);
  return placesArePoints && place !== undefined ? spelling.point(place) : undefined;
}

function originOf({ source, delimiter }: Table, row: Row, column: number): Reading['origin'] {
  if (!row.quoted) return { file: source.name, line: row.line, column: cellColumn(row, column) };
  const { offset } = cellSpan(source, row, column, delimiter);
  const lineStart = source.text.lastIndexOf('\n', offset - 1) + 1;
  const line = row.line + countLineEnds(source.text, row.start, offset);
  return { file: source.name, line, column: offset - lineStart + 1 };
}
