/**
 * The shop file, `leastcut/shop/1`: what a workshop has and how it works, the same for every job.
 * `leastcut.json` of a project and `shop.json` of a user are shop files too. Every key but `schema`
 * may be left out; what is left out comes from the next file or is built in.
 *
 * `risk_pct` and the `minutes` are other names for numbers of the model: both names in one file are
 * refused.
 */
import * as z from 'zod';
import { warning } from '../../base/diagnostics.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { OwnRate } from '../../correction/removal/catalogue.ts';
import { hands, hoursPerDay } from '../job/work-schema.ts';
import { advised } from '../json/advised.ts';
import { asQuantity, given } from '../json/given.ts';
import type { JsonPath } from '../json/json-text.ts';
import { allOf, anyOf, has, hasSuch, not, type Words } from '../json/rule-words.ts';
import {
  type Aim,
  aim,
  type Finish,
  finish,
  identifier,
  note,
  type Policy,
  policy,
  riskPct,
  shownName,
} from '../json/setting-values.ts';
import { type SettingsReader, settingsReader } from '../json/settings-reader.ts';
import { quoted } from '../json/shorten.ts';
import { yesOrNoAdvice } from '../trade-words.ts';
import { type UnusedMaterial, unitFault, unusedMaterials } from './shop-materials.ts';
import { numbersObject } from './shop-numbers.ts';
import { type Prices, pricesObject, toPrices } from './shop-prices.ts';
import { rateFault, ratesObject, toRates } from './shop-rates.ts';
import {
  machineList,
  type OwnMachine,
  type OwnThing,
  padList,
  productList,
  toMachine,
  toThing,
} from './shop-things.ts';
import { smallPercentRemark, smallPercents } from './small-percents.ts';

const durationMin = z.number().min(0).max(240);

const shopObject = z.strictObject({
  $schema: z.string().optional(),
  schema: z.literal('leastcut/shop/1'),
  name: shownName.optional(),
  note: note.optional(),
  machines: machineList.optional(),
  pads: padList.optional(),
  products: productList.optional(),
  rates: ratesObject.optional(),
  rates_file: identifier.optional(),
  risk_pct: riskPct.optional(),
  policy: policy.optional(),
  aim: aim.optional(),
  floor_um: z.number().min(10).max(300).optional(),
  finish: finish.optional(),
  galvanised: advised(z.boolean(), yesOrNoAdvice).optional(),
  template: identifier.optional(),
  gauge: identifier.optional(),
  templates: z
    .array(identifier)
    .min(1)
    .describe('a list in brackets of paths to template files')
    .optional(),
  reading_unit: z.enum(['um', 'mil']).optional(),
  nearside: z.enum(['left', 'right']).optional(),
  show_unit: z.enum(['um', 'mil']).optional(),
  color: z.enum(['auto', 'always', 'never']).optional(),
  minutes: z
    .strictObject({
      wipe_min_per_section: durationMin.optional(),
      pad_cleaning_min_per_section: durationMin.optional(),
      setup_min_per_combination: durationMin.optional(),
    })
    .optional(),
  prices: pricesObject.optional(),
  hands: hands.optional(),
  hours_per_day: hoursPerDay.optional(),
  history: identifier.optional(),
  numbers: numbersObject.optional(),
});

type TypedShop = z.output<typeof shopObject>;

/** Keys that are another name for a number, by its id. */
const aliases: Readonly<Record<string, JsonPath>> = {
  'film.limits.risk_pct': ['risk_pct'],
  'work.per_section.wipe_min': ['minutes', 'wipe_min_per_section'],
  'work.per_section.pad_cleaning_min': ['minutes', 'pad_cleaning_min_per_section'],
  'work.set_up_min': ['minutes', 'setup_min_per_combination'],
};

const hasPath = ([key = '', ...inner]: JsonPath): Words =>
  inner.length === 0 ? has(String(key)) : hasSuch(String(key), hasPath(inner));

const ONE_NAME_EACH = not(
  anyOf(
    ...Object.entries(aliases).map(([id, path]) => allOf(hasPath(['numbers', id]), hasPath(path))),
  ),
);

export const shopSchema = shopObject.superRefine(checkShop).meta(ONE_NAME_EACH);

function checkShop(shop: TypedShop, context: z.core.$RefinementCtx): void {
  for (const [id, path] of Object.entries(aliases)) {
    if (shop.numbers?.[id] === undefined || at(shop, path) === undefined) continue;
    const message = `says the same as ${path.join('.')}: keep one`;
    context.addIssue({ code: 'custom', path: ['numbers', id], message });
  }
  const owned = ownedBy(shop);
  for (const [i, entry] of (shop.prices?.materials ?? []).entries()) {
    const fault = unitFault(entry, owned);
    if (fault === undefined) continue;
    const { message, hint } = fault;
    const path = ['prices', 'materials', i, 'unit'];
    context.addIssue({ code: 'custom', path, message, params: { hint } });
  }
  for (const key of Object.keys(shop.rates ?? {})) {
    const fault = rateFault(key, owned);
    if (fault === undefined) continue;
    const { message, hint } = fault;
    context.addIssue({
      code: 'custom',
      path: ['rates', key],
      message,
      params: { hint, key: true },
    });
  }
}

