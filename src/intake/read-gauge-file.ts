/**
 * Bytes of a gauge export → readings, the cells left out, and the decisions taken on the way.
 *
 * Never a silent guess: each stage either knows, says what it decided and on which evidence, or
 * refuses with the place and a way out. With an error there is no value: half a car is no car.
 */

import { type Diagnostic, error, found, type Outcome, refused } from '../base/diagnostics.ts';
import type { Reading } from '../film/reading.ts';
import { tellTitles } from './beside/lines-beside.ts';
import { linesOutside } from './beside/lines-outside.ts';
import { type Decoded, decode, type GaugeFileText, type GaugePiece } from './bytes/decode.ts';
import { tellJson } from './bytes/json-text.ts';
import { tellOwnResult } from './bytes/own-result.ts';
import { numberShape } from './cells/numbers.ts';
import { decisionsOf } from './decisions-of.ts';
import { doubtAllOffByTen } from './doubts/all-off-by-ten.ts';
import { doubtBlocksAnew } from './doubts/blocks-anew.ts';
import { tellCountedBlocks } from './doubts/counted-blocks.ts';
import { tellCounts } from './doubts/counts-said.ts';
import { withoutCutReading } from './doubts/cut-end.ts';
import { tellFarReadings } from './doubts/far-readings.ts';
import { tellHiddenRows } from './doubts/hidden-rows.ts';
import { tellLinesAgainst } from './doubts/lines-against.ts';
import { doubtLinesLikeRows } from './doubts/lines-like-rows.ts';
import { tellNoFilmColumns } from './doubts/no-film-columns.ts';
import { tellNotesAgainstRows } from './doubts/notes-against-rows.ts';
import { doubtPanelsInMil } from './doubts/panels-in-other-unit.ts';
import { tellPlacePoints } from './doubts/place-points.ts';
import { tellPointsApart } from './doubts/points-read-apart.ts';
import { tellQuietStatistics } from './doubts/quiet-statistics.ts';
import { tellRepeatedRows } from './doubts/repeated-rows.ts';
import { doubtNines } from './doubts/row-of-nines.ts';
import { tellRowsWithoutPoint } from './doubts/rows-without-point.ts';
import { tellSayingsLikeRows } from './doubts/sayings-like-rows.ts';
import { tellThinReadings } from './doubts/thin-readings.ts';
import { doubtUnitComments } from './doubts/unit-comments.ts';
import { doubtUnit } from './doubts/unit-doubt.ts';
import { tellUnknownStates } from './doubts/unknown-states.ts';
import { tellUnnamedSeries } from './doubts/unnamed-series.ts';
import { doubtVisits } from './doubts/visits-together.ts';
import { createFindings, type Findings } from './findings.ts';
import type { IntakeDecisions } from './intake-decisions.ts';
import { type IntakeOptions, panelSpelling, unknownRoles } from './intake-options.ts';
import type { Parts, Split } from './parts/section-state.ts';
import { divideIntoParts } from './parts/sections.ts';
import { findTable } from './parts/table-start.ts';
import { gridsOf } from './readings/number-grid.ts';
import {
  namesSeveral,
  operatorLines,
  severalInPieces,
  withOperators,
} from './readings/operator-lines.ts';
import { collectTable, createCollector, reservePoints } from './readings/readings.ts';
import { createNames, pointSpelling } from './readings/same-names.ts';
import {
  canonicalOptions,
  isCanonicalCsv,
  ownEvidence,
  restoredRows,
} from './rows/canonical-csv.ts';
import { delimiters } from './rows/dialect.ts';
import type { Row } from './rows/tokens.ts';
import { checkClaim } from './statistics/statistics-check.ts';
import { shellWord } from './tables/nearest-header.ts';
import { type Collected, type PlainTable, plainTable } from './tables/plain-table.ts';
import { type SettledTables, settleTables } from './tables/settle-tables.ts';
import { type ExcludedCell, type Metadatum, placeOf } from './tables/table.ts';

