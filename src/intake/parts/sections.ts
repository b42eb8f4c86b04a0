/**
 * The rows of a file → its parts: lines that say something of the whole, tables of readings, each
 * under its header and the panel or vehicle that a line above names, and what is no part of either.
 *
 * Most rows have a number where a reading stands and are rows of the table they are in; only the
 * others are asked what they are.
 */

import { footersOf } from '../beside/footers.ts';
import { closeForeign, startsForeignTable } from '../beside/foreign-tables.ts';
import {
  beginsLaterDay,
  beginsLaterStage,
  dayOfRows,
  isAside,
  isLegend,
  setsApart,
  tellApart,
  tellAside,
  tellOtherDialect,
} from '../beside/lines-beside.ts';
import { hear, hearComments, readPreamble, unitOfAll } from '../beside/preamble.ts';
import { givenBy, sayingOf } from '../beside/sayings.ts';
import { isStatisticSaying, statisticsOf } from '../beside/statistics-lines.ts';
import { unitSetBy } from '../beside/unit-lines.ts';
import { markerLegend } from '../cells/markers.ts';
import type { Layout } from '../header/layout.ts';
import type { Row } from '../rows/tokens.ts';
import { nothingGiven, placeOf } from '../tables/table.ts';
import { countsColumns, isMovedHeader, otherHeader } from './headers-below.ts';
import { captionOf, isNews } from './named-above.ts';
import {
  isDataRow,
  namesUnit,
  needsPanel,
  type Parts,
  type Reader,
  type State,
  sameNames,
  type TableStart,
  type UnitLine,
} from './section-state.ts';

export function divideIntoParts(rows: readonly Row[], start: TableStart, reader: Reader): Parts {
  const state: State = {
    ...{ tables: [], metadata: [], units: [], evidence: [], statistics: [], summaries: [] },
    titles: new Set<string>(),
    above: [],
    layout: start.layout,
    header: start.header,
    given: { ...nothingGiven, panel: start.panel ?? null },
    rows: [],
    foreign: undefined,
    asideLine: 0,
  };
  hearComments(start, state, reader);
  const footers = footersOf(rows, start.layout, reader);
  let before: Row | undefined;
  for (let k = 0; k < rows.length; k += 1) {
    const row = rows[k];
    if (row === undefined) continue;
    if (row.line < start.line) {
      if (!hearUnitSet(row, state, reader)) readPreamble(row, state, reader);
    } else if (footers.has(row)) {
      if (!hearUnitSet(row, state, reader)) readFooter(row, state, reader);
    } else if (start.header === undefined || row.line > start.line) {
      if (
        state.foreign === undefined &&
        isDataRow(row, state.layout) &&
        !countsColumns(row, state.layout) &&
        !isMovedHeader(row, state.layout) &&
        reader.context.byCells?.(row.cells) === undefined
      )
        state.rows.push(row);
      else readOther(row, before, rows[k + 1], state, reader);
    }
    before = row;
  }
  closeTable(state, reader);
  closeForeign(state, reader);
  const { tables, metadata, evidence, statistics, summaries, above } = state;
  const units = withLinesOfAll(state.units, tables);
  return { tables, metadata, units, evidence, statistics, summaries, above };
}

/** `Unit set to mil`: the rows below are a table of their own, in that unit. */
function hearUnitSet(row: Row, state: State, reader: Reader): boolean {
  const unit = unitSetBy(row);
  if (unit === undefined) return false;
  closeTable(state, reader);
  state.metadata.push({ key: 'unit', value: unit, line: row.line });
  state.units.push({ row, saying: { key: 'unit', value: unit, column: 0 }, set: true });
  return true;
}

function readFooter(row: Row, state: State, reader: Reader): void {
  const unit = unitOfAll(row);
  const saying = sayingOf(row);
  if (unit !== undefined) state.units.push({ row, saying: unit });
  else if (saying !== undefined && givenBy(saying) === undefined) hear(row, saying, state);
  else tellAside(row, reader);
}

/** A unit that stands below the last row of the file is that of all above it. */
function withLinesOfAll(units: readonly UnitLine[], tables: Parts['tables']): readonly UnitLine[] {
  const last = tables.at(-1)?.rows.at(-1)?.line ?? 0;
  return units.map((line) =>
    line.row.line > last && line.set !== true ? { ...line, ofAll: true } : line,
  );
}

