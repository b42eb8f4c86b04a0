/** A strip of readings on the common axis of its column, drawn with signs. */
import type { StripAxis, StripCell } from '../report/model.ts';

/** Its two ends as numbers, the line between them. */
export function axisLine({ from, to, line }: StripAxis, width: number): string {
  const marks = new Array<string>(width).fill(' ');
  if (line !== null) marks[position(line, { from, to }, width)] = '┊';
  const [left, right] = [endText(from), endText(to)];
  return left + marks.slice(left.length, width - right.length).join('') + right;
}

const endText = (value: number): string => String(value).replace('-', '−');

const position = (
  value: number,
  { from, to }: Pick<StripAxis, 'from' | 'to'>,
  width: number,
): number => Math.min(width - 1, Math.max(0, Math.floor(((value - from) / (to - from)) * width)));

/**
 * `·` one value, `:` two, `⁝` more; `○` an open one; `‹` the marked one; `┊` the line; `─` the bar; `[ ]` a range; `»`
 * values beyond the axis, `«` before it.
 */
export function drawStrip(
  { values, marked, open = [], bar, range }: StripCell,
  axis: StripAxis,
  width: number,
): string {
  const drawn = new Array<string>(width).fill(' ');
  if (bar !== undefined) {
    const [from, to] = [position(bar.from, axis, width), position(bar.to, axis, width)];
    drawn.fill('─', Math.min(from, to), Math.max(from, to) + 1);
  }
  if (range !== undefined) {
    drawn[position(range.from, axis, width)] = '[';
    drawn[position(range.to, axis, width)] = ']';
  }
  for (const value of open) drawn[position(value, axis, width)] = '○';
  const counts = new Map<number, number>();
  for (const value of values) {
    const at = position(value, axis, width);
    counts.set(at, (counts.get(at) ?? 0) + 1);
  }
  for (const [at, count] of counts) drawn[at] = count === 1 ? '·' : count === 2 ? ':' : '⁝';
  // What the row is held against is not to vanish under its points.
  if (axis.line !== null) drawn[position(axis.line, axis, width)] = '┊';
  if (marked !== null) drawn[position(marked, axis, width)] = '‹';
  if (marked !== null && marked < axis.from) drawn[0] = '«';
  if (values.some((value) => value > axis.to)) drawn[width - 1] = '»';
  return drawn.join('');
}
