/** What is filled in by pen, as text: blanks behind labels, and a box for each point of a panel. */
import type { BoxPlace } from '../report/model.ts';
import { displayWidth, printable } from './printable.ts';

const BOX = '[______]';
/** Columns of the label before the boxes; a longer one has a line of its own. */
const LABEL = 24;
const LEAST_BLANK = 16;
const INDENT = ' '.repeat(LABEL);

/** A box for each time that something is done. */
export const tickBoxes = (count: number): string => '[ ]'.repeat(count);

/** As many fields in a line as fit with a blank of some length; the blanks share the rest. */
export function formLines(fields: readonly string[], width: number): readonly string[] {
  const lines: string[][] = [];
  for (const field of fields.map(printable)) {
    const line = lines.at(-1);
    if (line !== undefined && leastWidth([...line, field]) <= width) line.push(field);
    else lines.push([field]);
  }
  return lines.map((line) => filledOut(line, width));
}

const leastWidth = (fields: readonly string[]): number =>
  fields.reduce((sum, field) => sum + displayWidth(field) + LEAST_BLANK + 4, -2);

function filledOut(fields: readonly string[], width: number): string {
  const labels = fields.reduce((sum, field) => sum + displayWidth(field) + 2, 0);
  const blanks = width - labels - 2 * (fields.length - 1);
  const each = Math.max(LEAST_BLANK, Math.floor(blanks / fields.length));
  return fields.map((field) => `${field}: ${'_'.repeat(each)}`).join('  ');
}

/** The label, and beside it the boxes in rows from the top, each as far across as its point lies. */
export function boxLines(
  label: string,
  places: readonly BoxPlace[],
  { width }: { readonly width: number },
): readonly string[] {
  const name = printable(label);
  const heights = [...new Set(places.map(({ v }) => v))].sort((a, b) => a - b);
  const rows = heights.flatMap((height) =>
    boxRow(
      places.filter(({ v }) => v === height),
      width - LABEL,
    ),
  );
  const [first = '', ...later] = rows;
  const beside = displayWidth(name) < LABEL;
  const start = beside ? name + ' '.repeat(LABEL - displayWidth(name)) : INDENT;
  return [
    ...(beside ? [] : [name]),
    ...[start + first, ...later.map((row) => INDENT + row)].map((line) => line.trimEnd()),
  ];
}

/** One row of boxes, each where its point lies; where they would touch, closely from the left. */
function boxRow(places: readonly BoxPlace[], width: number): readonly string[] {
  const pieces = [...places]
    .sort((a, b) => a.u - b.u)
    .map(({ name, u }) => {
      const text = `${printable(name)} ${BOX}`;
      const length = displayWidth(text);
      return { text, length, at: Math.max(0, Math.round(u * width - length / 2)) };
    });
  const apart = pieces.every(({ at, length }, i) => at + length < (pieces[i + 1]?.at ?? width + 1));
  return apart ? [placed(pieces)] : packed(pieces, width);
}

type Piece = { readonly text: string; readonly length: number; readonly at: number };

const placed = (pieces: readonly Piece[]): string =>
  pieces.reduce((line, { text, at }) => line + ' '.repeat(at - displayWidth(line)) + text, '');

function packed(pieces: readonly Piece[], width: number): readonly string[] {
  const lines: string[] = [];
  for (const { text, length } of pieces) {
    const line = lines.at(-1);
    if (line === undefined || displayWidth(line) + 1 + length > width) lines.push(text);
    else lines[lines.length - 1] = `${line} ${text}`;
  }
  return lines;
}
