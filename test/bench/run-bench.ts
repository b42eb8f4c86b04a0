/**
 * `npm run bench`: our reader against plain use of a library, as ratios within one run. The two sides take
 * turns, each in a process of its own, so that neither inherits the other's memory or warmth; times
 * are processor time and medians, so that a busy machine tells little. `--runs 5`, `--only WORD`.
 */
import { spawnSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import { counts } from './car-counts.ts';
import { comparisons, type Subject } from './subjects.ts';

type Run = { readonly seconds: number; readonly peakMegabytes: number; readonly readings: number };
type Side = 'ours' | 'plain';

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

function apart(comparison: number, side: Side): Run {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [process.argv[1] ?? '', '--comparison', String(comparison), '--side', side],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`${side} of comparison ${comparison} failed: ${stderr}`);
  return JSON.parse(stdout);
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2;
};

function compareAll(runs: number, only: string): void {
  for (const [index, { title, ours, plain, atMost }] of comparisons.entries()) {
    if (!title.includes(only)) continue;
    const taken: Record<Side, Run[]> = { ours: [], plain: [] };
    for (let k = 0; k < runs; k += 1) {
      const order: readonly Side[] = k % 2 === 0 ? ['ours', 'plain'] : ['plain', 'ours'];
      for (const side of order) taken[side].push(apart(index, side));
    }
    const seconds = (side: Side) => median(taken[side].map((run) => run.seconds));
    const peak = (side: Side) => median(taken[side].map((run) => run.peakMegabytes));
    const ratio = seconds('ours') / seconds('plain');
    const readings = (side: Side) => taken[side][0]?.readings ?? 0;
    console.log(title);
    for (const [side, { name }] of [
      ['ours', ours],
      ['plain', plain],
    ] as const)
      console.log(
        `  ${name.padEnd(22)} ${seconds(side).toFixed(2)} s  ${peak(side).toFixed(0)} MB at most  ${readings(side)} readings`,
      );
    console.log(`  ratio ${ratio.toFixed(2)}${atMost === undefined ? '' : ` (at most ${atMost})`}`);
    const tooSlow = atMost !== undefined && ratio > atMost;
    if (tooSlow || readings('ours') !== readings('plain')) process.exitCode = 1;
  }
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

const { values } = parseArgs({
  options: {
    runs: { type: 'string', default: '5' },
    only: { type: 'string', default: '' },
    comparison: { type: 'string' },
    side: { type: 'string' },
  },
});
const chosen = comparisons[Number(values.comparison)];
if (chosen === undefined) {
  compareAll(Number(values.runs), values.only);
  countCars(Number(values.runs), values.only);
} else {
  const subject = values.side === 'ours' ? chosen.ours : chosen.plain;
  console.log(JSON.stringify(measure(subject, chosen.bytes())));
}
