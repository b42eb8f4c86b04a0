/**
 * Rows of a known layout → readings, and the cells that give none, each with its reason.
 *
 * A point is named by its column or, without one, by its order on the panel; readings of one point
 * are repeats in order of appearance. Every bad cell is reported, not only the first.
 */
import type { DiagnosticCode } from '../base/catalogue.ts';
import type { Severity } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import type { PointPlace, Reading } from '../film/reading.ts';
import type { Findings } from './findings.ts';
import type { GaugeRole } from './header.ts';
import type { ReadingColumn } from './layout.ts';
import { createPointNames } from './point-names.ts';
import { type NumberRules, type ReadingCell, readReadingCell } from './reading-cell.ts';
import { doubtfulColumns, mayBeOne, mayBeShifted } from './shifted-cells.ts';
import type { ExcludedCell, Table } from './table.ts';
import { cellSpan, countLineEnds, type Delimiter, type Row } from './tokens.ts';
import { flagNamed, flagNames, layerNamed, ordinal, placeNamed, placeNames } from './words.ts';

export type CollectedReadings = {
  readonly readings: readonly Reading[];
  readonly excluded: readonly ExcludedCell[];
};

export function collectReadings(
  table: Table,
  rules: NumberRules,
  findings: Findings,
): CollectedReadings {
  const { source, delimiter, layout, rows } = table;
  const { columns } = layout;
  const readings: Reading[] = [];
  const excluded: ExcludedCell[] = [];
  const known = new Map<string, ReadingCell>();
  const names = createPointNames(columns.has('operator'));
  const has = (role: GaugeRole): number => columns.get(role) ?? -1;
  const [panelAt, pointAt, vehicleAt, layerAt] = [
    has('panel'),
    has('point'),
    has('vehicle'),
    has('layer'),
  ];
  const [placeAt, markedAt, curvedAt, repeatAt] = [
    has('place'),
    has('marked'),
    has('curved'),
    has('repeat'),
  ];

  const complain = (
    row: Row,
    column: number,
    severity: Severity,
    code: DiagnosticCode,
    message: string,
    hint?: string,
    cells = 1,
  ): void =>
    findings.add(severity, code, () => {
      const span = cellSpan(source, row, column, delimiter);
      const last = cellSpan(source, row, column + cells - 1, delimiter);
      const at = source.placeAt(span.offset, last.offset + last.length - span.offset);
      return { message, at, ...(hint === undefined ? {} : { hint }) };
    });
  const word = <T>(
    row: Row,
    column: number,
    named: (text: string) => T | undefined,
    allowed: readonly string[],
    otherwise: T,
  ): T => {
    if (column < 0) return otherwise;
    const text = (row.cells[column] ?? '').trim();
    const value = named(text);
    if (value !== undefined) return value;
    const message = `"${text}" is none of ${allowed.join(', ')}`;
    complain(row, column, 'error', 'cell-invalid', message, suggest(text, allowed));
    return otherwise;
  };
  const repeatOf = (row: Row): number | undefined => {
    const text = repeatAt < 0 ? '' : (row.cells[repeatAt] ?? '').trim();
    if (text === '') return undefined;
    const number = ordinal(text);
    if (number === undefined) {
      const message = `"${text}" is no number of a repeat`;
      complain(row, repeatAt, 'error', 'cell-invalid', message, 'repeats count 1, 2, 3 …');
    }
    return number;
  };
  const interned = new Map<string, string>();
  const text = (row: Row, column: number): string => {
    if (column < 0) return '';
    const cell = (row.cells[column] ?? '').trim();
    const same = interned.get(cell);
    if (same !== undefined) return same;
    interned.set(cell, cell);
    return cell;
  };

  const readCell = (
    row: Row,
    { column, panel: ofColumn }: ReadingColumn,
    about: AboutRow,
  ): void => {
    const cell = (row.cells[column] ?? '').trim();
    let told = known.get(cell);
    if (told === undefined) {
      told = readReadingCell(cell, rules);
      known.set(cell, told);
    }
    const panel = ofColumn ?? about.panel;
    if (panel === '') {
      const severity = told.kind === 'reading' ? 'error' : 'warning';
      const hint = 'name the panel in every row';
      complain(row, panelAt, severity, 'panel-missing', 'the row names no panel', hint);
    }
    const origin = originOf(table, row, column);
    const { complaint } = told.kind === 'reading' ? {} : told;
    if (complaint !== undefined) {
      complain(row, column, complaint.severity, complaint.code, complaint.message, complaint.hint);
    }
    if (told.kind === 'wrong') return;
    const { vehicle, layer } = about;
    const named = names.next(
      vehicle,
      panel,
      about.point,
      layer,
      told.kind === 'reading',
      about.repeat,
    );
    if (told.kind === 'excluded') {
      excluded.push({ ...origin, text: cell, reason: told.reason });
      return;
    }
    if (named.taken) {
      const message = `repeat ${named.repeat} of point ${named.point} on ${panel} was given before`;
      complain(
        row,
        repeatAt,
        'error',
        'cell-invalid',
        message,
        'is a part of the file there twice?',
      );
    }
    const { thickness } = told;
    const { place, marked, curved } = about;
    const { point, repeat } = named;
    readings.push({
      vehicle,
      panel,
      point,
      repeat,
      thickness,
      layer,
      place,
      marked,
      curved,
      origin,
    });
  };

  const width = layout.header.length;
  const needed =
    layout.kind === 'long' ? Math.max(panelAt, layout.readings[0]?.column ?? 0) + 1 : 0;
  const doubtful = rules.decimal.given === '.' ? [] : doubtfulColumns(table);
  if (pointAt >= 0) for (const row of rows) names.reserve(text(row, pointAt));
  for (const row of rows) {
    const { cells } = row;
    if (cells.length > width) {
      const filled = cells.findIndex((cell, k) => k >= width && cell.trim() !== '');
      const extra = filled === -1 && mayBeShifted(table, row) ? width : filled;
      if (extra !== -1) {
        const message = `the row has ${cells.length} cells, the header names ${width} columns`;
        complain(row, extra, 'error', 'row-too-long', message, tooLongHint(delimiter));
        continue;
      }
    }
    if (cells.length < needed) {
      const message = `the row ends before column ${needed}, "${layout.header[needed - 1]?.text ?? ''}"`;
      complain(row, cells.length - 1, 'error', 'row-too-short', message, 'add the missing cells');
      continue;
    }
    const about: AboutRow = {
      vehicle: text(row, vehicleAt) || null,
      panel: text(row, panelAt),
      point: text(row, pointAt),
      layer: layerNamed(text(row, layerAt)),
      place: word<PointPlace>(row, placeAt, placeNamed, placeNames, 'face'),
      marked: word(row, markedAt, flagNamed, flagNames, false),
      curved: word(row, curvedAt, flagNamed, flagNames, false),
      repeat: repeatOf(row),
    };
    for (const column of doubtful) {
      if (!mayBeOne(row, column)) continue;
      const [before, after] = [text(row, column), text(row, column + 1)];
      const named = layout.header[column + 1]?.text ?? '';
      const message = `"${before},${after}" may be ${before}.${after}, or ${before} with "${after}" as ${named}`;
      complain(row, column, 'error', 'reading-ambiguous', message, ambiguousHint, 2);
    }
    for (const column of layout.readings) readCell(row, column, about);
  }
  return { readings, excluded };
}

type AboutRow = Pick<
  Reading,
  'vehicle' | 'panel' | 'point' | 'layer' | 'place' | 'marked' | 'curved'
> & {
  readonly repeat: number | undefined;
};

const ambiguousHint = 'quote a decimal comma, or write more than the number in the note';
const tooLongHint = (delimiter: Delimiter): string =>
  delimiter === ','
    ? 'a decimal comma or a comma in a note? quote that cell, or separate the columns by ;'
    : 'quote a cell that holds the delimiter';

function originOf({ source, delimiter }: Table, row: Row, column: number): Reading['origin'] {
  const { offset } = cellSpan(source, row, column, delimiter);
  if (offset < row.quoteAt)
    return { file: source.name, line: row.line, column: offset - row.start + 1 };
  const lineStart = source.text.lastIndexOf('\n', offset - 1) + 1;
  const line = row.line + countLineEnds(source.text, row.start, offset);
  return { file: source.name, line, column: offset - lineStart + 1 };
}