export type { GaugeFileText } from './bytes/decode.ts';
export type { IntakeDecisions } from './intake-decisions.ts';
export type { IntakeOptions } from './intake-options.ts';
export type { ExcludedCell } from './tables/table.ts';

export type GaugeReadings = {
  readonly readings: readonly Reading[];
  readonly excluded: readonly ExcludedCell[];
  readonly decisions: IntakeDecisions;
  /** The panels met, as the file names them; none where the user names no panel anew. */
  readonly panelsSeen: ReadonlySet<string>;
};

export function readGaugeFile(file: GaugeFileText, options: IntakeOptions): Outcome<GaugeReadings> {
  const wrongRoles = unknownRoles(options);
  if (wrongRoles.length > 0) return refused(...wrongRoles);
  if (file.piece !== undefined) return readPiece(file.piece, options);
  const decoded = decode(file, { encoding: options.encoding, limits: options.limits });
  if (decoded.value === undefined) return refused(...decoded.diagnostics);
  const { source } = decoded.value;
  const plain = file.leftOut === undefined ? plainTable(source, options) : undefined;
  const own = plain === undefined ? tellOwnResult(source) : undefined;
  if (own !== undefined) return refused(own);
  const text = { ...decoded.value, leftOut: file.leftOut };
  const read = readGaugeText(text, options, { noticed: decoded.diagnostics, plain });
  const json = read.value === undefined ? tellJson(source) : undefined;
  return json === undefined ? read : refused(json);
}

/** What the first piece of a long file decided holds for all that follow. */
function readPiece(piece: GaugePiece, options: IntakeOptions): Outcome<GaugeReadings> {
  const { decided } = piece;
  if (decided === undefined) {
    const own = tellOwnResult(piece.source);
    return own === undefined ? readGaugeText(piece, options) : refused(own);
  }
  const delimiter = delimiters.find((mark) => mark === decided.delimiter);
  const known: IntakeOptions = {
    ...options,
    decimal: decided.decimal === ',' ? ',' : '.',
    ...(delimiter === undefined ? {} : { delimiter }),
  };
  const read = readGaugeText(piece, known, { isLater: true });
  if (read.value === undefined) return read;
  const [own, before] = [read.value.decisions, decided].map((one) => operatorLines(one.metadata));
  const several = severalInPieces(own ?? [], before ?? [], piece.source);
  return several.length > 0
    ? refused(...read.diagnostics, ...several)
    : found(
        { ...read.value, decisions: { ...decided, unit: read.value.decisions.unit } },
        read.diagnostics,
      );
}

type GaugeText = Decoded & Pick<GaugePiece, 'earlier'> & Pick<GaugeFileText, 'leftOut'>;

type AboutText = {
  /** What was noticed of the bytes. */
  readonly noticed?: readonly Diagnostic[];
  /** Whether it is a later piece of a long file. */
  readonly isLater?: boolean;
  /** What it is, where it is a plain table. */
  readonly plain?: SettledText | undefined;
};

