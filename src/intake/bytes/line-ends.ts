/** Line ends of three kinds become one, and are counted on the way. */

export type LineEnds = {
  /** CRLF and CR → LF. */
  readonly unify: (text: string) => string;
  /** Line ends unified so far. */
  readonly count: () => number;
  /** A sentence where the file mixes them. */
  readonly evidence: () => readonly string[];
};

export function createLineEnds(): LineEnds {
  const counts = { CRLF: 0, CR: 0, LF: 0 };
  const unify = (text: string): string => {
    if (!text.includes('\r')) {
      counts.LF += countOf(text, '\n');
      return text;
    }
    const crlf = countOf(text, '\r\n');
    counts.CRLF += crlf;
    counts.CR += countOf(text, '\r') - crlf;
    counts.LF += countOf(text, '\n') - crlf;
    return text.replace(/\r\n?/gu, '\n');
  };
  const evidence = (): readonly string[] => {
    const used = Object.entries(counts).filter(([, count]) => count > 0);
    if (used.length < 2) return [];
    return [`line ends are mixed: ${used.map(([kind, count]) => `${count} ${kind}`).join(', ')}`];
  };
  return {
    unify,
    count: () => counts.CRLF + counts.CR + counts.LF,
    evidence,
  };
}

function countOf(text: string, mark: string): number {
  let count = 0;
  for (let at = text.indexOf(mark); at !== -1; at = text.indexOf(mark, at + mark.length))
    count += 1;
  return count;
}

/**
 * Offset after the last line end in bytes of one, two or four to a unit; a CR at the very end may be half
 * of one. In no encoding that is read does a longer character hold the byte of either.
 */
export function afterLastLineEnd(bytes: Uint8Array, unit: 1 | 2 | 4): number {
  if (unit === 1) {
    return Math.max(bytes.lastIndexOf(10), bytes.lastIndexOf(13, bytes.length - 2)) + 1;
  }
  const last = bytes.length - (bytes.length % unit) - unit;
  for (let at = last; at >= 0; at -= unit) {
    const code = lineEndIn(bytes.subarray(at, at + unit));
    if (code === 10 || (code === 13 && at < last)) return at + unit;
  }
  return 0;
}

/** The one byte of a unit that is not 0, where it stands at an end of it. */
function lineEndIn(unit: Uint8Array): number {
  const [first = 0, last = 0] = [unit[0], unit.at(-1)];
  const code = Math.max(first, last);
  return unit.reduce((sum, byte) => sum + byte, 0) === code ? code : 0;
}
