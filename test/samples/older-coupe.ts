/**
 * A car with a past, read by a gauge of other habits: semicolons, decimal commas, American names and
 * numbered repeats. Nothing is known of its history.
 *
 * Factory film of 40 µm of clear over 68 µm, and three panels that are not: a bonnet polished down to
 * 25 µm of clear, a front wing painted again over the old film, a rear quarter painted again with
 * filler under two of its points.
 */
import {
  drawFactoryPanel,
  drawGauge,
  type PanelTruth,
  panelsToRead,
  readPanel,
  type Sample,
} from './invented-film.ts';
import { seededRandom } from './seeded-random.ts';
import { json, table } from './text-files.ts';

/** The job number, raised until every panel read as what it is. */
const SEED = 1052;
const level = { clear: 40, under: 68, sd: 4 };

/** By panel: what this export calls it. */
const names: Readonly<Record<string, string>> = {
  bonnet: 'Hood',
  'wing-front-right': 'RF Fender',
  'door-front-right': 'RF Door',
  'quarter-right': 'RR Quarter Panel',
  boot: 'Trunk Lid',
  'quarter-left': 'LR Quarter Panel',
  'door-front-left': 'LF Door',
  'wing-front-left': 'LF Fender',
  roof: 'Roof',
};

const changed: Readonly<Record<string, PanelTruth>> = {
  bonnet: {
    panel: 'bonnet',
    condition: 'thin',
    clear: 25,
    under: 60,
    sd: 3,
    local: [{ point: '4', layer: 'clear', by: -11 }],
  },
  'wing-front-left': {
    panel: 'wing-front-left',
    condition: 'refinished',
    clear: 58,
    under: 202,
    sd: 12,
    local: [],
  },
  'quarter-right': {
    panel: 'quarter-right',
    condition: 'filler',
    clear: 55,
    under: 175,
    sd: 14,
    local: [
      { point: '4', layer: 'under', by: 120 },
      { point: '5', layer: 'under', by: 390 },
    ],
  },
};

/** Where the inspector took every point three times. */
const thrice: ReadonlySet<string> = new Set(['bonnet', 'wing-front-left', 'quarter-right', 'roof']);

export function olderCoupe(): Sample {
  const random = seededRandom(SEED);
  const gauge = drawGauge(random);
  const panels = panelsToRead('coupe')
    .filter((panel) => panel in names)
    .map((panel) => changed[panel] ?? drawFactoryPanel(random, panel, level));
  const rows = panels.flatMap((truth) =>
    readPanel(random, truth, gauge, {
      template: 'coupe',
      repeats: thrice.has(truth.panel) ? 3 : 1,
    }).map(({ panel, point, repeat, reading }) => [
      names[panel] ?? panel,
      point,
      reading.toFixed(1).replace('.', ','),
      String(repeat),
    ]),
  );
  return {
    folder: 'older-coupe',
    files: {
      'readings.csv': table([['Panel', 'Spot', 'Thickness (µm)', 'No'], ...rows], ';'),
      'job.json': json(job),
    },
    car: { seed: SEED, gauge, panels },
  };
}

const job = {
  schema: 'leastcut/job/1',
  vehicle: {
    id: 'FH-1052',
    make: 'Vessant',
    model: 'Quillon Twelve',
    year: 1999,
    colour: 'claret metallic',
    owner: 'Tam Hesselwick',
  },
  template: 'coupe',
  aim: 'enhance',
  finish: 'clear-over-base',
  colour_depth: 'dark',
  scope: { wheels: 'off', interior: true, engine_bay: true, protection: 'coating' },
  arrival: 'heavy',
  hands: 2,
  note: 'Bought at a sale, history unknown. The plastic bumpers were not read.',
};
