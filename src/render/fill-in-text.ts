/** What is filled in by pen, as text: blanks behind labels, and a box for each point of a panel. */
import { type BoxPanel, type BoxPlace, type Towards, towardsText } from '../report/model.ts';
import { displayWidth, printable } from './printable.ts';
import { wrap } from './wrap.ts';

const BOX = '[______]';
const LEAST_BLANK = 16;

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

/** Panels side by side need this width each. */
const BESIDE = 36;
const BETWEEN = 4;

/** The panels from left to right and downwards, two beside one another where there is room for two. */
export function boxLines(
  panels: readonly BoxPanel[],
  { width }: { readonly width: number },
): readonly string[] {
  const half = Math.floor((width - BETWEEN) / 2);
  const words = panels.flatMap(({ label }) => printable(label).split(' ')).map(displayWidth);
  const across = half < Math.max(BESIDE, ...words) ? 1 : 2;
  const each = across === 1 ? width : half;
  const drawn = panels.map((panel) => panelLines(panel, each));
  return drawn.flatMap((left, i) => {
    if (i % across > 0) return [];
    const right = across === 1 ? [] : (drawn[i + 1] ?? []);
    const pair = Array.from({ length: Math.max(left.length, right.length) }, (_, row) =>
      beside(left[row] ?? '', right[row] ?? '', each + BETWEEN),
    );
    return i === 0 ? pair : ['', ...pair];
  });
}

const beside = (left: string, right: string, at: number): string =>
  right === '' ? left : left + ' '.repeat(Math.max(0, at - displayWidth(left))) + right;

/** The name with the arrow at its side, and the boxes in rows, each as far across as its point lies. */
function panelLines({ label, towards, places, boxes }: BoxPanel, width: number): readonly string[] {
  const heights = [...new Set(places.map(({ v }) => v))].sort((a, b) => a - b);
  const rows = heights.flatMap((height) =>
    stacked(
      places.filter(({ v }) => v === height),
      boxes,
      width,
    ),
  );
  return [...headLines(printable(label), towards, width), ...rows].map((line) => line.trimEnd());
}

/** In one line where both have room in it; else the arrow has one of its own. */
function headLines(name: string, towards: Towards | null, width: number): readonly string[] {
  if (towards === null) return wrap(name, width, '');
  const arrow = printable(towardsText(towards));
  const isRight = towards.at === 'right';
  const blank = width - displayWidth(name) - displayWidth(arrow);
  if (blank >= (isRight ? 1 : 2)) return [`${name}${' '.repeat(isRight ? blank : 2)}${arrow}`];
  const before = isRight ? width - displayWidth(arrow) : 0;
  return [...wrap(name, width, ''), ' '.repeat(before) + arrow];
}

/** A row of boxes, and under it those for further readings of the same points. */
function stacked(places: readonly BoxPlace[], boxes: number, width: number): readonly string[] {
  const unnamed = places.map((place) => ({
    ...place,
    name: ' '.repeat(displayWidth(printable(place.name))),
  }));
  const further = boxRow(unnamed, width);
  return boxRow(places, width).flatMap((line, i) => [
    line,
    ...Array.from({ length: boxes - 1 }, () => further[i] ?? ''),
  ]);
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
