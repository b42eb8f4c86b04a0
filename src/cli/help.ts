import { commands } from './commands.ts';

/** The first page of help. */
export const rootHelp =
  (): string => `leastcut: paint-thickness readings into knowledge and a correction plan

Usage: leastcut <command> [options] <files ...| ->

Commands:
${commands.map(({ name, summary }) => `  ${name.padEnd(10)}${summary}`).join('\n')}

  leastcut <command> --help   options and examples of a command
  leastcut --version          the version

Exit codes: 0 done · 1 done, and the answer is no · 2 usage · 65 data refused
66 input missing · 70 our bug · 73 output not written · 78 settings invalid
`;
