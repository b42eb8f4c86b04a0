/** `--rates-out`: the rates with what a vehicle showed added, and what keeps it from being written. */
import { type Diagnostic, error } from '../base/diagnostics.ts';
import type { RateObservation } from '../formats/rates.ts';
import { ratesFileText } from '../report/methods/rates-file.ts';
import { type AddedObservations, addObservations } from '../tasks/methods/add-observations.ts';
import type { Settings } from '../tasks/settings/settings.ts';
import type { Answer } from './command.ts';
import type { TypedOptions } from './options.ts';

/** Before anything is reckoned: what an observation has to be of. */
export function ratesOutProblem(
  { ratesOut, date }: TypedOptions,
  vehicle: string | null,
): Diagnostic | undefined {
  if (ratesOut === undefined) return undefined;
  if (date === undefined) {
    return error('usage-option-value', '--rates-out needs the day of the work', {
      hint: 'add --date 2026-03-31, or --date today',
    });
  }
  if (vehicle === null) {
    return error('usage-option-value', '--rates-out needs to know which vehicle it is', {
      hint: 'name it in the job file ("vehicle": { "id": "…" }), so that its own spots never count for it twice',
    });
  }
  return undefined;
}

export type KeptObservations = Pick<AddedObservations, 'added' | 'already'> & Pick<Answer, 'files'>;

/** Null where they are not asked for. */
export function keptObservations(
  { rates }: Settings,
  { ratesOut, date }: TypedOptions,
  observationsOn: (date: string) => readonly RateObservation[],
): KeptObservations | null {
  if (ratesOut === undefined || date === undefined) return null;
  const { rates: kept, ...counts } = addObservations(rates?.file, observationsOn(date));
  return { ...counts, files: [{ path: ratesOut, text: ratesFileText(kept) }] };
}
