import { spawn } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ownResult } from '../../../src/base/own-files.ts';
import { carsCsv } from '../cars.ts';
import { program, projectRoot, runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

type JobRecord = { readonly job: string; readonly seq: number; readonly status: string };

const recordsOf = (text: string): readonly JobRecord[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as JobRecord);

function carsFile(count: number): string {
  const file = join(temporaryFolder(), 'cars.csv');
  writeFileSync(file, carsCsv(count));
  return file;
}

const survey = (list: string, ...words: readonly string[]): readonly string[] => [
  ...['batch', list, '--command', 'survey'],
  ...words,
];

describe.concurrent('a batch', () => {
  test('gives the same bytes by one worker and by three', async () => {
    const cars = carsFile(40);
    const [one, three] = await Promise.all([
      runLeastcut(survey(cars, '--workers', '1')),
      runLeastcut(survey(cars, '--workers', '3')),
    ]);
    expect(one.code).toBe(0);
    expect(recordsOf(one.out).map(({ seq }) => seq)).toEqual(
      Array.from({ length: 40 }, (_, i) => i + 1),
    );
    expect(three.out).toBe(one.out);
    expect(three.err).toBe(one.err);
  });

  test('says of each vehicle what its command says of it alone', async () => {
    const cars = carsFile(3);
    const batch = await runLeastcut(survey(cars, '--workers', '2'));
    const alone = await runLeastcut(['survey', cars, '--vehicle', 'FH 2', '--format', 'json']);
    const { result } = JSON.parse(batch.out.split('\n')[1] ?? '') as {
      result: { panels: unknown };
    };
    expect(result.panels).toEqual((JSON.parse(alone.out) as { panels: unknown }).panels);
  });

  test('has a record for the one spoiled job among two hundred, and exit 3', async () => {
    const folder = temporaryFolder();
    const cars = carsCsv(200).replace(/(FH 150,roof,3,)\d+/, '$1thick');
    writeFileSync(join(folder, 'cars.csv'), cars);
    const { code, out, err } = await runLeastcut(
      survey(join(folder, 'cars.csv'), '--workers', '2'),
    );
    const records = recordsOf(out);
    expect(code).toBe(3);
    expect(records).toHaveLength(200);
    expect(records.filter(({ status }) => status !== 'done')).toMatchObject([
      { job: 'FH 150', seq: 150, status: 'refused' },
    ]);
    expect(err).toContain('200 jobs: 199 done, 1 refused');
  });

  test('takes the list from standard input, its paths from the working directory', async () => {
    const stdin = 'job;readings\nsaloon;samples/sound-saloon/readings.csv\n';
    const { code, out } = await runLeastcut(survey('-'), { stdin });
    expect(code).toBe(0);
    expect(recordsOf(out)).toMatchObject([{ job: 'saloon', status: 'done' }]);
  });

  test('is the one that all share when no job is done, and 0 when all are', async () => {
    const gone = await runLeastcut(survey('-'), {
      stdin: 'job,readings\na,gone.csv\nb,lost.csv\n',
    });
    expect(gone.code).toBe(66);
    expect(recordsOf(gone.out).map(({ status }) => status)).toEqual(['failed', 'failed']);
  });

  test('says 1 of a job whose answer is no, also where the vehicles stand scattered', async () => {
    const rows = [1, 2, 3, 4, 5].flatMap((point) => [
      `sound,bonnet,${point},${118 + point}`,
      `worn,bonnet,${point},${58 + point}`,
    ]);
    const stdin = `vehicle,panel,point,reading_um\n${rows.join('\n')}\n`;
    const { code, out } = await runLeastcut(['batch', '-', '--command', 'plan'], { stdin });
    expect(code).toBe(0);
    expect(recordsOf(out)).toMatchObject([
      { job: 'sound', status: 'done', exit: 0 },
      { job: 'worn', status: 'done', exit: 1 },
    ]);
  });

  test('tells of each vehicle what is wrong with its own rows, also where they stand scattered', async () => {
    const rows = [1, 2, 3, 4, 5].flatMap((point) => [
      `A,bonnet,${point},${118 + point}`,
      `B,bonnet,${point},${point === 2 ? '-4' : 121 + point}`,
    ]);
    // A cell without a reading is told of the vehicle that its row names.
    const stdin = `vehicle,panel,point,reading_um\n${rows.join('\n')}\nA,roof,1,\n`;
    const { out } = await runLeastcut(survey('-'), { stdin });
    type Told = { readonly diagnostics: readonly { readonly at: { readonly line: number } }[] };
    const linesOf = ({ diagnostics }: Told) => diagnostics.map(({ at }) => at.line);
    const records = recordsOf(out) as unknown as readonly (Told & { readonly result: Told })[];
    expect(records.map(linesOf)).toEqual([[12], [5]]);
    expect(records.map(({ result }) => linesOf(result))).toEqual([[12], [5]]);
  });

  test('writes a row for each job beside the records', async () => {
    const folder = temporaryFolder();
    const [out, summary] = [join(folder, 'out.ndjson'), join(folder, 'summary.csv')];
    const run = await runLeastcut(survey(carsFile(5), '-o', out, '--summary', summary));
    expect(run.code).toBe(0);
    expect(recordsOf(readFileSync(out, 'utf8'))).toHaveLength(5);
    expect(readFileSync(summary, 'utf8').trimEnd().split('\n')).toHaveLength(6);
    expect(existsSync(`${out}.part`)).toBe(false);
  });

  test('never writes over one of the inputs that its list names, not even by force', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'a.csv'), carsCsv(1));
    writeFileSync(join(folder, 'jobs.csv'), 'job,readings\na,a.csv\n');
    const words = survey(join(folder, 'jobs.csv'), '-o', join(folder, 'a.csv'), '--force');
    const { code, err } = await runLeastcut(words);
    expect(code).toBe(73);
    expect(err).toContain('output-is-input');
    expect(readFileSync(join(folder, 'a.csv'), 'utf8')).toBe(carsCsv(1));
  });
});

