/**
 * The column of panels where no name of a column says so and its cells are codes that a line of the file explains:
 * `Code;Point;Value` below `Panel codes;11=Bonnet;12=Roof`.
 *
 * Every cell of it is a code of the legend, and more than one code stands there.
 */

import { legendIn, type PanelLegend } from '../beside/panel-legend.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { type LayoutContext, layoutOf, readGaugeHeader } from '../header/layout.ts';
import { delimiters } from '../rows/dialect.ts';
import { cellText } from '../rows/row.ts';
import type { Source } from '../rows/source.ts';
import { type Row, tokenize } from '../rows/tokens.ts';

const headRows = 60;
const mostRows = 2000;
const mostAbove = 20_000;
const fewestCodes = 2;

/** How rows of names are looked at where that column is taken for the panel's; undefined if there is none. */
export function panelByLegend(
  source: Source,
  context: LayoutContext,
): { readonly context: LayoutContext; readonly evidence: string } | undefined {
  if (context.given !== undefined) return undefined;
  const legend = legendOf(source, context);
  if (legend.size < fewestCodes) return undefined;
  for (const delimiter of delimiters) {
    const rows = tokenize(source, delimiter, { offset: 0, line: 1 }, mostRows).value ?? [];
    for (const [at, row] of rows.slice(0, headRows).entries()) {
      const column = codedColumn(row, rows.slice(at + 1), legend);
      if (column === undefined) continue;
      const names = row.cells.join('\0');
      const roles = new Map<number, GaugeRole>([[column, 'panel']]);
      const byCells = (cells: readonly string[]) =>
        cells.join('\0') === names ? roles : undefined;
      const own = { ...context, byCells };
      if (layoutOf(row.cells, own) === undefined) continue;
      const evidence = `"${cellText(row, column)}" is the column of panels: the file explains each of its codes`;
      return { context: own, evidence };
    }
  }
  return undefined;
}

function legendOf({ text }: Source, { isPanel }: LayoutContext): PanelLegend {
  const legend = new Map<string, string>();
  for (const line of text.slice(0, mostAbove).split('\n')) {
    for (const [code, name] of legendIn(line, isPanel) ?? []) legend.set(code, name);
  }
  return legend;
}

function codedColumn(
  { cells }: Row,
  below: readonly Row[],
  legend: PanelLegend,
): number | undefined {
  const header = readGaugeHeader(cells);
  if (header.length < 2 || header.some(({ role }) => role === 'panel')) return undefined;
  const own = below.filter(
    (row) => row.cells.length === cells.length && !row.cells.some((cell) => /=/u.test(cell)),
  );
  const column = header.findIndex(({ text, role }, k) => {
    if (text === '' || (role !== undefined && role !== 'repeat')) return false;
    const codes = new Set(own.map((row) => cellText(row, k)));
    return codes.size >= fewestCodes && [...codes].every((code) => legend.has(code));
  });
  return column === -1 ? undefined : column;
}
