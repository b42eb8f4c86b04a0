/** What the shop charges and what its quotes are, from the first layer that speaks of it. */
import type { Place } from '../../base/diagnostics.ts';
import type { Prices } from '../../formats/shop/shop-prices.ts';
import type { QuoteKind } from '../../work/price-list.ts';
import { builtIn, type Effective, firstSaid, type Said } from './setting-origin.ts';
import { type Layers, saidIn } from './settings-layers.ts';
import { placeText } from './settings-panels.ts';

type PricePart = 'currency' | 'labour_minor_per_h' | 'tax';

export type PriceSettings = {
  /** Of one file as a whole: prices of two files are never mixed. Null where no file has any. */
  readonly prices: Effective<Prices | null>;
  /** Where each part stands that is listed by itself; one that the file leaves out, where the prices begin. */
  readonly whereOf: Readonly<Record<PricePart, string>>;
  /** What the shop is called that they are of. */
  readonly shop: string | null;
  /** Where they stand; undefined where there are none. */
  readonly at: Place | undefined;
  /** Where the pack of a material stands, by its place in the list. */
  readonly packAt: (index: number) => Place | undefined;
  /** What the list has that no job uses, where it does, and what is no slip of the pen. */
  readonly unused: readonly { readonly id: string; readonly at: Place }[];
  /** Whether there are none because those of a file are an example still. */
  readonly areExample: boolean;
  readonly kind: Effective<QuoteKind>;
};

/** An estimate binds nobody: a fixed offer is made by whoever says so. */
const DEFAULT_KIND: QuoteKind = 'estimate';

export function priceSettings({ typed, shops }: Layers): PriceSettings {
  const layer = shops.find(({ file }) => file.value.prices !== undefined);
  const said =
    layer === undefined
      ? undefined
      : saidIn(layer.file, layer.origin, layer.file.value.prices, ['prices']);
  const kinds = shops.map(
    ({ origin, file }): Said<QuoteKind> =>
      saidIn(file, origin, file.value.prices?.kind ?? undefined, ['prices', 'kind']),
  );
  const whereOf = (part: PricePart): string =>
    layer === undefined
      ? builtIn(null).where
      : placeText(layer.file.placeOf(['prices', part], 'key'));
  return {
    prices: said ?? builtIn(null),
    whereOf: {
      currency: whereOf('currency'),
      labour_minor_per_h: whereOf('labour_minor_per_h'),
      tax: whereOf('tax'),
    },
    shop: layer?.file.value.name ?? null,
    at: layer?.file.placeOf(['prices'], 'key'),
    packAt: (index) => layer?.file.placeOf(['prices', 'materials', index, 'pack']),
    unused:
      layer?.file.value.unusedMaterials.flatMap(({ index, id, meant }) =>
        meant === undefined
          ? [{ id, at: layer.file.placeOf(['prices', 'materials', index, 'id']) }]
          : [],
      ) ?? [],
    areExample: layer === undefined && shops.some(({ file }) => file.value.examplePrices === true),
    kind: firstSaid([typed.kind, ...kinds], DEFAULT_KIND),
  };
}
