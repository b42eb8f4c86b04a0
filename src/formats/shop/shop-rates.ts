/** Rates that a shop measured itself, by `machine/pad/product`. */
import * as z from 'zod';
import { closest } from '../../base/did-you-mean.ts';
import { micrometres } from '../../base/units.ts';
import type { OwnRate } from '../../correction/removal/catalogue.ts';
import { advised } from '../json/advised.ts';
import { given } from '../json/given.ts';
import { combination } from '../json/setting-values.ts';
import { quoted, shorten } from '../json/shorten.ts';
import { correctionModel } from '../models.ts';

export const ratesObject = z
  .record(
    combination,
    advised(
      z.strictObject({
        rate_um_per_set: z.number().min(0.01).max(20),
        ln_sd: z.number().min(0.01).max(2).optional(),
        note: z.string().optional(),
      }),
      (value) => (typeof value === 'number' ? `write { "rate_um_per_set": ${value} }` : undefined),
    ),
  )
  .describe('an object: { "da/foam-medium/medium": { "rate_um_per_set": 0.9 } }');

type Rates = Readonly<Record<string, z.output<typeof ratesObject>[string]>>;

export const toRates = (typed: Rates): ReadonlyMap<string, OwnRate> =>
  new Map(
    Object.entries(typed).map(([key, { rate_um_per_set, ln_sd, note }]) => [
      key,
      { rate: micrometres(rate_um_per_set), ...given({ logSd: ln_sd, note }) },
    ]),
  );

/** What the shop has of each kind: all that is built in where it does not say. */
export type Owned = Readonly<
  Record<'machines' | 'pads' | 'products', readonly string[] | undefined>
>;

const KINDS = ['machines', 'pads', 'products'] as const;

/** Why a combination is not one of the shop's own, and what was meant; undefined when it is. */
export function rateFault(
  key: string,
  owned: Owned,
): { readonly message: string; readonly hint: string } | undefined {
  for (const [i, part] of key.split('/').entries()) {
    const kind = KINDS[i];
    if (kind === undefined) return undefined;
    const has = owned[kind] ?? correctionModel[kind].map(({ id }) => id);
    if (has.includes(part) || (kind === 'machines' && part === 'hand')) continue;
    const near = closest(part, has);
    return {
      message: `names ${quoted(part)}, which is not among the ${kind} of this shop`,
      hint:
        near === undefined ? `${kind}: ${has.map(shorten).join(', ')}` : `did you mean "${near}"?`,
    };
  }
  return undefined;
}
