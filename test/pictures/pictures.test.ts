/**
 * The pictures of README.md, in pictures/: each shows what its command prints now. `npm run pictures` draws
 * them anew.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { projectRoot } from '../cli/run-leastcut.ts';
import { shellWords } from '../cli/shell-words.ts';
import { drawingOf } from './page-drawing.ts';
import { runsOf, screenSvg } from './screen-svg.ts';

const COLUMNS = 80;
const folder = join(projectRoot, 'pictures');

const coupe = 'samples/older-coupe';
const saloon = 'samples/sound-saloon';
type Picture = {
  readonly name: string;
  readonly command: string;
  /** What is taken from its page; the terminal's screen where nothing is. */
  readonly drawing?: string;
};
const quote = `leastcut quote ${saloon}/readings.csv --shop samples/shop.json`;
const pictures: readonly Picture[] = [
  { name: 'survey', command: `leastcut survey ${coupe}/readings.csv --job ${coupe}/job.json` },
  { name: 'plan', command: `leastcut plan ${saloon}/readings.csv --defects ${saloon}/defects.csv` },
  { name: 'spot', command: `leastcut spot ${coupe}/spots.csv --job ${coupe}/job.json` },
  {
    name: 'compare',
    command: `leastcut compare ${saloon}/readings.csv ${saloon}/after.csv --marked`,
  },
  { name: 'quote', command: quote },
  { name: 'quote-curve', command: quote, drawing: 'curve' },
  {
    name: 'grade',
    command:
      'leastcut grade samples/class/reference.csv samples/class/anneke.csv samples/class/bram.csv',
  },
];

async function draw({ command, drawing }: Picture): Promise<string> {
  const [, ...words] = shellWords(command);
  const form = drawing === undefined ? ['--color', 'always'] : ['--format', 'html'];
  const { out, code } = await askLeastcut([...words, ...form, '--quiet'], {
    env: { COLUMNS: String(COLUMNS) },
  });
  expect(code).toBe(0);
  return drawing === undefined
    ? screenSvg({ command, output: out, columns: COLUMNS })
    : drawingOf(out, drawing);
}

describe.concurrent('a picture of the pages that explain', () => {
  test.each(pictures)('$name shows what its command prints now', async (picture) => {
    const drawn = await draw(picture);
    const file = join(folder, `${picture.name}.svg`);
    if (process.env['RECORD'] === '1') {
      mkdirSync(folder, { recursive: true });
      writeFileSync(file, drawn);
    }
    expect(drawn).toBe(readFileSync(file, 'utf8'));
  });
});

test('a picture is in the folder only if a command draws it', () => {
  expect(readdirSync(folder).sort()).toEqual(pictures.map(({ name }) => `${name}.svg`).sort());
});

describe('a screen as a picture', () => {
  test('has every sign at its column, wide ones taking two', () => {
    expect(runsOf('\u001b[1mroof\u001b[22m   車体 ±  \u001b[94mclear\u001b[39m')).toEqual([
      { column: 0, text: 'roof', look: 'strong' },
      { column: 7, text: '車体 ±', look: 'plain' },
      { column: 15, text: 'clear', look: 'binding' },
    ]);
  });

  test('breaks a long command as a shell lets one', () => {
    const svg = screenSvg({ command: 'leastcut survey a.csv', output: '', columns: 20 });
    expect(svg.match(/(?<=>)[^<]+(?=<\/text>)/g)).toEqual(['$ leastcut survey \\', 'a.csv']);
  });

  test('says nothing that a label wrote as markup', () => {
    const svg = screenSvg({ command: 'x', output: '</text><script>&\n', columns: 20 });
    expect(svg).toContain('>&lt;/text&gt;&lt;script&gt;&amp;</text>');
  });
});