function readOther(
  row: Row,
  before: Row | undefined,
  next: Row | undefined,
  state: State,
  reader: Reader,
): void {
  if (sameNames(row, state.header)) {
    repeatHeader(row, state, reader);
    return;
  }
  if (hearUnitSet(row, state, reader)) return;
  if (tellOtherDialect(row, reader)) return;
  const other = otherHeader(row, next, state, reader);
  if (other !== undefined) {
    if (before !== undefined && before.start === state.header?.start)
      doubtPassedOver(state, reader);
    openTable(row, other, state, reader);
    return;
  }
  const sums = statisticsOf(row);
  if (sums.length > 0) {
    state.statistics.push(...sums.map((saying) => ({ row, saying })));
    return;
  }
  const saying = sayingOf(row);
  if (saying !== undefined && isStatisticSaying(row, saying)) {
    state.statistics.push({ row, saying });
    return;
  }
  const given = saying === undefined ? undefined : givenBy(saying);
  if (saying !== undefined && given !== undefined && isNews(given, state.layout, row)) {
    closeTable(state, reader);
    closeForeign(state, reader);
    hear(row, saying, state);
    return;
  }
  const caption = captionOf(row, next, state, reader);
  if (caption !== undefined) {
    closeTable(state, reader);
    closeForeign(state, reader);
    state.given = { ...state.given, panel: caption, point: null };
    return;
  }
  if (state.foreign !== undefined) {
    state.foreign.rows.push(row);
    return;
  }
  if (startsForeignTable(row, before, next, state, reader)) {
    closeTable(state, reader);
    state.foreign = { header: row, rows: [] };
    return;
  }
  const day = dayOfRows(row, state);
  if (day !== undefined && next !== undefined) {
    closeTable(state, reader);
    if (beginsLaterDay(day, state)) tellApart(row, reader);
    state.metadata.push({ key: 'date', value: day, line: row.line });
    return;
  }
  if (setsApart(row, next, saying, state, reader) || beginsLaterStage(row, next, state, reader)) {
    closeTable(state, reader);
    tellApart(row, reader);
    return;
  }
  if (isAside(row, before, next, saying, state, reader)) {
    state.asideLine = row.line;
    if (isLegend(row, reader.context)) return;
    if (saying !== undefined) {
      // The rows below a unit are a table of their own: what stands above has the unit named there.
      if (namesUnit(saying)) closeTable(state, reader);
      hear(row, saying, state);
      return;
    }
    const unit = unitOfAll(row);
    if (unit !== undefined) state.units.push({ row, saying: unit });
    else if (markerLegend(row.cells).size === 0) tellAside(row, reader);
    return;
  }
  state.rows.push(row);
}

function repeatHeader(row: Row, state: State, reader: Reader): void {
  const { findings } = reader;
  closeTable(state, reader);
  closeForeign(state, reader);
  const line = state.header?.line;
  state.header = row;
  if (needsPanel(state.layout)) return;
  findings.add('note', 'header-repeated', () => ({
    message: `the header of line ${line} stands here again`,
    at: placeOf(reader, row, 0),
  }));
}

/** `Left side;;Right side;` right above another header: names of panels that no reading would stand under. */
function doubtPassedOver({ header, layout }: State, { findings, ...where }: Reader): void {
  const [first] = layout.readings;
  const panels = layout.readings.flatMap(({ panel }) => (panel === null ? [] : `"${panel}"`));
  if (header === undefined || first === undefined || panels.length === 0) return;
  findings.add('error', 'panel-ambiguous', () => ({
    message: `${panels.join(' and ')} may name the panels below, or a part of each: another line of names follows at once`,
    at: placeOf(where, header, first.column),
    hint: 'name each panel in full in its rows, and delete the line; or the other one if it is not wanted',
  }));
}

function openTable(row: Row, layout: Layout, state: State, reader: Reader): void {
  closeTable(state, reader);
  closeForeign(state, reader);
  state.header = row;
  state.layout = layout;
}

function closeTable(state: State, { source, delimiter }: Reader): void {
  const { layout, header, given, rows } = state;
  if (rows.length > 0) state.tables.push({ source, delimiter, layout, header, given, rows });
  state.rows = [];
}
