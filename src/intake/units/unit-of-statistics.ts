/**
 * `Panel;1;2;3;Mean (µm)`: the unit stands at a statistic alone. It is that of the readings where they give what is
 * stated, in every row: a mean in another unit would be another number by a factor of 25.4.
 */
import { numberShape } from '../cells/numbers.ts';
import { type ReadingUnit, splitUnit, unitNamed } from '../cells/unit.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { agrees, type Claim } from '../statistics/statistics-check.ts';
import type { Table } from '../tables/table.ts';

export type StatedWithStatistics = { readonly unit: ReadingUnit; readonly name: string };

export function unitOfStatistics(
  table: Table,
  claims: readonly Claim[],
): StatedWithStatistics | undefined {
  const sizes = claims.filter(({ statistic }) => statistic !== 'count');
  const named = sizes.flatMap((claim) => {
    const name = nameOf(table, claim);
    const unit = splitUnit(name).unit ?? unitNamed(numberShape(claim.text)?.suffix ?? '');
    return unit === undefined ? [] : [{ claim, name, unit }];
  });
  const proved = named.find(({ claim }) => agrees(claim) === true);
  if (proved === undefined || sizes.some((claim) => agrees(claim) === false)) return undefined;
  const { unit, name } = proved;
  const isOne = named.every((one) => one.unit === unit);
  return isOne && (unit === 'um' || unit === 'mil') ? { unit, name } : undefined;
}

/** What a statistic is called: above its column, or in its row. */
function nameOf({ layout }: Table, { column, row }: Claim): string {
  const above = layout.header[column]?.text ?? '';
  return namesStatistic(above) ? above : (row.cells.find(namesStatistic) ?? above).trim();
}
