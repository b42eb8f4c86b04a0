import { rectangular } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';

/**
 * Standard uncertainty that the gauge's calibration gives to any reading near `thickness`:
 * (a₀ + a₁·t)/√3, a rectangular distribution (GUM 4.3.7), with the half-width never under what a check on
 * shims found. It is shared by all points and panels, so it never averages down.
 */
export const calibrationUncertainty = (
  thickness: Micrometres,
  { fixed, proportional, leastCalibration = micrometres(0) }: FilmModel['measurement'],
): Micrometres =>
  micrometres(rectangular(Math.max(fixed + proportional * thickness, leastCalibration)));
