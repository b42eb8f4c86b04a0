/** What a sheet computes of a group of readings, and what of it a number may be. */
import { median } from '../../base/stats/summary.ts';
import { spreadOf } from './predictable-column.ts';

export type Figure = 'mean' | 'median' | 'least' | 'most' | 'deviation' | 'range' | 'count' | 'sum';

export const figureNames: Readonly<Record<Figure, string>> = {
  mean: 'the mean',
  median: 'the median',
  least: 'the least',
  most: 'the largest',
  deviation: 'the standard deviation',
  range: 'the range',
  count: 'the number',
  sum: 'the sum',
};

export type Figures = ReadonlyMap<Figure, readonly number[]>;

export function figuresOf(values: readonly number[]): Figures {
  const count = values.length;
  const sum = values.reduce((total, value) => total + value, 0);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const deviation = spreadOf(values);
  return new Map([
    ['mean', [sum / count]],
    ['median', [median(values)]],
    ['least', [least]],
    ['most', [most]],
    ['deviation', [deviation, deviation * Math.sqrt((count - 1) / count)]],
    ['range', [most - least]],
    ['count', [count]],
    ['sum', [sum]],
  ] as const);
}
