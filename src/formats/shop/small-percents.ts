/** A part of one where a per cent is asked for: 0.19 for 19. Such a per cent may be meant, so it is taken and asked about. */
import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import { roundTo } from '../../base/rounding.ts';
import { PERCENT_DECIMALS } from '../../work/money.ts';
import type { JsonPath } from '../json/json-text.ts';
import { pathText } from '../json/validate.ts';

type Percents = {
  readonly markup_pct?: number | undefined;
  readonly discount_pct?: number | undefined;
  readonly deposit_pct?: number | undefined;
  readonly tax?: { readonly rate_pct?: number | undefined } | undefined;
  readonly fixed?: readonly { readonly tax_pct?: number | undefined }[] | undefined;
};

export type SmallPercent = { readonly path: JsonPath; readonly percent: number };

export function smallPercents(prices: Percents): readonly SmallPercent[] {
  const said: readonly (readonly [JsonPath, number | undefined])[] = [
    [['markup_pct'], prices.markup_pct],
    [['discount_pct'], prices.discount_pct],
    [['deposit_pct'], prices.deposit_pct],
    [['tax', 'rate_pct'], prices.tax?.rate_pct],
    ...(prices.fixed ?? []).map(({ tax_pct }, i) => [['fixed', i, 'tax_pct'], tax_pct] as const),
  ];
  return said.flatMap(([path, percent]) =>
    percent === undefined || percent <= 0 || percent >= 1
      ? []
      : [{ path: ['prices', ...path], percent }],
  );
}

export const smallPercentRemark = ({ path, percent }: SmallPercent, at: Place): Diagnostic =>
  warning('percent-small', `"${pathText(path)}" is ${percent} %, less than one per cent`, {
    at,
    hint: `did you mean ${roundTo(100 * percent, PERCENT_DECIMALS)}?`,
  });
