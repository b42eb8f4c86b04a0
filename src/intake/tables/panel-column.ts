/**
 * The column of panels where no name of a column says so: `Label`, `Pos.`, or none at all. It is known by its
 * cells, each of which names a panel, or one and a number (`Bonnet 2`).
 */
import { delimiters } from '../rows/dialect.ts';
import type { Source } from '../rows/source.ts';
import { type Row, tokenize } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { type LayoutContext, layoutOf, readGaugeHeader } from './layout.ts';
import { stemOfLabel } from './numbered-labels.ts';

const headRows = 60;
const fewestCells = 2;

/** How rows of names are looked at where that column is taken for the panel's; undefined if there is none. */
export function panelByCells(
  source: Source,
  context: LayoutContext,
): { readonly context: LayoutContext; readonly evidence: string } | undefined {
  if (context.given !== undefined) return undefined;
  for (const delimiter of delimiters) {
    const rows = tokenize(source, delimiter, { offset: 0, line: 1 }, headRows).value ?? [];
    for (const [at, row] of rows.entries()) {
      const column = panelColumn(row, rows.slice(at + 1), context);
      if (column === undefined) continue;
      const names = row.cells.join('\0');
      const given = (cells: readonly string[]) =>
        cells.join('\0') === names ? new Map([[column, 'panel' as const]]) : undefined;
      const own = { ...context, given };
      if (layoutOf(row.cells, own) === undefined) continue;
      const called = (row.cells[column] ?? '').trim();
      const which = called === '' ? `column ${column + 1}, which has no name,` : `"${called}"`;
      return {
        context: own,
        evidence: `${which} is the column of panels: each of its cells names one`,
      };
    }
  }
  return undefined;
}

function panelColumn(
  { cells }: Row,
  below: readonly Row[],
  { isPanel }: LayoutContext,
): number | undefined {
  const header = readGaugeHeader(cells);
  if (header.length < 2 || header.some(({ role }) => role === 'panel')) return undefined;
  const column = header.findIndex(({ role, label }, k) => {
    if (label !== '' && !/^[\p{L}\p{N}]/u.test(label)) return false;
    if ((role !== undefined && role !== 'point') || isPanel(stemOfLabel((cells[k] ?? '').trim())))
      return false;
    const texts = below.map((row) => (row.cells[k] ?? '').trim());
    const names = texts.filter((text) => text !== '' && !namesStatistic(text));
    return names.length >= fewestCells && names.every((text) => isPanel(stemOfLabel(text)));
  });
  return column === -1 ? undefined : column;
}