/** The same of a text: a whole file, or a piece of a long one under the head of its table. */
function readGaugeText(
  text: GaugeText,
  asked: IntakeOptions,
  { noticed = [], isLater = false, plain }: AboutText = {},
): Outcome<GaugeReadings> {
  const { source, encoding, evidence, earlier } = text;
  const canonical = isCanonicalCsv(source);
  const options = canonical ? canonicalOptions(asked) : asked;
  const findings = createFindings(source.name);
  findings.addAll(noticed);
  const whole = plain ?? settleText(text, options, findings, { canonical, isLater });
  if (whole === undefined) return refused(...findings.list());
  const { split, parts, settled } = whole;
  const people = operatorLines(parts.metadata);
  const collected = whole.collected ?? collect(settled, people, { options, findings, split });
  doubtUnits(settled.tables, collected.readings, options, findings);
  if (findings.hasErrors()) return refused(...findings.list());
  // What stands among the readings of a long file, its first piece shows.
  if (!isLater) {
    const grids = gridsOf(settled.tables);
    tellCountedBlocks(grids, findings);
    tellQuietStatistics(grids, findings);
    tellNoFilmColumns(grids, findings);
    if (!findings.hasErrors()) {
      tellRowsWithoutPoint(grids, findings);
      tellUnnamedSeries(settled.tables, findings);
    }
  }
  if (findings.hasErrors()) return refused(...findings.list());
  tellOfReadings(whole, collected, options, findings);
  if (!isLater) tellSayingsLikeRows(parts.metadata, settled.tables, collected.readings, findings);
  tellUnknownStates(
    settled.tables.map(({ table }) => table),
    findings,
  );
  const known = { source: split.source, metadata: parts.metadata };
  doubtVisits(settled, collected, { ...known, plausible: options.plausible }, findings);
  if (earlier === undefined)
    tellCounts(
      parts.metadata,
      { ...collected, excluded: [...settled.excluded, ...collected.excluded] },
      split.source,
      findings,
    );
  for (const claim of settled.claims) checkClaim(claim, findings, earlier);
  if (findings.hasErrors()) return refused(...findings.list());
  const told = decisionsOf({ encoding, evidence }, split, parts, settled);
  const decisions = canonical ? { ...told, evidence: ownEvidence(told.evidence, asked) } : told;
  const excluded = [...(whole.cut ?? []), ...settled.excluded, ...collected.excluded].sort(
    (a, b) => a.line - b.line,
  );
  const { readings, panelsSeen } = collected;
  return found({ readings, excluded, decisions, panelsSeen }, findings.list());
}

/** A text in its tables, with all that is decided about their numbers. */
type SettledText = Pick<PlainTable, 'split' | 'parts' | 'settled'> & {
  /** Its readings, where they are known already. */
  readonly collected?: Collected;
  /** Cells that the end of the file cut off. */
  readonly cut?: readonly ExcludedCell[];
};

/** Undefined where the text is refused: the findings say why. */
function settleText(
  { source, leftOut }: GaugeText,
  options: IntakeOptions,
  findings: Findings,
  { canonical, isLater }: { readonly canonical: boolean; readonly isLater: boolean },
): SettledText | undefined {
  const found = findTable(source, options);
  findings.addAll(found.diagnostics);
  const { value: split } = found;
  if (split === undefined) return undefined;
  const written = canonical ? restoredRows(split.rows) : split.rows;
  const rows = leftOut === undefined ? written : written.filter(({ line }) => !leftOut.has(line));
  const divided = divideIntoParts(rows, split.start, { ...split, findings });
  const whole = canonical ? withNamelessTables(divided) : divided;
  const cut = withoutCutReading(whole.tables, findings);
  const parts = { ...whole, tables: cut.tables };
  if (parts.tables.length === 0) {
    findings.addAll(findings.hasErrors() ? [] : [noReadings(split)]);
    return undefined;
  }
  tellHiddenRows(parts.tables, findings, canonical);
  doubtUnitComments(parts.tables, parts.units, findings);
  tellRepeatedRows(parts.tables, findings);
  doubtBlocksAnew(parts.tables, findings);
  const settled = settleTables(parts, options, findings);
  const outside = linesOutside(parts.tables).filter(
    ({ text }) => settled?.declaring.has(text) !== true,
  );
  tellLinesAgainst(outside, parts.tables, findings);
  doubtLinesLikeRows(outside, split.context.isPanel, findings);
  if (settled === undefined) return undefined;
  // A line that something is wrong with is told as that.
  if (!isLater && !findings.hasErrors()) {
    tellTitles(parts, split.start.header, { ...split, findings });
  }
  return { split, parts, settled, cut: cut.excluded };
}

function tellOfReadings(
  { split: { source, context }, settled: { tables } }: SettledText,
  { readings }: Collected,
  { plausible }: IntakeOptions,
  findings: Findings,
): void {
  for (const { table, rules } of tables) {
    tellNotesAgainstRows(table, rules.unit, context.isPanel, findings);
    tellPlacePoints(table, findings);
  }
  tellThinReadings(readings, plausible.doubtfulUnder, source, findings);
  tellFarReadings(readings, plausible.doubtfulUnder, source, findings);
  tellPointsApart(readings, plausible, source, findings);
}

