/**
 * A sound car: 13 panels of factory film, five points each, in the canonical long form.
 *
 * The car lies a little over the built-in prior of 42 µm of clear over 70 µm: 43 over 75, so about
 * 118 in total, with 4.5 µm of spread over a panel. Its bumpers are steel, so all 13 are readable.
 */
import {
  drawFactoryPanel,
  drawGauge,
  panelsToRead,
  readPanel,
  type Sample,
} from './invented-film.ts';
import { seededRandom } from './seeded-random.ts';
import { json, lines, table } from './text-files.ts';

/** The job number, raised until every panel read as what it is. */
const SEED = 1042;
const level = { clear: 43, under: 75, sd: 4.5 };

const swirlGrades: Readonly<Record<string, string>> = {
  bonnet: '3',
  roof: '3',
  boot: '3',
  'door-front-left': '2.5',
  'door-front-right': '2.5',
};

export function soundSaloon(): Sample {
  const random = seededRandom(SEED);
  const gauge = drawGauge(random);
  const panels = panelsToRead('saloon').map((panel) => drawFactoryPanel(random, panel, level));
  const readings = panels.flatMap((truth) =>
    readPanel(random, truth, gauge, { template: 'saloon', repeats: 1 }),
  );
  const rows = readings.map(({ panel, point, reading }) => [panel, point, reading.toFixed(1)]);
  return {
    folder: 'sound-saloon',
    files: {
      'readings.csv': table([['panel', 'point', 'reading_um'], ...rows], ','),
      'job.json': json(job),
      'defects.csv': defects(panels.map(({ panel }) => panel)),
    },
    car: { seed: SEED, gauge, panels },
  };
}

const job = {
  schema: 'leastcut/job/1',
  vehicle: {
    id: 'FH-1042',
    make: 'Orrindale',
    model: 'Meridew 6',
    year: 1988,
    colour: 'slate blue metallic',
    owner: 'Odalys Brackenthorp',
  },
  template: 'saloon',
  aim: 'correct',
  finish: 'clear-over-base',
  taken_um: 0,
  panels: {
    'front bumper': { substrate: 'steel' },
    'rear bumper': { substrate: 'steel' },
  },
  note: 'One owner, never polished. Both bumpers are painted steel.',
};

const defects = (panels: readonly string[]): string =>
  lines([
    'panel,defect,grade,extent,depth_um,note',
    ...panels.map((panel) => `${panel},swirl-marks,${swirlGrades[panel] ?? '2'},whole panel,,`),
    'door-front-left,deep-scratches,3,one of 12 cm,,"beside the handle, a fingernail catches"',
  ]);
