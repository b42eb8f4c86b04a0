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
 * most panels read like repaint to a third of them that read as factories paint. A panel with one point, or with filler
 * under any, is no witness of the others.
 *
 * Fewer thin panels than that are cut back, or show that the others were painted over: both count (`paintedOver`).
 * A panel that lacks film to the others is held to these where too few agree (`heldToOthers`).
 */
import { median } from '../base/stats/summary.ts';
import type { VariancePrior } from '../base/stats/variance-prior.ts';
import { add, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineUncertainty } from './condition/compared-figures.ts';
import { isRepaintTo, isStatedRepaint } from './condition/condition.ts';
import { aboutItsCar, factoryFilm } from './factory-film.ts';
import type { FilmModel, Finish, PanelFacts } from './film-model.ts';
import { type GatheredFilm, type GatheredPanel, isRead } from './gathered-panel.ts';
import { type HeldToOthers, heldToOthers, NONE_HELD } from './held-to-others.ts';
import { lackingClear, type PaintedOver, paintedOver } from './painted-over.ts';
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
  /** The usual film as a repaint of all that carry it; null where the panels do not make the baseline. */
  readonly paintedOver: PaintedOver | null;
  /** Panels that lack film to the others, where the panels do not make the baseline. */
  readonly heldToOthers: HeldToOthers;
};

/** Null without a panel that could make it; `finish` is what factories would have painted, if it is not as the job says. */
export function carBaseline(
  gathered: readonly GatheredPanel[],
  model: FilmModel,
  finish?: Finish,
): CarBaseline | null {
  const sound = gathered.flatMap((panel) => soundFilm(panel, model));
  const [first] = sound;
  if (first === undefined) return null;
  const makers = sound.filter(({ isWitness }) => isWitness);
  const mostGalvanised = areMostGalvanised(makers.length === 0 ? sound : makers);
  const facts = finish === undefined ? first.facts : { ...first.facts, finish };
  const factories = ofFactories(facts, model);
  const about = aboutItsCar(facts.finish, model);
  const readPanels = gathered.filter(mayWitness).length;
  const car = { mostGalvanised, factories, about, readPanels };
  const alike = broughtAlike(makers, mostGalvanised, model);
  const own =
    makers.length < model.conditions.baselinePanels ? null : ofPanels(makers, alike, car, model);
  return {
    ...(own ?? {
      ...factories,
      paintedOver: null,
      heldToOthers: heldToOthers(
        alike,
        { factories: ofMost(factories, mostGalvanised).value, about },
        model.conditions,
      ),
    }),
    mostGalvanised,
    makers: makers.map(({ panel }) => panel),
    factories: ofMost(factories, mostGalvanised).value,
  };
}

const ofMost = <Film>(
  { galvanised, other }: { readonly galvanised: Film; readonly other: Film },
  mostGalvanised: boolean,
): Film => (mostGalvanised ? galvanised : other);

const areMostGalvanised = (panels: readonly SoundFilm[]): boolean =>
  2 * panels.filter(({ galvanised }) => galvanised).length > panels.length;

type Kinds = Pick<CarBaseline, 'galvanised' | 'other'>;

/** What the makers are held against. */
type Car = {
  readonly mostGalvanised: boolean;
  readonly factories: Record<keyof Kinds, FactoriesBaseline>;
  /** How its panels vary about its usual film. */
  readonly about: VariancePrior;
  /** Panels that were read, however thick: repaint over the line of any car makes no baseline, and counts here. */
  readonly readPanels: number;
};

/**
 * The middle of the panels' medians, brought to the kind that most of them are of; null where it is no measure of the
 * car: too few agree with it, or it is repaint to what factories paint and to a third of the panels, which read as that.
 */
function ofPanels(
  makers: readonly SoundFilm[],
  alike: readonly AlikeFilm[],
  car: Car,
  model: FilmModel,
): (Kinds & Pick<CarBaseline, 'paintedOver' | 'heldToOthers'>) | null {
  const { mostGalvanised, factories, about } = car;
  const zinc = zincOf(model.layers).mean;
  const medians = alike.map(({ film }) => film);
  const usual = micrometres(median(medians));
  const against = alike.filter((one) => !isFactoryFilmOf(usual, one, model.conditions));
  if (makers.length - against.length < model.conditions.baselinePanels) return null;
  if (isRespray(usual, { alike, against }, car, model.conditions)) return null;
  const records = recordsOfMiddle(makers.map(({ facts }) => facts));
  const own: Baseline = {
    value: usual,
    uncertain: baselineUncertainty(medians, about, records, model.measurement),
    from: 'panels',
  };
  const other = ofOtherKind(medians, { about, records, sign: mostGalvanised ? -1 : 1 }, model);
  return {
    ...(mostGalvanised ? { galvanised: own, other } : { galvanised: other, other: own }),
    paintedOver:
      own.uncertain === null
        ? null
        : paintedOver(own.uncertain, thinnestOf(alike), factories.other.uncertain, {
            zinc: mostGalvanised ? { galvanised: 0, other: -zinc } : { galvanised: zinc, other: 0 },
            model,
          }),
    heldToOthers: NONE_HELD,
  };
}

/** A panel brought to the kind that most are of. */
type AlikeFilm = Pick<SoundFilm, 'panel' | 'film' | 'mean'> & {
  readonly read: Micrometres;
  /** Its film with what its clear is known to lack put back. */
  readonly painted: Micrometres;
};

const broughtAlike = (
  makers: readonly SoundFilm[],
  mostGalvanised: boolean,
  { layers }: FilmModel,
): readonly AlikeFilm[] =>
  makers.map(({ panel, film, mean, lacking, galvanised }) => {
    const toMost = zincOf(layers).mean * (Number(mostGalvanised) - Number(galvanised));
    return {
      panel,
      read: film,
      film: micrometres(film + toMost),
      mean: micrometres(mean + toMost),
      painted: micrometres(film + lacking + toMost),
    };
  });