/** Kills a batch as soon as its file has some bytes. */
async function killed(words: readonly string[], part: string): Promise<void> {
  const child = spawn(process.execPath, [program(), ...words], { stdio: 'ignore' });
  const ended = new Promise((resolve) => child.on('close', resolve));
  while (child.exitCode === null && (!existsSync(part) || statSync(part).size === 0)) {
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  child.kill('SIGKILL');
  await ended;
}

describe.concurrent('a batch that was cut off', () => {
  test('goes on where it was and ends in the same bytes', async () => {
    const cars = carsFile(120);
    const out = join(temporaryFolder(), 'out.ndjson');
    const words = survey(cars, '-o', out, '--workers', '2');
    const whole = await runLeastcut(survey(cars));
    await killed(words, `${out}.part`);
    expect(existsSync(out)).toBe(false);
    const again = await runLeastcut(words);
    expect(again.code).toBe(73);
    expect(again.err).toContain('a batch was cut off');
    const resumed = await runLeastcut([...words, '--resume']);
    expect(resumed.code).toBe(0);
    expect(resumed.err).toMatch(/120 jobs: 120 done, \d+ of them stood from before/);
    expect(readFileSync(out, 'utf8')).toBe(whole.out);
  });

  /** Three jobs, of which two are written already, and half of the third. */
  async function halfDone() {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'cars'));
    for (const name of ['a', 'b', 'c'])
      writeFileSync(join(folder, 'cars', `${name}.csv`), carsCsv(1));
    const out = join(folder, 'out.ndjson');
    const words = survey(join(folder, 'cars'), '-o', out);
    const { out: records } = await runLeastcut(survey(join(folder, 'cars')));
    const lines = records.split('\n');
    writeFileSync(`${out}.part`, `${lines[0]}\n${lines[1]}\n${lines[2]?.slice(0, 100)}`);
    return { folder, out, words, records };
  }

  test('drops the line that was torn', async () => {
    const { out, words, records } = await halfDone();
    const { err } = await runLeastcut([...words, '--resume']);
    expect(err).toContain('2 of them stood from before');
    expect(readFileSync(out, 'utf8')).toBe(records);
  });

  test('does a job again whose file has changed since, and those after it', async () => {
    const { folder, out, words } = await halfDone();
    appendFileSync(join(folder, 'cars', 'b.csv'), 'FH 1,bonnet,6,111\n');
    const { err } = await runLeastcut([...words, '--resume']);
    expect(err).toContain('1 of them stood from before');
    const [, second] = recordsOf(readFileSync(out, 'utf8'));
    expect(JSON.stringify(second)).toContain('"n_readings":6');
  });

  test('does all again when something else is asked, and says so', async () => {
    const { words } = await halfDone();
    const { err } = await runLeastcut([...words, '--resume', '--finish', 'single-stage-solid']);
    expect(err).toMatch(/is not as it was: done anew from there\nleastcut: 3 jobs: 3 done\n/);
  });

  test('begins a job again whose file was missing and is there now', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'jobs.csv'), 'job,readings\na,a.csv\nb,b.csv\n');
    writeFileSync(join(folder, 'b.csv'), carsCsv(1));
    const out = join(folder, 'out.ndjson');
    const words = survey(join(folder, 'jobs.csv'), '-o', out);
    const first = await runLeastcut(survey(join(folder, 'jobs.csv')));
    expect(first.code).toBe(3);
    writeFileSync(`${out}.part`, first.out);
    writeFileSync(join(folder, 'a.csv'), carsCsv(1));
    const { code } = await runLeastcut([...words, '--resume']);
    expect(code).toBe(0);
  });
});

