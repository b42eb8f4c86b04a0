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
  StatedLayer,
} from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import { zincOf } from '../zinc.ts';
import { clearsHeld, mostApart, type StatedApart } from './clears-held.ts';
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
  /** Where what is stated can hardly be true of what was read. */
  readonly apart?: StatedApart;
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
      const apart = statedApart(both.told, facts, model);
      if (apart === null) return [both];
      const alone = under === null ? [both] : clearsAlone(clear).flatMap((one) => least(one, null));
      return [...alone.map((one) => ({ ...one, apart })), { ...held(null, under), apart }].sort(
        (one, other) => one.clear.mean - other.clear.mean,
      );
    };
    const clearsAlone = (clear: StatedLayer | null): readonly (StatedLayer | null)[] =>
      clear?.readOn === undefined || clear.withStated
        ? [clear]
        : clearsHeld({ ...facts, clear: null, under: null }, layers.top, model).map(
            (one) => one.clear,
          );
    return alikeApart(
      clearsHeld(facts, layers.top, model).flatMap(({ clear, apart }) =>
        least(clear, facts.under).map((one) => (apart === undefined ? one : { ...one, apart })),
      ),
    );
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
 * What cannot be true of a panel is told of it, whichever of its statements counts: first of all a stated clear against
 * one that was read, for that one against the total is no word about what is stated.
 */
function alikeApart(cases: readonly PlainTopcoat[]): readonly PlainTopcoat[] {
  const all = cases.flatMap(({ apart }) => (apart === undefined ? [] : [apart]));
  const apart = PLAINEST_FIRST.map((from) => all.find((one) => one.from === from)).find(
    (one) => one !== undefined,
  );
  return apart === undefined ? cases : cases.map((one) => ({ ...one, apart }));
}

const PLAINEST_FIRST: readonly StatedApart['from'][] = [
  'own-clear',
  'clear-elsewhere',
  'total',
  'under-elsewhere',
  'car',
];

/**
 * A clear against the total less what lies under it, where honest figures hardly ever differ so much: a mean of the two
 * would be surer than either, of what one of them gets wrong. Null where both may be true; film that is thicker than a
 * stated clear alone may lie under it. What is stated of the car is in doubt on all of its paint if it is on one panel.
 */
function statedApart(
  { film, knowledge }: PlainTopcoat['told'],
  { statedInDoubt }: PanelFacts,
  model: FilmModel,
): StatedApart | null {
  const { statedClear, statedUnder } = knowledge;
  const isRead = statedClear?.readOn !== undefined && statedClear.withStated === undefined;
  if ((statedClear ?? statedUnder) === null || (isRead && statedUnder === null)) return null;
  const { byTotal, held, gapCounted } = clearChain(film, knowledge, model.topcoat);
  const sds =
    held === null ? 0 : Math.abs(gapCounted) / Math.sqrt(byTotal.variance + held.variance);
  const isBesideRead = statedUnder !== null && statedClear?.readOn !== undefined;
  if (sds > mostApart(model)) return { sds, from: isBesideRead ? 'under-elsewhere' : 'total' };
  const isOfCar = [isRead ? null : statedClear, statedUnder].some((layer) => layer?.of === 'car');
  return statedInDoubt && isOfCar ? { sds, from: 'car' } : null;
}
