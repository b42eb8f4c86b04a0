/**
 * Offsets in a text to places a reader can find: line and column from 1, column in UTF-16 units.
 *
 * A line ends at LF, CR LF or CR. A stretch over several lines is cut at the end of its first; an
 * empty one is given a length of 1, so that there is something to point at.
 */
import type { Place } from '../../base/diagnostics.ts';

export type PlaceAt = (offset: number, length: number) => Place;

export function textPlaces(file: string, text: string): PlaceAt {
  const starts = [0];
  for (const { index, 0: end } of text.matchAll(/\r\n|\n|\r/g)) starts.push(index + end.length);
  return (offset, length) => {
    const line = lastAtOrBefore(starts, offset);
    const start = starts[line] ?? 0;
    const lineText = text.slice(start, starts[line + 1] ?? text.length).replace(/[\r\n]+$/, '');
    const room = lineText.length - (offset - start);
    return {
      file,
      line: line + 1,
      column: offset - start + 1,
      length: Math.max(1, Math.min(length, room)),
      lineText,
    };
  };
}

function lastAtOrBefore(sorted: readonly number[], wanted: number): number {
  let low = 0;
  let high = sorted.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((sorted[middle] ?? 0) <= wanted) low = middle;
    else high = middle - 1;
  }
  return low;
}
