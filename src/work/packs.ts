/**
 * Packs to buy so that stock and packs cover a quantity: whole ones, none too many. A shortfall of less
 * than a billionth of a pack is none, so that sums of fractions do not buy one for a rounding.
 */
export const packs = (quantity: number, packSize: number, stock: number): number =>
  Math.max(0, Math.ceil((quantity - stock) / packSize - 1e-9));
