/**
 * What is decided about the numbers of all tables of a file together: which rows and columns are
 * statistics, the unit of each table, and the decimal mark of the file.
 */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { tellLostMicro } from '../bytes/lost-micro.ts';
import { decideDecimal } from '../cells/decimal.ts';
import { type MarkerLegend, markerLegend } from '../cells/markers.ts';
import { ownUnitSentence } from '../cells/own-unit.ts';
import { largestIn, type TableUnit } from '../cells/unit.ts';
import { checkBorrowed } from '../doubts/borrowed-columns.ts';
import { tellDoubtedRows } from '../doubts/doubted-rows.ts';
import { doubtJudgements } from '../doubts/judging-columns.ts';
import { tellLostDigits } from '../doubts/lost-digits.ts';
import { tellOtherQuantities } from '../doubts/other-quantities.ts';
import { doubtPointsAnew, tellPanelsAnew } from '../doubts/points-anew.ts';
import { doubtPairs } from '../doubts/shifted-cells.ts';
import { doubtSides } from '../doubts/side-columns.ts';
import type { Findings } from '../findings.ts';
import { type IntakeOptions, layoutContext } from '../intake-options.ts';
import type { SettledTable } from '../readings/readings.ts';
import type { Row } from '../rows/tokens.ts';
import type { Claim } from '../statistics/statistics-check.ts';
import {
  columnClaims,
  rowClaims,
  sayingClaims,
  summaryClaims,
} from '../statistics/statistics-claims.ts';
import { leaveOutStatistics } from '../statistics/statistics-rows.ts';
import { undressNumbers } from './dressed-numbers.ts';
import { fillDown } from './fill-down.ts';
import { adoptColumns } from './layout-questions.ts';
import { decideUnit } from './reading-unit.ts';
import type { Parts } from './section-state.ts';
import { partSeveral } from './several-in-cell.ts';
import { apartTables } from './side-by-side.ts';
import { fitsOtherUnit, sizesOf } from './size-in-units.ts';
import { type ExcludedCell, placeOf, type Table } from './table.ts';
import { takeOneUnit } from './two-units.ts';
import { adoptUnitColumn } from './unit-column.ts';
import type { UnitDecision } from './units-in-cells.ts';
import { takeUnitsRow } from './units-row.ts';
import { adoptUnnamedReadings } from './unnamed-readings.ts';
import { joinDecimalCommas } from './unquoted-commas.ts';

export type SettledTables = {
  readonly tables: readonly SettledTable[];
  readonly excluded: readonly ExcludedCell[];
  readonly claims: readonly Claim[];
  readonly decimal: string;
  readonly evidence: readonly string[];
};

/** Undefined where a unit is missing or contradicted: the findings say which. */
export function settleTables(
  parts: Parts,
  options: IntakeOptions,
  findings: Findings,
): SettledTables | undefined {
  const context = layoutContext(options);
  const { isPanel } = context;
  const apart = parts.tables.flatMap((table) => apartTables(table, context));
  const shaped = apart.map((table) => shapeTable(table, isPanel, findings));
  if (options.decimal !== '.') for (const { table } of shaped) doubtPairs(table, findings);
  const units = decideUnits(shaped, parts, options, findings);
  if (units === undefined) return undefined;
  const counts = addCounts(shaped.map(({ texts }) => texts));
  const [first] = units;
  const largest = options.plausible.largestReading;
  const decimal = decideDecimal(counts, largestIn(first?.unit ?? 'um', largest), options.decimal);
  const ownUnitsSaid = ownUnitSentence(counts, first?.unit ?? 'um');
  const legend = legendOf(parts);
  const tables = shaped.map(({ table }, k): SettledTable => {
    const { unit, byRow, cellsNameUnits } = units[k] ?? {
      unit: 'um',
      byRow: false,
      cellsNameUnits: false,
    };
    const rules = {
      ...{ unit, decimal, largest, cellsNameUnits, legend },
      ownUnits: ownUnitsSaid !== undefined && unit === first?.unit,
    };
    return { table, rules, unitByRow: byRow, rowsArePoints: pointsInRows(table) };
  });
  const own = shaped.map(({ table }) => table);
  const excludedSayings = leaveOutSayings(own, parts.statistics, findings);
  const unitEvidence = new Set(units.map(({ evidence }) => evidence));
  const shapes = new Set(shaped.flatMap(({ evidence }) => evidence));
  const numbered = new Set(tables.flatMap(numberedSentence));
  return {
    tables,
    excluded: [...shaped.flatMap(({ excluded }) => excluded), ...excludedSayings],
    claims: [
      ...shaped.flatMap(({ claims }) => claims),
      ...sayingClaims(own, parts.statistics),
      ...summaryClaims(own, parts.summaries),
    ],
    decimal: decimal.mark,
    evidence: [
      ...shapes,
      ...numbered,
      ...unitEvidence,
      ...(ownUnitsSaid === undefined ? [] : [ownUnitsSaid]),
      decimal.evidence,
    ],
  };
}

