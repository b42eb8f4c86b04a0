/**
 * Panels whose names carry a number: `Bonnet 1`, `bonnet_02`, `Roof #3`, `Door P2`, the point that was read there;
 * or `1. Bonnet`, `2) Roof`, `03 Boot lid`, the place of the panel in a list.
 *
 * A number behind the names is a point where the table names none and the numbers of every panel count from 1;
 * one before them is taken off where each name has its own.
 */

import { numberOfLabel, placeInList, stemOfLabel } from '../header/label-numbers.ts';
import { countUp } from '../header/numbered-columns.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { type Table, widest } from './table.ts';

/** Whether labels are panels with the numbers of their points behind them, those of each from 1. */
export function numberedPanels(
  labels: readonly string[],
  isPanel: (label: string) => boolean,
): boolean {
  const own = [...new Set(labels)];
  return (
    own.length > 1 &&
    own.length === labels.length &&
    own.every((label) => numberOfLabel(label) !== undefined && isPanel(stemOfLabel(label))) &&
    pointsCount(own)
  );
}

export type NumberedLabels = { readonly table: Table; readonly evidence: string };

export function partLabels(
  table: Table,
  isPanel: (label: string) => boolean,
): NumberedLabels | undefined {
  const column = table.layout.columns.get('panel');
  const { kind, readings } = table.layout;
  const isSingle = kind === 'long' || (kind === 'list' && readings.length === 1);
  if (column === undefined || !isSingle) return undefined;
  const labels = [...columnTexts(table.rows, column).keys()];
  if (labels.length < 2 || labels.some((label) => !isPanel(stemOfLabel(label)))) return undefined;
  if (labels.every((label) => placeInList(label) !== undefined))
    return withoutListNumbers(table, column, labels);
  const numbers = labels.map(numberOfLabel);
  if (table.layout.columns.has('point') || numbers.includes(undefined)) return undefined;
  return pointsCount(labels) ? withPoints(table, column) : undefined;
}

function withoutListNumbers(
  table: Table,
  column: number,
  labels: readonly string[],
): NumberedLabels | undefined {
  const stems = new Set(labels.map(stemOfLabel));
  const numbers = new Set(labels.map(placeInList));
  if (stems.size !== labels.length || numbers.size !== labels.length) return undefined;
  const rows = table.rows.map((row) => withCell(row, column, stemOfLabel(cellText(row, column))));
  return {
    table: { ...table, rows },
    evidence: 'the number before each panel is its place in a list',
  };
}

/** Whether each panel has the numbers 1, 2, 3 …, each of them in one label. */
function pointsCount(labels: readonly string[]): boolean {
  const points = new Map<string, number[]>();
  for (const label of labels) {
    const stem = stemOfLabel(label);
    points.set(stem, [...(points.get(stem) ?? []), numberOfLabel(label) ?? 0]);
  }
  const all = [...points.values()];
  return (
    all.some(({ length }) => length > 1) &&
    all.every((own) =>
      countUp(
        own.toSorted((a, b) => a - b),
        [1],
      ),
    )
  );
}

/** The points stand in a column of their own, behind those of the file. */
function withPoints(table: Table, column: number): NumberedLabels {
  const { layout } = table;
  const at = Math.max(layout.header.length, widest(table.rows));
  const blank = (length: number): string[] => Array.from({ length: at - length }, () => '');
  const rows = table.rows.map((row) => {
    const label = cellText(row, column);
    const named = withCell(row, column, stemOfLabel(label));
    const point = String(numberOfLabel(label));
    return { ...named, cells: [...named.cells, ...blank(named.cells.length), point] };
  });
  const empty = { text: '', label: '' };
  const header = [
    ...layout.header,
    ...blank(layout.header.length).map(() => empty),
    { ...empty, role: 'point' as const },
  ];
  const columns = new Map(layout.columns).set('point', at);
  return {
    table: { ...table, rows, layout: { ...layout, header, columns } },
    evidence: 'the number behind each panel is its point: those of each count from 1',
  };
}

/** The cell is no longer as long as in the text, so places are read off the text itself. */
const withCell = (row: Row, column: number, text: string): Row => ({
  ...row,
  cells: row.cells.with(column, text),
  quoted: true,
});
