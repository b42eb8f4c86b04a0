/**
 * Variance of Kendall’s S, the pairs in one order less those in the other, of n pairs of values.
 *
 * In a bivariate normal law of correlation ρ, with τ = (2/π)·arcsin ρ:
 * var S = n(n − 1)/2 · (1 − τ² + 2(n − 2)·(1/9 − ((2/π)·arcsin(ρ/2))²))
 * (Esscher 1924; Kendall & Gibbons 1990, Rank Correlation Methods, ch. 9); without correlation
 * n(n − 1)(2n + 5)/18 (Kendall 1938). Ties only make it less. None of fewer than two; −1 ≤ τ ≤ 1.
 */
export function kendallVariance(count: number, tau = 0): number {
  const half = Math.sin((Math.PI * tau) / 2) / 2;
  const ofThree = 1 / 9 - ((2 / Math.PI) * Math.asin(half)) ** 2;
  const ofPair = 1 - tau ** 2 + 2 * (count - 2) * ofThree;
  // Where all pairs lie in one order the last digit may be under 0.
  return Math.max(0, ((count * (count - 1)) / 2) * ofPair);
}
