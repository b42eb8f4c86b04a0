/** What may come off around a place that was read at a few marks, as far as they tell. */
import { mean } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { NO_SIDES } from '../condition/possible-sides.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import { calibrationUncertainty } from '../gauge/calibration.ts';
import { fallbackPrior, leastPointVariance, moderatedSpread, ownSpread } from '../spread.ts';
import { type Allowance, allowance } from './allowance.ts';
import type { RemovalTerms } from './removal-limits.ts';

/**
 * As for a panel of factory film read at these points, its spread moderated by the assumption alone: a
 * place of a few centimetres does not show how film varies over a panel. Null for fewer points than a
 * machine plan needs, and for film so thick that it is repaint.
 */
export function placeAllowance(
  films: readonly Micrometres[],
  facts: PanelFacts,
  terms: RemovalTerms,
  model: FilmModel,
): Allowance | null {
  if (films.length < model.reading.leastPoints) return null;
  const middle = micrometres(mean(films));
  if (middle > model.conditions.refinished) return null;
  const noise = leastPointVariance(model.measurement.repeatability, 1, micrometres(0));
  const film = {
    mean: middle,
    smallest: micrometres(Math.min(...films)),
    count: films.length,
    spread: moderatedSpread(ownSpread(films, noise), fallbackPrior([middle], model.spread)),
    calibration: calibrationUncertainty(middle, model.measurement),
    operators: model.measurement.betweenOperators,
  };
  return allowance(
    { film, facts, conditions: ['original'], baseline: null, sides: NO_SIDES },
    terms,
    model,
  );
}
