import { wrap, wrapSetIn } from '../../render/wrap.ts';
import { commands } from '../commands.ts';

/** The first page of help. */
export const rootHelp = (width: number): string =>
  `${[
    ...wrap('leastcut: paint-thickness readings into knowledge and a correction plan', width, '  '),
    '',
    'Usage: leastcut <command> [options] <file …> | -',
    '',
    'Commands:',
    ...commands.flatMap(({ name, summary }) => item(name, summary, width)),
    '',
    ...item('leastcut <command> --help', 'options and examples of a command', width),
    ...item('leastcut explain <word>', 'what a word, a number or a message means', width),
    ...item('leastcut --version', 'the version', width),
    '',
    'Start with: leastcut survey readings.csv',
    ...wrap('Your own export first: leastcut read readings.csv', width, '  '),
    '',
    ...wrap(`Exit codes: ${EXIT_CODES.map(held).join(' ')}`, width, '  '),
  ]
    .join('\n')
    .replaceAll(HELD, ' ')}\n`;

const EXIT_CODES = [
  '0 done ·',
  '1 done, and the answer is no ·',
  '2 usage ·',
  '3 some jobs not done ·',
  '65 data refused ·',
  '66 input missing ·',
  '70 our bug ·',
  '73 output not written ·',
  '78 settings invalid',
];

/** A code stays with its words. */
const HELD = '\u00a0';
const held = (text: string): string => text.replaceAll(' ', HELD);

/** A word and what it is for, the second line under the first. */
const item = (word: string, text: string, width: number): readonly string[] => {
  const column = word.startsWith('leastcut') ? 30 : 13;
  return wrapSetIn(`  ${word}`.padEnd(column) + text, width, ' '.repeat(column));
};
