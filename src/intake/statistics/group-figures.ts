/** What a sheet computes of a group of readings, and what of it a number may be. */
import { mean, median } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';
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

/** Of readings, of which there is one at least; a deviation may be that of the sample or of these alone. */
export function figureOf(figure: Figure, values: readonly number[]): readonly number[] {
  const count = values.length;
  switch (figure) {
    case 'mean':
      return [mean(values)];
    case 'median':
      return [median(values)];
    case 'least':
      return [Math.min(...values)];
    case 'most':
      return [Math.max(...values)];
    case 'deviation': {
      const deviation = spreadOf(values);
      return [deviation, deviation * Math.sqrt((count - 1) / count)];
    }
    case 'range':
      return [Math.max(...values) - Math.min(...values)];
    case 'count':
      return [count];
    case 'sum':
      return [sum(values)];
  }
}