function leaveOutSayings(
  [table]: readonly Table[],
  sayings: Parts['statistics'],
  findings: Findings,
): readonly ExcludedCell[] {
  if (table === undefined) return [];
  return sayings.map(({ row, saying: { key, value, column } }) => {
    const at = placeOf(table, row, column);
    const reason = `a line of statistics: ${key} is no reading`;
    findings.add('warning', 'statistics-left-out', () => ({ message: reason, at }));
    const { file, line = 0, column: first = 0 } = at;
    return { file, line, column: first, text: value, class: 'statistics', reason };
  });
}

type ShapedTable = {
  readonly table: Table;
  readonly unitsRow: Row | undefined;
  readonly excluded: readonly ExcludedCell[];
  readonly claims: readonly Claim[];
  readonly texts: ReadonlyMap<string, number>;
  readonly evidence: readonly string[];
};

/** The rows and columns of a table that are readings, and nothing else. */
function shapeTable(
  written: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): ShapedTable {
  const { table: united, units: unitsRow } = takeUnitsRow(adoptUnitColumn(written));
  const single = takeOneUnit(united, findings);
  const { table: undressedTable, evidence: undressed } = undressNumbers(single?.table ?? united);
  const several = partSeveral(undressedTable);
  const measured = several?.table ?? undressedTable;
  const joined = joinDecimalCommas(measured);
  const further = adoptUnnamedReadings(joined ?? measured);
  const adopted = adoptColumns(further ?? joined ?? measured, findings);
  const { table: named, excluded, rows } = leaveOutStatistics(adopted, isPanel, findings);
  doubtPointsAnew(named, findings);
  const { table, evidence: filled } = fillDown(named, findings);
  checkBorrowed(table, isPanel, findings);
  doubtJudgements(table, findings);
  tellOtherQuantities(table, isPanel, findings);
  doubtSides(table, findings);
  tellDoubtedRows(table, findings);
  tellPanelsAnew(table, findings);
  tellLostDigits(table, findings);
  const evidence = [
    ...(single === undefined ? [] : [single.evidence]),
    ...undressed,
    ...(several === undefined ? [] : [several.evidence]),
    ...(joined === undefined
      ? []
      : ['every row has one cell too many for each reading: unquoted decimal commas, joined']),
    ...(further === undefined
      ? []
      : ['columns without a name beside the readings hold further readings as large']),
    ...filled,
  ];
  const claims = [...rowClaims(table, rows), ...columnClaims(table)];
  return { table, unitsRow, excluded, claims, texts: countReadingTexts(table), evidence };
}

/**
 * The unit of each table; one that says nothing has that of the tables that do, if they agree: but
 * not a unit that a line names below it, which may be where the unit changed.
 */
