/**
 * The total film that factories paint, as the layers that the model or the job states add up to. Few panels make no
 * baseline that they could be told from; this is what they are held to then.
 */
import { type Uncertain, uncertain } from '../base/uncertainty.ts';
import { micrometres } from '../base/units.ts';
import type { FilmModel, LayerPrior, LayerThickness, PanelFacts } from './film-model.ts';

/** With what it varies by between cars; of a finish nobody knows, the thicker of the two it may be. */
export function factoryFilm(
  facts: Pick<PanelFacts, 'finish' | 'galvanised' | 'clear' | 'under'>,
  { clearOverBase, singleStage, galvanisedUnder }: FilmModel['layers'],
): Uncertain<'µm'> {
  const isSingle = !['clear-over-base', 'matte', 'unknown'].includes(facts.finish);
  const priors: readonly LayerPrior[] =
    facts.finish === 'unknown'
      ? [clearOverBase, singleStage]
      : [isSingle ? singleStage : clearOverBase];
  const totals = priors.map(({ top, under }) => {
    const zinc = galvanisedUnder.mean - clearOverBase.under.mean;
    const usual = { mean: under.mean + (facts.galvanised ? zinc : 0), sd: under.sd };
    return together(facts.clear ?? top, facts.under ?? usual);
  });
  return totals.reduce((most, one) => (one.value > most.value ? one : most));
}

const together = (
  top: Pick<LayerThickness, 'mean' | 'sd'>,
  under: { readonly mean: number; readonly sd: number },
): Uncertain<'µm'> =>
  uncertain(micrometres(top.mean + under.mean), {
    cars: { contribution: Math.hypot(top.sd, under.sd), dof: Number.POSITIVE_INFINITY },
  });
