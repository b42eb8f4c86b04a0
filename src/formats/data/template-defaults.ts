/** The rules for vehicle templates: how far one may be scaled, how many points, what is unusual. */
import { type SquareMetres, squareMetres } from '../../base/units.ts';
import { number, type Values, values } from '../default.ts';

export const templateDefaults = {
  areas: {
    uncertainty: number(
      0.25,
      '1',
      'derived',
      'the areas are sums of simple shapes, and no published table was found to check them by',
      'how far the area of a built-in panel may be off; scaling does not lessen it, since it changes the size and not the shape',
      [0, 1],
    ),
    largest: number<SquareMetres>(
      squareMetres(8),
      'm²',
      'assumption',
      '',
      'the largest area a panel may have: half as much again as the largest built-in one',
      [0.5, 50],
    ),
  },
  scaling: {
    least: number(
      0.6,
      '1',
      'assumption',
      '',
      'the smallest a vehicle may be beside its template, in each measure',
      [0.1, 1],
    ),
    most: number(
      1.6,
      '1',
      'assumption',
      '',
      'the largest a vehicle may be beside its template, in each measure',
      [1, 10],
    ),
  },
  points: {
    fewest: number(
      3,
      '1',
      'assumption',
      '',
      'points a panel needs at least, so that their spread says something',
      [1, 9],
    ),
    best: number(
      5,
      '1',
      'derived',
      'simulation: from three to five points the budget still grows',
      'points that serve most panels best',
      [1, 9],
    ),
    most: number(
      9,
      '1',
      'derived',
      'simulation: beyond nine points the budget grows no more',
      'points beyond which more do not help',
      [1, 25],
    ),
  },
  unusual: {
    less: number(
      0.5,
      '1',
      'assumption',
      '',
      'a panel smaller than this share of the smallest built-in one of its kind is remarked on',
      [0, 1],
    ),
    more: number(
      2,
      '1',
      'assumption',
      '',
      'a panel larger than this multiple of the largest built-in one of its kind is remarked on',
      [1, 100],
    ),
    sides: number(
      0.1,
      '1',
      'assumption',
      '',
      'left and right panels whose areas differ by more than this share are remarked on',
      [0, 1],
    ),
    edge: number(
      0.05,
      '1',
      'assumption',
      '',
      'a point nearer to the edge than this share of the panel is remarked on: film is thinner there',
      [0, 0.2],
    ),
  },
} as const;

export type TemplateRules = Values<typeof templateDefaults>;

export const templateRules: TemplateRules = values(templateDefaults);
