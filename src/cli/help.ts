import { commands } from './commands.ts';

/** The first page of help. */
export const rootHelp =
  (): string => `leastcut: paint-thickness readings into knowledge and a correction plan

Usage: leastcut <command> [options] <file …> | -

Commands:
${commands.map(({ name, summary }) => `  ${name.padEnd(11)}${summary}`).join('\n')}

  leastcut <command> --help   options and examples of a command
  leastcut explain <word>     what a word, a number or a message means
  leastcut --version          the version

Start with: leastcut survey readings.csv

Exit codes: 0 done · 1 done, and the answer is no · 2 usage
  3 some jobs not done · 65 data refused · 66 input missing · 70 our bug
  73 output not written · 78 settings invalid
`;
