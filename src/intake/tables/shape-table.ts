/**
 * The rows and columns of a table that are readings, and nothing else: units, statistics and numbers written
 * otherwise are taken out or put right, names filled in, and what speaks against a row is said.
 */

import { checkBorrowed } from '../doubts/borrowed-columns.ts';
import { tellDoubtedRows } from '../doubts/doubted-rows.ts';
import { doubtJudgements } from '../doubts/judging-columns.ts';
import { tellLostDigits } from '../doubts/lost-digits.ts';
import { tellOtherQuantities } from '../doubts/other-quantities.ts';
import { doubtParted } from '../doubts/parted-readings.ts';
import { doubtPointsAnew, tellPanelsAnew } from '../doubts/points-anew.ts';
import { doubtRowsAllShort } from '../doubts/rows-all-short.ts';
import { doubtSides } from '../doubts/side-columns.ts';
import { doubtSwapped } from '../doubts/swapped-columns.ts';
import { tellUnnamedCells } from '../doubts/unnamed-cells.ts';
import { doubtVehicleNumbers } from '../doubts/vehicle-numbers.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Claim } from '../statistics/statistics-check.ts';
import { columnClaims, rowClaims } from '../statistics/statistics-claims.ts';
import { leaveOutStatistics } from '../statistics/statistics-rows.ts';
import { takeOneUnit } from '../units/two-units.ts';
import { adoptUnitColumn } from '../units/unit-column.ts';
import { takeUnitsBehindPanels } from '../units/units-behind-panels.ts';
import { takeUnitsBehindPoints } from '../units/units-behind-points.ts';
import { takeUnitsRow } from '../units/units-row.ts';
import { takeCounter } from './counting-column.ts';
import { undressNumbers } from './dressed-numbers.ts';
import { withoutFalseRepeats } from './false-repeats.ts';
import { fillDown } from './fill-down.ts';
import { leaveOutGaugeChecks } from './gauge-check-rows.ts';
import { takeIndex } from './index-column.ts';
import { adoptKeepingColumn } from './keeping-column.ts';
import { adoptColumns } from './layout-questions.ts';
import { adoptMetalColumn } from './metal-column.ts';
import { takeMetalsBehind } from './metals-behind.ts';
import { leaveOutNamelessMean } from './nameless-mean.ts';
import { partLabels } from './numbered-labels.ts';
import { withoutSecondNames } from './second-names.ts';
import { partSeveral } from './several-in-cell.ts';
import { joinSides } from './side-column.ts';
import { adoptStateColumn } from './state-column.ts';
import type { ExcludedCell, Table } from './table.ts';
import { adoptUnnamedReadings } from './unnamed-readings.ts';
import { joinDecimalCommas } from './unquoted-commas.ts';

export type ShapedTable = {
  readonly table: Table;
  readonly unitsRow: Row | undefined;
  readonly excluded: readonly ExcludedCell[];
  readonly claims: readonly Claim[];
  readonly texts: ReadonlyMap<string, number>;
  readonly evidence: readonly string[];
};

export function shapeTable(
  written: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): ShapedTable {
  const evidence: string[] = [];
  /** The table as a step makes it; where it makes nothing of it, as it was. */
  const after = (table: Table, step: Step): Table => {
    const made = step(table);
    if (made === undefined) return table;
    evidence.push(...[made.evidence].flat());
    return made.table;
  };
  const counted = after(written, takeCounter);
  const behind = after(counted, (table) => takeUnitsBehindPanels(table, isPanel));
  const points = after(behind, takeUnitsBehindPoints);
  const { table: united, units: unitsRow } = takeUnitsRow(adoptUnitColumn(points));
  const steps: readonly Step[] = [
    (table) => takeOneUnit(table, findings),
    takeMetalsBehind,
    undressNumbers,
    (table) => partSeveral(table, findings),
    joinDecimalCommas,
    takeIndex,
    leaveOutNamelessMean,
    (table) => adoptUnnamedReadings(table, findings),
    (table) => joinSides(table, isPanel),
    withoutFalseRepeats,
    (table) => withoutSecondNames(table, isPanel),
    adoptKeepingColumn,
    adoptStateColumn,
    adoptMetalColumn,
  ];
  const measured = adoptColumns(steps.reduce(after, united), findings);
  const checked = leaveOutGaugeChecks(measured, isPanel, findings);
  const { table: named, excluded, rows } = leaveOutStatistics(checked.table, isPanel, findings);
  doubtPointsAnew(named, findings);
  const complete = after(named, (table) => fillDown(table, findings));
  const table = after(complete, (own) => partLabels(own, isPanel));
  doubt(table, isPanel, findings);
  const claims = [...rowClaims(table, rows), ...columnClaims(table)];
  return {
    ...{ table, unitsRow, claims, evidence },
    excluded: [...checked.excluded, ...excluded],
    texts: countReadingTexts(table),
  };
}

type Step = (
  table: Table,
) => { readonly table: Table; readonly evidence: string | readonly string[] } | undefined;

function doubt(table: Table, isPanel: (label: string) => boolean, findings: Findings): void {
  checkBorrowed(table, isPanel, findings);
  doubtRowsAllShort(table, findings);
  doubtJudgements(table, findings);
  tellOtherQuantities(table, isPanel, findings);
  doubtSides(table, findings);
  doubtSwapped(table, findings);
  doubtVehicleNumbers(table, findings);
  doubtParted(table, findings);
  tellDoubtedRows(table, findings);
  tellUnnamedCells(table, findings);
  tellPanelsAnew(table, findings);
  tellLostDigits(table, findings);
}

/** How often each text stands among the readings: few texts stand for many cells. */
function countReadingTexts({ layout, rows }: Table): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const [only, second] = layout.readings;
  if (only !== undefined && second === undefined) {
    for (const [text, { count }] of columnTexts(rows, only.column)) counts.set(text, count);
    return counts;
  }
  for (const row of rows) {
    for (const { column } of layout.readings) {
      const text = cellText(row, column);
      counts.set(text, (counts.get(text) ?? 0) + 1);
    }
  }
  return counts;
}
