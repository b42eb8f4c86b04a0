/**
 * Parts in whole per cent that add up to the whole in whole per cent: each rounded down, and what is missing given to
 * those that were cut by most (largest remainders; Hamilton’s method).
 */
export function wholePercents(parts: readonly number[], whole: number): readonly number[] {
  const down = parts.map((part) => Math.floor(part + EXACT));
  const missing = Math.round(whole) - down.reduce((sum, one) => sum + one, 0);
  const byCut = parts
    .map((part, i) => ({ i, cut: part - (down[i] ?? 0) }))
    .sort((one, other) => other.cut - one.cut);
  const raised = new Set(byCut.slice(0, Math.max(0, missing)).map(({ i }) => i));
  return down.map((part, i) => (raised.has(i) ? part + 1 : part));
}

/** A whole number that a sum of fractions misses by its last digits. */
const EXACT = 1e-9;
