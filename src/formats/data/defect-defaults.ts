/** Depths of defects by grade, and the grain that leaves sanding marks, each with its grounds. */
import { type Micrometres, micrometres } from '../../base/units.ts';
import { type Basis, type Default, number, type Range } from '../default.ts';

const depthRange: Range = [0.05, 50];

type Grade = 1 | 2 | 3 | 4 | 5;
const grades: readonly Grade[] = [1, 2, 3, 4, 5];

/** Where one of a defect's depths has better grounds than an assumption. */
type Grounds = { readonly [G in Grade]?: readonly [Basis, string] };

/** Median depths of a defect at grades 1…5. */
const depths = (
  name: string,
  medians: readonly number[],
  grounds: Grounds = {},
): Readonly<Record<`grade_${Grade}`, Default<Micrometres>>> =>
  Object.fromEntries(
    grades.map((grade, i) => {
      const [basis, source] = grounds[grade] ?? (['assumption', ''] as const);
      const meaning = `median depth of ${name} of grade ${grade}`;
      return [
        `grade_${grade}`,
        number(micrometres(medians[i] ?? Number.NaN), 'µm', basis, source, meaning, depthRange),
      ];
    }),
  ) as Readonly<Record<`grade_${Grade}`, Default<Micrometres>>>;

export const defectDefaults = {
  'swirl-marks': depths('swirl marks', [0.4, 0.7, 1.1, 1.7, 2.5]),
  holograms: depths('holograms', [0.2, 0.3, 0.4, 0.5, 0.7]),
  marring: depths('marring or haze', [0.3, 0.5, 0.8, 1.0, 1.3]),
  oxidation: depths('oxidation', [0.6, 1.0, 1.6, 2.4, 3.5]),
  'water-etching': depths('water etching', [0.6, 0.9, 1.2, 2.5, 4], {
    3: ['published', 'Abo & Itoh, J. Jpn. Soc. Colour Mater. 65:605 (1992)'],
  }),
  'bird-etching': depths('bird etching', [1.5, 3, 5, 9, 15]),
  'deep-scratches': depths('deep scratches', [2, 3, 4.5, 7, 11]),
} as const;

const FEPA = 'FEPA 43 / ISO 6344-3 tables as reproduced (second-hand)';
const grain = (grade: string, value: number, basis: Basis, source: string): Default<Micrometres> =>
  number(
    micrometres(value),
    'µm',
    basis,
    source,
    `mean grain size d50 of ${grade} abrasive`,
    [1, 300],
  );

/** Mean grain of the abrasive that left the marks, by P grade. */
export const grainDefaults = {
  p800: grain('P800', 21.8, 'published', FEPA),
  p1000: grain('P1000', 18.3, 'published', FEPA),
  p1200: grain('P1200', 15.3, 'published', FEPA),
  p1500: grain('P1500', 12.6, 'published', FEPA),
  p2000: grain('P2000', 10.3, 'published', FEPA),
  p2500: grain('P2500', 8.4, 'published', FEPA),
  p3000: grain('P3000', 7, 'from memory', 'ISO 6344-3:2021'),
  p5000: grain('P5000', 5, 'from memory', 'ISO 6344-3:2021'),
} as const;

export const sandingDefaults = {
  grainPerDepth: number(
    6,
    '1',
    'assumption',
    'd50/10 to d50/3 are in use',
    'grain size over the depth of the mark it leaves',
    [2, 20],
  ),
} as const;
