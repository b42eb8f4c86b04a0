/** A shop's own rates in a machine record. */
import type { RatesReport } from '../../tasks/methods/rates-report.ts';
import { factorRecord } from '../log-factor.ts';
import { recorded } from '../recorded.ts';

export const ratesRecord = (rates: RatesReport | null) =>
  rates === null
    ? null
    : {
        file: rates.name,
        observations: rates.readings.length,
        vehicles: rates.vehicles,
        by_eye: rates.byEye,
        not_known: rates.unknown,
        usual_paint: factorRecord(rates.usualPaint),
        foretelling: foretellingRecord(rates.foretelling),
        observed: rates.readings.map(({ observation, at, evidence, byOthers, builtIn, place }) => ({
          line: at.line ?? null,
          day: observation.date,
          vehicle: observation.vehicle ?? null,
          panel: observation.panel ?? null,
          worked: observation.steps.map(({ combination, sets }) => ({ combination, sets })),
          removed_um: recorded(evidence.removed.value),
          standard_error_um: recorded(evidence.removed.standardError),
          foretold_um: recorded(byOthers.median),
          built_in_um: recorded(builtIn.median),
          place_prob: recorded(place),
        })),
      };

const foretellingRecord = (record: RatesReport['foretelling']) =>
  record === null
    ? null
    : {
        error_um_per_set: recorded(record.error),
        built_in_error_um_per_set: recorded(record.builtInError),
        noise_um_per_set: recorded(record.noise),
        within_range: record.within,
        vehicles_nearer: record.nearer,
      };
