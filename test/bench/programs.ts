/**
 * Whole programs on one file of about a million readings, against a grouped mean, variance and minimum by
 * Miller: the same statistics of every panel as columns of a survey, and the survey of every car, each with
 * its record of some thirty thousand characters.
 *
 * The second does not do the same work, and its ratio says how far a survey is from a bare sum. Processor time
 * is that of the program with all its threads, as the shell's `times` tells it.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { createWriteStream, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { finished } from 'node:stream/promises';
import { carsCsv } from './cars-csv.ts';
import type { Line } from './report.ts';
import { median } from './stats.ts';

/** The panels of a saloon, at most so many, × points: some hundred readings a car. */
const PANELS = 20;
const POINTS = 5;
const STATISTICS = 'vehicle,panel,n_readings,mean_um,sd_um,min_um';

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

/** Gives the number of readings. */
async function writeCars(path: string, cars: number): Promise<number> {
  const out = createWriteStream(path);
  let lines = 0;
  for (const piece of carsCsv({ cars, panels: PANELS, points: POINTS })) {
    lines += piece.split('\n').length - 1;
    if (!out.write(piece)) await new Promise<void>((done) => out.once('drain', () => done()));
  }
  out.end();
  await finished(out);
  return lines - 1;
}

/** The programs take turns; the ratios of the medians of their processor times. */
export async function comparePrograms(runs: number, cars: number): Promise<readonly Line[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    const file = join(folder, 'cars.csv');
    const readings = await writeCars(file, cars);
    const built = join(folder, 'built');
    execFileSync(process.execPath, ['.build.mjs', built], { stdio: 'inherit' });
    const own = [process.execPath, join(built, 'main.js')];
    const group = ['-a', 'mean,var,min', '-f', 'reading_um', '-g', 'vehicle,panel'];
    const plain: Program = {
      name: 'mlr stats1 mean,var,min',
      command: ['mlr', '--icsv', '--ojson', 'stats1', ...group, file],
    };
    const statistics: Program = {
      name: 'survey --fields',
      command: [...own, 'survey', file, '--format', 'csv', '--fields', STATISTICS],
    };
    const survey: Program = {
      name: 'batch --command survey',
      command: [...own, 'batch', file, '--command', 'survey'],
    };
    const programs = [plain, statistics, survey];
    const taken = programs.map((): number[] => []);
    for (let k = 0; k < runs; k += 1) {
      for (const [i, { command }] of programs.entries()) taken[i]?.push(secondsOf(command));
    }
    const side = (one: Program) => ({
      name: one.name,
      seconds: median(taken[programs.indexOf(one)] ?? []),
      megabytes: null,
      readings,
    });
    const line = (what: string, ours: Program): Line => ({
      title: `${what} of ${cars} cars, ${readings} readings`,
      ours: side(ours),
      plain: side(plain),
      limit: { ratio: 1, isHeld: false },
    });
    return [line('statistics of each panel', statistics), line('survey', survey)];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
