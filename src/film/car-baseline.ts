/**
 * The usual film of a car: the middle of the medians of its metal panels that read like paint never repainted.
 *
 * A magnetic gauge reads zinc as paint, so panels over galvanised steel and over any other metal are not alike.
 * Their medians are brought to the kind that most of them are of, by the zinc that the model expects; a panel of the
 * other kind is held to a baseline higher or lower by that zinc, and less surely by what it varies between cars.
 *
 * What earlier work is known to have taken is put back before: film polished off the others makes no panel thick.
 *
 * Fewer panels than `baselinePanels` that agree with it are held to what factories paint, and so is a car of which
 * most panels read like repaint to those that read as factories paint. A panel with one point, or with filler under
 * any, is no witness of the others.
 */
import { median } from '../base/stats/summary.ts';
import { add, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineUncertainty } from './condition/compared-figures.ts';
import { isStatedRepaint, repaintReach } from './condition/condition.ts';
import { factoryFilm } from './factory-film.ts';
import type { FilmModel, Finish, PanelFacts } from './film-model.ts';
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
  /** What factories paint on the kind that most of them are of. */
  readonly factories: Micrometres;
};

/** Null without a panel that could make it; `finish` is what factories would have painted, if it is not as the job says. */
export function carBaseline(
  gathered: readonly GatheredPanel[],
  model: FilmModel,
  finish?: Finish,
): CarBaseline | null {
  const sound = gathered.flatMap((panel) => soundFilm(panel, model.conditions));
  const [first] = sound;
  if (first === undefined) return null;
  const makers = sound.filter(({ isWitness }) => isWitness);
  const mostGalvanised = areMostGalvanised(makers.length === 0 ? sound : makers);
  const factories = ofFactories(
    finish === undefined ? first.facts : { ...first.facts, finish },
    model,
  );
  const own =
    makers.length < model.conditions.baselinePanels
      ? null
      : ofPanels(makers, mostGalvanised, factories, model);
  return {
    ...(own ?? factories),
    mostGalvanised,
    makers: makers.map(({ panel }) => panel),
    factories: ofMost(factories, mostGalvanised).value,
  };
}

const ofMost = ({ galvanised, other }: Kinds, mostGalvanised: boolean): Baseline =>
  mostGalvanised ? galvanised : other;

const areMostGalvanised = (panels: readonly SoundFilm[]): boolean =>
  2 * panels.filter(({ galvanised }) => galvanised).length > panels.length;

type Kinds = Pick<CarBaseline, 'galvanised' | 'other'>;

/**
 * The middle of the panels' medians, brought to the kind that most of them are of; null where it is no measure of the
 * car: too few agree with it, or it is repaint to what factories paint and others read as that.
 */
function ofPanels(
  makers: readonly SoundFilm[],
  mostGalvanised: boolean,
  factories: Kinds,
  model: FilmModel,
): Kinds | null {
  const zinc = zincOf(model.layers).mean;
  const alike = makers.map(({ film, mean, galvanised }) => {
    const toMost = zinc * (Number(mostGalvanised) - Number(galvanised));
    return { film: micrometres(film + toMost), mean: micrometres(mean + toMost) };
  });
  const medians = alike.map(({ film }) => film);
  const usual = micrometres(median(medians));
  const against = alike.filter((one) => !isFactoryFilmOf(usual, one, model.conditions));
  if (makers.length - against.length < model.conditions.baselinePanels) return null;
  const { value } = ofMost(factories, mostGalvanised);
  const nearer = against.some(({ film }) => Math.abs(film - value) < Math.abs(film - usual));
  if (nearer && isRepaintTo(value, usual, model.conditions)) return null;
  const records = recordsOfMiddle(makers.map(({ facts }) => facts));
  const own: Baseline = {
    value: usual,
    uncertain: baselineUncertainty(medians, records, model.measurement),
    from: 'panels',
  };
  const other = ofOtherKind(medians, records, mostGalvanised ? -1 : 1, model);
  return mostGalvanised ? { galvanised: own, other } : { galvanised: other, other: own };
}

/** Whether the film reads like repaint where `baseline` is usual. */
export const isRepaintTo = (
  baseline: Micrometres,
  film: Micrometres,
  model: FilmModel['conditions'],
): boolean => film > baseline + repaintReach(baseline, model);

const isFactoryFilmOf = (
  baseline: Micrometres,
  { film, mean }: Pick<SoundFilm, 'film' | 'mean'>,
  model: FilmModel['conditions'],
): boolean => !isRepaintTo(baseline, film, model) && mean >= baseline - model.cutBack;

/**
 * What factories paint. Of few panels a repaint would pass for the usual film of the car, and film cut back would be
 * its own measure: the thinner the panel, the more of it would be free.
 */
function ofFactories(facts: PanelFacts, { layers }: FilmModel): Kinds {
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
  car === null ? null : ofMost(car, car.mostGalvanised);

type SoundFilm = {
  readonly panel: Panel;
  /** Its median. */
  readonly film: Micrometres;
  readonly mean: Micrometres;
  readonly facts: PanelFacts;
  readonly galvanised: boolean;
  readonly isWitness: boolean;
};

function soundFilm(
  panel: GatheredPanel,
  { refinished, filler }: FilmModel['conditions'],
): readonly SoundFilm[] {
  // Under film or wrap the gauge reads that too; of what was painted again the factory's film is no part.
  if (!isRead(panel) || panel.facts.covered || isStatedRepaint(panel.facts)) return [];
  const { facts, points, otherPoints, statistics } = panel;
  const film = putBack(statistics.median, facts);
  if (film > refinished) return [];
  const isWitness =
    points.length >= LEAST_POINTS &&
    [...points, ...otherPoints].every(({ thickness }) => putBack(thickness, facts) <= filler);
  const mean = putBack(statistics.mean, facts);
  return [{ panel: panel.panel, film, mean, facts, galvanised: facts.galvanised, isWitness }];
}

/** Of one point nobody knows whether it was set down well, or on what. */
const LEAST_POINTS = 2;

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
