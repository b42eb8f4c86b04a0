/** Spoiled jobs among a thousand: each record stands in its place, and the others are as without them. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const JOBS = 1000;

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

/** Gives the path of the list; `said` of a spoiled job, in columns of its own. */
function listOf(spoiled: readonly Spoiling[]): string {
  const names = [...new Set(spoiled.flatMap(({ said = {} }) => Object.keys(said)))];
  const saidOf = (k: number): Columns => spoiled.find(({ at }) => at === k)?.said ?? {};
  const row = (k: number): string =>
    [nameOf(k), `cars/${nameOf(k)}.csv`, ...names.map((name) => saidOf(k)[name] ?? '')].join(',');
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
  /** Which of the jobs it is. */
  readonly at: number;
  readonly text?: string | Uint8Array | null;
  readonly said?: Columns;
  readonly beside?: string;
  readonly code: string;
  readonly status: 'refused' | 'failed';
  readonly exit: number;
};

const spoilings: readonly Spoiling[] = [
  {
    ...{ what: 'whose file is gone', at: 5, text: null },
    ...{ code: 'file-missing', status: 'failed', exit: 66 },
  },
  {
    ...{
      what: 'with a cell that is no number',
      at: 617,
      text: readings(1).replace('roof,1,', 'roof,1,o'),
    },
    ...{ code: 'reading-not-a-number', status: 'refused', exit: 65 },
  },
  {
    ...{
      what: 'whose file is a picture',
      at: 618,
      text: Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10]),
    },
    ...{ code: 'encoding-unknown', status: 'refused', exit: 65 },
  },
  {
    ...{ what: 'of two vehicles', at: 812 },
    text: `vehicle,${readings(1).replace('\nroof', '\nA,roof').replace('\nroof', '\nB,roof')}`,
    ...{ code: 'usage-several-vehicles', status: 'refused', exit: 2 },
  },
  {
    ...{ what: 'whose job file is torn', at: 1000, said: { job_file: 'torn.json' } },
    beside: '{ "schema": "leastcut/job/1", "finish": ',
    ...{ code: 'json-syntax', status: 'refused', exit: 78 },
  },
];

function spoil({ at, text, beside }: Spoiling): void {
  if (text === null) rmSync(fileOf(at));
  else if (text !== undefined) writeFileSync(fileOf(at), text);
  if (beside !== undefined) writeFileSync(join(folder, 'torn.json'), beside);
}

describe('among a thousand jobs', async () => {
  const sound = await batch(listOf([]), '2');
  const soundLines = linesOf(sound.out);

  test('a list in order has a record for each', () => {
    expect(sound.code).toBe(0);
    expect(soundLines).toHaveLength(JOBS);
  });

  test.each([
    ['one that is spoiled has its record', spoilings.filter(({ at }) => at === 617)],
    ['five that are spoiled in five ways have theirs', spoilings],
  ])('%s in its place, and changes nothing of the others', async (_, spoiled) => {
    spoiled.forEach(spoil);
    const { code, out, err } = await batch(listOf(spoiled), '1');
    for (const { at } of spoiled) writeFileSync(fileOf(at), readings(at));
    const lines = linesOf(out);
    expect(code).toBe(3);
    expect(err).toContain(`${JOBS} jobs: ${JOBS - spoiled.length} done`);
    const isSound = (_line: string, i: number): boolean => spoiled.every(({ at }) => at !== i + 1);
    expect(lines.filter(isSound)).toEqual(soundLines.filter(isSound));
    for (const { at, status, exit, code: told } of spoiled) {
      const record: unknown = JSON.parse(lines[at - 1] ?? '');
      expect(record).toMatchObject({ job: nameOf(at), seq: at, status, exit, result: null });
      expect(JSON.stringify(record)).toContain(`"code":"${told}"`);
    }
  });
});