describe.concurrent('a batch that came to its end', () => {
  /** Cars of which the second has no reading in it. */
  async function oneSpoiled() {
    const folder = temporaryFolder();
    const cars = join(folder, 'cars');
    mkdirSync(cars);
    for (const name of ['a', 'b', 'c']) writeFileSync(join(cars, `${name}.csv`), carsCsv(1));
    writeFileSync(join(cars, 'b.csv'), 'panel,point,reading\nbonnet,1,112\n');
    const out = join(folder, 'out.ndjson');
    const words = survey(cars, '-o', out, '--summary', join(cars, 'summary.csv'));
    const first = await runLeastcut(words);
    return { cars, out, words: [...words, '--resume', '--force'], first };
  }

  test('says how to do again what was refused, and does that alone', async () => {
    const { cars, out, words, first } = await oneSpoiled();
    expect(first.code).toBe(3);
    expect(first.err).toContain('--resume --force does again only what has changed');
    writeFileSync(join(cars, 'b.csv'), carsCsv(1));
    const again = await runLeastcut(words);
    expect(again.code).toBe(0);
    expect(again.err).toContain('3 jobs: 3 done, 2 of them stood from before');
    expect(readFileSync(out, 'utf8')).toBe((await runLeastcut(survey(cars))).out);
    expect(readFileSync(join(cars, 'summary.csv'), 'utf8').trimEnd().split('\n')).toHaveLength(4);
  });

  test('does not do again the jobs of a folder that only stand in another place, as a file was split', async () => {
    const { cars, out, words } = await oneSpoiled();
    rmSync(join(cars, 'b.csv'));
    for (const name of ['b1', 'b2']) writeFileSync(join(cars, `${name}.csv`), carsCsv(1));
    const again = await runLeastcut(words);
    expect(again.err).toContain('4 jobs: 4 done, 2 of them stood from before');
    expect(readFileSync(out, 'utf8')).toBe((await runLeastcut(survey(cars))).out);
    expect(readFileSync(join(cars, 'summary.csv'), 'utf8')).toMatch(/^c,4,survey,done/m);
  });

  test('does again the jobs of a list that stand in another line, as a record may name it', async () => {
    const { cars } = await oneSpoiled();
    const list = join(cars, 'list.txt');
    const words = survey(list, '-o', join(cars, 'listed.ndjson'));
    writeFileSync(list, 'job,readings\na,a.csv\nc,c.csv\n');
    await runLeastcut(words);
    writeFileSync(list, 'job,readings\na,a.csv\nb,b.csv\nc,c.csv\n');
    const again = await runLeastcut([...words, '--resume', '--force']);
    expect(again.err).toContain('3 jobs: 2 done, 1 refused, 1 of them stood from before');
  });

  test('is not gone on with unasked, and told how only what has changed is done again', async () => {
    const { words } = await oneSpoiled();
    const { code, err } = await runLeastcut(words.filter((word) => word !== '--force'));
    expect(code).not.toBe(0);
    expect(err).toContain('hint: --resume --force does again only what has changed');
    expect(err).not.toContain('--force replaces it');
  });

  test('does nothing again where nothing has changed, and still says what is refused', async () => {
    const { out, words, first } = await oneSpoiled();
    const before = readFileSync(out, 'utf8');
    const { code, err } = await runLeastcut(words);
    expect(code).toBe(3);
    expect(err).toContain('3 jobs: 2 done, 1 refused, 3 of them stood from before');
    const why = (text: string) => /job "b" refused[\s\S]*?hint: .*/.exec(text)?.[0];
    expect(why(err)).toContain('error[unit-missing]');
    expect(why(err)).toBe(why(first.err));
    expect(readFileSync(out, 'utf8')).toBe(before);
  });

  test('does all again under other settings', async () => {
    const { words } = await oneSpoiled();
    const { err } = await runLeastcut([...words, '--finish', 'lacquer']);
    expect(err).toContain('3 jobs: 2 done, 1 refused\n');
  });
});

