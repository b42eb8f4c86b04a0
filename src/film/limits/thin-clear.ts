import { normalQuantile } from '../../base/stats/normal.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel, LayerPrior, RecordedRemoval, StatedLayer } from '../film-model.ts';
import type { Spread } from '../spread.ts';
import { goneAtPlace } from './earlier-work.ts';

/** Topcoat left on the thinnest share (5 %) of a panel's face: a normal distribution. */
export type ThinClear = { readonly mean: Micrometres; readonly sd: Micrometres };

type Sharing = FilmModel['topcoat'];

/** A mean over the panel with the variance of what is not known of it. */
type Estimate = { readonly mean: number; readonly variance: number };

/** What is held of a panel's layers before its total is looked at. */
export type LayerKnowledge = LayerPrior & {
  readonly statedClear: StatedLayer | null;
  readonly statedUnder: StatedLayer | null;
  /** What a magnetic gauge reads of zinc under the paint, as it shifts and widens `under`. */
  readonly zinc: Estimate;
  /** SD of a panel about what is stated of the whole car. */
  readonly panelToPanel: Micrometres;
};

/** Zinc that is not there. */
export const NO_ZINC: Estimate = { mean: 0, variance: 0 };

export type TotalFilm = {
  readonly mean: Micrometres;
  readonly count: number;
  readonly spread: Spread;
  readonly calibration: Micrometres;
  /** Gone from the clear as it was painted; `allOver` of it where some went at one place alone. */
  readonly taken: RecordedRemoval;
};

/**
 * What is known of the topcoat on the thinnest share (5 %) of the panel's face.
 *
 * Clear C ~ N(μ_C − e, σ_C² − v + u_e²) over U ~ N(μ_U, B), e gone before with uncertainty u_e. A share
 * of the spread over the panel is put down to the clear, built in v = min(s̃²/2, 0.6·σ_C²); B is what is
 * left of σ_U², at least a third of it. The total says C = x̄ − U with variance D = B + u_cal² + s̃²/n,
 * and gets the share g = A/(A + D). A total below what was expected lowers the clear; a thick one never
 * raises it, for it may as well be thick under the clear.
 *
 * A clear that is stated or measured on this panel stands in the place of the prior, C ~ N(c, s²), with
 * its own spread over the panel where that was read; one stated of the car is N(c − e, s² + p² + u_e²),
 * p the SD of panels about their car. Where what lies under is stated, U ~ N(u, s²) (+ p² for the car's,
 * + zinc), the prior of the clear is dropped, C = x̄ − u with variance D, and a thick total does speak
 * for the clear. Both stated: their mean by inverse variances.
 *
 * On the thinnest 5 %: mean − 1.645·√v; the variance gains 2.706·v/(2ν), that of 1.645·√v̂ on ν degrees
 * of freedom.
 *
 * The readings lie beside a place that lost more than the panel, by d with uncertainty u_d: e is what went all over it,
 * and the thinnest is thinner by all of d, its variance more by u_d². A gap that lowers the clear gets the share of
 * A + u_d² all the same, for doubt about a place makes no panel thicker.
 */
export const thinClear = (
  film: TotalFilm,
  knowledge: LayerKnowledge,
  sharing: Sharing,
): ThinClear => clearChain(film, knowledge, sharing).onThinnest;

/** Every figure on the way from the total to the topcoat on the thinnest share of the face. */
export type ClearChain = {
  /** What lies under the topcoat, by prior or as stated, zinc included. */
  readonly under: Estimate;
  /** Topcoat by the total alone: the total less what lies under. */
  readonly byTotal: Estimate;
  /** Topcoat held before the total was looked at, earlier work taken off; null where the total says it all. */
  readonly held: Estimate | null;
  /** Share g of the gap between the two that is believed, and what of the gap counts. */
  readonly share: number;
  readonly gapCounted: number;
  /** Mean of the topcoat over the panel. */
  readonly overPanel: Estimate;
  /** The part of the spread over the panel that is the topcoat's. */
  readonly within: { readonly variance: number; readonly dof: number };
  /** Gone at one place beyond what went all over the panel. */
  readonly atPlace: Estimate;
  readonly onThinnest: ThinClear;
};

