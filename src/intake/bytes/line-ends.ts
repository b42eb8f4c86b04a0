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
 * Offset after the last line end in bytes of one or two to a unit; a CR at the very end may be half
 * of one. In no encoding that is read does a longer character hold the byte of either.
 */
export function afterLastLineEnd(bytes: Uint8Array, unit: 1 | 2): number {
  let before = bytes.length - unit;
  if (unit === 1) return Math.max(bytes.lastIndexOf(10), bytes.lastIndexOf(13, before - 1)) + 1;
  before -= bytes.length % 2;
  for (let at = before; at >= 0; at -= 2) {
    const [one = 0, two = 0] = [bytes[at], bytes[at + 1]];
    const code = Math.max(one, two);
    if (Math.min(one, two) === 0 && (code === 10 || (code === 13 && at < before))) return at + 2;
  }
  return 0;
}
