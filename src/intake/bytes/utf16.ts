/**
 * UTF-16 without a byte order mark, by its zero bytes.
 *
 * Digits, delimiters and line ends of a table are a zero byte and an ASCII byte each, so zeros fill
 * one side of the pairs and are rare on the other. Two bytes of ASCII side by side are no pair of
 * such a table: a few are a letter of the Far East, many are text of another encoding before it.
 */
export type ZeroPattern = {
  readonly name: 'utf-16le' | 'utf-16be';
  readonly evidence: string;
};

/** Pairs of ASCII in a row that no text in UTF-16 has. */
const longestRun = 8;

export function zeroPattern(bytes: Uint8Array): ZeroPattern | undefined {
  const pairs = bytes.length >> 1;
  if (pairs < 2) return undefined;
  let [first, second, ascii, run] = [0, 0, 0, 0];
  for (let at = 0; at + 1 < bytes.length; at += 2) {
    const [one = 0, two = 0] = [bytes[at], bytes[at + 1]];
    if (one === 0 && two !== 0) first += 1;
    if (one !== 0 && two === 0) second += 1;
    const both = isAscii(one) && isAscii(two);
    ascii += both ? 1 : 0;
    run = both ? run + 1 : 0;
    if (run === longestRun) return undefined;
  }
  const most = Math.max(first, second);
  const fills = most * 5 >= pairs && most > ascii && most >= 10 * Math.min(first, second);
  if (!fills) return undefined;
  const name = second > first ? 'utf-16le' : 'utf-16be';
  const which = second > first ? 'second' : 'first';
  return {
    name,
    evidence: `${name} without a byte order mark: in ${most} of ${pairs} pairs of bytes the ${which} alone is 0`,
  };
}

const isAscii = (byte: number): boolean =>
  (byte >= 0x20 && byte < 0x7f) || byte === 0x0a || byte === 0x0d || byte === 0x09;
