/** The machines, pads, products and rates that a shop has: built-in ones, changed ones and its own. */
import { metresPerSecond, minutes } from '../../base/units.ts';
import type {
  CorrectionModel,
  Machine,
  Motion,
  OwnRate,
  Pad,
  Product,
} from '../../correction/removal/catalogue.ts';
import type { JsonPath } from '../../formats/json/json-text.ts';
import type { OwnMachine, OwnThing } from '../../formats/shop/shop-things.ts';
import type { OwnedThing } from './owned-thing.ts';
import { type Effective, firstSaid } from './setting-origin.ts';
import { type Layers, type ShopLayer, saidIn } from './settings-layers.ts';
import { placeText } from './settings-panels.ts';

/** Machines of a shop that has not said what it owns (common practice). */
export const USUAL_MACHINES: readonly string[] = ['rotary', 'da', 'da-small', 'hand'];
const HAND = 'hand';

export type Catalogue = {
  readonly model: CorrectionModel;
  /** The ids in force, each list with where it is said. */
  readonly machines: Effective<readonly string[]>;
  readonly pads: Effective<readonly string[]>;
  readonly products: Effective<readonly string[]>;
  readonly rates: ReadonlyMap<string, Effective<OwnRate>>;
  /** What shop files say of a thing, by `machines/<id>` and so on, or of a rate by `rates/<key>`. */
  readonly owned: ReadonlyMap<string, OwnedThing>;
};

export function catalogueOf(layers: Layers, builtIn: CorrectionModel): Catalogue {
  const machines = ownedOf(layers, 'machines', builtIn.machines, (own, all) =>
    machineOf(own, all, builtIn.removal),
  );
  const pads = ownedOf(layers, 'pads', builtIn.pads, padOf);
  const products = ownedOf(layers, 'products', builtIn.products, productOf);
  const rates = ratesOf(layers);
  return {
    model: {
      ...builtIn,
      machines: withHands(machines.things ?? usual(builtIn.machines), builtIn.machines),
      pads: pads.things ?? builtIn.pads,
      products: products.things ?? builtIn.products,
      rates: new Map([...rates].map(([key, { value }]) => [key, value])),
    },
    machines: idsIn(machines, usual(builtIn.machines)),
    pads: idsIn(pads, builtIn.pads),
    products: idsIn(products, builtIn.products),
    rates,
    owned: new Map([...machines.owned, ...pads.owned, ...products.owned, ...ownedRates(rates)]),
  };
}

type Thing = { readonly id: string };

const usual = (machines: readonly Machine[]): readonly Machine[] =>
  machines.filter(({ id }) => USUAL_MACHINES.includes(id));

/** Hands are in every shop. */
const withHands = (owned: readonly Machine[], all: readonly Machine[]): readonly Machine[] =>
  owned.some(({ id }) => id === HAND) ? owned : [...owned, ...all.filter(({ id }) => id === HAND)];

type Kind = 'machines' | 'pads' | 'products';
type Owned<T> = {
  readonly things: readonly T[] | undefined;
  readonly said: Effective<unknown> | undefined;
  readonly owned: readonly (readonly [string, OwnedThing])[];
};

const idsIn = (
  { things, said }: Owned<Thing>,
  otherwise: readonly Thing[],
): Effective<readonly string[]> => {
  const ids = (things ?? otherwise).map(({ id }) => id);
  return said === undefined ? firstSaid([], ids) : { ...said, value: ids };
};

/** The things that the first shop file with such a list names, each as it describes it. */
function ownedOf<Own extends OwnThing | OwnMachine, T extends Thing>(
  layers: Layers,
  kind: Kind,
  builtIn: readonly T[],
  make: (own: Own, builtIn: readonly T[]) => T,
): Owned<T> {
  const layer = layers.shops.find(({ file }) => file.value[kind] !== undefined);
  if (layer === undefined) return { things: undefined, said: undefined, owned: [] };
  const list = layer.file.value[kind] as unknown as readonly Own[];
  return {
    things: list.map((own) => make(own, builtIn)),
    said: saidIn(layer.file, layer.origin, list, [kind]),
    owned: list.map((own, i) => [
      `${kind}/${own.id}`,
      ownedThing(own, kind, layer, [kind, i], builtIn),
    ]),
  };
}

function ownedThing(
  own: OwnThing | OwnMachine,
  kind: Kind,
  { origin, file }: ShopLayer,
  path: JsonPath,
  builtIn: readonly Thing[],
): OwnedThing {
  const placeOf = (more: JsonPath, what?: 'key'): string =>
    placeText(file.placeOf([...path, ...more], what));
  return {
    origin,
    where: placeOf([]),
    base: baseOf(own, builtIn)?.id ?? (kind === 'machines' ? nearestOf(own) : null),
    stated: new Map(own.stated.map((key) => [key, placeOf([key], 'key')])),
  };
}

