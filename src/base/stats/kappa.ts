/**
 * Cohen’s kappa: how far two who sort the same things into classes agree beyond chance
 * (Cohen 1960, Educ. Psychol. Meas. 20:37).
 *
 * κ = (p_o − p_e)/(1 − p_e), p_o the share on the diagonal, p_e what the margins alone would give. Where
 * both put everything into one class, p_e is 1 and there is no κ: null. It depends on how common the classes
 * are: the same p_o may go with quite different κ, so p_o stands beside it. `counts[i][j]` is what the one
 * called i and the other j; a table that is not square, empty, or holds negative numbers throws a RangeError.
 */
import { at } from '../at.ts';
import { sum } from '../sum.ts';
export type Kappa = {
  readonly kappa: number | null;
  readonly observed: number;
  readonly expected: number;
};

export function cohenKappa(counts: readonly (readonly number[])[]): Kappa {
  const all = counts.flat();
  const total = sum(all);
  const square = counts.every((row) => row.length === counts.length);
  if (!(square && total > 0 && all.every((count) => count >= 0))) {
    throw new RangeError('kappa needs a square table of counts that is not empty');
  }
  const rows = counts.map((row) => sum(row) / total);
  const columns = counts.map((_, j) => sum(counts.map((row) => at(row, j))) / total);
  const observed = sum(counts.map((row, i) => at(row, i))) / total;
  const expected = sum(rows.map((share, i) => share * at(columns, i)));
  // Shares of one class are 1 but for the last digits.
  const kappa = 1 - expected < 1e-12 ? null : (observed - expected) / (1 - expected);
  return { kappa, observed, expected };
}

/** The table of two lists of classes of the same things, over the classes that occur. */
export function classTable<Name>(
  pairs: readonly (readonly [one: Name, other: Name])[],
): readonly (readonly number[])[] {
  const names = [...new Set(pairs.flat())];
  return names.map((one) =>
    names.map((other) => pairs.filter((pair) => pair[0] === one && pair[1] === other).length),
  );
}
