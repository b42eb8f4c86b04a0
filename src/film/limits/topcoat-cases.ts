/** The topcoat that a panel may carry, as far as its total and what was stated tell. */
import { normalQuantile } from '../../base/stats/normal.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Condition } from '../condition/condition.ts';
import type {
  FilmModel,
  LayerPrior,
  LayerThickness,
  LimitPolicy,
  PanelFacts,
  RecordedRemoval,
  StatedLayer,
} from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import { zincOf } from '../zinc.ts';
import { clearOfCar } from './clear-of-car.ts';
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
  /** By how many SDs what is stated differs from itself or from what was read, where both can hardly be true. */
  readonly apart?: number;
};

/** What the panel may be besides, with the chance of it; no topcoat where any removal would be one too many then. */
export type Besides = {
  readonly condition: Condition;
  readonly chance: number;
  readonly topcoat: PlainTopcoat | null;
};

/** The same with all that the panel may be besides, as far as that moves what may go. */
export type TopcoatCase = PlainTopcoat & { readonly besides: readonly Besides[] };

/**
 * The topcoats the panel may carry: one when the finish is known, both when it is not. Where the clear of other panels
 * was read, each as factories paint it and as read there: no reading tells whether this panel is like those.
 */
export function topcoatCases(
  film: PanelFilm,
  facts: PanelFacts,
  taken: RecordedRemoval,
  policy: LimitPolicy,
  model: FilmModel,
): readonly PlainTopcoat[] {
  const { layers, limits } = model;
  const { count, spread, calibration, operators = micrometres(0) } = film;
  // Of two operators who differ the lower may be right.
  const total = { mean: micrometres(film.mean - operators), count, spread, calibration, taken };
  const topcoatOf = (
    finish: PlainTopcoat['finish'],
    { top, under }: LayerPrior,
    clearFloor: Micrometres,
    stated: Pick<PanelFacts, 'clear' | 'under'>,
  ): PlainTopcoat => {
    const knowledge = {
      top,
      under,
      statedClear: stated.clear,
      statedUnder: stated.under,
      zinc: facts.galvanised ? zincOf(layers) : NO_ZINC,
      panelToPanel: model.stated.panelToPanel,
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
  const topcoatsOf = (
    finish: PlainTopcoat['finish'],
    layers: LayerPrior,
    clearFloor: Micrometres,
  ): readonly PlainTopcoat[] => {
    const held = (clear: StatedLayer | null, under: StatedLayer | null) =>
      topcoatOf(finish, layers, clearFloor, { clear, under });
    const least = (clear: StatedLayer | null, under: StatedLayer | null): PlainTopcoat[] => {
      const both = held(clear, under);
      const sds = statedApart(both.told, model);
      if (sds === null) return [both];
      const alone = under === null ? [both] : least(clear, null);
      return [
        ...alone.map((one) => ({ ...one, apart: sds })),
        { ...held(null, under), apart: sds },
      ].sort((one, other) => one.clear.mean - other.clear.mean);
    };
    return clearsHeld(facts, layers.top, model).flatMap((clear) => least(clear, facts.under));
  };
  const clearOverBase = (): readonly PlainTopcoat[] =>
    topcoatsOf(
      'clear-over-base',
      layers.clearOverBase,
      policy === 'strict' ? limits.clearFloorStrict : limits.clearFloor,
    );
  const singleStage = (): readonly PlainTopcoat[] =>
    topcoatsOf('single-stage', layers.singleStage, limits.singleStageFloor);
  if (facts.finish === 'clear-over-base' || facts.finish === 'matte') return clearOverBase();
  return facts.finish === 'unknown' ? [...clearOverBase(), ...singleStage()] : singleStage();
}

/**
 * SDs between a stated clear and the total less what lies under it, where honest figures hardly ever differ so much: a
 * mean of the two would be surer than either, of what one of them gets wrong. Null where both may be true; film that is
 * thicker than a stated clear alone may lie under it.
 */
function statedApart(
  { film, knowledge }: PlainTopcoat['told'],
  { topcoat, measurement }: FilmModel,
): number | null {
  const { statedClear, statedUnder } = knowledge;
  if ((statedClear ?? statedUnder) === null || statedClear?.readOn !== undefined) return null;
  const { byTotal, held, gapCounted } = clearChain(film, knowledge, topcoat);
  if (held === null) return null;
  const sd = Math.sqrt(byTotal.variance + held.variance);
  const sds = Math.abs(gapCounted) / sd;
  return sds > normalQuantile(1 - measurement.rounds.falseAlarm / 2) ? sds : null;
}

/** What may be held of the clear before the total is looked at; the thinner first, null for what factories paint. */
function clearsHeld(
  { clear, clearElsewhere, under }: PanelFacts,
  top: LayerThickness,
  { stated }: FilmModel,
): readonly (StatedLayer | null)[] {
  if (clear !== null || under !== null || clearElsewhere === undefined) return [clear];
  const read = clearOfCar(clearElsewhere, top, stated);
  return read.mean < top.mean ? [read, null] : [null, read];
}
