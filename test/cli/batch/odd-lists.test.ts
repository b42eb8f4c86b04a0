/** Lists as they come out of spreadsheets and from other systems, with jobs of every fate. */
import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { runLeastcut } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const folder = temporaryFolder();
mkdirSync(join(folder, 'my cars'));
copyFileSync('samples/sound-saloon/readings.csv', join(folder, 'my cars', 'a one.csv'));
copyFileSync('samples/older-coupe/readings.csv', join(folder, 'b.csv'));
writeFileSync(join(folder, 'bad.csv'), 'panel,reading_um\nbonnet,thick\n');
const rows = [
  'job,readings',
  'blank,my cars/a one.csv',
  'slash,my cars\\a one.csv',
  'bad,bad.csv',
  'folder,my cars',
  'b,b.csv',
  'again,./b.csv',
  'all,*.csv',
];
writeFileSync(join(folder, 'jobs.csv'), `\uFEFF${rows.join('\r\n')}\r\n\r\n`);
const batch = (...more: readonly string[]) =>
  runLeastcut(['batch', 'jobs.csv', '--command', 'survey', ...more], { cwd: folder });

describe('a list with a byte order mark, blanks in its paths and line ends of Windows', () => {
  test('has an end for each job, and the same bytes by one worker and by two', async () => {
    const [one, two] = await Promise.all([batch('--workers', '1'), batch('--workers', '2')]);
    expect(two).toEqual(one);
    const ends = one.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { readonly job: string; readonly status: string })
      .map(({ job, status }) => `${job} ${status}`);
    expect(one.code).toBe(3);
    expect(ends).toEqual([
      'blank done',
      'slash failed',
      'bad refused',
      'folder failed',
      'b done',
      'again done',
      'all failed',
    ]);
  });

  test('is told line by line what is wrong and the way out', async () => {
    const { err } = await batch('--workers', '1');
    expect(err).toContain('jobs.csv:3:7: error[file-missing]');
    expect(err).toContain('hint: folders are parted by / here: "my cars/a one.csv"');
    expect(err).toContain(
      'jobs.csv:5:8: error[file-unreadable]: "my cars" cannot be read: it is a folder',
    );
    expect(err).toContain('jobs.csv:8:5: error[file-missing]: there is no file "*.csv"');
    expect(err).toContain('hint: a list names each file itself');
    expect(err).toContain('jobs "b" and "again" have the same readings: is that one job twice?');
  });
});
