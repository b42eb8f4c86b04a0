/** The middle of numbers that stand so often each, the lower of two; 0 where there is none. */
export function middleNumber(numbers: readonly (readonly [number, number])[]): number {
  const sorted = [...numbers].sort(([a], [b]) => a - b);
  const half = sorted.reduce((sum, [, count]) => sum + count, 0) / 2;
  let before = 0;
  for (const [number, count] of sorted) {
    before += count;
    if (before >= half) return number;
  }
  return 0;
}
