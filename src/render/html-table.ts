/** Tables of a page. A wide one scrolls by itself, so that the page does not; on paper it is whole. */
import { figure } from '../base/rounding.ts';
import type { Cell, Column, Curve, StripAxis } from '../report/model.ts';
import { axisFigure } from './axis-figure.ts';
import { element, inline, shortLines } from './html-text.ts';
import { stripDrawing } from './strip-svg.ts';

/** A column with a longer text than this is prose, which may be wrapped; anything else stays in a line. */
const NAME = 30;
/** So many rows stay on one page. */
const SHORT = 10;
/** From so many columns on, paper holds them in smaller type. */
const MANY = 9;

export function tableHtml(
  asWritten: readonly Column[],
  writtenRows: readonly (readonly Cell[])[],
): string {
  const order = leadingFirst(asWritten);
  const columns = order.flatMap((at) => asWritten.slice(at, at + 1));
  const rows = writtenRows.map((row) => order.flatMap((at) => row.slice(at, at + 1)));
  const looks = columns.map((column, i) => lookOf(column, i, rows));
  const head = columns.map((column, i) => headHtml(column, looks[i] ?? ''));
  const above = rowsAbove(rows);
  const body = rows.map((row, r) =>
    element(
      'tr',
      {},
      ...columns.map((column, i) =>
        cellHtml(row, i, { column, look: looks[i] ?? '', above: above[r] ?? '' }),
      ),
    ),
  );
  return scrolling(
    {
      titles: columns.map(({ title }) => title),
      isShort: rows.length <= SHORT,
      columns: columns.length,
    },
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...body),
  );
}

/** Of a row that is a part of one above it, `bonnet, `: who hears the part alone must know of what. */
function rowsAbove(rows: readonly (readonly Cell[])[]): readonly string[] {
  let whole = '';
  return rows.map(([first]) => {
    const name = first?.kind === 'text' ? first.text : '';
    if (name.startsWith('\u00a0') && whole !== '') return `${whole}, `;
    if (name !== '') whole = name;
    return '';
  });
}

/** The places of the columns: the first, those that lead, then the rest, each in its order. */
function leadingFirst(columns: readonly Column[]): readonly number[] {
  const places = columns.map((_, at) => at);
  const rank = (at: number): number => (at === 0 ? 0 : columns[at]?.leads === true ? 1 : 2);
  return places.sort((one, other) => rank(one) - rank(other) || one - other);
}

type Around = {
  readonly titles: readonly string[];
  readonly isShort: boolean;
  readonly columns: number;
};

/** It can be reached and moved by the keys alone; a short one is never cut by the end of a page. */
const scrolling = ({ titles, isShort, columns }: Around, ...table: readonly string[]): string =>
  element(
    'div',
    {
      class: ['wide', isShort ? 'short' : '', columns >= MANY ? 'many' : '']
        .filter(Boolean)
        .join(' '),
      tabindex: 0,
      role: 'group',
      'aria-label': `Table of ${titles.filter((title) => title !== '').join(', ')}`,
    },
    element('table', {}, ...table),
  );

function lookOf(column: Column, at: number, rows: readonly (readonly Cell[])[]): string {
  const isProse = rows.some((row) => {
    const cell = row[at];
    return cell?.kind === 'text' && cell.text.length > NAME;
  });
  return isProse ? `${column.align} prose` : column.align;
}

function headHtml({ title, said, unit, axis }: Column, look: string): string {
  if (axis !== undefined) {
    const name = title === '' ? [said, unit && `(${unit})`].filter(Boolean).join(' ') : title;
    return element('th', { scope: 'col', class: 'drawn' }, axisHtml(name, axis));
  }
  return title === ''
    ? element('td', {})
    : element('th', { scope: 'col', class: look }, inline(title.replace('± ', '±\u00a0')));
}

/** What the column shows and where the line across it lies, over the ends of its axis. */
function axisHtml(name: string, { from, to, line }: StripAxis): string {
  const at = line === null ? '' : `, ┊\u00a0${endText(line)}`;
  const ends = element(
    'span',
    { class: 'ends' },
    element('span', {}, endText(from)),
    ' ',
    element('span', {}, endText(to)),
  );
  return element('span', { class: 'axis' }, inline(name), at, ' ', ends);
}

const endText = (value: number): string => figure(value).replace('-', '−');

type InRow = { readonly column: Column; readonly look: string; readonly above: string };

function cellHtml(row: readonly Cell[], at: number, { column, look, above }: InRow): string {
  const cell = row[at];
  if (cell === undefined) return element('td', {});
  if (cell.kind === 'strip') {
    const [first] = row;
    const name = first?.kind === 'text' ? `${above}${first.text.trim()}: ` : '';
    const shows = column.title === '' ? (column.said ?? 'values') : column.title;
    const { axis } = column;
    return element('td', {}, axis === undefined ? '' : stripDrawing(cell, axis, `${name}${shows}`));
  }
  const looks = { class: cell.tone === 'plain' ? look : `${look} ${cell.tone}` };
  if (at > 0 || cell.text === '') return element('td', looks, inline(cell.text));
  const unseen = above === '' ? '' : element('span', { class: 'unseen' }, inline(above));
  return element('th', { scope: 'row', ...looks }, unseen, shortLines(cell.text));
}

/** The numbers of a curve, lying under it: its points and those that are spoken of, from left to right. */
export function curveTable({ across, up, line, marks }: Curve): string {
  const points = [...line.map((point) => ({ ...point, sign: '' })), ...marks]
    .filter(({ x, y, sign }) => sign !== '' || !marks.some((one) => one.x === x && one.y === y))
    .sort((a, b) => a.x - b.x);
  const row = (title: string, texts: readonly string[]): string =>
    element(
      'tr',
      {},
      element('th', { scope: 'row', class: 'left' }, inline(title)),
      ...texts.map((text) => element('td', { class: 'right' }, inline(text))),
    );
  const titles = [across, up].map(({ title, unit }) => `${title} (${unit})`);
  const [acrossTitle = '', upTitle = ''] = titles;
  return scrolling(
    { titles, isShort: true, columns: points.length + 1 },
    element(
      'tbody',
      {},
      row(
        'on the curve',
        points.map(({ sign }) => sign),
      ),
      row(
        acrossTitle,
        points.map(({ x }) => axisFigure(x, across)),
      ),
      row(
        upTitle,
        points.map(({ y }) => axisFigure(y, up)),
      ),
    ),
  );
}
