/**
 * Days that somebody has changed, held against the rules of the trade: each stage after those that must be
 * over before it, and not before what it waits for (a coating that cures) is done waiting.
 *
 * The days give hours and no clock, so each stage is taken to begin as early as it can: when the one
 * before has ended and waited, in the morning at the earliest. What is past the end of its day even so
 * cannot be done on it.
 */
import type { Minutes } from '../base/units.ts';
import { earlyFaults, type OrderFault } from './stage-order.ts';
import type { WorkModel } from './work-model.ts';

/** What is done of a stage on a day, in the order it is done; a stage may go on the next day. */
export type DayPiece = { readonly day: number; readonly stage: string; readonly time: Minutes };

type Terms = Pick<WorkModel, 'rules'> & {
  /** Time on the clock that passes after a stage before anything else is done. */
  readonly waits: ReadonlyMap<string, Minutes>;
  readonly hoursPerDay: number;
};

export const MINUTES_A_DAY = 1440;
/** Minutes that rounding may add up to. */
const NEGLIGIBLE = 0.01;

/** What is wrong, by the index of the piece that stands where it may not. */
export function dayFaults(pieces: readonly DayPiece[], terms: Terms): readonly OrderFault[] {
  const order = pieces.map(({ stage }) => stage);
  return [
    ...earlyFaults(order, terms.rules, (id) => order.lastIndexOf(id)),
    ...unwaited(pieces, order, terms),
  ].sort((a, b) => a.index - b.index);
}

/** The first piece that is begun too early after each wait. */
function unwaited(
  pieces: readonly DayPiece[],
  order: readonly string[],
  { waits, hoursPerDay }: Terms,
): readonly OrderFault[] {
  const faults: OrderFault[] = [];
  let clock = 0;
  /** The stage that has to wait, and until when. */
  let held: { readonly stage: string; readonly wait: number; readonly until: number } | undefined;
  for (const [index, { day, stage, time }] of pieces.entries()) {
    const morning = (day - 1) * MINUTES_A_DAY;
    const start = Math.max(clock, morning, held?.until ?? 0);
    const end = morning + 60 * hoursPerDay;
    if (held !== undefined && start + time > end + NEGLIGIBLE && held.until > morning) {
      faults.push(tooSoon(index, stage, held));
      held = undefined;
    }
    clock = start + time;
    const wait = waits.get(stage) ?? 0;
    if (wait > 0 && order.lastIndexOf(stage) === index) held = { stage, wait, until: clock + wait };
  }
  return faults;
}

function tooSoon(
  index: number,
  stage: string,
  held: { readonly stage: string; readonly wait: number },
): OrderFault {
  const wait = Math.round(held.wait);
  return {
    index,
    message: `"${stage}" is begun before "${held.stage}" has waited: ${wait}\u00a0min pass after it`,
    hint: `put "${stage}" on a later day`,
  };
}
