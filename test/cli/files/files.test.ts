import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot, runLeastcut, runShell } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const saloon = readFileSync(join(projectRoot, 'samples/sound-saloon/readings.csv'), 'utf8');

function inFolder(): { readonly folder: string; readonly input: string; readonly out: string } {
  const folder = temporaryFolder();
  const input = join(folder, 'readings.csv');
  writeFileSync(input, saloon);
  return { folder, input, out: join(folder, 'survey.txt') };
}

/** Runs a module before the program, with the file functions at hand for it to replace. */
const preload = (script: string): Readonly<Record<string, string>> => {
  const module = `import files from 'node:fs/promises';
    import { syncBuiltinESMExports } from 'node:module';
    const die = (signal) => process.kill(process.pid, signal);
    const end = () => new Promise((never) => setInterval(never, 60_000));
    const { open } = files;
    ${script}
    syncBuiltinESMExports();`;
  return { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(module)}` };
};
const halfWritten = (signal: NodeJS.Signals): string => `files.open = async (...how) => {
  const handle = await open(...how);
  handle.writeFile = async (text) => {
    await handle.write(text.slice(0, text.length / 2));
    die('${signal}');
    await end();
  };
  return handle;
};`;
const beforeRename = `files.rename = () => die('SIGKILL');`;

describe.concurrent('--out', () => {
  test('writes what standard output would hold, and nothing there', async () => {
    const { input, out } = inFolder();
    const direct = await runLeastcut(['survey', input]);
    const run = await runLeastcut(['survey', input, '-o', out]);
    expect(run).toEqual({ code: 0, out: '', err: '' });
    expect(readFileSync(out, 'utf8')).toBe(direct.out);
  });

  test('leaves a file that exists, unless --force says otherwise', async () => {
    const { input, out, folder } = inFolder();
    writeFileSync(out, 'yesterday');
    expect((await runLeastcut(['survey', input, '-o', out])).code).toBe(73);
    expect(readFileSync(out, 'utf8')).toBe('yesterday');
    expect((await runLeastcut(['survey', input, '-o', out, '--force'])).code).toBe(0);
    expect(readFileSync(out, 'utf8')).toContain('Survey');
    expect(readdirSync(folder).sort()).toEqual(['readings.csv', 'survey.txt']);
  });

  test.each([
    ['a hard link', linkSync],
    ['a symbolic link', symlinkSync],
  ])('never writes over an input through %s, not even with --force', async (_, link) => {
    const { folder, input } = inFolder();
    const other = join(folder, 'same.csv');
    link(input, other);
    const { code, err } = await runLeastcut(['survey', input, '--out', other, '--force']);
    expect(code).toBe(73);
    expect(err).toContain('error[output-is-input]');
    expect(readFileSync(input, 'utf8')).toBe(saloon);
  });

  test('never writes over the file behind standard input', async () => {
    const { input } = inFolder();
    const { code, err } = await runShell(
      `"$NODE" "$PROGRAM" survey - --out ${input} --force < ${input}`,
    );
    expect(code).toBe(73);
    expect(err).toContain('error[output-is-input]');
    expect(readFileSync(input, 'utf8')).toBe(saloon);
  });

  test.each(['job', 'shop', 'defects', 'spots', 'history'])(
    'takes the --%s file for an input too',
    async (option) => {
      const { folder, input } = inFolder();
      const settings = join(folder, 'settings');
      writeFileSync(settings, 'kept');
      const words = ['plan', input, `--${option}`, settings, '--out', settings, '--force'];
      expect((await runLeastcut(words)).err).toContain('error[output-is-input]');
      expect(readFileSync(settings, 'utf8')).toBe('kept');
    },
  );

  test('is no folder', async () => {
    const { folder, input } = inFolder();
    mkdirSync(join(folder, 'reports'));
    const words = ['survey', input, '--out', join(folder, 'reports'), '--force'];
    expect(await runLeastcut(words)).toMatchObject({ code: 73, out: '' });
  });

  test('is not made where the data is refused', async () => {
    const { folder } = inFolder();
    const out = join(folder, 'new.txt');
    const stdin = 'panel,point,reading_um\nbonnet,1,x\n';
    expect((await runLeastcut(['survey', '-', '-o', out], { stdin })).code).toBe(65);
    expect(existsSync(out)).toBe(false);
  });

  test.runIf(existsSync('/dev/stdout'))('may be a device, which is written directly', async () => {
    const { input } = inFolder();
    const direct = await runLeastcut(['survey', input]);
    const { out } = await runShell(`"$NODE" "$PROGRAM" survey ${input} -o /dev/stdout | cat`);
    expect(out).toBe(direct.out);
  });

  test.each([
    { moment: 'half of it is written', at: halfWritten('SIGKILL') },
    { moment: 'all is written and nothing renamed', at: beforeRename },
  ])('leaves the old file whole where the program is killed when $moment', async ({ at }) => {
    const { folder, input, out } = inFolder();
    writeFileSync(out, 'yesterday');
    const words = ['survey', input, '--out', out, '--force'];
    const { code } = await runLeastcut(words, { env: preload(at) });
    expect(code).toBeNull();
    expect(readFileSync(out, 'utf8')).toBe('yesterday');
    expect(readdirSync(folder)).toHaveLength(3);
    expect((await runLeastcut(words)).code).toBe(0);
    expect(readFileSync(out, 'utf8')).toContain('Survey');
  });
});

describe.concurrent('--out, by whatever name,', () => {
  test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
    'leaves the old file whole and nothing beside it where %s ends the run half way',
    async (signal) => {
      const { folder, input, out } = inFolder();
      writeFileSync(out, 'yesterday');
      const words = ['survey', input, '--out', out, '--force'];
      const run = await runLeastcut(words, { env: preload(halfWritten(signal)) });
      expect(run).toEqual({ code: null, out: '', err: '' });
      expect(readFileSync(out, 'utf8')).toBe('yesterday');
      expect(readdirSync(folder).sort()).toEqual(['readings.csv', 'survey.txt']);
    },
  );

  test('may be a symbolic link, which stays and leads to the new file', async () => {
    const { folder, input, out } = inFolder();
    writeFileSync(join(folder, 'latest.txt'), 'yesterday');
    symlinkSync('latest.txt', out);
    expect((await runLeastcut(['survey', input, '-o', out])).code).toBe(73);
    expect((await runLeastcut(['survey', input, '-o', out, '--force'])).code).toBe(0);
    expect(lstatSync(out).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, 'latest.txt'), 'utf8')).toContain('Survey');
    const batch = ['batch', input, '--command', 'survey', '-o', out, '--force'];
    expect((await runLeastcut(batch)).code).toBe(0);
    expect(lstatSync(out).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(folder, 'latest.txt'), 'utf8')).toContain('leastcut/batch/1');
    expect(readdirSync(folder).sort()).toEqual(['latest.txt', 'readings.csv', 'survey.txt']);
  });

  test('is no link that leads to no file', async () => {
    const { folder, input, out } = inFolder();
    symlinkSync('nowhere.txt', out);
    const { code, err } = await runLeastcut(['survey', input, '-o', out, '--force']);
    expect(code).toBe(73);
    expect(err).toContain('is a link that leads to no file');
    expect(readdirSync(folder).sort()).toEqual(['readings.csv', 'survey.txt']);
  });

  test('may be as long as a name can be', async () => {
    const { folder, input } = inFolder();
    const out = join(folder, `${'a'.repeat(251)}.txt`);
    expect((await runLeastcut(['survey', input, '-o', out])).code).toBe(0);
    expect(readFileSync(out, 'utf8')).toContain('Survey');
  });

  test.runIf(process.platform !== 'win32')('keeps who may read and write it', async () => {
    const { input, out } = inFolder();
    writeFileSync(out, 'yesterday');
    chmodSync(out, 0o662);
    expect((await runLeastcut(['survey', input, '-o', out, '--force'])).code).toBe(0);
    expect(statSync(out).mode & 0o777).toBe(0o662);
  });

  test('is no settings file that the run found by itself, nor a file that settings name', async () => {
    const { folder, input } = inFolder();
    const shop = '{"schema": "leastcut/shop/1", "gauge": "gauge.json"}';
    const gauge = readFileSync(
      join(projectRoot, 'test/cases/survey-with-gauge/gauge.json'),
      'utf8',
    );
    writeFileSync(join(folder, 'leastcut.json'), shop);
    writeFileSync(join(folder, 'gauge.json'), gauge);
    for (const out of ['leastcut.json', 'gauge.json']) {
      const words = ['survey', input, '-o', out, '--force', '--format', 'json'];
      const run = await runLeastcut(words, { cwd: folder });
      expect(run).toMatchObject({ code: 73, out: '' });
      expect(run.err).toContain('error[output-is-input]');
    }
    expect(readFileSync(join(folder, 'leastcut.json'), 'utf8')).toBe(shop);
    expect(readFileSync(join(folder, 'gauge.json'), 'utf8')).toBe(gauge);
  });

  test.runIf(existsSync('/dev/stdin'))('is no file that is read as /dev/stdin', async () => {
    const { input } = inFolder();
    const { code, err } = await runShell(
      `"$NODE" "$PROGRAM" survey /dev/stdin --out ${input} --force < ${input}`,
    );
    expect({ code, err }).toMatchObject({ code: 73, err: expect.stringContaining('is-input') });
    expect(readFileSync(input, 'utf8')).toBe(saloon);
  });

  test.runIf(existsSync('/dev/full'))(
    'says that a device is full, and leaves it a device',
    async () => {
      const { input } = inFolder();
      for (const words of [
        ['survey', input],
        ['batch', input, '--command', 'survey', '-q'],
      ]) {
        const { code, out, err } = await runLeastcut([...words, '-o', '/dev/full']);
        expect({ code, out }).toEqual({ code: 73, out: '' });
        expect(err).toContain('"/dev/full" cannot be written: the disk is full');
      }
      expect(statSync('/dev/full').isCharacterDevice()).toBe(true);
    },
  );

  test.runIf(existsSync('/sys/kernel'))(
    'says that a folder takes no files, and which',
    async () => {
      const { input } = inFolder();
      const { code, out, err } = await runLeastcut(['survey', input, '-o', '/sys/kernel/a.txt']);
      expect({ code, out }).toEqual({ code: 73, out: '' });
      expect(err).toMatch(/"\/sys\/kernel\/a\.txt" cannot be written: [a-z]{2,}(?: [a-z]+)+\n/);
    },
  );

  test.runIf(existsSync('/dev/stdout'))(
    'may be a pipe whose reader goes early, which is a quiet end',
    async () => {
      const { input } = inFolder();
      const survey = `"$NODE" "$PROGRAM" survey ${input} --format html -o /dev/stdout | head -c 9`;
      expect(await runShell(survey)).toEqual({ code: 0, out: '<!doctype', err: '' });
    },
  );
});

test('files that a command makes are all there or none, also where the disk is full', async () => {
  const { folder } = inFolder();
  const { code, err } = await runShell(
    `cd ${folder} && ulimit -f 0 && "$NODE" "$PROGRAM" init shop`,
  );
  expect(code).toBe(73);
  expect(err).toContain('nothing can be written in "shop": the disk takes no file of that size');
  expect(readdirSync(join(folder, 'shop'))).toEqual([]);
});

test('the same file named twice is read once', async () => {
  const file = 'samples/sound-saloon/readings.csv';
  const [once, twice] = await Promise.all([
    runLeastcut(['survey', file]),
    runLeastcut(['survey', file, file]),
  ]);
  expect(twice.out).toBe(once.out);
});
