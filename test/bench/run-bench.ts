/**
 * `npm run bench`: our reader against plain use of a library, and our survey of ten thousand cars against
 * sums by another program, as ratios within one run. The two sides take turns, each in a process of its
 * own, so that neither inherits the other's memory or warmth; times are processor time and medians, so
 * that a busy machine tells little.
 *
 * `--runs 5`, `--only WORD`, `--cars 10000`; `--record` keeps the table under `test/bench/results`.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { counts } from './car-counts.ts';
import { comparePrograms, hasMiller } from './programs.ts';
import { isBad, type Line, machineText, markdown, ratioText, sideText } from './report.ts';
import { compareStarts } from './starts.ts';
import { median } from './stats.ts';
import { type Comparison, comparisons, type Subject } from './subjects.ts';

type Run = { readonly seconds: number; readonly peakMegabytes: number; readonly readings: number };
type Who = 'ours' | 'plain';

/** Starts are short and vary much: so many for each run of the others. */
const STARTS = 6;

/** One run of one side; the file is in memory before the clock starts. */
function measure(subject: Subject, bytes: Uint8Array): Run {
  const start = process.cpuUsage();
  const readings = subject.run(bytes);
  const { user, system } = process.cpuUsage(start);
  return {
    seconds: (user + system) / 1e6,
    peakMegabytes: process.resourceUsage().maxRSS / 1024,
    readings,
  };
}

function apart(comparison: number, side: Who): Run {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [process.argv[1] ?? '', '--comparison', String(comparison), '--side', side],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`${side} of comparison ${comparison} failed: ${stderr}`);
  return JSON.parse(stdout);
}

function compare({ title, ours, plain, atMost }: Comparison, index: number, runs: number): Line {
  const taken: Record<Who, Run[]> = { ours: [], plain: [] };
  for (let k = 0; k < runs; k += 1) {
    const order: readonly Who[] = k % 2 === 0 ? ['ours', 'plain'] : ['plain', 'ours'];
    for (const side of order) taken[side].push(apart(index, side));
  }
  const sideOf = (side: Who, { name }: Subject) => ({
    name,
    seconds: median(taken[side].map((run) => run.seconds)),
    megabytes: median(taken[side].map((run) => run.peakMegabytes)),
    readings: taken[side][0]?.readings ?? 0,
  });
  return {
    title,
    ours: sideOf('ours', ours),
    plain: sideOf('plain', plain),
    limit: atMost === undefined ? undefined : { ratio: atMost, isHeld: true },
  };
}

/** What has no other side to be held against: cars per second in a warm process, and how many there should be. */
function countCars(runs: number, only: string): void {
  for (const { title, cars, prepare, atLeast } of counts) {
    if (!title.includes(only)) continue;
    const run = prepare();
    const rates = Array.from({ length: runs }, () => {
      const start = process.cpuUsage();
      run();
      const { user, system } = process.cpuUsage(start);
      return cars / ((user + system) / 1e6);
    });
    const rate = median(rates);
    console.log(title);
    console.log(
      `  ${rate.toFixed(0)} cars a second (at least ${atLeast}), ${(1000 / rate).toFixed(1)} ms a car`,
    );
    if (rate < atLeast) process.exitCode = 1;
  }
}

async function runAll(runs: number, only: string, cars: number, record: boolean): Promise<void> {
  console.log(machineText());
  const lines: Line[] = [];
  const missing: string[] = [];
  const tell = (line: Line): void => {
    lines.push(line);
    console.log(
      [line.title, sideText(line.ours), sideText(line.plain), `  ratio ${ratioText(line)}`].join(
        '\n',
      ),
    );
    if (isBad(line)) process.exitCode = 1;
  };
  for (const [index, comparison] of comparisons.entries()) {
    if (comparison.title.includes(only)) tell(compare(comparison, index, runs));
  }
  if ('start'.includes(only)) for (const line of compareStarts(STARTS * runs)) tell(line);
  if ('survey of many cars'.includes(only)) {
    if (hasMiller()) for (const line of await comparePrograms(runs, cars)) tell(line);
    else missing.push('Miller (mlr)');
  }
  for (const name of missing) console.log(`not installed, so not run: ${name}`);
  countCars(runs, only);
  if (!record) return;
  const day = new Date().toISOString().slice(0, 10);
  mkdirSync('test/bench/results', { recursive: true });
  const path = `test/bench/results/${day}.md`;
  writeFileSync(path, markdown(lines, { day, runs, missing }));
  spawnSync('npx', ['biome', 'format', '--write', path]);
}

const { values } = parseArgs({
  options: {
    runs: { type: 'string', default: '5' },
    only: { type: 'string', default: '' },
    cars: { type: 'string', default: '10000' },
    record: { type: 'boolean', default: false },
    comparison: { type: 'string' },
    side: { type: 'string' },
  },
});
const chosen = comparisons[Number(values.comparison)];
if (chosen === undefined) {
  await runAll(Number(values.runs), values.only, Number(values.cars), values.record);
} else {
  const subject = values.side === 'ours' ? chosen.ours : chosen.plain;
  console.log(JSON.stringify(measure(subject, chosen.bytes())));
}
