/** What is counted in cars per second, the settings resolved once for all of them. */
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { planFiles } from '../../src/tasks/plan/plan-files.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

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
const SPREAD = { car: 8, panel: 6, point: 4 } as const;

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
/** The thirteen metal panels of the saloon that come first on the walk around it. */
const panels = (saloon?.panels ?? [])
  .filter(({ substrate }) => substrate !== 'plastic')
  .slice(0, 13)
  .map(({ id }) => id);

/** Five points on each panel, no two cars alike. */
function carsCsv(cars: number): Uint8Array {
  const random = seededRandom(12_345);
  const rows = Array.from({ length: cars }, (_, car) => {
    const ofCar = 112 + SPREAD.car * normal(random);
    return panels.map((panel) => {
      const ofPanel = ofCar + SPREAD.panel * normal(random);
      return [1, 2, 3, 4, 5].map(
        (point) =>
          `car-${car},${panel},${point},${(ofPanel + SPREAD.point * normal(random)).toFixed(1)}`,
      );
    });
  });
  return Buffer.from(`vehicle,panel,point,reading_um\n${rows.flat(2).join('\n')}\n`);
}

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
    title: `survey and plan of ${CARS} cars of ${panels.length} panels, from their readings`,
    cars: CARS,
    prepare: () => {
      const bytes = carsCsv(CARS);
      planAll(carsCsv(WARM_UP), WARM_UP);
      return () => planAll(bytes, CARS);
    },
    atLeast: 84,
  },
];
