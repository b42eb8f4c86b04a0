/** What there is to show of a shop's own rates: what they rest on, and how well they foretell. */
import type { Place } from '../../base/diagnostics.ts';
import { ratePriors } from '../../correction/rates/model-with-rates.ts';
import {
  type ForetellingRecord,
  type ForetoldReading,
  foretellEach,
  foretellingRecord,
} from '../../correction/rates/rate-foretelling.ts';
import type { LogFactor } from '../../correction/spot/trial-observation.ts';
import type { RateObservation } from '../../formats/rates.ts';
import type { Settings } from '../settings/settings.ts';

export type ReportedReading = ForetoldReading & {
  readonly observation: RateObservation;
  readonly at: Place;
};

export type RatesReport = {
  readonly name: string;
  readonly readings: readonly ReportedReading[];
  readonly vehicles: number;
  readonly byEye: number;
  readonly unknown: number;
  /** Of the shop's usual paint in its own hands, against what is built in. */
  readonly usualPaint: LogFactor;
  /** Null where there is too little to say. */
  readonly foretelling: ForetellingRecord | null;
};

/** Null where no rates file is named, and where it holds no removal. */
export function ratesReport({ rates, correction }: Settings): RatesReport | null {
  if (rates === null || correction.learned === null) return null;
  const { name, evidence, byEye, unknown } = rates;
  const each = foretellEach(
    evidence.map((one) => one.evidence),
    ratePriors(correction),
  );
  return {
    name,
    readings: evidence.flatMap(({ observation, at }, i) => {
      const foretold = each[i];
      return foretold === undefined ? [] : [{ ...foretold, observation, at }];
    }),
    vehicles: new Set(evidence.map((one) => one.evidence.vehicle)).size,
    byEye,
    unknown,
    usualPaint: correction.learned.usualPaint,
    foretelling: foretellingRecord(each),
  };
}
