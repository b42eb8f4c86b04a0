/** What is held of a clear that nobody read, where that of other panels of its car was read. */
import { mean } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';
import { micrometres } from '../../base/units.ts';
import type {
  ClearElsewhere,
  FilmModel,
  LayerThickness,
  PanelFacts,
  StatedLayer,
} from '../film-model.ts';
import { calibrationUncertainty } from '../gauge/calibration.ts';
import { goneAllOver } from '../put-back.ts';

export type ReadClear = { readonly clear: StatedLayer; readonly facts: PanelFacts };

/**
 * Mean of the panels' clear as it was painted, x̄ = Σ(cᵢ + eᵢ)/n, eᵢ what is known to have gone. As a figure of the
 * car it is uncertain by √(Σ(p² + uᵢ²)/n² + u_cal² + u_e²): p the SD of panels about their car, uᵢ what a panel's mean
 * is uncertain by alone. The gauge errs alike on all of them, and so do the records.
 */
export function clearElsewhere(panels: readonly ReadClear[], model: FilmModel): ClearElsewhere {
  const parts = panels.map(({ clear, facts }) => {
    const calibration = calibrationUncertainty(clear.mean, model.measurement);
    const gone = goneAllOver(facts);
    return {
      painted: clear.mean + gone.mean,
      alone: model.stated.panelToPanel ** 2 + Math.max(0, clear.sd ** 2 - calibration ** 2),
      calibration,
      gone: gone.sd,
    };
  });
  const alone = sum(parts.map((one) => one.alone)) / panels.length ** 2;
  const calibration = mean(parts.map((one) => one.calibration));
  const gone = mean(parts.map((one) => one.gone));
  return {
    mean: micrometres(mean(parts.map(({ painted }) => painted))),
    sd: micrometres(Math.hypot(Math.sqrt(alone), calibration, gone)),
    panels: panels.length,
  };
}

/**
 * The car's clear as it was painted, by what factories paint and by what was read of it: over cars it varies by
 * σ² − p², and the readings get the share w = (σ² − p²)/(σ² − p² + u²).
 */
export function clearOfCar(
  elsewhere: ClearElsewhere,
  top: LayerThickness,
  { panelToPanel }: FilmModel['stated'],
): StatedLayer {
  const overCars = Math.max(0, top.sd ** 2 - panelToPanel ** 2);
  const share = overCars / (overCars + elsewhere.sd ** 2);
  return {
    mean: micrometres(top.mean + share * (elsewhere.mean - top.mean)),
    sd: micrometres(Math.sqrt(overCars * (1 - share))),
    of: 'car',
    readOn: elsewhere.panels,
  };
}
