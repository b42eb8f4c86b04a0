/**
 * Bytes of a gauge export → readings, the cells left out, and the decisions taken on the way.
 *
 * Never a silent guess: each stage either knows, says what it decided and on which evidence, or
 * refuses with the place and a way out. With an error there is no value: half a car is no car.
 */
import { type Diagnostic, error, found, type Outcome, refused } from '../base/diagnostics.ts';
import type { FilmModel } from '../film/film-model.ts';
import type { Reading } from '../film/reading.ts';
import { uncommentHeader } from './commented-header.ts';
import { decideDecimal } from './decimal.ts';
import { decode, type GaugeFileText } from './decode.ts';
import { chooseDialect } from './dialect.ts';
import { createFindings } from './findings.ts';
import { tellHiddenRows } from './hidden-rows.ts';
import { layoutOf } from './layout.ts';
import { adoptColumns, explainGaugeHeader } from './layout-questions.ts';
import { largestIn } from './reading-cell.ts';
import { decideUnit } from './reading-unit.ts';
import { collectReadings } from './readings.ts';
import type { Source } from './source.ts';
import { leaveOutStatistics } from './statistics-rows.ts';
import type { ExcludedCell, Table } from './table.ts';
import { cellSpan, tokenize } from './tokens.ts';

import { doubtUnit } from './unit-doubt.ts';

export type { GaugeFileText } from './decode.ts';
export type { ExcludedCell } from './table.ts';

/** What readings of vehicle paint can be. */
export type PlausibleReadings = Pick<
  FilmModel['measurement'],
  'largestReading' | 'doubtfulUnder' | 'doubtfulOver'
>;

export type IntakeOptions = {
  readonly unit?: 'um' | 'mil';
  readonly delimiter?: ',' | ';' | '\t';
  readonly decimal?: '.' | ',';
  readonly plausible: PlausibleReadings;
  /** Whether some template knows the name: used only to recognise the columns of a wide layout. */
  readonly isPanel: (label: string) => boolean;
};

export type IntakeDecisions = {
  readonly encoding: string;
  readonly delimiter: string;
  readonly decimal: string;
  readonly layout: 'long' | 'wide';
  readonly unit: 'um' | 'mil';
  readonly headerLine: number;
  /** Plain sentences, such as `17 of 20 readings fit only a decimal comma`. */
  readonly evidence: readonly string[];
};

export type GaugeReadings = {
  readonly readings: readonly Reading[];
  readonly excluded: readonly ExcludedCell[];
  readonly decisions: IntakeDecisions;
};

export function readGaugeFile(file: GaugeFileText, options: IntakeOptions): Outcome<GaugeReadings> {
  const decoded = decode(file);
  if (decoded.value === undefined) return refused(...decoded.diagnostics);
  const { source: written, encoding } = decoded.value;
  const scoreHeader = (cells: readonly string[]): number => {
    const layout = layoutOf(cells, options.isPanel);
    return layout === undefined ? 0 : layout.columns.size + layout.readings.length;
  };
  const choose = (from: Source) =>
    chooseDialect(from, options.delimiter, scoreHeader, (rows, delimiter) =>
      explainGaugeHeader(from, rows, delimiter),
    );
  const asWritten = choose(written);
  const uncommented =
    asWritten.value === undefined
      ? uncommentHeader(written, (cells) => scoreHeader(cells) > 0)
      : undefined;
  const source = uncommented ?? written;
  const dialect = uncommented === undefined ? asWritten : choose(uncommented);
  if (dialect.value === undefined) return refused(...dialect.diagnostics);
  const { delimiter, start, header, evidence } = dialect.value;
  const layout = layoutOf(header.cells, options.isPanel);
  const split = tokenize(source, delimiter, start);
  if (split.value === undefined || layout === undefined) return refused(...split.diagnostics);
  const findings = createFindings(file.name);
  const rows = split.value.filter(({ line }) => line > header.line);
  const above = split.value.filter(({ line }) => line < header.line);
  const adopted: Table = adoptColumns({ source, delimiter, layout, rows }, header, findings);
  const { table, excluded } = leaveOutStatistics(adopted, findings);
  tellHiddenRows(adopted, header, findings);
  const counts = countReadingTexts(table);
  const unit = decideUnit(table, header, above, counts, options.unit);
  findings.addAll(unit.diagnostics);
  if (unit.value === undefined) return refused(...findings.list());
  const decimal = decideDecimal(
    counts,
    largestIn(unit.value.unit, options.plausible.largestReading),
    options.decimal,
  );
  const rules = { unit: unit.value.unit, decimal, largest: options.plausible.largestReading };
  const collected = collectReadings(table, rules, findings);
  if (collected.readings.length === 0 && !findings.hasErrors()) {
    findings.addAll([noReadings(file.name)]);
  }
  if (findings.hasErrors()) return refused(...findings.list());
  const { offset, length } = cellSpan(source, header, layout.readings[0]?.column ?? 0, delimiter);
  const at = source.placeAt(offset, length);
  findings.addAll(doubtUnit(collected.readings, unit.value.unit, options.plausible, at));
  const decisions: IntakeDecisions = {
    encoding,
    delimiter,
    decimal: decimal.mark,
    layout: layout.kind,
    unit: unit.value.unit,
    headerLine: header.line,
    evidence: [...evidence, unit.value.evidence, decimal.evidence],
  };
  const leftOut = [...excluded, ...collected.excluded].sort((a, b) => a.line - b.line);
  return found({ readings: collected.readings, excluded: leftOut, decisions }, findings.list());
}

const noReadings = (file: string): Diagnostic =>
  error('no-readings', 'the file holds no reading', { at: { file } });

/** How often each text stands among the readings: few texts stand for many cells. */
function countReadingTexts({ layout, rows }: Table): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { cells } of rows) {
    for (const { column } of layout.readings) {
      const text = (cells[column] ?? '').trim();
      counts.set(text, (counts.get(text) ?? 0) + 1);
    }
  }
  return counts;
}
