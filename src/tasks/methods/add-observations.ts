/** New observations at the end of a rates file; one that stands there already is not added again. */
import { roundTo } from '../../base/rounding.ts';
import { micrometres } from '../../base/units.ts';
import type { RateObservation, RatesFile } from '../../formats/rates.ts';

export type AddedObservations = {
  readonly rates: RatesFile;
  readonly added: number;
  /** How many stood there already. */
  readonly already: number;
};

export function addObservations(
  before: RatesFile | undefined,
  more: readonly RateObservation[],
): AddedObservations {
  const known = new Set(before?.observations.map(observationKey));
  const fresh: RateObservation[] = [];
  for (const one of more.map(asWritten)) {
    const key = observationKey(one);
    if (known.has(key)) continue;
    known.add(key);
    fresh.push(one);
  }
  const observations = [...(before?.observations ?? []), ...fresh];
  return {
    rates: { ...before, observations },
    added: fresh.length,
    already: more.length - fresh.length,
  };
}

/** Digits that go to a file. */
const DIGITS = 6;
/** No file says that a removal is known better. */
const LEAST_ERROR = 0.01;

/** As it comes back from the file. */
function asWritten(one: RateObservation): RateObservation {
  const { removed } = one;
  if (removed === undefined) return one;
  return {
    ...one,
    removed: {
      mean: micrometres(roundTo(removed.mean, DIGITS)),
      standardError: micrometres(Math.max(LEAST_ERROR, roundTo(removed.standardError, DIGITS))),
    },
  };
}

/** What makes two observations the same: the day, the vehicle, the panel, the work and what was seen. */
export function observationKey(one: RateObservation): string {
  return JSON.stringify([one.date, one.vehicle, one.panel, one.hazeGrade, seenKey(one)]);
}

/** What was worked and what was seen: no two places give the same figures to the last digit. */
export function seenKey({
  steps,
  removed,
  cleared,
}: Pick<RateObservation, 'steps' | 'removed' | 'cleared'>): string {
  const rounded = (value: number | undefined): number | undefined =>
    value === undefined ? undefined : roundTo(value, DIGITS);
  return JSON.stringify([
    steps.map(({ combination, sets }) => [combination, sets]),
    rounded(removed?.mean),
    rounded(removed?.standardError),
    rounded(cleared),
  ]);
}
