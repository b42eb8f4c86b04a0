/**
 * A table as text, as wide as the page. What does not fit is never cut: prose is wrapped in its cell,
 * and if that is not enough the columns stand in groups, one below the other, each with the first
 * column. Strips share what is left of the width.
 */
import type { Block, Cell, Column, Tone } from '../report/model.ts';
import { displayWidth, printable } from './printable.ts';
import { axisLine, drawStrip } from './strip-text.ts';
import { wrap } from './wrap.ts';

type Style = {
  readonly width: number;
  readonly paint: (text: string, tone: Tone) => string;
};
type Table = Omit<Extract<Block, { kind: 'table' }>, 'kind'>;

const GAP = ' ';
const LEAST_STRIP = 8;
const MOST_STRIP = 40;
/** A column of words up to this wide is a name; a wider one is prose, which may be wrapped. */
const NAME = 24;

export function tableLines(table: Table, style: Style): readonly string[] {
  const natural = table.columns.map((column, i) => naturalWidth(column, i, table));
  if (total(natural, table) <= style.width) return drawn(table, natural, style);
  const least = table.columns.map((_, i) => leastWidth(table, i, natural[i] ?? 0));
  if (total(least, table) <= style.width || table.columns.length <= 2) {
    return drawn(table, narrowed(natural, least, table, style), style);
  }
  return columnGroups(table, least, style).flatMap((group, i) => [
    ...(i === 0 ? [] : ['']),
    ...tableLines(group, style),
  ]);
}

const total = (widths: readonly number[], { columns }: Table): number =>
  columns.reduce(
    (sum, { axis }, i) => sum + (axis === undefined ? (widths[i] ?? 0) : LEAST_STRIP),
    GAP.length * (columns.length - 1),
  );

const textsOf = ({ rows }: Table, i: number): readonly string[] =>
  rows.map((row) => cellText(row[i]));

const naturalWidth = (column: Column, i: number, table: Table): number =>
  column.axis === undefined
    ? Math.max(displayWidth(printable(column.title)), ...textsOf(table, i).map(displayWidth))
    : 0;

/** Of prose the title or the longest word, of anything else all of it. */
function leastWidth(table: Table, i: number, natural: number): number {
  const column = table.columns[i];
  if (column === undefined || column.align !== 'left' || natural <= NAME) return natural;
  const words = textsOf(table, i).flatMap((text) => text.split(' '));
  return Math.max(NAME, displayWidth(printable(column.title)), ...words.map(displayWidth));
}

/** The widest prose gives way first. */
function narrowed(
  natural: readonly number[],
  least: readonly number[],
  table: Table,
  { width }: Style,
): readonly number[] {
  const widths = [...natural];
  for (let over = total(widths, table) - width; over > 0; over -= 1) {
    const free = widths.map((one, i) => (one > (least[i] ?? 0) ? one : 0));
    const widest = Math.max(...free);
    if (widest === 0) break;
    widths[free.indexOf(widest)] = widest - 1;
  }
  return widths;
}

/** As many columns as fit beside the first, at least one; then the next ones. */
function columnGroups(table: Table, least: readonly number[], { width }: Style): readonly Table[] {
  const groups: number[][] = [];
  for (let i = 1; i < table.columns.length; i += 1) {
    const group = groups.at(-1);
    const chosen = [0, ...(group ?? []), i];
    const fits = total(pick(least, chosen), { ...table, columns: pick(table.columns, chosen) });
    if (group !== undefined && fits <= width) group.push(i);
    else groups.push([i]);
  }
  return groups.map((group) => ({
    columns: pick(table.columns, [0, ...group]),
    rows: table.rows.map((row) => pick(row, [0, ...group])),
  }));
}

const pick = <T>(all: readonly T[], places: readonly number[]): readonly T[] =>
  places.flatMap((place) => all.slice(place, place + 1));

function drawn(
  { columns, rows }: Table,
  widths: readonly number[],
  style: Style,
): readonly string[] {
  const used = widths.reduce((sum, width) => sum + width, GAP.length * (columns.length - 1));
  const strip = Math.min(MOST_STRIP, Math.max(LEAST_STRIP, style.width - used));
  const header = columns.map((column, i) =>
    column.axis === undefined
      ? style.paint(pad(printable(column.title), widths[i] ?? 0, column.align), 'quiet')
      : style.paint(axisLine(column.axis, strip), 'quiet'),
  );
  const lines = rows.flatMap((row) => {
    const cells = columns.map((column, i) =>
      cellLines(row[i], column, column.axis === undefined ? (widths[i] ?? 0) : strip),
    );
    const height = Math.max(1, ...cells.map((cell) => cell.length));
    return Array.from({ length: height }, (_, line) =>
      columns
        .map((column, i) => {
          const one = row[i];
          if (one?.kind === 'strip') return cells[i]?.[line] ?? ' '.repeat(strip);
          const text = cells[i]?.[line] ?? '';
          const tone = one?.kind === 'text' ? one.tone : 'plain';
          return style.paint(pad(text, widths[i] ?? 0, column.align), tone);
        })
        .join(GAP),
    );
  });
  return [header.join(GAP), ...lines];
}

function cellLines(cell: Cell | undefined, column: Column, width: number): readonly string[] {
  if (cell?.kind === 'strip') {
    return column.axis === undefined ? [] : [drawStrip(cell, column.axis, width)];
  }
  const text = cellText(cell);
  return displayWidth(text) <= width ? [text] : wrap(text, width, '');
}

const cellText = (one: Cell | undefined): string =>
  one?.kind === 'text' ? printable(one.text) : '';

function pad(text: string, width: number, align: Column['align']): string {
  const blanks = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'left' ? text + blanks : blanks + text;
}
