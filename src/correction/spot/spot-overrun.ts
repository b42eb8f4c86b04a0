/** Test spots that took more than might go at their own place, as its marks read before: nothing goes on till that is settled. */
import { counted } from '../../base/counted.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import { usualRemoval } from './spot-contradiction.ts';
import type { RemovedFilm, SpotTrial } from './spot-trial.ts';

export type SpotOverrun = {
  readonly trial: SpotTrial;
  readonly removed: RemovedFilm;
  /** What might go there before anything was tried on this paint. */
  readonly allowed: Micrometres;
};

/**
 * Surely: the whole 95 % interval lies over what might go, which the few marks of a place tell less well than a survey;
 * what perhaps was too much, the survey says. `allowed` is null where the marks do not tell it.
 */
export function spotOverrun(
  trial: SpotTrial,
  removed: RemovedFilm,
  allowed: Micrometres | null,
): SpotOverrun | null {
  return allowed === null || removed.low <= allowed ? null : { trial, removed, allowed };
}

export const overrunStop = (overrun: SpotOverrun): Remark =>
  remark(
    'spot-stop-overrun',
    says`stop: ${came(overrun)}. Do not work it further. Wipe, let cool and read its marks again; if that stands, find out what took it (sets, pad, pressure, paint) before anything more is worked`,
    overrun.removed.mean,
  );

function came({ trial, removed, allowed }: SpotOverrun): Sentence {
  const { mean, low, high } = removed;
  const might = allowed === 0 ? says`nothing might go` : says`${um(allowed, 2)} might go`;
  return says`test spot ${trial.spot} took ${um(mean)} (${bare(low)} to ${bare(high)}) in ${counted(trial.sets, 'set')}, where ${might} by its marks and ${um(usualRemoval(trial), 2)} is usual`;
}
