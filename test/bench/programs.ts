/**
 * Whole programs on one file of a million readings: the survey of every car in it, each with its record
 * of some thirty thousand characters, against a grouped mean, variance and minimum by Miller.
 *
 * The two do not do the same work, and the ratio says how far a survey is from a bare sum. Processor time is
 * that of the program with all its threads, as the shell's `times` tells it.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { createWriteStream, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { finished } from 'node:stream/promises';
import { carsCsv } from './cars-csv.ts';
import type { Line } from './report.ts';
import { median } from './stats.ts';

/** Panels × points of a car: a hundred readings. */
const PANELS = 20;
const POINTS = 5;

type Program = { readonly name: string; readonly command: readonly string[] };

/** Seconds of processor time of a command and its threads, its output thrown away. */
function secondsOf(command: readonly string[]): number {
  const line = `${command.map((word) => `'${word}'`).join(' ')} >/dev/null 2>&1 || exit 9; times`;
  const { stdout, status } = spawnSync('sh', ['-c', line], { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${command.join(' ')} failed`);
  // The second line is that of the programs the shell ran: user and system.
  const told = [...(stdout.split('\n')[1] ?? '').matchAll(/(\d+)m([\d.]+)s/gu)];
  return told.reduce(
    (sum, [, minutes, seconds]) => sum + Number(minutes) * 60 + Number(seconds),
    0,
  );
}

export const hasMiller = (): boolean =>
  spawnSync('mlr', ['--version'], { stdio: 'ignore' }).status === 0;

async function writeCars(path: string, cars: number): Promise<void> {
  const out = createWriteStream(path);
  for (const piece of carsCsv({ cars, panels: PANELS, points: POINTS })) {
    if (!out.write(piece)) await new Promise<void>((done) => out.once('drain', () => done()));
  }
  out.end();
  await finished(out);
}

/** The programs take turns; the ratio of the medians of their processor times. */
export async function comparePrograms(runs: number, cars: number): Promise<Line> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const file = join(folder, 'cars.csv');
    await writeCars(file, cars);
    const built = join(folder, 'built');
    execFileSync(process.execPath, ['.build.mjs', built], { stdio: 'inherit' });
    const main = join(built, 'main.js');
    const ours: Program = {
      name: 'batch --command survey',
      command: [process.execPath, main, 'batch', file, '--command', 'survey'],
    };
    const plain: Program = {
      name: 'mlr stats1 mean,var,min',
      command: [
        'mlr',
        '--icsv',
        '--ojson',
        'stats1',
        '-a',
        'mean,var,min',
        '-f',
        'reading_um',
        '-g',
        'vehicle,panel',
        file,
      ],
    };
    const taken = { ours: [] as number[], plain: [] as number[] };
    for (let k = 0; k < runs; k += 1) {
      taken.ours.push(secondsOf(ours.command));
      taken.plain.push(secondsOf(plain.command));
    }
    const readings = cars * PANELS * POINTS;
    const side = ({ name }: Program, seconds: readonly number[]) => ({
      name,
      seconds: median(seconds),
      megabytes: null,
      readings,
    });
    return {
      title: `survey of ${cars} cars, ${readings} readings`,
      ours: side(ours, taken.ours),
      plain: side(plain, taken.plain),
      limit: { ratio: 1, isHeld: false },
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
