/**
 * The usual film of a car: the middle of the medians of its metal panels that read like paint never repainted.
 *
 * A magnetic gauge reads zinc as paint, so panels over galvanised steel and over any other metal are not alike.
 * Their medians are brought to the kind that most of them are of, by the zinc that the model expects; a panel of the
 * other kind is held to a baseline higher or lower by that zinc, and less surely by what it varies between cars.
 *
 * What earlier work is known to have taken is put back before: film polished off the others makes no panel thick.
 *
 * Fewer panels than `baselinePanels` are held to what factories paint.
 */
import { median } from '../base/stats/summary.ts';
import { add, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineUncertainty } from './condition/compared-figures.ts';
import { isStatedRepaint } from './condition/condition.ts';
import { factoryFilm } from './factory-film.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredPanel, isRead } from './gathered-panel.ts';
import { putBack, recordsOfMiddle } from './put-back.ts';
import type { Panel } from './template/template.ts';
import { zincOf } from './zinc.ts';

export type Baseline = {
  readonly value: Micrometres;
  /** With what it is uncertain by; null where it would be one panel's own. */
  readonly uncertain: Uncertain<'µm'> | null;
  /** What factories paint, where so few panels were read that a repaint among them could pass for the usual film. */
  readonly from: 'panels' | 'factories';
};

export type CarBaseline = {
  readonly galvanised: Baseline;
  readonly other: Baseline;
  /** Whether most of the panels that make it are of galvanised steel. */
  readonly mostGalvanised: boolean;
  /** Panels whose medians it is the middle of. */
  readonly makers: readonly Panel[];
};

/** Null without a panel that could make it. */
export function carBaseline(
  gathered: readonly GatheredPanel[],
  model: FilmModel,
): CarBaseline | null {
  const makers = gathered.flatMap((panel) => makerOf(panel, model.conditions.refinished));
  const [first] = makers;
  if (first === undefined) return null;
  const withZinc = makers.filter(({ galvanised }) => galvanised).length;
  const mostGalvanised = 2 * withZinc > makers.length;
  const zinc = zincOf(model.layers);
  const medians = makers.map(({ film, galvanised }) =>
    micrometres(film + zinc.mean * (Number(mostGalvanised) - Number(galvanised))),
  );
  const records = recordsOfMiddle(makers.map(({ facts }) => facts));
  const kinds =
    makers.length < model.conditions.baselinePanels
      ? ofFew(first.facts, model)
      : ofPanels(medians, records, mostGalvanised, model);
  return { ...kinds, mostGalvanised, makers: makers.map(({ panel }) => panel) };
}

type Kinds = Pick<CarBaseline, 'galvanised' | 'other'>;

/** The middle of the panels' medians, which are all of the kind that most of them are. */
function ofPanels(
  medians: readonly Micrometres[],
  records: ReturnType<typeof recordsOfMiddle>,
  mostGalvanised: boolean,
  model: FilmModel,
): Kinds {
  const own: Baseline = {
    value: micrometres(median(medians)),
    uncertain: baselineUncertainty(medians, records, model.measurement),
    from: 'panels',
  };
  const other = ofOtherKind(medians, records, mostGalvanised ? -1 : 1, model);
  return mostGalvanised ? { galvanised: own, other } : { galvanised: other, other: own };
}

/**
 * What factories paint. Of few panels a repaint would pass for the usual film of the car, and film cut back would be
 * its own measure: the thinner the panel, the more of it would be free.
 */
function ofFew(facts: PanelFacts, { layers }: FilmModel): Kinds {
  const kind = (galvanised: boolean): Baseline => {
    const film = factoryFilm({ ...facts, galvanised }, layers);
    return { value: film.value, uncertain: film, from: 'factories' };
  };
  return { galvanised: kind(true), other: kind(false) };
}

/** What a panel of a kind is held to. */
export const baselineFor = (
  car: CarBaseline | null,
  { galvanised }: GatheredPanel['facts'],
): Baseline | null => (car === null ? null : galvanised ? car.galvanised : car.other);

/** Of most of the panels that make it. */
export const usualBaseline = (car: CarBaseline | null): Baseline | null =>
  car === null ? null : car.mostGalvanised ? car.galvanised : car.other;

type Maker = {
  readonly panel: Panel;
  readonly film: Micrometres;
  readonly facts: PanelFacts;
  readonly galvanised: boolean;
};

function makerOf(panel: GatheredPanel, refinished: Micrometres): readonly Maker[] {
  // Under film or wrap the gauge reads that too; of what was painted again the factory's film is no part.
  if (!isRead(panel) || panel.facts.covered || isStatedRepaint(panel.facts)) return [];
  const { facts } = panel;
  const film = putBack(panel.statistics.median, facts);
  return film > refinished
    ? []
    : [{ panel: panel.panel, film, facts, galvanised: facts.galvanised }];
}

/** The same panels as if they had zinc under the paint (1), or had none (−1). */
function ofOtherKind(
  medians: readonly Micrometres[],
  records: ReturnType<typeof recordsOfMiddle>,
  sign: 1 | -1,
  { layers, measurement }: FilmModel,
): Baseline {
  const { mean, variance } = zincOf(layers);
  const shifted = medians.map((film) => micrometres(film + sign * mean));
  const held = baselineUncertainty(shifted, records, measurement);
  // A shop may hold film with zinc to be known better than film without: the zinc adds no doubt then.
  const zinc = uncertain(micrometres(0), {
    zinc: { contribution: Math.sqrt(Math.max(0, variance)), dof: Number.POSITIVE_INFINITY },
  });
  return {
    value: micrometres(median(shifted)),
    uncertain: held === null ? null : add(held, zinc),
    from: 'panels',
  };
}
