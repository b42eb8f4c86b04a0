/**
 * A decoded text with a way from an offset in it to a place a person can find.
 *
 * Line ends are already one `\n` each, so lines and columns are those of the user's editor. The
 * index of lines is built on the first question only: a sound file never asks. The text is a whole
 * file or a piece of a long one; a piece knows which line of the file it starts at.
 */
import type { Place } from '../../base/diagnostics.ts';
import { type Limits, usualLimits } from '../bytes/limits.ts';
import type { Row } from './row.ts';

/** The mark around a cell that may hold delimiters. */
export type QuoteMark = '"' | "'";

export type Source = {
  readonly name: string;
  readonly text: string;
  /** Number of the first line of the text in its file, from 1. */
  readonly firstLine: number;
  readonly quote: QuoteMark;
  readonly limits: Limits;
  readonly omitted: Omitted | undefined;
  /** The text as the user wrote it, sign for sign, where marks of it were replaced to read it. */
  readonly written: string | undefined;
  /** Its rows, where they are known already: a text is split once. */
  readonly split: SplitText | undefined;
  readonly placeAt: (offset: number, length: number) => Place;
};
export type SplitText = { readonly delimiter: string; readonly rows: readonly Row[] };
/** Lines of the file that the text leaves out at an offset: a piece keeps the head of its table. */
export type Omitted = { readonly at: number; readonly lines: number };

export type SourceRules = {
  readonly firstLine?: number;
  readonly quote?: QuoteMark;
  readonly limits?: Limits;
  readonly omitted?: Omitted | undefined;
  readonly written?: string | undefined;
  readonly split?: SplitText | undefined;
};

/** Of a longer line only the start is shown, if the place lies in it. */
const longestShown = 2_000;
const shownStart = 200;

export function shownLine(line: string, column: number): { readonly lineText?: string } {
  if (line.length <= longestShown) return { lineText: line };
  return column > shownStart ? {} : { lineText: `${line.slice(0, shownStart)}…` };
}

export function createSource(
  name: string,
  text: string,
  { firstLine = 1, quote = '"', limits = usualLimits, omitted, written, split }: SourceRules = {},
): Source {
  let starts: readonly number[] | undefined;
  const placeAt = (offset: number, length: number): Place => {
    starts ??= lineStarts(text);
    const line = lineOf(starts, offset);
    const start = starts[line - 1] ?? 0;
    const end = (starts[line] ?? text.length + 1) - 1;
    const room = Math.max(1, end - offset);
    return {
      file: name,
      line: firstLine + line - 1 + linesOmitted(omitted, offset),
      column: offset - start + 1,
      length: Math.min(Math.max(1, length), room),
      ...shownLine((written ?? text).slice(start, end), offset - start + 1),
    };
  };
  return { name, text, firstLine, quote, limits, omitted, written, split, placeAt };
}

/**
 * The same file with signs replaced one by one, so that every place stays. What is shown of a line is the line as
 * the user wrote it, however often it was replaced.
 */
export const rewritten = (
  { name, text: before, written = before, split: _, ...rules }: Source,
  text: string,
): Source => createSource(name, text, { ...rules, written });

/** How many lines of the file are left out before an offset of the text. */
export const linesOmitted = (omitted: Omitted | undefined, offset: number): number =>
  omitted !== undefined && offset >= omitted.at ? omitted.lines : 0;

/** A line of the file by its number, without its end. */
export function lineAt({ text, omitted, firstLine }: Source, line: number): string | undefined {
  const before = omitted === undefined ? 0 : text.slice(0, omitted.at).split('\n').length - 1;
  const own =
    line - firstLine - (line > before + (omitted?.lines ?? 0) ? (omitted?.lines ?? 0) : 0);
  return text.split('\n')[own];
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

/** Number of the line an offset lies in, from 1, by bisection. */
function lineOf(starts: readonly number[], offset: number): number {
  let low = 0;
  let high = starts.length;
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle;
  }
  return low + 1;
}