describe.concurrent('results among the jobs of a folder', () => {
  test('are no jobs, and each is named', async () => {
    const folder = temporaryFolder();
    const car = join(folder, 'a.csv');
    writeFileSync(car, carsCsv(1));
    const results = ['survey', 'plan', 'quote'].map((command) => ({
      name: `${command}.csv`,
      words: [command, car, '--format', 'csv'],
    }));
    const shop = join(projectRoot, 'samples/shop.json');
    const batch = ['batch', folder, '--shop', shop];
    for (const { name, words } of results) {
      writeFileSync(join(folder, name), (await runLeastcut(words)).out);
    }
    const reorder = join(folder, 'to-buy.txt');
    const written = await runLeastcut([...batch, '--reorder', reorder, '--format', 'csv']);
    writeFileSync(join(folder, 'summary.csv'), written.out);
    const { code, out, err } = await runLeastcut(survey(folder));
    expect(code).toBe(0);
    expect(recordsOf(out).map(({ job }) => job)).toEqual(['a']);
    expect(err.match(/batch-result/g)).toHaveLength(1);
    expect(err).toContain('5 files are no jobs but results of ours');
    for (const name of [...results.map((one) => one.name), 'to-buy.txt', 'summary.csv']) {
      expect(err.replaceAll(/\s+/g, ' ')).toMatch(new RegExp(`${name} \\((?:a|the) `));
    }
  });

  test('are what every table of a command is known by, and readings are none', async () => {
    const sample = (name: string): string => join(projectRoot, 'samples', name);
    const sound = sample('sound-saloon/readings.csv');
    const after = [sample('sound-saloon/after.csv'), '--marked'];
    const classFiles = ['reference', 'bram'].map((name) => sample(`class/${name}.csv`));
    const commands = [
      ['compare', sound, ...after],
      ['grade', ...classFiles],
      ['gauge', sample('gauge-checks.csv')],
    ];
    for (const words of commands) {
      const { out } = await runLeastcut([...words, '--format', 'csv', '-q']);
      expect(ownResult(out), words[0]).toBeDefined();
    }
    const { out: record } = await runLeastcut(['survey', sound, '--format', 'ndjson', '-q']);
    expect(ownResult(record)).toBe('a record');
    const { out: readings } = await runLeastcut(['read', sound, '--format', 'csv', '-q']);
    expect(ownResult(readings)).toBeUndefined();
    expect(ownResult(readFileSync(sound, 'utf8'))).toBeUndefined();
  });
});

describe.concurrent('what is wrong with what all jobs share', () => {
  const refused = [
    ['--columns', 'foo=bar', 2],
    ['--template', 'nosuch', 2],
    ['--shop', 'missing.json', 66],
    ['--gauge', join(projectRoot, 'samples/shop.json'), 78],
  ] as const;

  test.each(refused)('is said once, before any job: %s %s', async (flag, value, exit) => {
    const folder = temporaryFolder();
    for (const name of ['a', 'b']) writeFileSync(join(folder, `${name}.csv`), carsCsv(1));
    const { code, out, err } = await runLeastcut(survey(folder, flag, value));
    expect([code, out]).toEqual([exit, '']);
    expect(err.match(/error\[/g)).toHaveLength(1);
    expect(err).not.toContain('job "a"');
  });
});
