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
 * Panels that are stated to carry other layers than most (a roof in single stage) are compared with each other alike.
 *
 * Fewer thin panels than that are cut back, or show that the others were painted over: both count (`paintedOver`).
 * A panel that lacks film to the others is held to these where too few agree (`heldToOthers`).
 *
 * No line between the two is sharp: as far as it is in doubt which of them holds, a panel is held to the other besides
 * (`heldBeside`), and what allows less counts.
 */
import { median } from '../base/stats/summary.ts';
import type { VariancePrior } from '../base/stats/variance-prior.ts';
import { add, standardUncertainty, type Uncertain, uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import {
  type AlikeFilm,
  areMostGalvanised,
  broughtAlike,
  mayWitness,
  type SoundFilm,
  soundFilm,
  thinnestOf,
} from './baseline-makers.ts';
import { baselineUncertainty } from './condition/compared-figures.ts';
import type { HeldBeside } from './condition/judged-panel.ts';
import { aboutItsCar, factoryFilm } from './factory-film.ts';
import type { FilmModel, Finish, PanelFacts } from './film-model.ts';
import { type GatheredPanel, isRead } from './gathered-panel.ts';
import { carByOthers, type HeldToOthers, heldToOthers, NONE_HELD } from './held-to-others.ts';
import { byPaintKind, type PaintKind, paintKindOf } from './paint-kind.ts';
import { type PaintedOver, paintedOver } from './painted-over.ts';
import { agrees, doubtOfAgreement, doubtOfThickness, isRespray } from './panels-agree.ts';
import { recordsOfMiddle } from './put-back.ts';
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
  /** What factories paint. */
  readonly factories: Record<keyof Kinds, FactoriesBaseline>;
  /** How its panels vary about its usual film. */
  readonly about: VariancePrior;
  /** The chance that not the panels that make it, but what factories paint, is the measure of the car. */
  readonly doubt: number;
  /** The usual film as a repaint of all that carry it; null where the panels do not make the baseline. */
  readonly paintedOver: PaintedOver | null;
  /** Panels that lack film to the others, where the panels do not make the baseline. */
  readonly heldToOthers: HeldToOthers;
  /** The film of the car by the others of a panel, by its id, where the panels do not make the baseline. */
  readonly byOthers: ReadonlyMap<string, Uncertain<'µm'>>;
  /** Of panels stated to carry other layers than most do, where enough of them agree; absent where all carry the same. */
  readonly otherPaint?: ReadonlyMap<PaintKind | null, CarBaseline>;
  /** What too few panels carry to be compared with each other: they are compared with the others. */
  readonly fewOfPaint?: readonly (PaintKind | null)[];
};

/** Null without a panel that could make it; `finish` is what factories would have painted, if it is not as the job says. */
export function carBaseline(
  gathered: readonly GatheredPanel[],
  model: FilmModel,
  finish?: Finish,
): CarBaseline | null {
  const [[, most], ...others] = byPaintKind(gathered.filter(isRead));
  if (others.length === 0) return alikeBaseline(gathered, model, finish);
  const baseline = alikeBaseline(most, model, finish);
  if (baseline === null) return null;
  const own = others.map(([kind, panels]) => [kind, alikeBaseline(panels, model)] as const);
  const isOfPanels = (one: CarBaseline | null): one is CarBaseline =>
    usualBaseline(one)?.from === 'panels';
  return {
    ...baseline,
    otherPaint: new Map(own.flatMap(([kind, one]) => (isOfPanels(one) ? [[kind, one]] : []))),
    fewOfPaint: own.flatMap(([kind, one]) => (isOfPanels(one) ? [] : [kind])),
  };
}

/** By what the panel is stated to carry, where that is not what most do. */
const ofPaint = (
  car: CarBaseline | null,
  { finish }: Pick<PanelFacts, 'finish'>,
): CarBaseline | null => car?.otherPaint?.get(paintKindOf(finish)) ?? car;

/** Of panels that carry as many layers. */
function alikeBaseline(
  gathered: readonly GatheredPanel[],
  model: FilmModel,
  finish?: Finish,
): CarBaseline | null {
  const sound = gathered.flatMap((panel) => soundFilm(panel, model));
  const [first] = sound;
  if (first === undefined) return null;
  const makers = sound.filter(({ isWitness }) => isWitness);
  const mostGalvanised = areMostGalvanised(makers.length === 0 ? sound : makers);
  const stated = sound.length === 1 ? first.facts : ofCarAlone(first.facts);
  const facts = finish === undefined ? stated : { ...stated, finish };
  const factories = ofFactories(facts, model);
  const about = aboutItsCar(facts.finish, model);
  const readPanels = gathered.filter(mayWitness).length;
  const car = { mostGalvanised, factories, about, readPanels };
  const alike = broughtAlike(makers, mostGalvanised, model);
  const own =
    makers.length < model.conditions.baselinePanels ? null : ofPanels(makers, alike, car, model);
  const ofCarsLike = ofMost(factories, mostGalvanised);
  const paint = { factories: ofCarsLike.value, about };
  return {
    ...(own ?? {
      ...factories,
      doubt: 0,
      paintedOver: null,
      heldToOthers: heldToOthers(alike, paint, model.conditions),
      byOthers: carByOthers(alike, ofCarsLike.uncertain, model.conditions),
    }),
    mostGalvanised,
    makers: makers.map(({ panel }) => panel),
    factories,
    about,
  };
}

