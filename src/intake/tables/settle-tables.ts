/**
 * What is decided about the numbers of all tables of a file together: which rows and columns are
 * statistics, the unit of each table, and the decimal mark of the file.
 */

import { linesOutside } from '../beside/lines-outside.ts';
import { withLegendNames } from '../beside/panel-legend.ts';
import { decideDecimal } from '../cells/decimal.ts';
import { declaredNumbers, declaredReason } from '../cells/declared-numbers.ts';
import { fewAmong } from '../cells/few-among.ts';
import { type MarkerLegend, markerLegend, mayExplainMarkers } from '../cells/markers.ts';
import { ownUnitSentence } from '../cells/own-unit.ts';
import { remarksSentence } from '../cells/remarks-said.ts';
import { largestIn } from '../cells/unit.ts';
import { doubtPairs } from '../doubts/shifted-cells.ts';
import { doubtSideBySide } from '../doubts/side-by-side-visits.ts';
import { doubtTwoAboutCommas } from '../doubts/two-about-a-comma.ts';
import type { Findings } from '../findings.ts';
import { type IntakeOptions, layoutContext } from '../intake-options.ts';
import type { Parts } from '../parts/section-state.ts';
import { apartTables } from '../parts/side-by-side.ts';
import type { SettledTable } from '../readings/readings.ts';
import { marksByStatistics, withThousandsJoined } from '../statistics/marks-by-statistics.ts';
import type { Claim } from '../statistics/statistics-check.ts';
import { sayingClaims, summaryClaims } from '../statistics/statistics-claims.ts';
import { decideUnits } from '../units/table-units.ts';
import { withLegendUnits } from '../units/unit-legend.ts';
import { numberedSentence, placesArePoints, pointsInRows } from './numbered-readings.ts';
import { shapeTable } from './shape-table.ts';
import { type ExcludedCell, ofNoPanel, placeOf, type Table } from './table.ts';
import { tablesOfSides } from './tables-of-sides.ts';

export type SettledTables = {
  readonly tables: readonly SettledTable[];
  readonly excluded: readonly ExcludedCell[];
  readonly claims: readonly Claim[];
  readonly decimal: string;
  readonly evidence: readonly string[];
  /** Lines that say of a number that it is no reading. */
  readonly declaring: ReadonlySet<string>;
};

/** Undefined where a unit is missing or contradicted: the findings say which. */
export function settleTables(
  written: Parts,
  options: IntakeOptions,
  findings: Findings,
): SettledTables | undefined {
  const context = layoutContext(options);
  const inUnits = withLegendUnits(written);
  const { parts } = inUnits;
  const { isPanel } = context;
  const legend = withLegendNames(parts.tables, isPanel);
  const besides = legend.tables.map((table) => apartTables(table, context));
  for (const tables of besides) doubtSideBySide(tables, findings);
  const apart = besides.flat().flatMap((table) => tablesOfSides(table, context, findings));
  const shaped = apart.map((table) => shapeTable(table, isPanel, findings));
  if (options.decimal !== '.') for (const { table } of shaped) doubtPairs(table, findings);
  const units = decideUnits(shaped, parts, options, findings);
  if (units === undefined) return undefined;
  const counts = addCounts(shaped.map(({ texts }) => texts));
  const own = shaped.map(({ table }) => table);
  if (options.decimal === undefined) doubtTwoAboutCommas(own, counts, findings);
  const [first] = units;
  const largest = options.plausible.largestReading;
  const claims = [
    ...shaped.flatMap((table) => table.claims),
    ...sayingClaims(own, parts.statistics),
    ...summaryClaims(own, parts.summaries),
  ];
  const marks = decideDecimal(counts, largestIn(first?.unit ?? 'um', largest), options.decimal);
  const decimal = marksByStatistics(marks, claims) ?? marks;
  const ownUnitsSaid = ownUnitSentence(counts, first?.unit ?? 'um');
  const few = fewAmong(counts);
  const asides = {
    legend: legendOf(parts),
    declared: declaredNumbers(counts, largestIn(first?.unit ?? 'um', largest)(), () =>
      linesOutside(own).map(({ text }) => text),
    ),
    fewNegative: few.fewNegative,
    minusOneIsNone: few.minusOneIsNone,
  };
  const tables = shaped.map(({ table }, k): SettledTable => {
    const { unit, byRow, byColumn, cellsNameUnits } = units[k] ?? {
      unit: 'um',
      byRow: false,
      byColumn: undefined,
      cellsNameUnits: false,
    };
    const rules = {
      ...{ unit, decimal, largest, cellsNameUnits, ...asides },
      ownUnits: ownUnitsSaid !== undefined && unit === first?.unit,
    };
    return {
      ...{ table, rules, unitByRow: byRow, rowsArePoints: pointsInRows(table) },
      placesArePoints: placesArePoints(table),
      ...(byColumn === undefined ? {} : { unitsByColumn: byColumn }),
    };
  });
  const excludedSayings = leaveOutSayings(own, parts.statistics, findings);
  const unitEvidence = new Set(units.map(({ evidence }) => evidence));
  const shapes = new Set([
    ...inUnits.evidence,
    ...legend.evidence,
    ...shaped.flatMap(({ evidence }) => evidence),
  ]);
  const numbered = new Set(tables.flatMap(numberedSentence));
  const remarks = remarksSentence(counts.keys());
  return {
    tables,
    excluded: [...shaped.flatMap(({ excluded }) => excluded), ...excludedSayings],
    claims: withThousandsJoined(claims, decimal),
    decimal: decimal.mark,
    declaring: new Set(asides.declared.values()),
    evidence: [
      ...shapes,
      ...numbered,
      ...unitEvidence,
      ...(ownUnitsSaid === undefined ? [] : [ownUnitsSaid]),
      decimal.evidence,
      ...(remarks === undefined ? [] : [remarks]),
      ...[...asides.declared].map(([number, line]) => declaredReason(String(number), line)),
    ],
  };
}

function leaveOutSayings(
  tables: readonly Table[],
  sayings: Parts['statistics'],
  findings: Findings,
): readonly ExcludedCell[] {
  const [table] = tables;
  if (table === undefined) return [];
  // Where a table has no readings, the line may be all that is known of a panel.
  const severity = tables.every(({ rows }) => rows.length > 0) ? 'note' : 'warning';
  return sayings.map(({ row, saying: { key, value, column } }) => {
    const at = placeOf(table, row, column);
    const reason = `a line of statistics: ${key} is no reading`;
    findings.add(severity, 'statistics-left-out', () => ({ message: reason, at }));
    const { file, line = 0, column: first = 0 } = at;
    return {
      ...{ file, line, column: first, text: value },
      ...{ class: 'statistics', reason, ...ofNoPanel },
    };
  });
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
  return mayExplainMarkers(ends) ? markerLegend(ends.split('\n')) : new Map();
}
