/**
 * Lines that say what panel a number or a code stands for: `1 = bonnet`, `A: Motorhaube, B: Dach`. Where they name
 * every panel of the tables, those names are the panels'.
 */

import { once } from '../../base/kept.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';
import { linesOutside } from './lines-outside.ts';

export type PanelLegend = ReadonlyMap<string, string>;

const pair = once(
  () => /^[\s"(]*([^\s=:]{1,8})\s*(?:=|:|->|→|–|-)\s*(\p{L}[^=:]{0,40}?)[\s".)]*$/u,
);
/** `Legend: 1 bonnet, 2 roof`. */
const called = /^[\s"#*]*(?:legende?|légende|leyenda|legenda|key|codes?|panels?|teile)\s*:\s*/iu;
/** `Panel codes;11=Bonnet;12=Roof`: the same in cells. */
const calledInCells = once(
  () =>
    /^[\s"#*]*(?:[\p{L}-]{2,20}\s)?(?:legende?|légende|leyenda|legenda|key|codes?|panels?|teile)\s*[,;\t]\s*(?=[^,;\t]*=)/iu,
);
const barePair = once(
  () => /^\s*([^\s=:]{1,8})\s*(?:=|:|->|→|–|-|\s)\s*(\p{L}[^=:]{0,40}?)[\s".)]*$/u,
);
const longestLine = 400;
/** A legend that is cut into cells stands in the last rows. */
const mostLegendRows = 12;

/** What a line says of codes, undefined where any part of it says something else. */
export function legendIn(
  line: string,
  isPanel: (label: string) => boolean,
): PanelLegend | undefined {
  if (line.length > longestLine || !/[=:→–>-]/u.test(line)) return undefined;
  const bare = line
    .replace(called, '')
    .replace(calledInCells(), '')
    .replace(/^[^=:]{2,40}:\s*(?=\S+\s*=)/u, '');
  const legend = new Map<string, string>();
  const form = called.test(line) ? barePair() : pair();
  for (const part of bare.split(/[,;|\t]/u)) {
    if (part.trim() === '') continue;
    const [, code = '', name = ''] = form.exec(part) ?? [];
    if (code === '' || !isPanel(name.trim()) || isPanel(code)) return undefined;
    if (legend.has(code)) return undefined;
    legend.set(code, name.trim());
  }
  return legend.size === 0 ? undefined : legend;
}

/** The tables with the names that the legend of their file gives, where it gives all of them. */
export function withLegendNames(
  tables: readonly Table[],
  isPanel: (label: string) => boolean,
): { readonly tables: readonly Table[]; readonly evidence: readonly string[] } {
  const none = { tables, evidence: [] };
  // Nearly every file ends here.
  if (!mayBeMeant(tables, isPanel)) return none;
  const said = new Map<Row, PanelLegend>(
    tables.flatMap(({ rows }) =>
      rows.slice(-mostLegendRows).flatMap((row) => {
        const own = legendIn(row.cells.join(';'), isPanel);
        return own === undefined ? [] : [[row, own] as const];
      }),
    ),
  );
  // `1: Bonnet, 2: Roof` looks like a row of a table with a comma.
  const bare =
    said.size === 0
      ? tables
      : tables.map((table) => ({ ...table, rows: table.rows.filter((row) => !said.has(row)) }));
  const labels = new Set(bare.flatMap(labelsOf));
  if (labels.size < 2 || [...labels].some((label) => !mayBeCode(label, isPanel))) return none;
  const legend = new Map([
    ...[...said.values()].flatMap((own) => [...own]),
    ...linesOutside(bare).flatMap(({ text }) => [...(legendIn(text, isPanel) ?? [])]),
  ]);
  if (![...labels].every((label) => legend.has(label))) return none;
  const named = bare.map((table): Table => {
    const panelAt = table.layout.columns.get('panel');
    if (panelAt === undefined) return table;
    return { ...table, rows: table.rows.map((row) => withName(row, panelAt, legend)) };
  });
  const pairs = [...labels].map((label) => `${label} is ${legend.get(label)}`).join(', ');
  return { tables: named, evidence: [`the file says what its panels are: ${pairs}`] };
}

const mayBeCode = (label: string, isPanel: (label: string) => boolean): boolean =>
  label !== '' && label.length <= longestCode && !isPanel(label);
const longestCode = 8;

const mayBeMeant = ([first]: readonly Table[], isPanel: (label: string) => boolean): boolean => {
  const label = first?.rows[0]?.cells[first.layout.columns.get('panel') ?? -1] ?? '';
  return mayBeCode(label.trim(), isPanel);
};

/** The labels of the panels in a column; a table that names them otherwise has none. */
const labelsOf = ({ layout, rows }: Table): readonly string[] => {
  const panelAt = layout.columns.get('panel');
  return panelAt === undefined ? [''] : [...columnTexts(rows, panelAt).keys()];
};

function withName(row: Row, panelAt: number, legend: PanelLegend): Row {
  const name = legend.get(cellText(row, panelAt));
  return name === undefined ? row : { ...row, cells: row.cells.with(panelAt, name), quoted: true };
}
