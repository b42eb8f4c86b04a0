import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

type Fact = { readonly value: unknown; readonly origin: string; readonly where: string };
type Panel = { readonly panel: string; readonly facts: Readonly<Record<string, Fact>> };

/** A survey and a plan of the sound saloon with this job, on a page and as a record. */
const withJob = async (job: string, readings = 'samples/sound-saloon/readings.csv') => {
  const file = join(temporaryFolder(), 'job.json');
  writeFileSync(file, job);
  const run = (command: string, ...more: readonly string[]) =>
    askLeastcut([command, readings, '--job', file, ...more]);
  return { file, run };
};

describe('facts of each panel', () => {
  const job = `{ "schema": "leastcut/job/1",
"galvanised": true,
"taken_um": 0,
"panels": { "hood": { "substrate": "aluminium" },
"roof": { "clear_um": { "value": 41, "sd": 2 }, "taken_um": 1.5 } } }`;

  it('stand in the records of survey and plan alike, each with its line', async () => {
    const { file, run } = await withJob(job);
    const [survey, plan] = await Promise.all(
      ['survey', 'plan'].map(async (command) => {
        const { out } = await run(command, '--format', 'json');
        return (JSON.parse(out) as { panels: readonly Panel[] }).panels;
      }),
    );
    const of = (panels: readonly Panel[] | undefined, id: string) =>
      panels?.find(({ panel }) => panel === id)?.facts;
    expect(of(survey, 'roof')).toEqual(of(plan, 'roof'));
    expect(of(survey, 'roof')).toEqual({
      finish: { value: 'clear-over-base', origin: 'built-in', where: 'built-in' },
      taken_um: { value: 1.5, origin: 'job', where: `${file}:5` },
      taken_sd_um: { value: 0, origin: 'job', where: `${file}:5` },
      recorded_um: { value: null, origin: 'built-in', where: 'built-in' },
      clear_um: { value: { value: 41, sd: 2, of: 'panel' }, origin: 'job', where: `${file}:5` },
      under_um: { value: null, origin: 'built-in', where: 'built-in' },
      galvanised: { value: true, origin: 'job', where: `${file}:2` },
      covered: { value: false, origin: 'built-in', where: 'built-in' },
      clear_coat_failure: { value: false, origin: 'built-in', where: 'built-in' },
      painted_days_ago: { value: null, origin: 'built-in', where: 'built-in' },
    });
    expect(of(survey, 'bonnet')?.['galvanised']).toEqual({
      value: false,
      origin: 'job',
      where: 'no zinc on aluminium',
    });
  });

  it('are told with -v: what holds for most, then what is different where', async () => {
    const { run } = await withJob(job);
    for (const command of ['survey', 'plan']) {
      const [quiet, verbose] = await Promise.all([run(command), run(command, '-v')]);
      const words = verbose.out.replaceAll(/\s+/g, ' ');
      expect(words).toContain(
        'What is held of the paint, and where it is said panels, if nothing else is said: clear-over-base (built-in); never worked before (job.json:3); galvanised (job.json:2)',
      );
      expect(words).toContain('bonnet: not galvanised (no zinc on aluminium)');
      expect(words).toContain(
        'roof: 1.5 µm taken before (job.json:5); clear 41.0 ± 2.0 µm (SD) (job.json:5)',
      );
      expect(quiet.out).not.toContain('What is held');
    }
  });

  it('say of a clear that was read that the readings say so', async () => {
    const readings = join(temporaryFolder(), 'layers.csv');
    const rows = [1, 2, 3].flatMap((point) => [
      `bonnet,${point},total,${110 + point}`,
      `bonnet,${point},clear,${38 + point}`,
    ]);
    writeFileSync(readings, `panel,point,layer,thickness (µm)\n${rows.join('\n')}\n`);
    const { run } = await withJob('{ "schema": "leastcut/job/1", "template": "saloon" }', readings);
    const { out } = await run('survey', '--format', 'json', '--panel', 'bonnet');
    const [bonnet] = (JSON.parse(out) as { panels: readonly Panel[] }).panels;
    expect(bonnet?.facts['clear_um']).toMatchObject({
      value: { value: 40, of: 'panel' },
      origin: 'readings',
      where: 'readings of the layer',
    });
  });

  it('never tell what is on record of one panel as what all panels have', async () => {
    const record = join(temporaryFolder(), 'rec.json');
    writeFileSync(
      record,
      `{ "schema": "leastcut/film-record/1", "visits": [{ "date": "2026-03-08", "panels": [
{ "panel": "roof", "taken_um": 2.5, "taken_sd_um": 0.2 }] }] }`,
    );
    const { run } = await withJob('{ "schema": "leastcut/job/1" }');
    const asked = ['--film-record', record, '--panel', 'roof', '--panel', 'bonnet'];
    const pages = await Promise.all([run('survey', ...asked), run('survey', '-v', ...asked)]);
    const [quiet, verbose] = pages.map(({ out }) => out.replaceAll(/\s+/g, ' '));
    expect(quiet).toMatch(/never worked word of it \+[\d.]+ bonnet test spot/);
    expect(quiet).toContain('Stated: roof: 2.5 ± 0.2 µm (SD) on record.');
    expect(verbose).toMatch(
      /if nothing else is said: [^:]*\(built-in\) roof: 2\.5 ± 0\.2 µm \(SD\) on record/,
    );
  });
});