type Known = {
  readonly options: IntakeOptions;
  readonly findings: Findings;
  readonly split: Split;
};

/** `people`: what lines say of who read the rows below. */
function collect(
  { tables }: SettledTables,
  people: readonly Metadatum[],
  { options, findings, split }: Known,
): Collected {
  const own = tables.map(({ table }) => table);
  const panels = panelSpelling(options.panelNames);
  const spelling = {
    name: createNames(),
    point: pointSpelling(own, findings),
    panel: panels.spell,
  };
  const severalOperators =
    namesSeveral(people) || own.some(({ layout }) => layout.columns.has('operator'));
  const collector = createCollector(spelling, severalOperators, findings);
  for (const table of own) reservePoints(table, collector);
  const { excluded } = collector;
  const starts = tables.map((table) => {
    const start = collector.readings.length;
    collectTable(table, collector);
    return start;
  });
  const readings = withOperators(collector.readings, people);
  const byTable =
    tables.length === 1
      ? [readings]
      : starts.map((start, k) => readings.slice(start, starts[k + 1]));
  if (readings.length === 0 && !findings.hasErrors()) findings.addAll([noReadings(split)]);
  return { readings, byTable, excluded, panelsSeen: panels.seen };
}

function doubtUnits(
  tables: SettledTables['tables'],
  readings: readonly Reading[],
  { plausible, unit, ownUnitTold }: IntakeOptions,
  findings: Findings,
): void {
  const first = tables.find(({ table }) => (table.header ?? table.rows[0]) !== undefined);
  const row = first?.table.header ?? first?.table.rows[0];
  if (first === undefined || row === undefined) return;
  const at = () => placeOf(first.table, row, first.table.layout.readings[0]?.column ?? 0);
  const isAsked =
    unit !== undefined || (ownUnitTold === true && isCanonicalCsv(first.table.source));
  const inMil = isAsked ? [] : doubtPanelsInMil(readings, plausible, first.table.source);
  const doubted =
    inMil.length > 0 ? inMil : doubtUnit(readings, first.rules.unit, plausible, at, isAsked);
  findings.addAll(doubted.length > 0 ? doubted : doubtAllOffByTen(readings, at));
  findings.addAll(doubtNines(readings, first.rules.unit));
}

/** Our own table of readings whose panel nobody names: its column of panels is empty throughout. */
function withNamelessTables(parts: Parts): Parts {
  const tables = parts.tables.map((table) => {
    const panelAt = table.layout.columns.get('panel') ?? -1;
    const isNameless = table.rows.every(({ cells }) => cells[panelAt] === '');
    return isNameless ? { ...table, given: { ...table.given, panel: '' } } : table;
  });
  return { ...parts, tables };
}

const isFilled = (row: Row, column: number): boolean =>
  numberShape(row.cells[column]?.trim() ?? '') !== undefined;

/** A table of names only; or one whose rows all give no reading. */
function noReadings({ source, delimiter, start, rows }: Split): Diagnostic {
  const row = start.header ?? rows[0];
  const at = row === undefined ? { file: source.name } : placeOf({ source, delimiter }, row, 0);
  const below = rows.filter(({ line }) => line > start.line).length;
  const message =
    below === 0
      ? 'the file names columns and holds no reading under them'
      : `the file holds no reading: none of its ${below} rows below gives one`;
  const beside = start.layout.unknown.find(
    (column) => below > 0 && rows.every((one) => one.line <= start.line || isFilled(one, column)),
  );
  const name = start.layout.header[beside ?? -1]?.text ?? '';
  const hint =
    name === ''
      ? 'was the right file exported, and all of it?'
      : `"${name}" holds numbers: if they are the readings, --columns ${shellWord(`reading=${name}`)}`;
  return error('no-readings', message, { at, hint });
}
