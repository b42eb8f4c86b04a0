/**
 * A decoded file with a way from an offset in its text to a place a person can find.
 *
 * Line ends are already one `\n` each, so lines and columns are those of the user's editor. The
 * index of lines is built on the first question only: a sound file never asks.
 */
import type { Place } from '../base/diagnostics.ts';

export type Source = {
  readonly name: string;
  readonly text: string;
  readonly placeAt: (offset: number, length: number) => Place;
};

export function createSource(name: string, text: string): Source {
  let starts: readonly number[] | undefined;
  const placeAt = (offset: number, length: number): Place => {
    starts ??= lineStarts(text);
    const line = lineOf(starts, offset);
    const start = starts[line - 1] ?? 0;
    const end = (starts[line] ?? text.length + 1) - 1;
    const room = Math.max(1, end - offset);
    return {
      file: name,
      line,
      column: offset - start + 1,
      length: Math.min(Math.max(1, length), room),
      lineText: text.slice(start, end),
    };
  };
  return { name, text, placeAt };
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
