/**
 * A sheet filled in by hand: one column per panel, tab separated, in mil, and the columns of the two
 * plastic bumpers empty, since the gauge needs metal under the paint.
 *
 * Factory film of 42 µm of clear over 77 µm on galvanised steel, and over 70 µm on the aluminium bonnet.
 * The car was polished once, which took 3 µm everywhere: the clear stated as truth is what is left.
 */
import { micrometres, micrometresToMil } from '../../src/base/units.ts';
import {
  drawFactoryPanel,
  drawGauge,
  panelsToRead,
  readPanel,
  type Sample,
} from './invented-film.ts';
import { seededRandom } from './seeded-random.ts';
import { json, table } from './text-files.ts';

/** The job number, raised until every panel read as what it is. */
const SEED = 1060;
const TAKEN = 3;
const level = { clear: 42 - TAKEN, under: 77, sd: 4 };
/** No zinc under the paint. */
const aluminium = { ...level, under: 70 };
const points = ['1', '2', '3', '4', '5'];

const isBumper = (panel: string): boolean => panel.startsWith('bumper-');

export function plasticBumpers(): Sample {
  const random = seededRandom(SEED);
  const gauge = drawGauge(random);
  const columns = panelsToRead('hatch');
  const panels = columns
    .filter((panel) => !isBumper(panel))
    .map((panel) => drawFactoryPanel(random, panel, panel === 'bonnet' ? aluminium : level));
  const readings = panels.flatMap((truth) =>
    readPanel(random, truth, gauge, { template: 'hatch', repeats: 1 }),
  );
  const cell = (panel: string, point: string): string =>
    readings
      .filter((one) => one.panel === panel && one.point === point)
      .map(({ reading }) => micrometresToMil(micrometres(reading)).toFixed(2))
      .join();
  const header = ['Point', ...columns.map((panel) => `${panel} (mil)`)];
  const rows = points.map((point) => [point, ...columns.map((panel) => cell(panel, point))]);
  return {
    folder: 'plastic-bumpers',
    files: { 'readings.tsv': table([header, ...rows], '\t'), 'job.json': json(job) },
    car: { seed: SEED, gauge, panels },
  };
}

const job = {
  schema: 'leastcut/job/1',
  vehicle: {
    id: 'FH-1060',
    make: 'Tolverne',
    model: 'Pipkin',
    year: 2017,
    colour: 'chalk white',
    owner: 'Ines Quarrelby',
  },
  template: 'hatch',
  aim: 'correct',
  finish: 'clear-over-base',
  galvanised: true,
  colour_depth: 'light',
  taken_um: TAKEN,
  panels: { bonnet: { substrate: 'aluminium' } },
  note: 'Polished once, two years ago: the film record says 3 µm. Bumpers are plastic and unread.',
};
