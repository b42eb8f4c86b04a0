/**
 * Every file of the samples, and what is true of their cars.
 *
 * All of it is invented and comes from a seeded generator, so the truth behind each reading is known:
 * `truth.json` holds it for tests. `npm run samples` writes the files anew; without it, the tests
 * compare them byte by byte.
 */
import type { InventedCar, PanelTruth, Sample } from './invented-film.ts';
import { olderCoupe } from './older-coupe.ts';
import { plasticBumpers } from './plastic-bumpers.ts';
import { soundSaloon } from './sound-saloon.ts';
import { json } from './text-files.ts';

const samples = (): readonly Sample[] => [soundSaloon(), olderCoupe(), plasticBumpers()];

const shop = {
  schema: 'leastcut/shop/1',
  name: 'Fernhollow Paintwork',
  machines: ['rotary', 'da', 'da-small'],
  pads: ['foam-soft', 'foam-medium', 'microfibre', 'wool'],
  products: ['fine', 'medium', 'heavy'],
  risk_pct: 5,
  policy: 'standard',
  minutes: {
    wipe_min_per_section: 0.8,
    pad_cleaning_min_per_section: 1,
    setup_min_per_combination: 12,
  },
};

/** A saloon with two long doors: the built-in one without its rear doors. */
const twoDoor = {
  schema: 'leastcut/template/1',
  id: 'two-door',
  name: 'two-door saloon',
  base: 'saloon',
  remove: ['door-rear-left', 'door-rear-right'],
  change: {
    'door-front-left': { area_m2: 1.1 },
    'door-front-right': { area_m2: 1.1 },
  },
};

/** Text by path from the top of the project. */
export function sampleFiles(): ReadonlyMap<string, string> {
  const made = samples();
  const inFolders = made.flatMap(({ folder, files }) =>
    Object.entries(files).map(([name, text]) => [`samples/${folder}/${name}`, text] as const),
  );
  const truth = Object.fromEntries(made.map(({ folder, car }) => [folder, carTruth(car)]));
  return new Map([
    ...inFolders,
    ['samples/shop.json', json(shop)],
    ['samples/two-door.json', json(twoDoor)],
    ['test/samples/truth.json', `${JSON.stringify(truth, null, 2)}\n`],
  ]);
}

const carTruth = ({ seed, gauge, panels }: InventedCar) => ({
  seed,
  gauge: { gain: gauge.gain, offset_um: gauge.offset },
  panels: Object.fromEntries(panels.map((truth) => [truth.panel, panelTruth(truth)])),
});

const panelTruth = ({ condition, clear, under, sd, local }: PanelTruth) => ({
  condition,
  clear_mean_um: clear,
  under_mean_um: under,
  sd_um: sd,
  ...(local.length === 0
    ? {}
    : { local: local.map(({ point, layer, by }) => ({ point, layer, by_um: by })) }),
});