function thinnestOf(alike: readonly AlikeFilm[]): PaintedOver['shownBy'] {
  const { panel, read, painted } = alike.reduce((least, one) =>
    one.painted < least.painted ? one : least,
  );
  return { panel, read, film: painted };
}

/**
 * Whether the panels that do not agree show that the usual film is repaint: it reads so to what factories paint, a third
 * of the panels at least are nearer to that, and what agrees reads like repaint to them. Fewer are as likely cut back.
 */
function isRespray(
  usual: Micrometres,
  {
    alike,
    against,
  }: { readonly alike: readonly AlikeFilm[]; readonly against: readonly AlikeFilm[] },
  { factories, mostGalvanised, readPanels }: Car,
  model: FilmModel['conditions'],
): boolean {
  const { value } = ofMost(factories, mostGalvanised);
  if (!isRepaintTo(value, usual, model)) return false;
  const witnesses = against.filter(
    ({ painted }) => Math.abs(painted - value) < Math.abs(painted - usual),
  );
  if (LEAST_SHARE_OF_WITNESSES * witnesses.length < readPanels) return false;
  const agreeing = alike.filter((one) => !against.includes(one));
  return isRepaintTo(middleOf(witnesses), middleOf(agreeing), model);
}

const middleOf = (panels: readonly AlikeFilm[]): Micrometres =>
  micrometres(median(panels.map(({ painted }) => painted)));

/** One in three. */
const LEAST_SHARE_OF_WITNESSES = 3;

const isFactoryFilmOf = (
  baseline: Micrometres,
  { film, mean }: Pick<SoundFilm, 'film' | 'mean'>,
  model: FilmModel['conditions'],
): boolean => !isRepaintTo(baseline, film, model) && mean >= baseline - model.cutBack;

/**
 * What factories paint. Of few panels a repaint would pass for the usual film of the car, and film cut back would be
 * its own measure: the thinner the panel, the more of it would be free.
 */
function ofFactories(facts: PanelFacts, { layers }: FilmModel): Car['factories'] {
  const kind = (galvanised: boolean): FactoriesBaseline => {
    const film = factoryFilm({ ...facts, galvanised }, layers);
    return { value: film.value, uncertain: film, from: 'factories' };
  };
  return { galvanised: kind(true), other: kind(false) };
}

type FactoriesBaseline = Baseline & { readonly uncertain: Uncertain<'µm'> };

/** What a panel is held to, by its kind and by the others. */
export const baselineFor = (
  car: CarBaseline | null,
  { panel, facts }: Pick<GatheredPanel, 'panel' | 'facts'>,
): Pick<Baseline, 'value' | 'uncertain'> | null =>
  car === null ? null : (car.heldToOthers.get(panel.id) ?? ofMost(car, facts.galvanised));

/** What the factory painted on a panel of a kind if the usual film of the car is repaint; null where it may not be. */
export const paintedOverFor = (
  car: CarBaseline | null,
  { galvanised }: GatheredPanel['facts'],
): (Pick<PaintedOver, 'chance' | 'shownBy'> & { readonly film: Uncertain<'µm'> }) | null =>
  car === null || car.paintedOver === null
    ? null
    : { ...car.paintedOver, film: ofMost(car.paintedOver, galvanised) };

/** Of most of the panels that make it. */
export const usualBaseline = (car: CarBaseline | null): Baseline | null =>
  car === null ? null : ofMost(car, car.mostGalvanised);

type SoundFilm = {
  readonly panel: Panel;
  /** Its median. */
  readonly film: Micrometres;
  readonly mean: Micrometres;
  /** What its clear is known to lack of a factory's. */
  readonly lacking: number;
  readonly facts: PanelFacts;
  readonly galvanised: boolean;
  readonly isWitness: boolean;
};

function soundFilm(panel: GatheredPanel, model: FilmModel): readonly SoundFilm[] {
  if (!isOfFactory(panel)) return [];
  const { refinished, filler } = model.conditions;
  const { facts, points, otherPoints, statistics } = panel;
  const film = putBack(statistics.median, facts);
  if (film > refinished) return [];
  const isWitness =
    mayWitness(panel) &&
    [...points, ...otherPoints].every(({ thickness }) => putBack(thickness, facts) <= filler);
  const mean = putBack(statistics.mean, facts);
  const lacking = lackingClear(panel, model);
  const { galvanised } = facts;
  return [{ panel: panel.panel, film, mean, lacking, facts, galvanised, isWitness }];
}

/** Under film or wrap the gauge reads that too; of what was painted again the factory's film is no part. */
const isOfFactory = (panel: GatheredPanel): panel is GatheredFilm =>
  isRead(panel) && !panel.facts.covered && !isStatedRepaint(panel.facts);

const mayWitness = (panel: GatheredPanel): boolean =>
  isOfFactory(panel) && panel.points.length >= LEAST_POINTS;

/** Of one point nobody knows whether it was set down well, or on what. */
const LEAST_POINTS = 2;

/** The same panels as if they had zinc under the paint (1), or had none (−1). */
function ofOtherKind(
  medians: readonly Micrometres[],
  {
    about,
    records,
    sign,
  }: Pick<Car, 'about'> & {
    readonly records: ReturnType<typeof recordsOfMiddle>;
    readonly sign: 1 | -1;
  },
  { layers, measurement }: FilmModel,
): Baseline {
  const { mean, variance } = zincOf(layers);
  const shifted = medians.map((film) => micrometres(film + sign * mean));
  const held = baselineUncertainty(shifted, about, records, measurement);
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
