/** What is said where there is nothing to do: of a file without text, and of a list without a job. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../ask-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
const batch = async (content: string | Uint8Array, name = 'jobs.csv') => {
  writeFileSync(join(folder, name), content);
  const words = ['batch', name, '--command', 'survey'];
  const { code, out, err } = await askLeastcut(words, { cwd: folder });
  return { code, out, said: err.split('\n')[0], hint: err.split('\n')[1] };
};

test.each([
  ['no byte', '', 'is empty'],
  ['blanks and line ends', ' \r\n\t\n', 'holds no text, only blanks'],
  ['bytes of nought', new Uint8Array(300), 'holds no text, only bytes of nought'],
  ['a byte order mark', '\uFEFF', 'holds no text, only the mark of an encoding'],
])('a file with %s is told as a file without text, and the way out', async (_, content, told) => {
  const { code, out, said, hint } = await batch(content);
  expect([code, out]).toEqual([65, '']);
  expect(said).toBe(`jobs.csv: error[file-empty]: "jobs.csv" ${told}`);
  expect(hint).toContain('job,readings');
});

test('blanks that go on beyond what is looked at first are no file without text', async () => {
  const { said } = await batch(`${' \n'.repeat(40_000)}`);
  expect(said).not.toContain('batch-empty');
  const read = await batch(
    `${'\n'.repeat(70_000)}panel,point,reading_um\nroof,1,112\nroof,2,113\n`,
  );
  expect([read.code, read.said]).toEqual([0, 'leastcut: 1 job: 1 done']);
});

test('a list that names columns and no job is told so, and a list as JSON without an entry', async () => {
  expect((await batch('job,readings\n,\n')).said).toBe(
    'jobs.csv: error[batch-empty]: "jobs.csv" names columns, and no job in a row below them',
  );
  const json = await batch('[]', 'jobs.json');
  expect(json.said).toBe('jobs.json: error[batch-empty]: "jobs.json" is a list without an entry');
  expect(json.hint).toContain('{ "job": "coupe", "readings": "coupe.csv" }');
});
