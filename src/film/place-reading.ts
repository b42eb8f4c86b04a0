/**
 * What a place lacks to the film around it, where it was not read before: the mean of the panel's other points less what
 * it reads. It may always have been thinner than they: the film varies by s̃ from place to place, its spread moderated by
 * the assumption alone, so that a few points that agree prove no even film. u² = s̃²·(1 + 1/n).
 */
import { mean } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel, PlaceWorked } from './film-model.ts';
import { thicknesses } from './gathered-panel.ts';
import type { PanelPoint } from './panel-points.ts';
import { fallbackPrior, leastPointVariance, moderatedSpread, ownSpread } from './spread.ts';

/** Null where nothing else was read of the panel. */
export function missingAtPlace(
  place: Pick<PanelPoint, 'thickness'>,
  others: readonly PanelPoint[],
  { measurement, spread }: FilmModel,
): NonNullable<PlaceWorked['measured']> | null {
  if (others.length === 0) return null;
  const films = thicknesses(others);
  const around = mean(films);
  const noise = leastPointVariance(measurement.repeatability, 1, micrometres(0));
  const { sd } = moderatedSpread(ownSpread(films, noise), fallbackPrior([around], spread));
  return {
    value: micrometres(around - place.thickness),
    standardError: standardErrorOf(sd, films.length),
  };
}

const standardErrorOf = (sd: Micrometres, points: number): Micrometres =>
  micrometres(sd * Math.sqrt(1 + 1 / points));
