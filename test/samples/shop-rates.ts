/**
 * What a workshop measured on five earlier vehicles: its rates file.
 *
 * Its dual-action machine with medium foam and polish really cuts half as fast again as what is built in,
 * its fine polish a third slower, its compound on microfibre a quarter slower. Each vehicle has a hardness
 * of its own, each step its scatter, and each removal is read with the gauge's noise.
 */
import { normal, seededRandom } from './seeded-random.ts';
import { lines } from './text-files.ts';

const SEED = 1211;

/** As built in, µm a set, and what it is in truth in this workshop. */
export const trueRates = {
  'da/foam-medium/medium': { builtIn: 0.897, factor: 1.5 },
  'da/foam-soft/fine': { builtIn: 0.282, factor: 0.7 },
  'da/microfibre/heavy': { builtIn: 2.017, factor: 0.75 },
} as const;

type Combination = keyof typeof trueRates;

const VEHICLE_SD = 0.25;
const STEP_SD = 0.2;

const visits: readonly (readonly [
  date: string,
  vehicle: string,
  trials: readonly (readonly [
    panel: string,
    combination: Combination,
    sets: number,
    error: number,
  ])[],
])[] = [
  [
    '2025-10-06',
    'FH-0981',
    [
      ['bonnet', 'da/foam-medium/medium', 3, 0.42],
      ['bonnet', 'da/foam-soft/fine', 4, 0.42],
    ],
  ],
  [
    '2025-11-02',
    'FH-0990',
    [
      ['boot lid', 'da/foam-medium/medium', 2, 0.47],
      ['roof', 'da/microfibre/heavy', 1, 0.47],
      ['roof', 'da/foam-medium/medium', 3, 0.42],
    ],
  ],
  [
    '2025-11-30',
    'FH-1003',
    [
      ['bonnet', 'da/microfibre/heavy', 2, 0.55],
      ['left front door', 'da/foam-medium/medium', 2, 0.55],
    ],
  ],
  [
    '2026-01-11',
    'FH-1009',
    [
      ['bonnet', 'da/foam-medium/medium', 3, 0.38],
      ['roof', 'da/foam-soft/fine', 4, 0.38],
    ],
  ],
  [
    '2026-02-08',
    'FH-1017',
    [
      ['boot lid', 'da/microfibre/heavy', 1, 0.42],
      ['bonnet', 'da/foam-medium/medium', 2, 0.42],
      ['roof', 'da/foam-medium/medium', 2, 0.42],
    ],
  ],
];

export function shopRates(): string {
  const random = seededRandom(SEED);
  const observed = visits.flatMap(([date, vehicle, trials]) => {
    const paint = VEHICLE_SD * normal(random);
    return trials.map(([panel, combination, sets, error]) => {
      const { builtIn, factor } = trueRates[combination];
      const taken = sets * builtIn * factor * Math.exp(paint + STEP_SD * normal(random));
      const removed = Math.round(100 * (taken + error * normal(random))) / 100;
      return {
        date,
        vehicle,
        panel,
        combination,
        sets,
        removed_um: removed,
        standard_error_um: error,
      };
    });
  });
  const byEye = {
    date: '2026-03-08',
    vehicle: 'FH-1024',
    panel: 'bonnet',
    combination: 'da/foam-medium/medium',
    sets: 2,
    cleared_pct: 70,
    haze_grade: 1,
    note: 'no gauge at hand',
  };
  const rows = [...observed, byEye].map((one) => `    ${spaced(one)}`);
  return lines([
    '{',
    '  "schema": "leastcut/rates/1",',
    '  "observations": [',
    rows.join(',\n'),
    '  ]',
    '}',
  ]);
}

const spaced = (keys: Readonly<Record<string, unknown>>): string =>
  `{ ${Object.entries(keys)
    .map(([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`)
    .join(', ')} }`;
