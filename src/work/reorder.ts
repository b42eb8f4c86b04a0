/**
 * What the jobs of a list need together, against what is on the shelf: packs to buy for all of them.
 *
 * The jobs are done one after the other. What is used up adds up over them, shares of a piece too, and is
 * rounded to packs once. What lasts serves the next job again: of it there must be as many as the largest
 * job has ready at once, and never fewer than all jobs wear out.
 */
import type { Material } from './materials.ts';
import { packs } from './packs.ts';

/** What the price list says of a material; the price is that of a pack, in the currency's least unit. */
export type Listed = {
  readonly pack: number;
  readonly stock: number | null;
  readonly price: number;
};

/** A material of one job, or of several together. */
export type Need = Pick<Material, 'id' | 'material' | 'unit'> & {
  readonly lasts: boolean;
  /** Null where it is not on the price list. */
  readonly listed: Listed | null;
  readonly jobs: number;
  /** What is gone of it afterwards. */
  readonly usedUp: number;
  /** The most that one job has ready at once. */
  readonly mostReady: number;
};

/** The same material for further jobs. */
export const together = (one: Need, other: Need): Need => ({
  ...one,
  jobs: one.jobs + other.jobs,
  usedUp: one.usedUp + other.usedUp,
  mostReady: Math.max(one.mostReady, other.mostReady),
});

export type Reorder = Need & {
  /** What must be there, from the shelf or bought. */
  readonly needed: number;
  /** Whole packs; null where nobody says what is in stock. */
  readonly toBuy: number | null;
};

/** A record gives the amounts of a job to a millionth: no piece is bought for what is less than that. */
const MILLIONTH = 1e-6;

export function reorderOf(need: Need): Reorder {
  const { jobs, lasts, listed, usedUp, mostReady, unit } = need;
  const sure = usedUp - jobs * MILLIONTH;
  const needed = unit === 'pieces' ? Math.max(packs(sure, 1, 0), lasts ? mostReady : 0) : usedUp;
  const toBuy =
    listed === null || listed.stock === null ? null : packs(needed, listed.pack, listed.stock);
  return { ...need, needed, toBuy };
}
