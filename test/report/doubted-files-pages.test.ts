/** Files taken as one vehicle that are perhaps of two: every page that plans says so before it answers. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';

const CAR = 'samples/sound-saloon/readings.csv';

const page = async (...words: readonly string[]): Promise<string> =>
  (await askLeastcut(words)).out.replaceAll('\u00a0', ' ').replace(/\n {2,}/g, ' ');

const folder = temporaryFolder();
let files = 0;

/** The sample as another file, every reading moved by what is said. */
function moved(by: (line: number) => number): string {
  const [header = '', ...rows] = readFileSync(CAR, 'utf8').trimEnd().split(/\r?\n/u);
  const column = header.split(',').indexOf('reading_um');
  if (column < 0) throw new Error('the sample has no column reading_um');
  const text = rows.map((row, i) =>
    row
      .split(',')
      .map((cell, at) => (at === column ? `${Number(cell) + by(i)}` : cell))
      .join(','),
  );
  const path = join(folder, `${++files}.csv`);
  writeFileSync(path, [header, ...text, ''].join('\n'));
  return path;
}

const WARNING = 'Before any work: ';
const ENDING = 'be sure that the files are of one car on one visit; if not, survey each alone';
const COMMANDS: readonly { readonly words: readonly string[] }[] = [
  { words: ['survey'] },
  { words: ['survey', '--why', 'roof'] },
  { words: ['plan'] },
  { words: ['plan', '--card'] },
  { words: ['plan', '--why', 'roof'] },
  { words: ['quote'] },
];

test.each(COMMANDS)('points too far apart lead the page of $words', async ({ words }) => {
  const other = moved((line) => (line % 10 === 3 ? 15 : 0));
  const said = await page(...words, CAR, other, '--template', 'saloon');
  const at = said.indexOf(WARNING);
  expect(said.slice(at)).toMatch(/^Before any work: .* too far apart for one place at \d of the/u);
  expect(said).toContain(ENDING);
  for (const answer of ['May go: ', 'Steps', 'Stop', 'Work: ']) {
    const found = said.indexOf(answer);
    expect(found === -1 || found > at, answer).toBe(true);
  }
  expect(said.split('too far apart')).toHaveLength(2);
});

test('a file that reads higher all over leads it, and both grounds stand in one line', async () => {
  const said = await page(
    'plan',
    CAR,
    moved((line) => (line === 3 ? 20 : 5)),
  );
  expect(said.split(WARNING)).toHaveLength(2);
  expect(said).toMatch(/too far apart .* reads 5\.\d ± \d\.\d µm more than .* be sure/u);
});

test('files that read alike are named on the card and lead nothing', async () => {
  const alike = moved((line) => (line % 2 === 0 ? 0.5 : -0.5));
  for (const command of [['survey'], ['plan'], ['plan', '--card']]) {
    expect(await page(...command, CAR, alike)).not.toContain(WARNING);
  }
  expect(await page('plan', '--card', CAR, alike)).toMatch(
    /^Readings: "samples\/sound-saloon\/readings\.csv" and ".*" are of one v/mu,
  );
  expect(await page('plan', '--card', CAR)).not.toContain('Readings: ');
});

test('the owner is told of it before any choice, in words without the names of files', async () => {
  const other = moved((line) => (line % 10 === 3 ? 15 : 0));
  const words = ['quote', '--shop', 'samples/shop.json', '--format', 'html'];
  const said = await page(...words, CAR, other, '--template', 'saloon');
  const doubt = 'The readings that this page rests on may be of two cars, or of two days.';
  expect(said).toContain(doubt);
  expect(said.indexOf(doubt)).toBeLessThan(said.indexOf('What there is to choose from'));
  expect(said).not.toContain('too far apart');
  const alike = moved((line) => (line % 2 === 0 ? 0.5 : -0.5));
  expect(await page(...words, CAR, alike, '--template', 'saloon')).not.toContain('two cars');
});