/** Whether two that are made of the same panels are one: all that a finish changes of them is what they have from these. */
export const isSameBaseline = (one: CarBaseline | null, other: CarBaseline | null): boolean =>
  one === null || other === null
    ? one === other
    : one.about.variance === other.about.variance &&
      KINDS.every((kind) => isSameFilm(one.factories[kind], other.factories[kind]));

const KINDS = ['galvanised', 'other'] as const;

const isSameFilm = (one: FactoriesBaseline, other: FactoriesBaseline): boolean =>
  one.value === other.value &&
  standardUncertainty(one.uncertain) === standardUncertainty(other.uncertain);

/** What is known of one panel's layers is nothing that factories paint on the others. */
const ofCarAlone = (facts: PanelFacts): PanelFacts => ({
  ...facts,
  clear: facts.clear?.of === 'car' ? facts.clear : null,
  under: facts.under?.of === 'car' ? facts.under : null,
});

const ofMost = <Film>(
  { galvanised, other }: { readonly galvanised: Film; readonly other: Film },
  mostGalvanised: boolean,
): Film => (mostGalvanised ? galvanised : other);

type Kinds = Pick<CarBaseline, 'galvanised' | 'other'>;

/** What the makers are held against. */
type Car = Pick<CarBaseline, 'mostGalvanised' | 'factories' | 'about'> & {
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
): (Kinds & Pick<CarBaseline, 'doubt' | 'paintedOver' | 'heldToOthers' | 'byOthers'>) | null {
  const { mostGalvanised, factories, about, readPanels } = car;
  const { conditions } = model;
  const zinc = zincOf(model.layers).mean;
  const medians = alike.map(({ film }) => film);
  const usual = micrometres(median(medians));
  const agreeing = alike.filter((one) => agrees(usual, one, conditions));
  if (agreeing.length < conditions.baselinePanels) return null;
  const against = alike.filter((one) => !agreeing.includes(one));
  const ofMostFactories = ofMost(factories, mostGalvanised).value;
  const respray = { alike, against, factories: ofMostFactories, readPanels };
  if (isRespray(usual, respray, conditions)) return null;
  const records = recordsOfMiddle(makers.map(({ facts }) => facts));
  const own: Baseline = {
    value: usual,
    uncertain: baselineUncertainty(medians, about, records, model.measurement),
    from: 'panels',
  };
  const other = ofOtherKind(medians, { about, records, sign: mostGalvanised ? -1 : 1 }, model);
  return {
    ...(mostGalvanised ? { galvanised: own, other } : { galvanised: other, other: own }),
    doubt:
      own.uncertain === null
        ? 0
        : Math.max(
            doubtOfAgreement(own.uncertain, agreeing, conditions),
            doubtOfThickness(own.uncertain, factories.other.value, conditions),
          ),
    paintedOver:
      own.uncertain === null
        ? null
        : paintedOver(own.uncertain, thinnestOf(alike), factories.other.uncertain, {
            zinc: mostGalvanised ? { galvanised: 0, other: -zinc } : { galvanised: zinc, other: 0 },
            model,
          }),
    heldToOthers: NONE_HELD,
    byOthers: new Map(),
  };
}

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

/** What a panel has its word by: its kind's, or the others'. */
export function baselineFor(
  ofCar: CarBaseline | null,
  { panel, facts }: Pick<GatheredPanel, 'panel' | 'facts'>,
): Pick<Baseline, 'value' | 'uncertain'> | null {
  const car = ofPaint(ofCar, facts);
  return car === null ? null : (car.heldToOthers.get(panel.id) ?? ofMost(car, facts.galvanised));
}

/** What it is held to besides, and the chance that this holds; null where that is nothing. */
export function heldBeside(
  ofCar: CarBaseline | null,
  { panel, facts }: Pick<GatheredPanel, 'panel' | 'facts'>,
): HeldBeside | null {
  const car = ofPaint(ofCar, facts);
  if (car === null) return null;
  if (car.heldToOthers.has(panel.id)) {
    return { film: ofMost(car.factories, facts.galvanised).uncertain, chance: 1 };
  }
  const film = car.byOthers.get(panel.id);
  if (film !== undefined) return { film, chance: 1 };
  if (car.doubt === 0) return null;
  const { galvanised, other } = car.factories;
  const beside = { film: other.uncertain, chance: car.doubt };
  return facts.galvanised ? { ...beside, overZinc: galvanised.uncertain } : beside;
}

/** What the factory painted on a panel of a kind if the usual film of the car is repaint; null where it may not be. */
export function paintedOverFor(
  ofCar: CarBaseline | null,
  facts: GatheredPanel['facts'],
): (Pick<PaintedOver, 'chance' | 'shownBy'> & { readonly film: Uncertain<'µm'> }) | null {
  const car = ofPaint(ofCar, facts);
  return car === null || car.paintedOver === null
    ? null
    : { ...car.paintedOver, film: ofMost(car.paintedOver, facts.galvanised) };
}

/** What factories paint on the kind that most of those are of. */
export const usualOfFactories = ({ factories, mostGalvanised }: CarBaseline): Micrometres =>
  ofMost(factories, mostGalvanised).value;

/** Of most of the panels that make it. */
export const usualBaseline = (car: CarBaseline | null): Baseline | null =>
  car === null ? null : ofMost(car, car.mostGalvanised);

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
