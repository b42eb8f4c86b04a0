import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readGauge } from '../../src/formats/gauge.ts';
import { askLeastcut } from './ask-leastcut.ts';
import { projectRoot } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const checks = 'samples/gauge-checks.csv';
const readings = 'samples/sound-saloon/readings.csv';
const mpe = ['--mpe-um', '1', '--mpe-pct', '1'];
const inFolder = (name: string): string => join(temporaryFolder(), name);

describe.concurrent('--gauge-out', () => {
  test('writes the gauge file beside the page, and the page is the same', async () => {
    const file = inFolder('gauge.json');
    const without = await askLeastcut(['gauge', checks, ...mpe]);
    const run = await askLeastcut(['gauge', checks, ...mpe, '--gauge-out', file]);
    expect(run).toEqual(without);
    expect(readGauge(file, readFileSync(file, 'utf8')).value?.value.verdict).toBe('pass');
  });

  test('writes it of a gauge that fails as well, and the exit code is 1', async () => {
    const [file, input] = [inFolder('gauge.json'), inFolder('checks.csv')];
    writeFileSync(input, 'shim_um,shim_uncertainty_um,reading_um\n100,0.5,140\n100,0.5,140.1\n');
    const run = await askLeastcut(['gauge', input, ...mpe, '--gauge-out', file]);
    expect(run.code).toBe(1);
    expect(readGauge(file, readFileSync(file, 'utf8')).value?.value.verdict).toBe('fail');
  });

  test('leaves a file that exists, unless --force says otherwise', async () => {
    const file = inFolder('gauge.json');
    writeFileSync(file, 'mine');
    const run = await askLeastcut(['gauge', checks, ...mpe, '--gauge-out', file]);
    expect(run).toMatchObject({ code: 73, out: '' });
    expect(run.err).toContain('output-exists');
    expect(readFileSync(file, 'utf8')).toBe('mine');
    const forced = await askLeastcut(['gauge', checks, ...mpe, '--gauge-out', file, '--force']);
    expect(forced.code).toBe(0);
    expect(readFileSync(file, 'utf8')).toContain('leastcut/gauge/1');
  });

  test('is never an input, and never the file that --out names', async () => {
    const [file, input] = [inFolder('gauge.json'), inFolder('checks.csv')];
    writeFileSync(input, readFileSync(join(projectRoot, checks)));
    const run = await askLeastcut(['gauge', input, '--gauge-out', input, '--force']);
    expect(run.err).toContain('output-is-input');
    const twice = await askLeastcut(['gauge', input, '--gauge-out', file, '--out', file]);
    expect(twice.code).toBe(2);
    expect(twice.err).toContain('two outputs');
    expect(existsSync(file)).toBe(false);
  });

  test('writes nothing where the checks are refused', async () => {
    const [file, input] = [inFolder('gauge.json'), inFolder('checks.csv')];
    writeFileSync(input, 'shim_um,reading_um\n100,140\n');
    const run = await askLeastcut(['gauge', input, '--gauge-out', file]);
    expect(run.code).toBe(65);
    expect(existsSync(file)).toBe(false);
  });
});

describe.concurrent('a gauge file', () => {
  const bonnet = ['--panel', 'bonnet', '--format', 'json'];
  type Surveyed = {
    readonly panels: readonly { readonly calibration_um: number; readonly mean_um: number }[];
    readonly assumptions: readonly { readonly code: string; readonly origin: string }[];
  };
  const surveyed = async (
    words: readonly string[],
    env: Readonly<Record<string, string>> = {},
  ): Promise<Surveyed> => {
    const run = await askLeastcut(['survey', readings, ...bonnet, ...words], { env });
    return JSON.parse(run.out) as Surveyed;
  };
  const originOf = ({ assumptions }: Surveyed) =>
    assumptions.find(({ code }) => code === 'gauge')?.origin;

  test('that gauge wrote is one that survey and plan take', async () => {
    const file = inFolder('gauge.json');
    await askLeastcut(['gauge', checks, ...mpe, '--gauge-out', file]);
    const [panel] = (await surveyed(['--gauge', file])).panels;
    // (1 + .01·mean)/√3
    expect(panel?.calibration_um).toBeCloseTo((1 + 0.01 * (panel?.mean_um ?? 0)) / Math.sqrt(3), 6);
    const plan = await askLeastcut(['plan', readings, '--gauge', file]);
    expect(plan.code).toBe(0);
    expect(plan.out.replaceAll(/\s+/g, ' ')).toContain('± 1 µm ± 1 % of the film, within that');
  });

  test('is named by a flag, the environment, the job or the shop, in that order', async () => {
    const [file, job, shop] = [inFolder('gauge.json'), inFolder('job.json'), inFolder('shop.json')];
    await askLeastcut(['gauge', checks, ...mpe, '--gauge-out', file]);
    writeFileSync(job, JSON.stringify({ schema: 'leastcut/job/1', gauge: file }));
    writeFileSync(shop, JSON.stringify({ schema: 'leastcut/shop/1', gauge: file }));
    const env = { LEASTCUT_GAUGE: file };
    const named = ['--job', job, '--shop', shop];
    expect(originOf(await surveyed([...named, '--gauge', file], env))).toBe('flag');
    expect(originOf(await surveyed(named, env))).toBe('environment');
    expect(originOf(await surveyed(named))).toBe('job');
    expect(originOf(await surveyed(['--shop', shop]))).toBe('shop');
  });

  test('that is not there is told at the line that names it', async () => {
    const job = inFolder('job.json');
    writeFileSync(job, '{ "schema": "leastcut/job/1",\n  "gauge": "away.json" }\n');
    const run = await askLeastcut(['survey', readings, '--job', job]);
    expect(run.code).toBe(66);
    expect(run.err).toContain(`${job}:2:`);
    expect(run.err).toContain('away.json');
  });

  test('nobody named leaves a survey by what is usual, and says so', async () => {
    const { assumptions } = await surveyed([]);
    expect(assumptions.map(({ code }) => code)).toContain('gauge-not-verified');
  });
});
