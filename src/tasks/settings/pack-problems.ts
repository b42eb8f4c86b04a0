/** Packs of a price list that are too small to be ones: 1 where a litre was meant makes a job a thousand times too dear. */
import { packs as packsFor } from '../../work/packs.ts';
import type { MaterialPrice, PriceList } from '../../work/price-list.ts';
import type { QuoteModel } from '../../work/quote-model.ts';
import type { QuoteOption } from '../../work/quote-option.ts';

/** A pack to be asked about, by its place in the list. */
export type SmallPack = {
  readonly index: number;
  readonly message: string;
  readonly hint: string;
};

export function smallPacks(
  options: readonly QuoteOption[],
  list: PriceList,
  model: QuoteModel['packs'],
): readonly SmallPack[] {
  return list.materials.flatMap((entry, index): readonly SmallPack[] => {
    if (isByPiece(entry) || isByUnit(entry, list, model)) return [];
    const used = mostUsed(options, entry);
    const pack = Number(entry.pack);
    const isSmall = entry.unit === 'ml' && pack < model.least;
    if (used === 0 || (used / pack <= model.most && !isSmall)) return [];
    return [{ index, ...asked(entry, used, list) }];
  });
}

/** Pads and the like are sold by ones. */
const isByPiece = ({ unit, price }: MaterialPrice): boolean => unit === 'pieces' || price === 0n;

/** No bottle costs so little: it is a price by the millilitre or metre, and meant. */
function isByUnit(
  { price }: MaterialPrice,
  { labour }: PriceList,
  { byUnit }: QuoteModel['packs'],
): boolean {
  const rates = [...labour.bySkill.values(), ...(labour.other === null ? [] : [labour.other])];
  const dearest = Math.max(0, ...rates.map(Number));
  return 60 * Number(price) < dearest * byUnit;
}

/** Of the aims side by side, what the one takes that takes most; as it is charged. */
const mostUsed = (options: readonly QuoteOption[], { id }: MaterialPrice): number =>
  Math.max(
    0,
    ...options.flatMap(({ priced }) =>
      (priced?.lines ?? []).flatMap((line) =>
        line.kind === 'material' && line.id === id && line.unitPrice !== null
          ? [Number(line.unitPrice.quantity) / 1000]
          : [],
      ),
    ),
  );

function asked(
  { id, pack, unit, price }: MaterialPrice,
  used: number,
  { currency }: PriceList,
): Omit<SmallPack, 'index'> {
  const count = packsFor(used, Number(pack), 0);
  const meant =
    unit === 'ml'
      ? `is the pack ${pack} litre${pack === 1n ? '' : 's'}, "pack": ${pack}000?`
      : 'does the pack hold more?';
  return {
    message: `a pack of ${JSON.stringify(id)} is ${pack} ${unit}, and costs ${price} in the least unit of ${currency.code}`,
    hint: `the job takes ${used} ${unit}, which is ${count} pack${count === 1 ? '' : 's'} of ${pack} ${unit}: ${meant}`,
  };
}
