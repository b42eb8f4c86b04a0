/**
 * The column of panels where no name of a column says so: `Label`, `Pos.`, or none at all. It is known by its
 * cells, each of which names a panel, or one and a number (`Bonnet 2`).
 */

import { foldedText } from '../cells/doubting-words.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { HeaderCell } from '../header/header.ts';
import { stemOfLabel } from '../header/label-numbers.ts';
import { type LayoutContext, layoutOf, readGaugeHeader } from '../header/layout.ts';
import { countedColumn, countUp } from '../header/numbered-columns.ts';
import { arePlaceCodes } from '../header/place-codes.ts';
import { isPlaceName } from '../header/place-columns.ts';
import { delimiters } from '../rows/dialect.ts';
import { cellText } from '../rows/row.ts';
import type { Source } from '../rows/source.ts';
import { type Row, tokenize } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';

/** The first header is looked for among so many rows, further ones among many more. */
const headRows = 60;
const mostRows = 2000;
const fewestCells = 2;

/** How rows of names are looked at where that column is taken for the panel's; undefined if there is none. */
export function panelByCells(
  source: Source,
  context: LayoutContext,
): { readonly context: LayoutContext; readonly evidence: string } | undefined {
  if (context.given !== undefined) return undefined;
  for (const delimiter of delimiters) {
    const rows = tokenize(source, delimiter, { offset: 0, line: 1 }, mostRows).value ?? [];
    const found = new Map<string, ReadonlyMap<number, GaugeRole>>();
    let evidence = '';
    for (const [at, row] of rows.entries()) {
      if (at >= headRows && found.size === 0) break;
      const columns = panelColumns(row, rowsUnder(rows, at), context);
      const [first] = columns;
      if (first === undefined) continue;
      const roles = new Map(columns.map((column) => [column, 'panel' as const]));
      const own = { ...context, byCells: () => roles };
      if (layoutOf(row.cells, own) === undefined) continue;
      found.set(namesOf(row.cells), roles);
      const called = cellText(row, first);
      const which = called === '' ? `column ${first + 1}, which has no name,` : `"${called}"`;
      evidence ||= `${which} is the column of panels: each of its cells names one`;
    }
    if (found.size === 0) continue;
    const byCells = (cells: readonly string[]) => found.get(namesOf(cells));
    return { context: { ...context, byCells }, evidence };
  }
  return undefined;
}

const namesOf = (cells: readonly string[]): string => cells.join('\0');

/** The rows below, down to another row of names: columns that count from 1, or one that is called a reading. */
function rowsUnder(rows: readonly Row[], at: number): readonly Row[] {
  const below = rows.slice(at + 1);
  const end = below.findIndex(({ cells }) => {
    if (cells.length < 2) return false;
    const header = readGaugeHeader(cells);
    const counted = header.flatMap(({ label }) => countedColumn(label)?.number ?? []);
    const named = header.some(({ role, label }) => role === 'reading' && label !== '');
    return named || (counted.length > 1 && countUp(counted, [1]));
  });
  return end === -1 ? below : below.slice(0, end);
}

/** The columns of panels: one, or the first of each of several tables that stand side by side. */
function panelColumns(
  { cells }: Row,
  below: readonly Row[],
  { isPanel, mayBePanel }: LayoutContext,
): readonly number[] {
  const header = readGaugeHeader(cells);
  if (header.length < 2 || header.some(({ role }) => role === 'panel')) return [];
  // `Left side` above its panels may be one itself; beside columns that count it is none.
  const counted = header.flatMap(({ label }) => countedColumn(label)?.number ?? []);
  const isNamed = counted.length > 1 && counted[0] === 1 && counted[1] === 2;
  const isOne = (text: string): boolean => isPanel(stemOfLabel(text)) || mayBePanel(text);
  const holdsPanels = ({ role, label }: HeaderCell<GaugeRole>, k: number): boolean => {
    if (label !== '' && !/^[\p{L}\p{N}]/u.test(label)) return false;
    // `Readings (µm);1;2;3`: the corner says what stands in the table.
    const isCorner = role === 'reading' && k === 0 && isNamed;
    if (role !== undefined && role !== 'point' && !isCorner) return false;
    if (!isNamed && isPanel(stemOfLabel((cells[k] ?? '').trim()))) return false;
    const texts = below.map((row) => cellText(row, k));
    const names = texts.filter((text) => text !== '' && !namesStatistic(text));
    if (names.length < fewestCells) return false;
    if (names.every((text) => isPanel(stemOfLabel(text)))) return true;
    return arePlaceCodes(names, isOne) && !names.some((text) => isPlaceName(foldedText(text)));
  };
  const own = [...header.keys()].filter((k) => {
    const cell = header[k];
    return cell !== undefined && holdsPanels(cell, k);
  });
  return own[0] === 0 ? own : own.slice(0, 1);
}
