/** What the shop works with: the list of it, or one thing with the chain of numbers behind it. */

import { error, type Outcome } from '../../base/diagnostics.ts';
import { closest, suggest } from '../../base/did-you-mean.ts';
import { type Seconds, seconds } from '../../base/units.ts';
import type { CorrectionModel, Machine, Pad, Product } from '../../correction/removal/catalogue.ts';
import { ladder } from '../../correction/removal/combination.ts';
import { cutsFasterThan, type MethodChain, methodChain } from '../../correction/removal/method.ts';
import type { WorkModel } from '../../work/work-model.ts';
import { modelsInForce } from '../settings/models-in-force.ts';
import type { Settings } from '../settings/settings.ts';
import {
  type MethodNumber,
  type MethodOrigins,
  machineNumbers,
  sharedNumbers,
  thingNumbers,
} from './method-numbers.ts';

export type MethodSources = MethodOrigins & {
  /** With what the shop owns. */
  readonly correction: CorrectionModel;
  /** With all that is built in, the numbers in force. */
  readonly builtIn: CorrectionModel;
  readonly work: Pick<WorkModel, 'perSection'>;
};

export const methodSources = ({
  correction,
  models,
  numbers,
  catalogue,
}: Pick<Settings, 'correction' | 'models' | 'numbers' | 'catalogue'>): MethodSources => ({
  correction,
  builtIn: modelsInForce(numbers).correction,
  work: models.work,
  numbers,
  owned: catalogue.owned,
});

export type MethodList = {
  readonly machines: readonly Machine[];
  readonly pads: readonly Pad[];
  readonly products: readonly Product[];
  /** Mildest first; only those that serve some stage. */
  readonly combinations: readonly MethodChain[];
  /** How many serve none. */
  readonly idle: number;
};

export function listMethods({ correction, work }: MethodSources): MethodList {
  const chains = chainsOf(correction, work);
  const combinations = chains.filter(({ stages }) => stages.length > 0);
  const { machines, pads, products } = correction;
  return { machines, pads, products, combinations, idle: chains.length - combinations.length };
}

const chainsOf = (model: CorrectionModel, work: MethodSources['work']): readonly MethodChain[] =>
  ladder(model).map((combination) => methodChain(combination, model, pauseOf(work)));

/** Between two sets of a section one wipes, looks and cleans the pad. */
const pauseOf = ({ perSection }: MethodSources['work']): Seconds =>
  seconds(60 * (perSection.wipe + perSection.padCleaning));

type Shown = {
  readonly id: string;
  readonly name: string;
  /** False for something built in that the shop does not list as its own. */
  readonly owned: boolean;
  readonly numbers: readonly MethodNumber[];
};

export type ShownMethod =
  | (Shown & {
      readonly kind: 'combination';
      readonly chain: MethodChain;
      /** Where the rate was measured, when it was. */
      readonly measuredAt: string | null;
      readonly compared: { readonly with: string; readonly times: number } | null;
    })
  | (Shown & {
      readonly kind: 'machine' | 'pad' | 'product';
      /** What may be done with it, mildest first. */
      readonly combinations: readonly MethodChain[];
    });

/** By its id; what is built in and not the shop's own is shown with the things that the shop has. */
export function showMethod(id: string, sources: MethodSources): Outcome<ShownMethod> {
  const { correction, builtIn } = sources;
  const shown =
    shownIn(id, correction, true, sources) ??
    shownIn(id, withBuiltIn(correction, builtIn, id.split('/')), false, sources);
  if (shown !== undefined) return { value: shown, diagnostics: [] };
  return { diagnostics: [unknownMethod(id, [correction, builtIn])] };
}

/** What the shop owns, with the built-in things of these ids besides. */
function withBuiltIn(
  owned: CorrectionModel,
  builtIn: CorrectionModel,
  ids: readonly string[],
): CorrectionModel {
  const both = <T extends { readonly id: string }>(
    own: readonly T[],
    all: readonly T[],
  ): readonly T[] => [
    ...own,
    ...all.filter(({ id }) => ids.includes(id) && !own.some((one) => one.id === id)),
  ];
  return {
    ...owned,
    machines: both(owned.machines, builtIn.machines),
    pads: both(owned.pads, builtIn.pads),
    products: both(owned.products, builtIn.products),
  };
}

