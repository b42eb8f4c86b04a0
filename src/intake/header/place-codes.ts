/**
 * Codes by which people call places on the car: `LF`, `KVL`, `AVG`, `右F`. They are known to be such where some of
 * them say where, or where they come in pairs that differ in left and right only.
 */

import { once } from '../../base/kept.ts';

const code = once(() => /^(?=.*\p{L})[\p{Lu}\p{Lo}\p{N}]{2,5}$/u);

const pairs = ['LR', 'GD', 'ID', 'SD', '左右'] as const;

/** Whether all labels are places or codes, and enough of them prove that they are. */
export function arePlaceCodes(
  labels: readonly string[],
  mayBePanel: (label: string) => boolean,
): boolean {
  const own = new Set(labels);
  const places = [...own].filter(mayBePanel);
  if (places.length === own.size) return own.size > 1;
  if (![...own].every((label) => mayBePanel(label) || code().test(label))) return false;
  const sided = pairs.some(
    (pair) => [...own].filter((label) => hasPartner(label, pair, own)).length * 2 >= own.size,
  );
  return own.size > 1 && (places.length > 1 || sided);
}

/** The same with the other side: its last letter or its first. */
function hasPartner(
  label: string,
  [one = '', other = '']: string,
  all: ReadonlySet<string>,
): boolean {
  const swapped = (sign: string): string => (sign === one ? other : sign === other ? one : sign);
  const [first = '', last = ''] = [label.slice(0, 1), label.slice(-1)];
  return [`${label.slice(0, -1)}${swapped(last)}`, `${swapped(first)}${label.slice(1)}`].some(
    (partner) => partner !== label && all.has(partner),
  );
}
