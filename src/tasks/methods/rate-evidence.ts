/** Observations of a rates file → what the learning takes, and what is to be said of the others. */
import { type Diagnostic, note, type Place, warning } from '../../base/diagnostics.ts';
import { closest } from '../../base/did-you-mean.ts';
import { shown } from '../../base/rounding.ts';
import { ratePriors } from '../../correction/rates/model-with-rates.ts';
import type { RateEvidence } from '../../correction/rates/rate-evidence.ts';
import { placeBuiltIn } from '../../correction/rates/rate-foretelling.ts';
import type { CorrectionModel } from '../../correction/removal/catalogue.ts';
import { removalPerSet } from '../../correction/removal/removal-rate.ts';
import type { JsonPath } from '../../formats/json/json-text.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { RateObservation, RatesFile } from '../../formats/rates.ts';
import type { SettingOrigin } from '../settings/setting-origin.ts';
import { observationKey } from './add-observations.ts';

export type PlacedEvidence = {
  readonly observation: RateObservation;
  readonly evidence: RateEvidence;
  readonly at: Place;
  readonly removedAt: Place;
};

/** What was read of a rates file, besides what was learned of it. */
export type KnownRates = {
  readonly name: string;
  readonly origin: SettingOrigin;
  readonly file: RatesFile;
  readonly evidence: readonly PlacedEvidence[];
  readonly byEye: number;
  readonly unknown: number;
  /** Observations of the vehicle at hand, which its own spots speak for. */
  readonly ofThisVehicle: number;
};

type ReadEvidence = {
  readonly evidence: readonly PlacedEvidence[];
  readonly byEye: number;
  /** Of a combination that nothing is known of. */
  readonly unknown: number;
  readonly diagnostics: readonly Diagnostic[];
};

/** `owned` and `builtIn` without anything learned. */
export function rateEvidence(
  file: Placed<RatesFile>,
  owned: CorrectionModel,
  builtIn: CorrectionModel,
): ReadEvidence {
  const all = placedObservations(file);
  const keys = all.map(({ observation }) => observationKey(observation));
  const isFirst = (i: number): boolean => keys.indexOf(keys[i] ?? '') === i;
  const once = all.filter((_, i) => isFirst(i));
  const strange = once.flatMap((one) => unknownParts(one, owned, builtIn).slice(0, 1));
  const known = once.filter((one) => unknownParts(one, owned, builtIn).length === 0);
  const evidence = known.flatMap((one) => toEvidence(one, owned, builtIn));
  return {
    evidence,
    byEye: known.length - evidence.length,
    unknown: strange.length,
    diagnostics: [
      ...all.filter((_, i) => !isFirst(i)).map(standsTwice),
      ...strange.map(unknownCombination),
      ...notOwned(known, owned).map(notOfThisShop),
      ...evidence.flatMap((one) => unlikely(one, owned)),
    ],
  };
}

type PlacedCombination = { readonly combination: string; readonly at: Place };

type PlacedObservation = {
  readonly observation: RateObservation;
  readonly at: Place;
  readonly removedAt: Place;
  readonly worked: readonly PlacedCombination[];
};

const placedObservations = ({ value, placeOf }: Placed<RatesFile>): readonly PlacedObservation[] =>
  value.observations.map((observation, i) => ({
    observation,
    at: placeOf(['observations', i]),
    removedAt: placeOf(['observations', i, 'removed_um']),
    worked: observation.steps.map(({ combination }, j) => ({
      combination,
      at: placeOf(combinationPath(observation, i, j)),
    })),
  }));

/** One step may stand without a list. */
const combinationPath = ({ steps }: RateObservation, i: number, j: number): JsonPath =>
  steps.length === 1
    ? ['observations', i, 'combination']
    : ['observations', i, 'steps', j, 'combination'];

/** Nothing where it was judged by eye alone. */
function toEvidence(
  { observation, at, removedAt }: PlacedObservation,
  owned: CorrectionModel,
  builtIn: CorrectionModel,
): readonly PlacedEvidence[] {
  const { steps, removed } = observation;
  if (removed === undefined) return [];
  const evidence: RateEvidence = {
    vehicle: vehicleOf(observation),
    steps: steps.map(({ combination, sets }) => ({
      combination,
      foretold: sets * usualRemoval(combination, owned, builtIn),
    })),
    sets: steps.reduce((sum, { sets }) => sum + sets, 0),
    removed: { value: removed.mean, standardError: removed.standardError },
  };
  return [{ observation, at, removedAt, evidence }];
}

