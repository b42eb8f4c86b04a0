/**
 * The usual film of a car: the middle of the medians of its metal panels that read like paint never repainted.
 *
 * A magnetic gauge reads zinc as paint, so panels over galvanised steel and over any other metal are not alike.
 * Their medians are brought to the kind that most of them are of, by the zinc that the model expects; a panel of the
 * other kind is held to a baseline higher or lower by that zinc, and less surely by what it varies between cars.
 */
import { median } from '../base/stats/summary.ts';
import { add, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineUncertainty } from './condition/compared-figures.ts';
import { isStatedRepaint } from './condition/condition.ts';
import type { FilmModel } from './film-model.ts';
import { type GatheredPanel, isRead } from './gathered-panel.ts';
import { zincOf } from './zinc.ts';

export type Baseline = {
  readonly value: Micrometres;
  /** With what it is uncertain by; null where it would be one panel's own. */
  readonly uncertain: Uncertain<'µm'> | null;
};

export type CarBaseline = {
  readonly galvanised: Baseline;
  readonly other: Baseline;
  /** Whether most of the panels that make it are of galvanised steel. */
  readonly mostGalvanised: boolean;
};

/** Null without a panel that could make it. */
export function carBaseline(
  gathered: readonly GatheredPanel[],
  model: FilmModel,
): CarBaseline | null {
  const makers = gathered.flatMap((panel) => makerOf(panel, model.conditions.refinished));
  if (makers.length === 0) return null;
  const withZinc = makers.filter(({ galvanised }) => galvanised).length;
  const mostGalvanised = 2 * withZinc > makers.length;
  const zinc = zincOf(model.layers);
  const medians = makers.map(({ film, galvanised }) =>
    micrometres(film + zinc.mean * (Number(mostGalvanised) - Number(galvanised))),
  );
  const own = {
    value: micrometres(median(medians)),
    uncertain: baselineUncertainty(medians, model.measurement),
  };
  const other = ofOtherKind(medians, mostGalvanised ? -1 : 1, model);
  return mostGalvanised
    ? { galvanised: own, other, mostGalvanised }
    : { galvanised: other, other: own, mostGalvanised };
}

/** What a panel of a kind is held to. */
export const baselineFor = (
  car: CarBaseline | null,
  { galvanised }: GatheredPanel['facts'],
): Baseline | null => (car === null ? null : galvanised ? car.galvanised : car.other);

/** Of most of the panels that make it. */
export const usualBaseline = (car: CarBaseline | null): Micrometres | null =>
  car === null ? null : (car.mostGalvanised ? car.galvanised : car.other).value;

function makerOf(
  panel: GatheredPanel,
  refinished: Micrometres,
): readonly { readonly film: Micrometres; readonly galvanised: boolean }[] {
  const { facts, statistics } = panel;
  // Under film or wrap the gauge reads that too; of what was painted again the factory's film is no part.
  if (!isRead(panel) || facts.covered || isStatedRepaint(facts) || statistics === null) return [];
  const film = statistics.median;
  return film > refinished ? [] : [{ film, galvanised: facts.galvanised }];
}

/** The same panels as if they had zinc under the paint (1), or had none (−1). */
function ofOtherKind(
  medians: readonly Micrometres[],
  sign: 1 | -1,
  { layers, measurement }: FilmModel,
): Baseline {
  const { mean, variance } = zincOf(layers);
  const shifted = medians.map((film) => micrometres(film + sign * mean));
  const held = baselineUncertainty(shifted, measurement);
  // A shop may hold film with zinc to be known better than film without: the zinc adds no doubt then.
  const zinc = uncertain(micrometres(0), {
    zinc: { contribution: Math.sqrt(Math.max(0, variance)), dof: Number.POSITIVE_INFINITY },
  });
  return {
    value: micrometres(median(shifted)),
    uncertain: held === null ? null : add(held, zinc),
  };
}
