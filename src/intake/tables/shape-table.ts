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
import { doubtSides } from '../doubts/side-columns.ts';
import { doubtSwapped } from '../doubts/swapped-columns.ts';
import { tellUnnamedCells } from '../doubts/unnamed-cells.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import type { Row } from '../rows/tokens.ts';
import type { Claim } from '../statistics/statistics-check.ts';
import { columnClaims, rowClaims } from '../statistics/statistics-claims.ts';
import { leaveOutStatistics } from '../statistics/statistics-rows.ts';
import { undressNumbers } from './dressed-numbers.ts';
import { fillDown } from './fill-down.ts';
import { adoptColumns } from './layout-questions.ts';
import { partLabels } from './numbered-labels.ts';
import { partSeveral } from './several-in-cell.ts';
import { joinSides } from './side-column.ts';
import type { ExcludedCell, Table } from './table.ts';
import { takeOneUnit } from './two-units.ts';
import { adoptUnitColumn } from './unit-column.ts';
import { takeUnitsBehindPanels } from './units-behind-panels.ts';
import { takeUnitsRow } from './units-row.ts';
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
  const behind = takeUnitsBehindPanels(written, isPanel);
  const { table: united, units: unitsRow } = takeUnitsRow(
    adoptUnitColumn(behind?.table ?? written),
  );
  const single = takeOneUnit(united, findings);
  const { table: undressedTable, evidence: undressed } = undressNumbers(single?.table ?? united);
  const several = partSeveral(undressedTable);
  const measured = several?.table ?? undressedTable;
  const joined = joinDecimalCommas(measured);
  const further = adoptUnnamedReadings(joined ?? measured);
  const sided = joinSides(further ?? joined ?? measured, isPanel);
  const adopted = adoptColumns(sided?.table ?? further ?? joined ?? measured, findings);
  const { table: named, excluded, rows } = leaveOutStatistics(adopted, isPanel, findings);
  doubtPointsAnew(named, findings);
  const { table: complete, evidence: filled } = fillDown(named, findings);
  const parted = partLabels(complete, isPanel);
  const table = parted?.table ?? complete;
  checkBorrowed(table, isPanel, findings);
  doubtJudgements(table, findings);
  tellOtherQuantities(table, isPanel, findings);
  doubtSides(table, findings);
  doubtSwapped(table, findings);
  doubtParted(table, findings);
  tellDoubtedRows(table, findings);
  tellUnnamedCells(table, findings);
  tellPanelsAnew(table, findings);
  tellLostDigits(table, findings);
  const evidence = [
    ...(behind === undefined ? [] : [behind.evidence]),
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
    ...(parted === undefined ? [] : [parted.evidence]),
    ...(sided === undefined ? [] : [sided.evidence]),
  ];
  const claims = [...rowClaims(table, rows), ...columnClaims(table)];
  return { table, unitsRow, excluded, claims, texts: countReadingTexts(table), evidence };
}

/** How often each text stands among the readings: few texts stand for many cells. */
function countReadingTexts({ layout, rows }: Table): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const [only, second] = layout.readings;
  if (only !== undefined && second === undefined) {
    for (const [text, { count }] of columnTexts(rows, only.column)) counts.set(text, count);
    return counts;
  }
  for (const { cells } of rows) {
    for (const { column } of layout.readings) {
      const text = (cells[column] ?? '').trim();
      counts.set(text, (counts.get(text) ?? 0) + 1);
    }
  }
  return counts;
}