/** What has no vehicle is taken as one vehicle a day: that is never more than it tells. */
const vehicleOf = ({ vehicle, date }: RateObservation): string => vehicle ?? `unnamed, ${date}`;

const KINDS = ['machines', 'pads', 'products'] as const;
const SINGULAR = { machines: 'machine', pads: 'pad', products: 'product' } as const;

const partsOf = (combination: string): readonly string[] => combination.split('/');

const isOwned = (combination: string, owned: CorrectionModel): boolean =>
  partsOf(combination).every((part, i) =>
    owned[KINDS[i] ?? 'machines'].some(({ id }) => id === part),
  );

type Unknown = {
  readonly part: string;
  readonly kind: string;
  readonly hint: string;
  readonly at: Place;
};

function unknownParts(
  { worked }: PlacedObservation,
  owned: CorrectionModel,
  builtIn: CorrectionModel,
): readonly Unknown[] {
  return worked.flatMap(({ combination, at }) =>
    partsOf(combination).flatMap((part, i) => {
      const kind = KINDS[i] ?? 'machines';
      const ids = [...owned[kind], ...builtIn[kind]].map(({ id }) => id);
      if (ids.includes(part)) return [];
      const near = closest(part, ids);
      const hint =
        near === undefined
          ? `describe it under "${kind}" of the shop file, and it counts`
          : `did you mean "${near}"?`;
      return [{ part, kind: SINGULAR[kind], hint, at }];
    }),
  );
}

/** The first place of each combination that the shop does not have. */
function notOwned(
  known: readonly PlacedObservation[],
  owned: CorrectionModel,
): readonly PlacedCombination[] {
  const all = known
    .flatMap(({ worked }) => worked)
    .filter(({ combination }) => !isOwned(combination, owned));
  return all.filter(
    ({ combination }, i) => all.findIndex((one) => one.combination === combination) === i,
  );
}

/** Median removal of a set on paint of usual hardness, by the shop's own things first. */
function usualRemoval(
  combination: string,
  owned: CorrectionModel,
  builtIn: CorrectionModel,
): number {
  const stated = owned.rates.get(combination);
  if (stated !== undefined) return stated.rate;
  const [machineId, padId, productId] = partsOf(combination);
  const find = <T extends { readonly id: string }>(
    id: string | undefined,
    lists: readonly (readonly T[])[],
  ): T => {
    const one = lists.flat().find((thing) => thing.id === id);
    if (one === undefined) throw new Error(`${combination} is not known`);
    return one;
  };
  const machine = find(machineId, [owned.machines, builtIn.machines]);
  const pad = find(padId, [owned.pads, builtIn.pads]);
  const product = find(productId, [owned.products, builtIn.products]);
  return removalPerSet({ machine, pad, product }, owned.removal);
}

const standsTwice = ({ at }: PlacedObservation): Diagnostic =>
  warning(
    'rates-twice',
    'this observation stands in the file before, the same in all: counted once',
    {
      at,
      hint: 'take one of the two out; if both were made, tell them apart by panel or note',
    },
  );

const unknownCombination = ({ part, kind, hint, at }: Unknown): Diagnostic =>
  warning(
    'rates-unknown',
    `"${part}" is no ${kind} that is known here: the observation is left out`,
    {
      at,
      hint,
    },
  );

const notOfThisShop = ({ combination, at }: PlacedCombination): Diagnostic =>
  note(
    'rates-not-owned',
    `this shop does not have "${combination}": what was observed with it tells of its vehicle's paint alone`,
    { at, hint: 'list its machine, pad and product in the shop file, if the shop has them' },
  );

/** Chance, with the built-in rates, under which a slip is likelier than such a removal. */
const SLIP_CHANCE = 1e-4;

function unlikely(
  { evidence, removedAt }: PlacedEvidence,
  model: CorrectionModel,
): readonly Diagnostic[] {
  const place = placeBuiltIn(evidence, ratePriors(model));
  if (Math.min(place, 1 - place) >= SLIP_CHANCE) return [];
  const usual = evidence.steps.reduce((sum, { foretold }) => sum + foretold, 0);
  const { value } = evidence.removed;
  return [
    warning(
      'rates-unlikely',
      `${shown(value, 2)} µm is far from the ${shown(usual, 2)} µm that so many sets usually take`,
      {
        at: removedAt,
        hint: 'look for a slip: mil for µm, a decimal, sets left out, polish left on the panel',
      },
    ),
  ];
}
