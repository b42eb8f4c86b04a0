/** One spoiled job among a thousand: its record stands in its place, and the others are as without it. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const JOBS = 1000;
const SPOILED = 617;

/** Two readings of a vehicle that is one roof: the batch is what is tested. */
const readings = (k: number): string =>
  `panel,point,reading_um\nroof,1,${110 + (k % 13)}\nroof,2,${112 + (k % 7)}\n`;
const roof = {
  ...{ id: 'roof', name: 'roof', area_m2: 1.5, substrate: 'steel' },
  ...{ facing: 'horizontal', flat_width_mm: 900, trim_m: 1 },
};
const template = { schema: 'leastcut/template/1', id: 'roof', name: 'a roof', panels: [roof] };

const nameOf = (k: number): string => `job-${String(k).padStart(4, '0')}`;

const folder = temporaryFolder();
mkdirSync(join(folder, 'cars'));
writeFileSync(join(folder, 'roof.json'), JSON.stringify(template));
for (let k = 1; k <= JOBS; k += 1) {
  writeFileSync(join(folder, 'cars', `${nameOf(k)}.csv`), readings(k));
}
const fileOf = (k: number): string => join(folder, 'cars', `${nameOf(k)}.csv`);

type Columns = Readonly<Record<string, string>>;

/** Gives the path of the list; `said` of the spoiled job, in columns of its own. */
function listOf(said: Columns): string {
  const names = Object.keys(said);
  const row = (k: number): string =>
    [
      nameOf(k),
      `cars/${nameOf(k)}.csv`,
      ...names.map((name) => (k === SPOILED ? (said[name] ?? '') : '')),
    ].join(',');
  const rows = Array.from({ length: JOBS }, (_, i) => row(i + 1));
  const path = join(folder, 'jobs.csv');
  writeFileSync(path, `${['job', 'readings', ...names].join(',')}\n${rows.join('\n')}\n`);
  return path;
}

const batch = (list: string, workers: string) =>
  runLeastcut([
    ...['batch', list, '--command', 'survey', '--template', join(folder, 'roof.json')],
    ...['--workers', workers],
  ]);

const linesOf = (out: string): readonly string[] => out.trimEnd().split('\n');

type Spoiling = {
  readonly what: string;
  readonly text?: string | Uint8Array | null;
  readonly said?: Columns;
  readonly beside?: string;
  readonly code: string;
  readonly status: 'refused' | 'failed';
  readonly exit: number;
};

const spoilings: readonly Spoiling[] = [
  {
    ...{ what: 'whose file is gone', text: null },
    ...{ code: 'file-missing', status: 'failed', exit: 66 },
  },
  {
    ...{ what: 'with a cell that is no number', text: readings(1).replace('roof,1,', 'roof,1,o') },
    ...{ code: 'reading-not-a-number', status: 'refused', exit: 65 },
  },
  {
    ...{ what: 'whose file is a picture', text: Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10]) },
    ...{ code: 'encoding-unknown', status: 'refused', exit: 65 },
  },
  {
    ...{ what: 'of two vehicles' },
    text: `vehicle,${readings(1).replace('\nroof', '\nA,roof').replace('\nroof', '\nB,roof')}`,
    ...{ code: 'usage-several-vehicles', status: 'refused', exit: 2 },
  },
  {
    ...{ what: 'whose job file is torn', said: { job_file: 'torn.json' } },
    beside: '{ "schema": "leastcut/job/1", "finish": ',
    ...{ code: 'json-syntax', status: 'refused', exit: 78 },
  },
];

describe('one job among a thousand', async () => {
  const sound = await batch(listOf({}), '2');

  test('in order is like the others', () => {
    expect(sound.code).toBe(0);
    expect(linesOf(sound.out)).toHaveLength(JOBS);
  });

  test.each(spoilings)(
    '$what has its record in its place, and changes nothing of the others',
    async ({ text, said = {}, beside, ...wanted }) => {
      if (text === null) rmSync(fileOf(SPOILED));
      else if (text !== undefined) writeFileSync(fileOf(SPOILED), text);
      if (beside !== undefined) writeFileSync(join(folder, 'torn.json'), beside);
      const { code, out, err } = await batch(listOf(said), '1');
      writeFileSync(fileOf(SPOILED), readings(SPOILED));
      const lines = linesOf(out);
      expect(code).toBe(3);
      expect(err).toContain(`${JOBS} jobs: ${JOBS - 1} done, 1 ${wanted.status}`);
      expect(lines.toSpliced(SPOILED - 1, 1)).toEqual(linesOf(sound.out).toSpliced(SPOILED - 1, 1));
      const record: unknown = JSON.parse(lines[SPOILED - 1] ?? '');
      expect(record).toMatchObject({
        ...{ job: nameOf(SPOILED), seq: SPOILED, status: wanted.status, exit: wanted.exit },
        result: null,
      });
      expect(JSON.stringify(record)).toContain(`"code":"${wanted.code}"`);
    },
  );
});
