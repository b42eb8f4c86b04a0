/** Blocks → text for a terminal or a pipe. Nothing is cut: what does not fit makes the line longer. */
import type { Block, Cell, Column, StripAxis, Tone } from '../report/model.ts';
import { boxLines, formLines } from './fill-in-text.ts';
import { displayWidth, printable } from './printable.ts';

export type TextStyle = {
  readonly width: number;
  /** Colours a piece of text; the identity when there are none. */
  readonly paint: (text: string, tone: Tone) => string;
};

const GAP = ' ';
const LEAST_STRIP = 10;
const MOST_STRIP = 40;

export function renderText(blocks: readonly Block[], style: TextStyle): string {
  const lines = blocks.flatMap((block) => blockLines(block, style));
  return `${lines.map((line) => line.replaceAll('\u00a0', ' ').trimEnd()).join('\n')}\n`;
}

function blockLines(block: Block, style: TextStyle): readonly string[] {
  switch (block.kind) {
    case 'title':
      return wrap(printable(block.text), style.width, '').map((line) =>
        style.paint(line, 'strong'),
      );
    case 'gap':
      return [''];
    case 'paragraph':
      return labelled(block.label, printable(block.text), style);
    case 'list':
      return [
        style.paint(block.label, 'strong'),
        ...block.items.flatMap((item) =>
          wrap(printable(item), style.width - 2, '  ').map((line) => `  ${line}`),
        ),
      ];
    case 'table':
      return tableLines(block.columns, block.rows, style);
    case 'form':
      return formLines(block.fields, style.width);
    case 'boxes':
      return boxLines(block.label, block.places, style);
  }
}

function labelled(label: string | null, text: string, style: TextStyle): readonly string[] {
  if (label === null) return wrap(text, style.width, '');
  const [first = '', ...rest] = wrap(`${label}: ${text}`, style.width, '  ');
  return [`${style.paint(label, 'strong')}${first.slice(label.length)}`, ...rest];
}

/** Words filled into lines, no-break spaces kept together; the second and later lines are indented. */
function wrap(text: string, width: number, indent: string): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && line !== indent && displayWidth(longer) > width) {
      lines.push(line);
      line = indent + word;
    } else line = longer;
  }
  return [...lines, line];
}

function tableLines(
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  style: TextStyle,
): readonly string[] {
  const widths = columns.map((column, i) =>
    column.axis === undefined
      ? Math.max(displayWidth(column.title), ...rows.map((row) => displayWidth(cellText(row[i]))))
      : 0,
  );
  const gaps = GAP.length * (columns.length - 1);
  const used = widths.reduce((sum, width) => sum + width, gaps);
  const strip = Math.min(MOST_STRIP, Math.max(LEAST_STRIP, style.width - used));
  const header = columns.map((column, i) =>
    column.axis === undefined
      ? style.paint(pad(column.title, widths[i] ?? 0, column.align), 'quiet')
      : style.paint(axisLine(column.axis, strip), 'quiet'),
  );
  const lines = rows.map((row) =>
    columns
      .map((column, i) => {
        const one = row[i];
        if (one?.kind === 'strip' && column.axis !== undefined) {
          return drawStrip(one.values, one.marked, column.axis, strip);
        }
        const tone = one?.kind === 'text' ? one.tone : 'plain';
        return style.paint(pad(cellText(one), widths[i] ?? 0, column.align), tone);
      })
      .join(GAP),
  );
  return [header.join(GAP), ...lines];
}

const cellText = (one: Cell | undefined): string =>
  one?.kind === 'text' ? printable(one.text) : '';

function pad(text: string, width: number, align: Column['align']): string {
  const blanks = ' '.repeat(Math.max(0, width - displayWidth(text)));
  return align === 'left' ? text + blanks : blanks + text;
}

/** Its two ends as numbers, the line between them. */
function axisLine({ from, to, line }: StripAxis, width: number): string {
  const marks = new Array<string>(width).fill(' ');
  if (line !== null) marks[position(line, { from, to }, width)] = '┊';
  const left = String(from);
  const right = String(to);
  return left + marks.slice(left.length, width - right.length).join('') + right;
}

const position = (
  value: number,
  { from, to }: Pick<StripAxis, 'from' | 'to'>,
  width: number,
): number => Math.min(width - 1, Math.max(0, Math.floor(((value - from) / (to - from)) * width)));

/** `·` one value, `:` two, `⁝` more; `‹` the marked one; `┊` the line; `»` values beyond the axis, `«` before it. */
function drawStrip(
  values: readonly number[],
  marked: number | null,
  axis: StripAxis,
  width: number,
): string {
  const drawn = new Array<string>(width).fill(' ');
  if (axis.line !== null) drawn[position(axis.line, axis, width)] = '┊';
  if (marked !== null) drawn[position(marked, axis, width)] = marked < axis.from ? '«' : '‹';
  const counts = new Map<number, number>();
  for (const value of values) {
    const at = position(value, axis, width);
    counts.set(at, (counts.get(at) ?? 0) + 1);
  }
  for (const [at, count] of counts) drawn[at] = count === 1 ? '·' : count === 2 ? ':' : '⁝';
  if (values.some((value) => value > axis.to)) drawn[width - 1] = '»';
  return drawn.join('');
}
