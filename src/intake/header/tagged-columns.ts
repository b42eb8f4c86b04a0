/**
 * `µm,40172600000000000011,40172600000000000012`: a column for each panel, called by the number of its tag. No film, day
 * or time has so many digits.
 *
 * Every column but the corner is called so, and each by a number of its own.
 */
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';
import type { ReadingColumn } from './layout-shape.ts';

/** A time to the millisecond has 17 digits at most: 20241103101530123. */
const tag = /^\d{18,40}$/u;
const fewest = 2;

/** Undefined where the columns are called otherwise. */
export function taggedColumns(
  header: readonly HeaderCell<GaugeRole>[],
): readonly ReadingColumn[] | undefined {
  const [corner, ...others] = header;
  const texts = new Set(others.map(({ text }) => text));
  const isCorner = corner?.text === '' || corner?.role === 'point' || corner?.role === 'repeat';
  if (!isCorner || texts.size < fewest || texts.size < others.length) return undefined;
  if (!others.every(({ text }) => tag.test(text))) return undefined;
  return others.map(({ text }, k) => ({ column: k + 1, panel: text, number: null }));
}