export function clearChain(
  film: TotalFilm,
  knowledge: LayerKnowledge,
  sharing: Sharing,
): ClearChain {
  const z = normalQuantile(1 - sharing.thinnestShare);
  const within = withinPanel(film.spread, knowledge, sharing);
  const atPlace = goneAtPlace(film.taken);
  const ofPanel = panelMean(film, knowledge, within.variance, sharing);
  const mean = ofPanel.overPanel.mean - atPlace.mean;
  const variance = ofPanel.overPanel.variance + atPlace.variance;
  return {
    ...ofPanel,
    within,
    atPlace,
    onThinnest: {
      mean: micrometres(mean - z * Math.sqrt(within.variance)),
      sd: micrometres(Math.sqrt(variance + (z ** 2 * within.variance) / (2 * within.dof))),
    },
  };
}

/** The part of the spread over the panel that is the clear's. */
function withinPanel(
  spread: Spread,
  { top, statedClear }: LayerKnowledge,
  { panelShare, panelCeiling }: Sharing,
): { readonly variance: number; readonly dof: number } {
  const read = statedClear?.within;
  if (read !== undefined) return { variance: read.sd ** 2, dof: read.dof };
  return {
    variance: Math.min(panelShare * spread.sd ** 2, panelCeiling * top.sd ** 2),
    dof: spread.dof,
  };
}

/** Mean of the clear over the panel: what was held of it, and what the total adds. */
function panelMean(
  film: TotalFilm,
  knowledge: LayerKnowledge,
  within: number,
  { underLeast }: Sharing,
): Omit<ClearChain, 'within' | 'atPlace' | 'onThinnest'> {
  const under = underEstimate(film.spread, knowledge, within, underLeast);
  const noise = film.calibration ** 2 + film.spread.sd ** 2 / film.count;
  const byTotal = { mean: film.mean - under.mean, variance: under.variance + noise };
  const held = heldOfClear(film.taken.allOver ?? film.taken, knowledge, within);
  if (held === null) {
    return { under, byTotal, held, share: 1, gapCounted: 0, overPanel: byTotal };
  }
  const shareOf = (variance: number): number => variance / (variance + byTotal.variance);
  const gap = byTotal.mean - held.mean;
  const gapCounted = knowledge.statedUnder === null ? Math.min(0, gap) : gap;
  const doubt = gapCounted < 0 ? goneAtPlace(film.taken).variance : 0;
  const share = shareOf(held.variance + doubt);
  const overPanel = {
    mean: held.mean + share * gapCounted,
    variance: held.variance * (1 - shareOf(held.variance)),
  };
  return { under, byTotal, held, share, gapCounted, overPanel };
}

function underEstimate(
  spread: Spread,
  { under, statedUnder, zinc, panelToPanel }: LayerKnowledge,
  within: number,
  least: number,
): Estimate {
  if (statedUnder !== null) {
    const ofPanels = statedUnder.of === 'car' ? panelToPanel ** 2 : 0;
    return {
      mean: statedUnder.mean + zinc.mean,
      variance: statedUnder.sd ** 2 + ofPanels + zinc.variance,
    };
  }
  const all = under.sd ** 2 + zinc.variance;
  return {
    mean: under.mean + zinc.mean,
    variance: Math.max(all - (spread.sd ** 2 - within), least * all),
  };
}

/** Null where only what lies under the clear is stated: the total then says it all. */
function heldOfClear(
  taken: Pick<RecordedRemoval, 'mean' | 'sd'>,
  { top, statedClear, statedUnder, panelToPanel }: LayerKnowledge,
  within: number,
): Estimate | null {
  if (statedClear?.of === 'panel') {
    return { mean: statedClear.mean, variance: statedClear.sd ** 2 };
  }
  if (statedClear !== null) {
    return {
      mean: statedClear.mean - taken.mean,
      variance: statedClear.sd ** 2 + panelToPanel ** 2 + taken.sd ** 2,
    };
  }
  if (statedUnder !== null) return null;
  return { mean: top.mean - taken.mean, variance: top.sd ** 2 - within + taken.sd ** 2 };
}
