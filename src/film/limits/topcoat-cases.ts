/** The topcoat that a panel may carry, as far as its total and what was stated tell. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Condition } from '../condition/condition.ts';
import type {
  FilmModel,
  LayerPrior,
  LayerThickness,
  LimitPolicy,
  PanelFacts,
  RecordedRemoval,
} from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import { zincOf } from '../zinc.ts';
import {
  clearChain,
  type LayerKnowledge,
  NO_ZINC,
  type ThinClear,
  type TotalFilm,
} from './thin-clear.ts';

/** A topcoat as it may be, if the panel is what its word says: its prior and its floor. */
export type PlainTopcoat = {
  readonly finish: 'clear-over-base' | 'single-stage';
  readonly clear: ThinClear;
  /** Mean over the panel, where `clear` speaks of the thinnest part. */
  readonly meanClear: LayerThickness;
  readonly clearFloor: Micrometres;
  /** What both were told from. */
  readonly told: { readonly film: TotalFilm; readonly knowledge: LayerKnowledge };
};

/** What the panel may be besides, with the chance of it; no topcoat where any removal would be one too many then. */
export type Besides = {
  readonly condition: Condition;
  readonly chance: number;
  readonly topcoat: PlainTopcoat | null;
};

/** The same with all that the panel may be besides, as far as that moves what may go. */
export type TopcoatCase = PlainTopcoat & { readonly besides: readonly Besides[] };

/** The topcoats the panel may carry: one when the finish is known, both when it is not. */
export function topcoatCases(
  film: PanelFilm,
  facts: PanelFacts,
  taken: RecordedRemoval,
  policy: LimitPolicy,
  model: FilmModel,
): readonly PlainTopcoat[] {
  const { layers, limits, stated } = model;
  const { count, spread, calibration, operators = micrometres(0) } = film;
  // Of two operators who differ the lower may be right.
  const total = { mean: micrometres(film.mean - operators), count, spread, calibration, taken };
  const topcoatOf = (
    finish: PlainTopcoat['finish'],
    { top, under }: LayerPrior,
    clearFloor: Micrometres,
  ): PlainTopcoat => {
    const knowledge = {
      top,
      under,
      statedClear: facts.clear,
      statedUnder: facts.under,
      zinc: facts.galvanised ? zincOf(layers) : NO_ZINC,
      panelToPanel: stated.panelToPanel,
    };
    const { onThinnest, overPanel } = clearChain(total, knowledge, model.topcoat);
    return {
      finish,
      clear: onThinnest,
      meanClear: {
        mean: micrometres(overPanel.mean),
        sd: micrometres(Math.sqrt(overPanel.variance)),
      },
      clearFloor,
      told: { film: total, knowledge },
    };
  };
  const clearOverBase = (): PlainTopcoat =>
    topcoatOf(
      'clear-over-base',
      layers.clearOverBase,
      policy === 'strict' ? limits.clearFloorStrict : limits.clearFloor,
    );
  const singleStage = (): PlainTopcoat =>
    topcoatOf('single-stage', layers.singleStage, limits.singleStageFloor);
  if (facts.finish === 'clear-over-base' || facts.finish === 'matte') return [clearOverBase()];
  return facts.finish === 'unknown' ? [clearOverBase(), singleStage()] : [singleStage()];
}
