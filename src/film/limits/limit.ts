/** A limit on what may come off a panel: how it is called, the room it leaves, what that allows. */
import { type Remark, spoken } from '../../base/remark.ts';
import type { Sentence } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { ceilingAllowance, clearAllowance } from './removal-risk.ts';

export type LimitCode =
  | 'clear'
  | 'life'
  | 'total'
  | 'readings'
  | 'finish'
  | 'covered'
  | 'fresh-paint'
  | 'clear-coat-failure'
  | 'colour-at-spot'
  | 'test-spot'
  | 'sound-panels'
  | 'spot-depth'
  | 'near-line'
  | 'place'
  | 'as-compared'
  | 'no-data';

/** What a limit leaves for a removal: film over a floor, or a ceiling less what is gone. */
export type LimitRoom = {
  readonly of: Micrometres;
  readonly less: Micrometres;
  /** SD of the film or of what is gone; 0 where it is exact. */
  readonly sd: Micrometres;
  /** Chance of passing it that is taken. */
  readonly risk: number;
};

export const roomLeft = ({ of, less }: LimitRoom): Micrometres => micrometres(of - less);

/** A limit and the largest median removal it allows; without a room it allows nothing whatever the film. */
export type Limit = Remark & {
  readonly code: LimitCode;
  readonly value: Micrometres;
  readonly room?: LimitRoom;
  /** Of repaint whose own test spot left no colour: what it gets in all, and how much of that is gone. */
  readonly ofRepaint?: { readonly cap: Micrometres; readonly gone: Micrometres };
};

/** A limit before it is put into words: most that are asked for are asked for their figure alone. */
export type UnsaidLimit = {
  readonly code: LimitCode;
  readonly value: Micrometres;
  readonly room?: LimitRoom;
  readonly said: () => Sentence | string;
};

export function inWords({ code, value, room, said }: UnsaidLimit): Limit {
  const limit = { ...spoken(said()), code, value };
  return room === undefined ? limit : { ...limit, room };
}

const ZERO = micrometres(0);

/** µm; a doubt that is less is none. */
const LEAST_SD = 1e-9;

/** The largest median removal that keeps to a room. */
export const removalIn = (room: LimitRoom, logSd: number): Micrometres =>
  room.sd > LEAST_SD
    ? clearAllowance({ mean: roomLeft(room), sd: room.sd }, ZERO, { risk: room.risk, logSd })
    : ceilingAllowance(roomLeft(room), { risk: room.risk, logSd });

/**
 * The smallest allowance binds; of several that allow nothing the floor of the total, which nothing that could be
 * learnt lifts, else the first.
 */
export function bindingLimit<One extends Pick<Limit, 'code' | 'value'>>(
  limits: readonly One[],
): One {
  const least = limits.reduce((one, limit) => (limit.value < one.value ? limit : one));
  const firm =
    least.value === 0 && CAN_BE_LEARNT.includes(least.code)
      ? limits.find(({ code, value }) => code === 'total' && value === 0)
      : undefined;
  return firm ?? least;
}

/** Limits that more may be learnt of. */
const CAN_BE_LEARNT: readonly LimitCode[] = ['clear', 'near-line', 'life'];
