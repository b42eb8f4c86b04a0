/** What a quote is reckoned by. Prices themselves have no default: only the shop knows them. */
import { number } from '../default.ts';

export const priceDefaults = {
  hours: {
    estimate: number(
      50,
      '%',
      'assumption',
      '',
      'share of such jobs that are done within the hours an estimate is priced at',
      [10, 99],
    ),
    quotation: number(
      80,
      '%',
      'assumption',
      '',
      'share of such jobs that are done within the hours a quotation is priced at',
      [10, 99],
    ),
  },
  cash: {
    coarse: number(
      1,
      '%',
      'assumption',
      '',
      'share of a price over which the least coin is asked about',
      [0.1, 100],
    ),
  },
  packs: {
    most: number(
      5,
      '1',
      'assumption',
      '',
      'packs of one liquid or tape a job may take before the pack is asked about',
      [1, 1000],
    ),
    least: number(
      10,
      'ml',
      'assumption',
      '',
      'what a pack of a liquid must hold, or it is asked about',
      [1, 1000],
    ),
    byUnit: number(
      1,
      'min',
      'assumption',
      '',
      'labour that costs more than a pack does where a price is by the millilitre or metre',
      [0.01, 60],
    ),
  },
  curve: {
    from: number(30, '%', 'assumption', '', 'mildest aim on the curve of a quote', [5, 90]),
    step: number(
      10,
      '%',
      'assumption',
      '',
      'step from aim to aim on the curve of a quote',
      [1, 50],
    ),
  },
} as const;
