/**
 * Bytes of a gauge export → readings, the cells left out, and the decisions taken on the way.
 *
 * Never a silent guess: each stage either knows, says what it decided and on which evidence, or
 * refuses with the place and a way out. With an error there is no value: half a car is no car.
 */
import { type Diagnostic, error, found, type Outcome, refused } from '../base/diagnostics.ts';
import type { Reading } from '../film/reading.ts';
import { type Decoded, decode, type GaugeFileText } from './decode.ts';
import { createFindings, type Findings } from './findings.ts';
import { tellHiddenRows } from './hidden-rows.ts';
import {
  type IntakeOptions,
  panelSpelling,
  unknownRoles,
  unusedPanelNames,
} from './intake-options.ts';
import type { LayoutName } from './layout.ts';
import { collectTable, createCollector, reservePoints } from './readings.ts';
import { tellRepeatedRows } from './repeated-rows.ts';
import { doubtNines } from './row-of-nines.ts';
import { createNames, pointSpelling } from './same-names.ts';
import type { Parts, Split } from './section-state.ts';
import { divideIntoParts } from './sections.ts';
import { type SettledTables, settleTables } from './settle-tables.ts';
import { checkClaim } from './statistics-check.ts';
import { type ExcludedCell, type Metadatum, placeOf } from './table.ts';
import { findTable } from './table-start.ts';
import { doubtUnit } from './unit-doubt.ts';

export type { GaugeFileText } from './decode.ts';
export type { IntakeOptions } from './intake-options.ts';
export type { LayoutName } from './layout.ts';
export type { ExcludedCell, Metadatum } from './table.ts';

export type IntakeDecisions = {
  readonly encoding: string;
  readonly delimiter: string;
  readonly decimal: string;
  readonly layout: LayoutName;
  readonly unit: 'um' | 'mil';
  /** 0 where no line names the columns. */
  readonly headerLine: number;
  /** Plain sentences, such as `17 of 20 readings fit only a decimal comma`. */
  readonly evidence: readonly string[];
  /** What lines beside the tables say of it: serial number, date, operator … */
  readonly metadata: readonly Metadatum[];
};

export type GaugeReadings = {
  readonly readings: readonly Reading[];
  readonly excluded: readonly ExcludedCell[];
  readonly decisions: IntakeDecisions;
};

export function readGaugeFile(file: GaugeFileText, options: IntakeOptions): Outcome<GaugeReadings> {
  const wrongRoles = unknownRoles(options);
  if (wrongRoles.length > 0) return refused(...wrongRoles);
  const decoded = decode(file, { encoding: options.encoding, limits: options.limits });
  if (decoded.value === undefined) return refused(...decoded.diagnostics);
  return readGaugeText(decoded.value, options, decoded.diagnostics);
}

/** The same of a text: a whole file, or a piece of a long one under the head of its table. */
export function readGaugeText(
  { source, encoding, evidence }: Decoded,
  options: IntakeOptions,
  noticed: readonly Diagnostic[] = [],
): Outcome<GaugeReadings> {
  const split = findTable(source, options);
  if (split.value === undefined) return refused(...noticed, ...split.diagnostics);
  const findings = createFindings(source.name);
  findings.addAll(noticed);
  const parts = divideIntoParts(split.value.rows, split.value.start, {
    ...split.value,
    findings,
  });
  if (parts.tables.length === 0) {
    findings.addAll(findings.hasErrors() ? [] : [noReadings(split.value)]);
    return refused(...findings.list());
  }
  tellHiddenRows(parts.tables, findings);
  tellRepeatedRows(parts.tables, findings);
  const settled = settleTables(parts, options, findings);
  if (settled === undefined) return refused(...findings.list());
  const collected = collect(settled, options, findings, split.value);
  if (findings.hasErrors()) return refused(...findings.list());
  for (const claim of settled.claims) checkClaim(claim, findings);
  if (findings.hasErrors()) return refused(...findings.list());
  const decisions = decisionsOf({ encoding, evidence }, split.value, parts, settled);
  const excluded = [...settled.excluded, ...collected.excluded].sort((a, b) => a.line - b.line);
  return found({ readings: collected.readings, excluded, decisions }, findings.list());
}

type Collected = Pick<GaugeReadings, 'readings' | 'excluded'>;

function collect(
  { tables }: SettledTables,
  options: IntakeOptions,
  findings: Findings,
  split: Split,
): Collected {
  const own = tables.map(({ table }) => table);
  const panels = panelSpelling(options.panelNames);
  const spelling = {
    name: createNames(),
    point: pointSpelling(own, findings),
    panel: panels.spell,
  };
  const severalOperators = own.some(({ layout }) => layout.columns.has('operator'));
  const collector = createCollector(spelling, severalOperators, findings);
  for (const table of own) reservePoints(table, collector);
  for (const table of tables) collectTable(table, collector);
  const { readings, excluded } = collector;
  findings.addAll(unusedPanelNames(split.source.name, options, panels.seen));
  if (readings.length === 0 && !findings.hasErrors()) findings.addAll([noReadings(split)]);
  doubtUnits(tables, readings, options, findings);
  return { readings, excluded };
}

function doubtUnits(
  [first]: SettledTables['tables'],
  readings: readonly Reading[],
  { plausible }: IntakeOptions,
  findings: Findings,
): void {
  const row = first?.table.header ?? first?.table.rows[0];
  if (first === undefined || row === undefined) return;
  const at = placeOf(first.table, row, first.table.layout.readings[0]?.column ?? 0);
  findings.addAll(doubtUnit(readings, first.rules.unit, plausible, at));
  findings.addAll(doubtNines(readings, first.rules.unit));
}

function decisionsOf(
  { encoding, evidence }: { readonly encoding: string; readonly evidence: readonly string[] },
  split: Split,
  parts: Parts,
  { tables, evidence: settled, decimal }: SettledTables,
): IntakeDecisions {
  const [first] = tables;
  return {
    encoding,
    delimiter: split.shown,
    decimal,
    layout: first?.table.layout.kind ?? split.start.layout.kind,
    unit: first?.rules.unit ?? 'um',
    headerLine: split.start.header?.line ?? 0,
    evidence: [...evidence, ...split.evidence, ...parts.evidence, ...settled],
    metadata: parts.metadata,
  };
}

/** A table of names only; or one whose rows all give no reading. */
function noReadings({ source, delimiter, start, rows }: Split): Diagnostic {
  const row = start.header ?? rows[0];
  const at = row === undefined ? { file: source.name } : placeOf({ source, delimiter }, row, 0);
  const below = rows.filter(({ line }) => line > start.line).length;
  const message =
    below === 0
      ? 'the file names columns and holds no reading under them'
      : `the file holds no reading: none of its ${below} rows below gives one`;
  const hint = 'was the right file exported, and all of it?';
  return error('no-readings', message, { at, hint });
}
