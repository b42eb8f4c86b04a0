/** A removal that was foretold and then measured: what is held of it, and whether the two agree. */
import { normalCdf, normalDensity } from '../../base/stats/normal.ts';
import { expectOverNormal } from '../../base/stats/quadrature.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';

export type MeasuredRemoval = { readonly value: Micrometres; readonly standardError: Micrometres };

/** Beside what was foretold, beyond what both may be off by. */
export type AgainstPlan = 'more' | 'less' | 'as-foretold';

/** Chance on either side from which a measurement is not what was foretold. */
const EITHER_SIDE = 0.025;

/**
 * Where the measurement lies among those that the forecast expects: P(R + error ≤ value), R lognormal and
 * the error normal, by quadrature.
 */
export const placeInForecast = (foretold: ExpectedRemoval, measured: MeasuredRemoval): number =>
  expectOverNormal(
    (z) => normalCdf((measured.value - removalAt(foretold, z)) / believed(measured.standardError)),
    turnWidth(foretold, measured),
  );

export function againstPlan(foretold: ExpectedRemoval, measured: MeasuredRemoval): AgainstPlan {
  const place = placeInForecast(foretold, measured);
  if (place < EITHER_SIDE) return 'less';
  return place > 1 - EITHER_SIDE ? 'more' : 'as-foretold';
}

/**
 * What is held of a removal: the forecast by what was measured. E[Rᵏ·L]/E[L], L the normal density of the
 * measurement about R and R lognormal as foretold, by quadrature. A measurement that the forecast does not
 * expect refutes it, and stands alone. Alone it is held as a film record keeps it and a later survey takes it: as
 * it was measured, and no less than nothing.
 */
export function heldRemoval(
  foretold: ExpectedRemoval | null,
  measured: MeasuredRemoval,
): RecordedRemoval {
  if (foretold === null || againstPlan(foretold, measured) !== 'as-foretold') {
    return asMeasured(measured);
  }
  const { value } = measured;
  const error = believed(measured.standardError);
  const moment = (power: number): number =>
    expectOverNormal(
      (z) =>
        removalAt(foretold, z) ** power * normalDensity((value - removalAt(foretold, z)) / error),
      turnWidth(foretold, measured),
    );
  const mean = moment(1) / moment(0);
  return {
    mean: micrometres(mean),
    sd: micrometres(Math.sqrt(Math.max(0, moment(2) / moment(0) - mean ** 2))),
  };
}

/** No gauge tells a removal exactly. */
const LEAST_ERROR = 1e-3;
const believed = (standardError: number): number => Math.max(LEAST_ERROR, standardError);

const removalAt = ({ median, logSd }: ExpectedRemoval, z: number): number =>
  median * Math.exp(logSd * z);

/** How far z has to move for the removal to pass the measurement's error, where it is what was measured. */
const turnWidth = (
  { median, logSd }: ExpectedRemoval,
  { value, standardError }: MeasuredRemoval,
): number => believed(standardError) / Math.max(1e-9, logSd * Math.max(median, value));

const asMeasured = ({ value, standardError }: MeasuredRemoval): RecordedRemoval => ({
  mean: micrometres(Math.max(0, value)),
  sd: standardError,
});
