/**
 * Numbers that devices write where they have no reading.
 *
 * A counter at its end (2¹⁵−1, 2¹⁶−1, 2³¹−1, 2³²−1) and the largest floats stand for over-range;
 * IEEE 488.2 and SCPI-1999 (vol. 1, §7.2.1.4–5) write infinity as 9.9E37 and "not a number" as
 * 9.91E37. Rows of nines and the most negative counters stand for "no value". Each is taken so only
 * outside what a film can read: 999 µm is a reading.
 */
export type Sentinel = { readonly class: 'over-range' | 'missing'; readonly meaning: string };

const ends = new Set([32767, 65534, 65535, 6553.5, 2147483647, 4294967295]);
const noValue = new Set([9.91e37, -32768, -2147483648, -999.25]);
const nines = /^9{3,}(?:\.9+)?$/u;

/** `largest` is the most that a reading of the column can be. */
export function sentinelOf(value: number, largest: number): Sentinel | undefined {
  const size = Math.abs(value);
  if (value > 0 && value <= largest) return undefined;
  if (noValue.has(value) || (size < 1e21 && nines.test(String(size)))) {
    return { class: 'missing', meaning: 'a number that devices write for no value' };
  }
  if (ends.has(value)) {
    return { class: 'over-range', meaning: 'the end of a counter, written for over-range' };
  }
  if (value >= 1e30) {
    return { class: 'over-range', meaning: 'what devices write for infinity' };
  }
  return undefined;
}