const ownedBy = ({ machines, pads, products }: TypedShop) => ({
  machines: idsOf(machines),
  pads: idsOf(pads),
  products: idsOf(products),
});

const idsOf = (
  list: readonly (string | { readonly id: string })[] | undefined,
): readonly string[] | undefined =>
  list?.map((entry) => (typeof entry === 'string' ? entry : entry.id));

const at = (value: unknown, path: JsonPath): number | undefined => {
  const found = path.reduce<unknown>(
    (here, step) => (here as Readonly<Record<string, unknown>> | undefined)?.[step],
    value,
  );
  return typeof found === 'number' ? found : undefined;
};

/** A number of the model with where the file says it. */
export type SaidNumber = { readonly value: number; readonly path: JsonPath };

export type Shop = {
  readonly name?: string;
  readonly machines?: readonly OwnMachine[];
  readonly pads?: readonly OwnThing[];
  readonly products?: readonly OwnThing[];
  /** By `machine/pad/product`. */
  readonly rates: ReadonlyMap<string, OwnRate>;
  /** Path of the shop's observations on earlier vehicles, relative to the shop file. */
  readonly ratesFile?: string;
  readonly policy?: Policy;
  readonly aim?: Aim;
  readonly floor?: Micrometres;
  readonly finish?: Finish;
  readonly galvanised?: boolean;
  /** The id of a template, or a path to a template file, relative to the shop file. */
  readonly template?: string;
  /** Path of the gauge file, relative to the shop file. */
  readonly gauge?: string;
  /** Paths of template files, relative to the shop file. */
  readonly templates?: readonly string[];
  readonly readingUnit?: 'um' | 'mil';
  readonly nearside?: 'left' | 'right';
  readonly showUnit?: 'um' | 'mil';
  readonly color?: 'auto' | 'always' | 'never';
  readonly prices?: Prices;
  /** Of its price list, what no job uses. */
  readonly unusedMaterials: readonly UnusedMaterial[];
  /** True where the prices are made up, to be replaced: they are checked, and not taken. */
  readonly examplePrices?: boolean;
  readonly hands?: number;
  readonly hoursPerDay?: number;
  /** Path of the hours that jobs took, relative to the shop file. */
  readonly history?: string;
  /** By the ids of `listAllDefaults`. */
  readonly numbers: ReadonlyMap<string, SaidNumber>;
};

const toShop = (typed: TypedShop): Shop => ({
  ...given({
    name: typed.name,
    machines: typed.machines?.map(toMachine),
    pads: typed.pads?.map(toThing),
    products: typed.products?.map(toThing),
    policy: typed.policy,
    aim: typed.aim,
    floor: asQuantity(micrometres, typed.floor_um),
    finish: typed.finish,
    galvanised: typed.galvanised,
    template: typed.template,
    gauge: typed.gauge,
    ratesFile: typed.rates_file,
    templates: typed.templates,
    readingUnit: typed.reading_unit,
    nearside: typed.nearside,
    showUnit: typed.show_unit,
    color: typed.color,
    prices:
      typed.prices === undefined || typed.prices.example === true
        ? undefined
        : toPrices(typed.prices),
    examplePrices: typed.prices?.example,
    hands: typed.hands,
    hoursPerDay: typed.hours_per_day,
    history: typed.history,
  }),
  unusedMaterials: unusedMaterials(typed.prices?.materials ?? [], ownedBy(typed)),
  rates: toRates(typed.rates ?? {}),
  numbers: toNumbers(typed),
});

const readSound = settingsReader(shopSchema, (typed) => ({
  shop: toShop(typed),
  small: smallPercents(typed.prices ?? {}),
}));

/** A price under a misspelt name is told by every command; `quote` refuses to reckon with it. */
export const readShop: SettingsReader<Shop> = (file, text) => {
  const { value: sound, diagnostics } = readSound(file, text);
  if (sound === undefined) return { diagnostics };
  const { placeOf } = sound;
  const shop = { value: sound.value.shop, placeOf };
  const small = sound.value.small.map((one) => smallPercentRemark(one, placeOf(one.path)));
  const slips = shop.value.unusedMaterials.flatMap(({ index, id, meant }) => {
    const path = ['prices', 'materials', index, 'id'];
    const message = `"prices.materials[${index}].id" names ${quoted(id)}, which no job uses: quotes are refused until it is mended`;
    const at = shop.placeOf(path);
    return meant === undefined ? [] : [warning('price-material', message, { at, hint: meant })];
  });
  return { value: shop, diagnostics: [...diagnostics, ...slips, ...small] };
};

function toNumbers(typed: TypedShop): ReadonlyMap<string, SaidNumber> {
  const named = Object.entries(typed.numbers ?? {}).flatMap(([id, value]) =>
    value === undefined ? [] : [[id, { value, path: ['numbers', id] }] as const],
  );
  const aliased = Object.entries(aliases).flatMap(([id, path]) => {
    const value = at(typed, path);
    return value === undefined ? [] : [[id, { value, path }] as const];
  });
  return new Map([...named, ...aliased]);
}
