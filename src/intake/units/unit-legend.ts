/**
 * Lines that say which unit a code stands for: `Units: 1 = micrometre, 2 = mil`. Codes that they name in the column of
 * units, each once, are the units of those rows; a code that no line explains is refused where it stands. Where no
 * column is called one of units, the one behind the readings is, if every row has a code of the lines there and no
 * other column that nobody knows has.
 */

import { once } from '../../base/kept.ts';
import { linesOutside } from '../beside/lines-outside.ts';
import { type TableUnit, unitNamed, unitSign } from '../cells/unit.ts';
import type { Parts } from '../parts/section-state.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Table } from '../tables/table.ts';
import { mayHoldUnits } from './unit-column.ts';

type UnitLegend = ReadonlyMap<string, TableUnit>;

/** `u: µm, m: mil` are two codes, `U: 1 = µm` has a heading. */
const heading = once(
  () => /^[\s#/"*]*(?:[^=:,;\d]{2,40}[:,;\t]\s*|\p{L}:\s*(?=[^\s=:]{1,8}\s*=))?/u,
);
const pair = /^\s*"?([^\s=:]{1,8})"?\s*(?:=|:|->|→)\s*(\S(?:.{0,22}\S)?)[\s".]*$/u;
const longestLine = 200;

/** What a line says of codes, undefined where any part of it says something else. */
export function unitLegendIn(line: string): UnitLegend | undefined {
  if (line.length > longestLine || !/[=:>→]/u.test(line)) return undefined;
  const legend = new Map<string, TableUnit>();
  const parts = line.replace(heading(), '').split(/[,;|\t]/u);
  for (const part of parts.filter((own) => own.trim() !== '')) {
    const [, code = '', name = ''] = pair.exec(part) ?? [];
    const unit = unitNamed(name);
    if (unit === undefined || unit === 'other' || unitNamed(code) !== undefined) return undefined;
    if (legend.has(code)) return undefined;
    legend.set(code, unit);
  }
  return legend.size === 0 ? undefined : legend;
}

export function withLegendUnits(parts: Parts): {
  readonly parts: Parts;
  readonly evidence: readonly string[];
} {
  const none = { parts, evidence: [] };
  const codes = new Set(parts.tables.flatMap(codesOf));
  // Nearly every file ends here.
  if (codes.size === 0) return none;
  const legend = legendOf(parts);
  if (legend === undefined) return none;
  const said = [...codes].flatMap((code) => {
    const unit = legend.get(code);
    return unit === undefined ? [] : [`${code} is ${unitSign[unit]}`];
  });
  const isNamed = parts.tables.some(({ layout }) => layout.columns.has('unit'));
  if (said.length === 0 && !isNamed) return none;
  return {
    parts: {
      ...parts,
      tables: parts.tables.map((table) => withUnits(table, legend)),
      units: parts.units.filter(({ row }) => unitLegendIn(row.cells.join(';')) === undefined),
    },
    evidence: said.length === 0 ? [] : [`the file says what its units are: ${said.join(', ')}`],
  };
}

/** What all lines say together; undefined where they say nothing, or two things of one code. */
function legendOf(parts: Parts): UnitLegend | undefined {
  const legend = new Map<string, TableUnit>();
  for (const { text } of linesOutside(parts.tables)) {
    for (const [code, unit] of unitLegendIn(text) ?? []) {
      if (legend.has(code) && legend.get(code) !== unit) return undefined;
      legend.set(code, unit);
    }
  }
  return legend.size === 0 ? undefined : legend;
}

/** What stands in the column of units and is none; an empty cell says nothing. */
function codesOf({ layout, rows }: Table): readonly string[] {
  const column = layout.columns.get('unit') ?? mayHoldUnits(layout);
  if (column === undefined) return [];
  const texts = [...columnTexts(rows, column).keys()];
  if (!layout.columns.has('unit') && texts.length > mostCodes) return [];
  return texts.filter((text) => text !== '' && text.length <= 8 && unitNamed(text) === undefined);
}
/** Units of film thickness are fewer. */
const mostCodes = 4;

/** The column of units, or the only one that can be. */
function unitColumn({ layout, rows }: Table, legend: UnitLegend): number | undefined {
  const named = layout.columns.get('unit');
  if (named !== undefined) return named;
  const holdsCodes = (column: number): boolean =>
    [...columnTexts(rows, column).keys()].every((text) => legend.has(text));
  const column = mayHoldUnits(layout);
  const others = layout.unknown.filter((k) => k !== column && holdsCodes(k));
  return column !== undefined && holdsCodes(column) && others.length === 0 ? column : undefined;
}

function withUnits(table: Table, legend: UnitLegend): Table {
  const column = unitColumn(table, legend);
  if (column === undefined) return table;
  const rows = table.rows.map((row) => {
    const unit = legend.get(cellText(row, column));
    return unit === undefined
      ? row
      : { ...row, cells: row.cells.with(column, unitSign[unit]), quoted: true };
  });
  return { ...table, rows };
}
