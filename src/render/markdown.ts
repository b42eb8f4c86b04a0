/**
 * Blocks → Markdown as GitHub reads it: headings, lists, task lists and tables with pipes. What is
 * drawn elsewhere is a table of the same numbers here.
 */
import { figure } from '../base/rounding.ts';
import {
  type Block,
  type BoxPanel,
  type Cell,
  type Column,
  type Curve,
  type CurveAxis,
  type Tick,
  textOf,
  towardsText,
} from '../report/model.ts';
import { axisFigure, stripFigure } from './axis-figure.ts';
import { facesTable } from './faces-table.ts';
import { listItems } from './list-items.ts';
import { escapedMarkdown } from './markdown-text.ts';

export const renderMarkdown = (blocks: readonly Block[]): string =>
  `${blocks
    .map(blockMarkdown)
    .filter((text) => text !== '')
    .join('\n\n')}\n`;

function blockMarkdown(block: Block): string {
  switch (block.kind) {
    case 'title':
      return heading(1, block.text);
    case 'gap':
      return '';
    case 'paragraph': {
      const text = escapedMarkdown(textOf(block.text));
      return block.label === null ? text : `**${escapedMarkdown(block.label)}:** ${text}`;
    }
    case 'list':
      return section(block.label, listMarkdown(block.items.map(textOf)).join('\n'));
    case 'table': {
      const table = tableMarkdown(block.columns, block.rows);
      return block.label === undefined ? table : section(block.label, table);
    }
    case 'faces': {
      const { columns, rows } = facesTable(block);
      return section(block.label, tableMarkdown(columns, rows));
    }
    case 'form':
      return listOf(block.fields.map((field) => `${escapedMarkdown(field)}: ${BLANK}`));
    case 'ticks':
      return section(
        block.label,
        [
          ...(block.note === undefined ? [] : [escapedMarkdown(block.note)]),
          listOf(block.items.flatMap(tickItems)),
        ].join('\n\n'),
      );
    case 'curve':
      return section(block.label, curveMarkdown(block.curve));
    case 'boxes':
      return block.panels.map(boxesMarkdown).join('\n\n');
  }
}

/** A column for each point, in the order of the template: a table cannot show where they lie. */
function boxesMarkdown({ label, towards, places, boxes }: BoxPanel): string {
  const name = towards === null ? label : `${label}, ${towardsText(towards)}`;
  const names = places.map((place) => escapedMarkdown(place.name));
  const blanks = names.map(() => '');
  return section(
    name,
    tableOf(
      names,
      blanks.map(() => 'left'),
      Array.from({ length: boxes }, () => blanks),
    ),
  );
}

/** A task list has one box to a line. */
const tickItems = ({ text, boxes, apart }: Tick): readonly string[] =>
  boxes === 0
    ? [escapedMarkdown(text)]
    : (apart ?? new Array<string>(boxes).fill(text)).map((one) => `[ ] ${escapedMarkdown(one)}`);

/** A line to write on: in Markdown a run of `_` would be a rule or emphasis. */
const BLANK = '\\_'.repeat(12);

const heading = (level: 1 | 2, text: string): string =>
  `${'#'.repeat(level)} ${escapedMarkdown(text)}`;

const section = (label: string, body: string): string => `${heading(2, label)}\n\n${body}`;

/** What is set in under an item stands under its text, as wide as its sign is. */
function listMarkdown(texts: readonly string[]): readonly string[] {
  const { isNumbered, items } = listItems(texts);
  return items.flatMap(({ text, under }, i) => {
    const sign = isNumbered ? `${i + 1}. ` : '- ';
    const inside = listMarkdown(under).map((line) => `${' '.repeat(sign.length)}${line}`);
    return [`${sign}${escapedMarkdown(text)}`, ...inside];
  });
}

const listOf = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');

function tableMarkdown(columns: readonly Column[], rows: readonly (readonly Cell[])[]): string {
  const titles = columns.map((column) => escapedMarkdown(titleOf(column)));
  const aligns = columns.map(({ align }) => align);
  return tableOf(
    titles,
    aligns,
    rows.map((row) => columns.map((column, i) => cellMarkdown(row[i], column))),
  );
}

/** A drawing has no heading in the text; as numbers it needs one. */
const titleOf = ({ title, said, axis }: Column): string =>
  title === '' && axis !== undefined ? (said ?? 'values') : title;

function cellMarkdown(cell: Cell | undefined, { axis }: Column): string {
  if (cell === undefined) return '';
  if (cell.kind === 'strip') {
    const shown = (value: number): string =>
      axis === undefined ? figure(value) : stripFigure(value, axis);
    return cell.values.map(shown).join(', ');
  }
  const text = escapedMarkdown(cell.text);
  return cell.tone === 'strong' && text !== '' ? `**${text}**` : text;
}

/** Its cells are escaped already. */
function tableOf(
  titles: readonly string[],
  aligns: readonly Column['align'][],
  rows: readonly (readonly string[])[],
): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const rule = aligns.map((align) => (align === 'left' ? '---' : '---:'));
  return [line(titles), line(rule), ...rows.map(line)].join('\n');
}

function curveMarkdown({ across, up, line, marks }: Curve): string {
  const axis = ({ title, unit }: CurveAxis): string => escapedMarkdown(`${title} (${unit})`);
  const points = [
    ...line.map(({ x, y }) => ({ x, y, name: '' })),
    ...marks.map(({ x, y, sign, name }) => ({ x, y, name: `${sign}: ${name}` })),
  ].sort((a, b) => a.x - b.x);
  return tableOf(
    [axis(across), axis(up), 'on the curve'],
    ['right', 'right', 'left'],
    points.map(({ x, y, name }) => [
      axisFigure(x, across),
      axisFigure(y, up),
      escapedMarkdown(name),
    ]),
  );
}
