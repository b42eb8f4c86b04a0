/** Where Node's streams are spared: they take longer to load than a page takes to write. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runShell } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

/** Whether a run loads them, where it writes into something; `first` is run before it. */
async function loadsStreams(into: string, first = ''): Promise<boolean> {
  const folder = temporaryFolder();
  const [hook, told] = [join(folder, 'hook.cjs'), join(folder, 'told')];
  const loaded = "process.moduleLoadList.includes('NativeModule stream')";
  const tell = `require('node:fs').writeFileSync(${JSON.stringify(told)}, String(${loaded}))`;
  writeFileSync(hook, `${first}; process.on('exit', () => ${tell});`);
  const survey = `"$NODE" --require ${hook} "$PROGRAM" survey samples/sound-saloon/readings.csv`;
  const { code, err } = await runShell(`${survey} ${into.replace('{folder}', folder)}`);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return readFileSync(told, 'utf8') === 'true';
}

test.each(['> {folder}/page.txt', '| cat', '> >(cat)'])(
  'a page that goes %s is written without a stream',
  async (into) => expect(await loadsStreams(into)).toBe(false),
);

test.runIf(existsSync('/dev/null'))('and so is one that is thrown away', async () => {
  expect(await loadsStreams('> /dev/null')).toBe(false);
});

test('a stream that somebody asks for is seen to be loaded', async () => {
  expect(await loadsStreams('| cat', 'void process.stdout')).toBe(true);
});
