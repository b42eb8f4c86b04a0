/** Readings of many cars, no two alike: as a text in pieces of a car each, the names of the columns first. */
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const SPREAD = { car: 8, panel: 6, point: 4 } as const;

const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
/** Metal panels in the order of the walk around a saloon; after them the plastic ones. */
const panelIds = [...(saloon?.panels ?? [])]
  .sort((a, b) => Number(a.substrate === 'plastic') - Number(b.substrate === 'plastic'))
  .map(({ id }) => id);

export function* carsCsv({
  cars,
  panels,
  points,
}: {
  readonly cars: number;
  readonly panels: number;
  readonly points: number;
}): Iterable<string> {
  const random = seededRandom(12_345);
  yield 'vehicle,panel,point,reading_um\n';
  for (let car = 0; car < cars; car += 1) {
    const ofCar = 112 + SPREAD.car * normal(random);
    let rows = '';
    for (const panel of panelIds.slice(0, panels)) {
      const ofPanel = ofCar + SPREAD.panel * normal(random);
      for (let point = 1; point <= points; point += 1) {
        const reading = (ofPanel + SPREAD.point * normal(random)).toFixed(1);
        rows += `car-${car},${panel},${point},${reading}\n`;
      }
    }
    yield rows;
  }
}