function shownIn(
  id: string,
  model: CorrectionModel,
  owned: boolean,
  sources: MethodSources,
): ShownMethod | undefined {
  const chains = chainsOf(model, sources.work);
  const chain = chains.find(({ combination }) => combination.id === id);
  if (chain !== undefined) return { ...shownCombination(chain, chains, sources), owned };
  const having = (part: 'machine' | 'pad' | 'product'): readonly MethodChain[] =>
    chains.filter(({ combination, stages }) => combination[part].id === id && stages.length > 0);
  const machine = model.machines.find((one) => one.id === id);
  if (machine !== undefined) {
    const numbers = machineNumbers(machine, sources);
    const { name } = machine;
    return { kind: 'machine', id, name, owned, numbers, combinations: having('machine') };
  }
  for (const [kind, part] of [
    ['pads', 'pad'],
    ['products', 'product'],
  ] as const) {
    const thing = model[kind].find((one) => one.id === id);
    if (thing === undefined) continue;
    const numbers = thingNumbers(kind, thing, sources);
    return { kind: part, id, name: thing.name, owned, numbers, combinations: having(part) };
  }
  return undefined;
}

function shownCombination(
  chain: MethodChain,
  chains: readonly MethodChain[],
  sources: MethodSources,
): Omit<ShownMethod & { readonly kind: 'combination' }, 'owned'> {
  const { id, machine, pad, product } = chain.combination;
  const other = counterpart(chain, chains);
  return {
    kind: 'combination',
    id,
    name: `${machine.name}, ${pad.name}, ${product.name}`,
    numbers: [
      ...machineNumbers(machine, sources),
      ...thingNumbers('pads', pad, sources),
      ...thingNumbers('products', product, sources),
      ...sharedNumbers(sources),
    ],
    chain,
    measuredAt: chain.own === null ? null : (sources.owned.get(`rates/${id}`)?.where ?? null),
    compared:
      other === undefined
        ? null
        : { with: other.combination.id, times: cutsFasterThan(chain, other) },
  };
}

/** The same pad and product on the other kind of machine: dual action for a rotary, and the reverse. */
function counterpart(
  { combination: { machine, pad, product } }: MethodChain,
  chains: readonly MethodChain[],
): MethodChain | undefined {
  const wanted = { rotary: 'orbital', orbital: 'rotary', hand: undefined }[machine.motion.kind];
  return chains
    .filter(
      ({ combination: one }) =>
        one.machine.motion.kind === wanted &&
        one.pad.id === pad.id &&
        one.product.id === product.id,
    )
    .sort((a, b) => unlikeness(a, machine) - unlikeness(b, machine))[0];
}

/** The nearer in pad size the better; of two, the one whose pad spins free. */
const unlikeness = ({ combination: { machine } }: MethodChain, other: Machine): number =>
  Math.abs(machine.padDiameter - other.padDiameter) +
  (machine.motion.kind === 'orbital' && machine.motion.forcedRpm > 0 ? 0.5 : 0);

function unknownMethod(id: string, models: readonly CorrectionModel[]) {
  const all = <T extends { readonly id: string }>(
    pick: (model: CorrectionModel) => readonly T[],
  ): readonly string[] => [...new Set(models.flatMap((model) => pick(model).map((one) => one.id)))];
  const machines = all(({ machines }) => machines);
  const pads = all(({ pads }) => pads);
  const products = all(({ products }) => products);
  const message = `"${id}" is no machine, pad, product or combination that is known here`;
  const parts = id.split('/');
  const hint =
    parts.length === 1
      ? suggest(id, [...machines, ...pads, ...products])
      : mendedCombination(parts, [machines, pads, products]);
  return error('usage-unknown-method', message, {
    hint: hint ?? 'leastcut methods list names them; a combination is machine/pad/product',
  });
}

/** Each part by itself: two slips in one combination are mended together. */
function mendedCombination(
  parts: readonly string[],
  known: readonly (readonly string[])[],
): string | undefined {
  if (parts.length !== known.length) return undefined;
  const mended = parts.map((part, i) =>
    known[i]?.includes(part) ? part : closest(part, known[i] ?? []),
  );
  return mended.includes(undefined) ? undefined : `did you mean "${mended.join('/')}"?`;
}
