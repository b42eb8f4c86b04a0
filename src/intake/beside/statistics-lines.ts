/** Lines of text that say statistics: `Mean: 101.3`, `Mean 100.5 µm / Min 97 µm / n 4`. */
import { unitNamed } from '../cells/unit.ts';
import { isNumber } from '../parts/section-state.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { isStatistic } from '../statistics/statistic-words.ts';
import { filledCells, type Saying } from './sayings.ts';

/** `Mean 100.5 µm / Min 97 µm / n 4`: words of statistics, each with its number. */
const sumOf = /^(\D*?\S)\s*[:=]?\s+([+-]?\d+(?:[.,]\d+)?)\s*(\S*)$/u;

export function statisticsOf(row: Row): readonly Saying[] {
  const [column, more] = filledCells(row);
  if (column === undefined || more !== undefined) return [];
  const parts = cellText(row, column)
    .slice(0, longestSums)
    .split(/\s*[/;|·•]\s*|,\s+|\s{2,}|\t/u)
    .filter((part) => part !== '');
  if (parts.length < 2) return [];
  const sums = parts.map((part): Saying | undefined => {
    const [, key = '', value = '', unit = ''] = sumOf.exec(part) ?? [];
    const isSum = isStatistic(key) || /^n$/iu.test(key);
    return isSum && (unit === '' || unitNamed(unit) !== undefined)
      ? { key, value: unit === '' ? value : `${value} ${unit}`, column }
      : undefined;
  });
  return sums.every((sum) => sum !== undefined) ? sums : [];
}
const longestSums = 300;

/** `Mean: 101.3`, in one cell: in two it is a row of the table. */
export const isStatisticSaying = (row: Row, { key, value }: Saying): boolean =>
  filledCells(row).length === 1 &&
  (isStatistic(key) || /^n$/iu.test(key.trim())) &&
  (isNumber(value) || value === '');