const ownedRates = (rates: Catalogue['rates']): readonly (readonly [string, OwnedThing])[] =>
  [...rates].map(([key, { origin, where }]) => [
    `rates/${key}`,
    { origin, where, base: null, stated: new Map([['rate_um_per_set', where]]) },
  ]);

const baseOf = <T extends Thing>(
  { id, like }: Pick<OwnThing, 'id' | 'like'>,
  builtIn: readonly T[],
): T | undefined => builtIn.find((one) => one.id === (like ?? id));

/** Grades of haze that a thing of no known likeness leaves: the finer its last stage, the less. */
const hazeOf = ({ stages = [] }: OwnThing): number => {
  if (stages.includes('finish')) return 0;
  return stages.includes('refine') ? 1 : 2;
};

function padOf(own: OwnThing, builtIn: readonly Pad[]): Pad {
  const base = baseOf(own, builtIn);
  return {
    id: own.id,
    name: own.name ?? (base?.id === own.id ? base.name : own.id),
    factor: own.factor ?? base?.factor ?? 1,
    haze: own.haze ?? base?.haze ?? Math.min(1, hazeOf(own)),
    stages: own.stages ?? base?.stages ?? [],
  };
}

const productOf = (own: OwnThing, builtIn: readonly Product[]): Product => ({
  ...padOf(own, builtIn),
  haze: own.haze ?? baseOf(own, builtIn)?.haze ?? hazeOf(own),
});

/** A pad up to this size is on a machine for tight places, which is pressed less. */
const SMALL_PAD_MM = 100;

/** The built-in machine whose figures stand in for what a machine of no known likeness leaves out. */
function nearestOf({ motion, forcedRpm, padDiameter }: OwnMachine): string {
  if (motion !== 'orbital') return motion === 'hand' ? HAND : 'rotary';
  if (padDiameter !== undefined && padDiameter <= SMALL_PAD_MM) return 'da-small';
  return (forcedRpm ?? 0) > 0 ? 'da-forced' : 'da';
}

function machineOf(
  own: OwnMachine,
  builtIn: readonly Machine[],
  removal: CorrectionModel['removal'],
): Machine {
  const like = baseOf(own, builtIn);
  const base = like ?? builtIn.find(({ id }) => id === nearestOf(own));
  if (base === undefined) throw new Error('each motion has a built-in machine');
  const machine: Machine = {
    id: own.id,
    name: own.name ?? (like?.id === own.id ? like.name : own.id),
    motion: motionOf(own, base),
    padDiameter: own.padDiameter ?? base.padDiameter,
    force: own.force ?? base.force,
    armSpeed: own.armSpeed ?? base.armSpeed,
    ...(own.vibration === undefined ? {} : { vibration: own.vibration }),
  };
  return own.perSection === undefined ? machine : atPace(machine, own.perSection, removal);
}

function motionOf(own: OwnMachine, { motion: base }: Machine): Motion {
  const kind = own.motion ?? base.kind;
  if (kind === 'hand') {
    if (base.kind !== 'hand') throw new Error('a hand is filled from the built-in one');
    return { ...base, rubbing: own.armSpeed ?? base.rubbing };
  }
  if (kind === 'rotary') {
    return { kind, rpm: own.rpm ?? (base.kind === 'rotary' ? base.rpm : 0) };
  }
  const orbit = base.kind === 'orbital' ? base : undefined;
  const throwDiameter = own.throwDiameter ?? orbit?.throwDiameter;
  const orbitsPerMinute = own.orbitsPerMinute ?? orbit?.orbitsPerMinute;
  if (throwDiameter === undefined || orbitsPerMinute === undefined) {
    throw new Error('an orbital machine says how it moves, or a built-in one does');
  }
  return {
    kind,
    throwDiameter,
    orbitsPerMinute,
    forcedRpm: own.forcedRpm ?? orbit?.forcedRpm ?? 0,
  };
}

const SECONDS_PER_MINUTE = 60;
const METRES_PER_MILLIMETRE = 1e-3;

/** The same machine at so many minutes a section: s = passes·A/(60·T·d·(1 − overlap)). */
function atPace(
  machine: Machine,
  perSection: number,
  { passes, overlap, section }: CorrectionModel['removal'],
): Machine {
  const { motion } = machine;
  if (motion.kind === 'hand') {
    const share = motion.handArea / section;
    return { ...machine, motion: { ...motion, minutesPerSet: minutes(perSection * share) } };
  }
  const width = machine.padDiameter * METRES_PER_MILLIMETRE * (1 - overlap);
  const speed = (passes * section) / (SECONDS_PER_MINUTE * perSection * width);
  return { ...machine, armSpeed: metresPerSecond(speed) };
}

/** Rates by combination, each from the first file that states it. */
function ratesOf({ shops }: Layers): ReadonlyMap<string, Effective<OwnRate>> {
  const all = [...shops].reverse().flatMap(({ origin, file }) =>
    [...file.value.rates].map(([key, value]) => {
      const where = placeText(file.placeOf(['rates', key], 'key'));
      return [key, { value, origin, where }] as const;
    }),
  );
  return new Map(all);
}
