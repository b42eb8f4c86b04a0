/** Film and layers in round numbers, by which topcoats are worked by hand. */
import { micrometres } from '../../../src/base/units.ts';
import {
  type LayerKnowledge,
  NO_ZINC,
  type TotalFilm,
} from '../../../src/film/limits/thin-clear.ts';

const um = micrometres;

export const sharing = {
  thinnestShare: 0.05,
  panelShare: 0.5,
  panelCeiling: 0.6,
  underLeast: 1 / 3,
};
export const film: TotalFilm = {
  mean: um(98),
  count: 4,
  spread: { sd: um(4), dof: 8 },
  calibration: um(3),
  taken: { mean: um(3), sd: um(1) },
};
export const knowledge: LayerKnowledge = {
  top: { mean: um(40), sd: um(5) },
  under: { mean: um(64), sd: um(8) },
  statedClear: null,
  statedUnder: null,
  zinc: NO_ZINC,
  panelToPanel: um(2),
};
