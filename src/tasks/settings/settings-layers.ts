/**
 * What is said of the settings, layer by layer: command line, environment, job, shop files, built-in.
 * The first layer that speaks of a key decides it, whatever the others say of other keys.
 */
import type { Place } from '../../base/diagnostics.ts';
import type { LengthUnit, Micrometres } from '../../base/units.ts';
import type { Finish, LimitPolicy } from '../../film/film-model.ts';
import type { Side } from '../../film/template/panel-sense.ts';
import type { Job } from '../../formats/job/job.ts';
import type { JsonPath } from '../../formats/json/json-text.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { Aim } from '../../formats/json/setting-values.ts';
import type { Shop } from '../../formats/shop/shop.ts';
import type { QuoteKind } from '../../work/price-list.ts';
import type { Effective, Said, SettingOrigin } from './setting-origin.ts';
import { placeText } from './settings-panels.ts';

export type ColourUse = 'auto' | 'always' | 'never';

/** What the command line says, and where it is silent the environment. */
export type TypedSettings = {
  readonly aim?: Effective<Aim>;
  readonly riskPct?: Effective<number>;
  readonly policy?: Effective<LimitPolicy>;
  readonly finish?: Effective<Finish>;
  readonly floor?: Effective<Micrometres>;
  readonly template?: Effective<string>;
  readonly gauge?: Effective<string>;
  readonly rates?: Effective<string>;
  readonly history?: Effective<string>;
  readonly kind?: Effective<QuoteKind>;
  readonly readingUnit?: Effective<LengthUnit>;
  readonly nearside?: Effective<Side>;
  readonly showUnit?: Effective<LengthUnit>;
  readonly color?: Effective<ColourUse>;
};

/** A settings file with the folder that its paths are relative to. */
export type JobLayer = { readonly file: Placed<Job>; readonly folder: string };
export type ShopLayer = {
  readonly origin: Extract<SettingOrigin, 'shop' | 'project' | 'user'>;
  readonly file: Placed<Shop>;
  readonly folder: string;
  /** `flag`, the variable of the environment that names it, or null for a file that was found. */
  readonly named: string | null;
};

export type Layers = {
  readonly typed: TypedSettings;
  readonly job: JobLayer | undefined;
  /** The one that was named, the project's and the user's, as far as there are such. */
  readonly shops: readonly ShopLayer[];
};

/** How a setting is said in each kind of layer; a kind is left out where it cannot be. */
export type Key<T> = {
  readonly typed?: (typed: TypedSettings) => Said<T>;
  readonly job?: readonly [(job: Job) => T | undefined, key: string];
  readonly shop?: readonly [(shop: Shop) => T | undefined, key: string];
};

/** What the layers say of a setting, first things first. */
export function sayings<T>({ typed, job, shops }: Layers, key: Key<T>): readonly Said<T>[] {
  return [
    key.typed?.(typed),
    key.job === undefined || job === undefined
      ? undefined
      : saidIn(job.file, 'job', key.job[0](job.file.value), [key.job[1]]),
    ...shops.map((layer) =>
      key.shop === undefined
        ? undefined
        : saidIn(layer.file, layer.origin, key.shop[0](layer.file.value), [key.shop[1]]),
    ),
  ];
}

export const saidIn = <T>(
  { placeOf }: Pick<Placed<unknown>, 'placeOf'>,
  origin: SettingOrigin,
  value: T | undefined,
  path: JsonPath,
): Said<T> =>
  value === undefined ? undefined : { value, origin, where: placeText(placeOf(path, 'key')) };

/** A path or id in a settings file, with the folder it is relative to; empty is the working directory. */
export type Located<T> = Effective<T> & {
  readonly folder: string;
  /** Where a settings file says it; absent for a flag and for the environment. */
  readonly at?: Place;
};

/** The number of each id that some shop file sets, from the first that does. */
export function saidNumbers({ shops }: Layers): ReadonlyMap<string, Effective<number>> {
  const all = [...shops].reverse().flatMap(({ origin, file }) =>
    [...file.value.numbers].map(([id, { value, path }]) => {
      const where = placeText(file.placeOf(path, 'key'));
      return [id, { value, origin, where }] as const;
    }),
  );
  return new Map(all);
}
