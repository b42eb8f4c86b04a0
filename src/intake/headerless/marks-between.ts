/**
 * Whether a mark sets a number of a line apart from the others: `112 109 115 (112)`, `112 109 115 => 112`,
 * `112 109 115 | 112` may end in the mean of the others, `112 -> 109` was read before and after, `109 - 115` is from
 * the least to the largest. Marks that stand between all numbers alike, or around each of them, set none apart.
 */

/** What stands between each two numbers that no word parts. */
export function setsApart(between: readonly string[]): boolean {
  const kinds = new Set(between.map((marks) => marks.replace(/[\s,]+/gu, '')));
  const [kind = ''] = kinds;
  if (kinds.size > 1) return true;
  if (dashes.test(kind)) return between.length < 2;
  return !parts.test(kind) && !aroundEach.has(kind);
}

const dashes = /^[-–—]$/u;
const parts = /^[;:./|&+·•–—-]*$/u;
const aroundEach: ReadonlySet<string> = new Set([')(', '][', '}{', '""', "''", '**', '__']);
