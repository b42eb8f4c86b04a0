/**
 * A sound car: 13 panels of factory film, five points each, in the canonical long form.
 *
 * The car lies a little over the built-in prior of 42 µm of clear over 70 µm: 43 over 75, so about
 * 118 in total, with 4.5 µm of spread over a panel. Its bumpers are steel, so all 13 are readable.
 */
import {
  drawFactoryPanel,
  drawGauge,
  type InventedReading,
  panelsToRead,
  readAgain,
  readPanel,
  type Sample,
} from './invented-film.ts';
import { normal, seededRandom } from './seeded-random.ts';
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
  const rows = rowsOf(readings);
  return {
    folder: 'sound-saloon',
    files: {
      'readings.csv': table([['panel', 'point', 'reading_um'], ...rows], ','),
      'job.json': json(job),
      'defects.csv': defects(panels.map(({ panel }) => panel)),
      'after.csv': table([['panel', 'point', 'reading_um'], ...rowsOf(afterPolishing())], ','),
      'gloss.csv': lines(gloss),
    },
    car: { seed: SEED, gauge, panels },
  };

  /** The marked points as they read when the work is done: the rear bumper was left out. */
  function afterPolishing(): readonly InventedReading[] {
    const later = seededRandom(SEED + 1);
    const worked = readings.filter(({ panel }) => panel !== 'bumper-rear');
    const removed = new Map(
      panels.map(({ panel }) => [panel, takenByPolishing * Math.exp(0.15 * normal(later))]),
    );
    return readAgain(later, worked, gauge, (panel) => removed.get(panel) ?? 0);
  }
}

/** Read at 60° and 20° at marked places of two panels. */
const gloss = [
  'panel,point,angle_deg,before_gu,after_gu,before_haze,after_haze',
  'bonnet,1,60,84.1,91.2,,',
  'bonnet,2,60,82.7,90.4,,',
  'bonnet,3,60,85.0,91.0,,',
  'bonnet,1,20,68.3,82.9,31,12',
  'bonnet,2,20,66.9,81.5,34,14',
  'bonnet,3,20,69.2,83.6,29,11',
  'roof,1,60,80.5,89.9,,',
  'roof,2,60,81.8,90.6,,',
];

/** Less than the usual 3 µm of the planned steps: a paint on the hard side. */
const takenByPolishing = 2.4;

const rowsOf = (readings: readonly InventedReading[]): readonly string[][] =>
  readings.map(({ panel, point, reading }) => [panel, point, reading.toFixed(1)]);

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
