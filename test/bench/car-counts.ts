/** What is counted in cars per second, the settings resolved once for all of them. */
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { planFiles } from '../../src/tasks/plan/plan-files.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { carsCsv } from './cars-csv.ts';

type CarCount = {
  readonly title: string;
  readonly cars: number;
  /** Makes the cars and warms up; gives what is timed. */
  readonly prepare: () => () => void;
  /** 10,000 cars in a minute by two workers. */
  readonly atLeast: number;
};

const CARS = 300;
const WARM_UP = 20;
const PANELS = 13;
const POINTS = 5;

const csvOf = (cars: number): Uint8Array =>
  Buffer.from([...carsCsv({ cars, panels: PANELS, points: POINTS })].join(''));

const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });

function planAll(bytes: Uint8Array, cars: number): void {
  const { value, diagnostics } = planFiles({
    files: [{ name: 'cars.csv', bytes, sha256: '' }],
    templates: builtInTemplates,
    templateId: 'saloon',
    intake: { plausible: settings.film.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
    settings,
    job: undefined,
    filmRecord: undefined,
    panels: [],
    defects: undefined,
  });
  if (value?.length !== cars)
    throw new Error(diagnostics[0]?.message ?? 'not every car was planned');
}

export const counts: readonly CarCount[] = [
  {
    title: `survey and plan of ${CARS} cars of ${PANELS} panels, from their readings`,
    cars: CARS,
    prepare: () => {
      const bytes = csvOf(CARS);
      planAll(csvOf(WARM_UP), WARM_UP);
      return () => planAll(bytes, CARS);
    },
    atLeast: 84,
  },
];
