import {
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot, runLeastcut, runShell } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

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
    const die = () => process.kill(process.pid, 'SIGKILL');
    const { open } = files;
    ${script}
    syncBuiltinESMExports();`;
  return { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(module)}` };
};
const halfWritten = `files.open = async (...how) => {
  const handle = await open(...how);
  handle.writeFile = async (text) => { await handle.write(text.slice(0, text.length / 2)); die(); };
  return handle;
};`;
const beforeRename = 'files.rename = die;';

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
    { moment: 'half of it is written', at: halfWritten },
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

test('the same file named twice is read once', async () => {
  const file = 'samples/sound-saloon/readings.csv';
  const [once, twice] = await Promise.all([
    runLeastcut(['survey', file]),
    runLeastcut(['survey', file, file]),
  ]);
  expect(twice.out).toBe(once.out);
});
