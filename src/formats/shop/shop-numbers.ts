/** The numbers of the model as a shop sets them: each by its id, within its range. */

import * as z from 'zod';
import { closest } from '../../base/did-you-mean.ts';
import { toDigits } from '../../base/rounding.ts';
import { listAllDefaults, type NamedDefault } from '../data/all-defaults.ts';
import { keysAdvised } from '../json/advised.ts';
import { onlyOne } from '../json/key-words.ts';

const numberOf = ({ range: [least, most] }: NamedDefault) =>
  z.number().min(plain(least)).max(plain(most)).optional();

/** Ranges that follow from a value are shown to people: no tail of binary digits. */
const plain = (bound: number): number => toDigits(bound, 6);

const defaults = listAllDefaults();
const ids = defaults.map(({ id }) => id);

export const numbersObject = keysAdvised(
  z.strictObject(Object.fromEntries(defaults.map((one) => [one.id, numberOf(one)]))),
  numberHint,
);

/** The id that was meant by another word, or where to find the ids. */
export function numberHint(word: string): string {
  const typed = word.toLowerCase();
  const holding = ids.filter((id) => id.includes(typed));
  const meant = closest(typed, ids) ?? onlyOne(holding) ?? nearestByEnd(typed);
  if (meant !== undefined) return `did you mean "${meant}"?`;
  return holding.length > 0
    ? `an id is written whole, such as ${holding.slice(0, 3).join(', ')}`
    : 'leastcut explain lists every id';
}

const lastOf = (id: string): string => id.slice(id.lastIndexOf('.') + 1);

function nearestByEnd(typed: string): string | undefined {
  const end = closest(lastOf(typed), ids.map(lastOf));
  return end === undefined ? undefined : onlyOne(ids.filter((id) => lastOf(id) === end));
}
