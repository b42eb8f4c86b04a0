/** A table as facts: the row, what the column shows, the value and its unit. */
import { figure } from '../base/rounding.ts';
import type { Cell, Column } from '../report/model.ts';
import { stripFigure } from './axis-figure.ts';

export function tableFacts(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
): readonly string[] {
  const [first, ...others] = columns;
  const facts: string[] = [];
  let whole = '';
  let row = '';
  for (const cells of rows) {
    const name = cells[0]?.kind === 'text' ? cells[0].text : '';
    // Set in: a part of the row above. Empty: the row above goes on.
    if (name.startsWith('\u00a0')) row = `${whole}, ${name.trim()}`;
    else if (name !== '') {
      whole = rowName(name, first);
      row = whole;
    }
    const said = others.flatMap((column, i) => valueText(cells[i + 1], column));
    facts.push(...said.map((fact) => (row === '' ? fact : `${row}: ${fact}`)));
  }
  return facts;
}

/** A number needs to be said of what it is; a name only where its column says so. */
function rowName(name: string, column: Column | undefined): string {
  if (column === undefined || (column.said ?? column.unit) === undefined) return name;
  const isNumber = Number.isFinite(Number(name));
  return spaced(heading(column).said, name, isNumber ? (column.unit ?? '') : '');
}

function valueText(cell: Cell | undefined, column: Column): readonly string[] {
  if (cell === undefined) return [];
  const { said, unit } = heading(column);
  if (cell.kind === 'strip') {
    const values = cell.values.map((value) => valueOn(column.axis, value)).join(', ');
    return values === '' ? [] : [spaced(said || 'values', values, unit)];
  }
  if (cell.text === '') return [];
  const isNone = cell.text === '–' || cell.text === '-';
  if (isNone && column.none !== undefined) return column.none === '' ? [] : [column.none];
  return [isNone ? spaced(said, 'none') : spaced(said, cell.text, unit)];
}

const valueOn = (axis: Column['axis'], value: number): string =>
  (axis === undefined ? figure(value) : stripFigure(value, axis)).replace('-', '−');

/** `removed (µm)` is `removed 2.1 µm` with its value. */
function heading({ title, said, unit }: Column): { readonly said: string; readonly unit: string } {
  const [, name = title, inBrackets = ''] = title.match(/^(.+) \(([^()]+)\)$/) ?? [];
  return { said: said ?? name, unit: unit ?? (said === undefined ? inBrackets : '') };
}

export const spaced = (...words: readonly string[]): string =>
  words.filter((word) => word !== '').join(' ');