function decideUnits(
  shaped: readonly ShapedTable[],
  { units: above }: Parts,
  options: IntakeOptions,
  findings: Findings,
): readonly UnitDecision[] | undefined {
  const outcomes = shaped.map(({ table, unitsRow, texts }, k) =>
    decideUnit(table, {
      ...{ above, unitsRow, texts, given: options.unit },
      since: shaped[k - 1]?.table.rows.at(-1)?.line ?? 0,
      largest: options.plausible.largestReading,
    }),
  );
  const known = outcomes.flatMap(({ value }) => value ?? []);
  const [first] = known;
  const agree = known.every(({ unit }) => unit === first?.unit);
  const table = shaped[0]?.table;
  const sizes = sizesOf(
    shaped.flatMap(({ texts }, k) => (outcomes[k]?.value === undefined ? [] : [...texts.keys()])),
  );
  const decisions = outcomes.map(({ value, diagnostics }, k) => {
    const missing = diagnostics.every(({ code }) => code === 'unit-missing');
    const isLike = (unit: TableUnit): boolean =>
      sizes === undefined ||
      ![...(shaped[k]?.texts.keys() ?? [])].some((text) => fitsOtherUnit(text, unit, sizes));
    if (value === undefined && missing && agree && above.length === 0 && first !== undefined) {
      if (isLike(first.unit)) return first;
    }
    findings.addAll(diagnostics.map((diagnostic) => lostOr(diagnostic, table)));
    return value;
  });
  const all = decisions.flatMap((decision) => decision ?? []);
  if (all.length < decisions.length) return undefined;
  const lost = table === undefined ? undefined : lostMicro(table, true);
  if (lost !== undefined) findings.addAll([lost]);
  return all;
}

/** A unit that is missing because its µ was lost on the way is told as such. */
function lostOr(diagnostic: Diagnostic, table: Table | undefined): Diagnostic {
  const { code } = diagnostic;
  if (table === undefined || (code !== 'unit-missing' && code !== 'unit-unknown'))
    return diagnostic;
  return lostMicro(table, false) ?? diagnostic;
}

const lostMicro = ({ source }: Table, unitKnown: boolean): Diagnostic | undefined =>
  source.text.includes('?m') || source.text.includes('\ufffd')
    ? tellLostMicro(source, unitKnown)
    : undefined;

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

function addCounts(all: readonly ReadonlyMap<string, number>[]): ReadonlyMap<string, number> {
  const [first = new Map<string, number>(), ...more] = all;
  if (more.length === 0) return first;
  const sum = new Map(first);
  for (const counts of more) {
    for (const [text, count] of counts) sum.set(text, (sum.get(text) ?? 0) + count);
  }
  return sum;
}

/** How much of a file is looked through for an explanation of signs: its start and its end. */
const legendRoom = 20_000;

function legendOf({ tables: [first] }: Parts): MarkerLegend {
  const text = first?.source.text ?? '';
  const ends =
    text.length > 2 * legendRoom ? text.slice(0, legendRoom) + text.slice(-legendRoom) : text;
  return markerLegend(ends.split('\n'));
}

/** Whether a table with numbered columns has several rows of one panel, and no point to tell them by. */
function pointsInRows({ layout, rows, given }: Table): boolean {
  const { columns, kind, series } = layout;
  if (kind !== 'repeats' || series === 'point' || columns.has('point') || given.point !== null)
    return false;
  const [panelAt = -1, vehicleAt = -1, layerAt = -1] = (['panel', 'vehicle', 'layer'] as const).map(
    (role) => columns.get(role),
  );
  const seen = new Set<string>();
  return rows.some(({ cells }) => {
    const key = [vehicleAt, panelAt, layerAt].map((k) => (cells[k] ?? '').trim()).join('\0');
    const again = seen.has(key);
    seen.add(key);
    return again;
  });
}

function hasRowsAgain({ layout, rows }: Table): boolean {
  const panelAt = layout.columns.get('panel') ?? -1;
  const vehicleAt = layout.columns.get('vehicle') ?? -1;
  const names = rows.map(
    ({ cells }) => `${cells[vehicleAt] ?? ''}\0${(cells[panelAt] ?? '').trim()}`,
  );
  return new Set(names).size < names.length;
}

/** What numbered columns were taken for. */
function numberedSentence({ table, rowsArePoints }: SettledTable): readonly string[] {
  const { kind, series, columns, readings } = table.layout;
  if (readings.length < 2 || kind === 'wide') return [];
  const what = `${readings.length} columns of readings are`;
  if (series === 'point') return [`${what} points, as their names say`];
  if (columns.has('point') || table.given.point !== null)
    return [`${what} repeats of the row’s point`];
  return [
    rowsArePoints
      ? `several rows name one panel: each row is a point, and ${what} repeats there`
      : hasRowsAgain(table)
        ? `${what} further points of the row’s panel, counted on where it has several rows`
        : `each panel has one row: ${what} points 1 to ${readings.length}`,
  ];
}
