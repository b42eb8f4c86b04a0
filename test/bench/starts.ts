/**
 * How long a command takes from nothing, against a Node that does nothing: one run each in turn, by the clock, as the
 * person who waits has it. The aim is so many milliseconds over bare Node; on a busy machine both take longer.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Line } from './report.ts';
import { median } from './stats.ts';

const car = 'samples/sound-saloon';

const starts: readonly { readonly words: readonly string[]; readonly aimMs: number }[] = [
  { words: ['--version'], aimMs: 25 },
  { words: ['survey', `${car}/readings.csv`], aimMs: 60 },
  {
    words: [
      'plan',
      `${car}/readings.csv`,
      ...['--job', `${car}/job.json`, '--defects', `${car}/defects.csv`],
    ],
    aimMs: 90,
  },
];

/** Certificates named there are read at every start of Node, before anything else: 50 ms for a usual bundle. */
const { NODE_EXTRA_CA_CERTS: _, ...environment } = process.env;

function secondsOf(words: readonly string[]): number {
  const start = process.hrtime.bigint();
  const { status } = spawnSync(process.execPath, words, { stdio: 'ignore', env: environment });
  if (status !== 0) throw new Error(`${words.join(' ')} failed`);
  return Number(process.hrtime.bigint() - start) / 1e9;
}

export function compareStarts(runs: number): readonly Line[] {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  try {
    execFileSync(process.execPath, ['.build.mjs', folder], { stdio: 'inherit' });
    const main = join(folder, 'main.js');
    const bare: number[] = [];
    const own = starts.map((): number[] => []);
    for (let k = 0; k < runs; k += 1) {
      bare.push(secondsOf(['-e', '0']));
      for (const [i, { words }] of starts.entries()) own[i]?.push(secondsOf([main, ...words]));
    }
    const plain = { name: 'node -e 0', seconds: median(bare), megabytes: null, readings: 0 };
    return starts.map(({ words: [command = ''], aimMs }, i) => ({
      title: `start of ${command} on one car, by the clock (aim: ${aimMs} ms over bare Node)`,
      ours: { name: command, seconds: median(own[i] ?? []), megabytes: null, readings: 0 },
      plain,
      limit: { ratio: roundedUp(1 + aimMs / 1000 / plain.seconds), isHeld: false },
    }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const roundedUp = (ratio: number): number => Math.ceil(100 * ratio) / 100;
