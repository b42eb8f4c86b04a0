/**
 * The total film that factories paint, as the layers that the model or the job states add up to. Few panels make no
 * baseline that they could be told from; this is what they are held to then.
 */
import type { VariancePrior } from '../base/stats/variance-prior.ts';
import { type Uncertain, uncertain } from '../base/uncertainty.ts';
import { micrometres } from '../base/units.ts';
import type { FilmModel, Finish, LayerPrior, LayerThickness, PanelFacts } from './film-model.ts';
import { NO_ZINC } from './limits/thin-clear.ts';
import { fallbackPrior } from './spread.ts';
import { zincOf } from './zinc.ts';

/** With what it varies by between cars; of a finish nobody knows, the lesser of the two it may be. */
export function factoryFilm(
  facts: Pick<PanelFacts, 'finish' | 'galvanised' | 'clear' | 'under'>,
  layers: FilmModel['layers'],
): Uncertain<'µm'> {
  const totals = priorsOf(facts.finish, layers).map(({ top, under }) => {
    const { mean, variance } = facts.galvanised ? zincOf(layers) : NO_ZINC;
    const usual = { mean: under.mean + mean, sd: Math.sqrt(Math.max(0, under.sd ** 2 + variance)) };
    return together(facts.clear ?? top, facts.under ?? usual);
  });
  return totals.reduce((least, one) => (one.value < least.value ? one : least));
}

/**
 * How the panels of one car vary about its usual film, zinc brought alike: a share of what factory film varies by over
 * cars, less what it does over one panel. Whatever a job states of the layers: that is their thickness, not how panels
 * differ.
 */
export function aboutItsCar(
  finish: Finish,
  { layers, spread, conditions }: Pick<FilmModel, 'layers' | 'spread' | 'conditions'>,
): VariancePrior {
  const overCars = priorsOf(finish, layers).map(({ top, under }) => {
    const within = fallbackPrior([top.mean + under.mean], spread).variance;
    return top.sd ** 2 + under.sd ** 2 - within;
  });
  return {
    variance: conditions.aboutItsCar * Math.max(0, ...overCars),
    dof: conditions.aboutItsCarDof,
  };
}

/** The topcoat of it. */
export const factoryTop = (finish: Finish, layers: FilmModel['layers']): number =>
  Math.min(...priorsOf(finish, layers).map(({ top }) => top.mean));

function priorsOf(
  finish: Finish,
  { clearOverBase, singleStage }: FilmModel['layers'],
): readonly LayerPrior[] {
  if (finish === 'clear-over-base' || finish === 'matte') return [clearOverBase];
  return finish === 'unknown' ? [clearOverBase, singleStage] : [singleStage];
}

const together = (
  top: Pick<LayerThickness, 'mean' | 'sd'>,
  under: { readonly mean: number; readonly sd: number },
): Uncertain<'µm'> =>
  uncertain(micrometres(top.mean + under.mean), {
    cars: { contribution: Math.hypot(top.sd, under.sd), dof: Number.POSITIVE_INFINITY },
  });
