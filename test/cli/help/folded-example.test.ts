import { describe, expect, test } from 'vitest';
import { commands } from '../../../src/cli/commands.ts';
import { foldedExample } from '../../../src/cli/help/folded-example.ts';
import { rootHelp } from '../../../src/cli/help/help.ts';
import { commandHelp, shortHelp } from '../../../src/cli/options/arguments.ts';
import { askLeastcut } from '../ask-leastcut.ts';
import { runShell } from '../run-leastcut.ts';

const WIDTH = 80;
const loaded = await Promise.all(commands.map(({ load }) => load()));
const tooWide = (text: string): readonly string[] =>
  text.split('\n').filter((line) => [...line].length > WIDTH);

describe('help fits 80 columns', () => {
  test.each(loaded.map((command) => [command.name, command] as const))(
    'no line of %s --help and of its -h is wider',
    (_, command) => {
      expect(tooWide(commandHelp(command))).toEqual([]);
      expect(tooWide(shortHelp(command))).toEqual([]);
    },
  );

  test('nor is one of the first page, nor of what is printed', async () => {
    expect(tooWide(rootHelp(WIDTH))).toEqual([]);
    const { out } = await askLeastcut(['plan', '--help'], { env: { COLUMNS: `${WIDTH}` } });
    expect(out).toContain(' \\\n    ');
    expect(tooWide(out)).toEqual([]);
  });
});

test('an example that fits stays as it is', () => {
  expect(foldedExample('leastcut survey readings.csv', WIDTH)).toEqual([
    '  leastcut survey readings.csv',
  ]);
});

test('a wider one is folded between its words, and what stands in quotes stays together', () => {
  expect(foldedExample('leastcut survey r.csv --why "right quarter"', 36)).toEqual([
    '  leastcut survey r.csv --why \\',
    '    "right quarter"',
  ]);
});

test('a shell takes the lines of each example for the one line that it was', async () => {
  for (const example of loaded.flatMap((command) => command.examples)) {
    const words = async (line: string): Promise<string> => (await runShell(line)).out;
    const echoed = (line: string): string => line.replaceAll(/\bleastcut\b/g, 'echo');
    const folded = foldedExample(echoed(example), 40).join('\n');
    expect(await words(folded), example).toBe(await words(echoed(example)));
  }
});
