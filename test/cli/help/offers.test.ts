import { describe, expect, test } from 'vitest';
import type { Command } from '../../../src/cli/command.ts';
import { commands } from '../../../src/cli/commands.ts';
import { completionScript, shells } from '../../../src/cli/completion/shells.ts';
import { rootHelp } from '../../../src/cli/help/help.ts';
import { manPage } from '../../../src/cli/help/man-page.ts';
import { offersOf } from '../../../src/cli/help/offers.ts';
import { commandHelp, parseArguments } from '../../../src/cli/options/arguments.ts';
import { optionSpecs } from '../../../src/cli/options.ts';
import { version } from '../../../src/cli/version.ts';

const loaded = await Promise.all(commands.map(({ load }) => load()));
const offered = loaded.map(offersOf);
const names = commands.map(({ name }) => name);
const page = manPage(offered, version);

const sorted = (words: Iterable<string>): readonly string[] => [...new Set(words)].sort();
const all = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, found = '']) => found);
const flagsIn = (text: string): readonly string[] =>
  sorted(text.match(/(?<![\w-])--?[a-z][\w-]*/g) ?? []);

/** Which of all the flags there are the parser of a command takes. */
function flagsParsed(command: Command): readonly string[] {
  const every = sorted([
    ...Object.values(optionSpecs).flatMap(({ flags }) => flagsIn(flags)),
    '-h',
    '--help',
  ]);
  return every.filter((flag) => {
    const { diagnostics } = parseArguments({ ...command, asksAboutOptions: false }, [
      flag,
      '1',
      'x',
    ]);
    return diagnostics.every(({ code }) => code !== 'usage-unknown-option');
  });
}

/** The flags that stand at the beginning of a line of the help. */
const flagsOfHelp = (command: Command): readonly string[] =>
  sorted(all(commandHelp(command), /^ {2}(-.*?)(?: {2}|$)/gm).flatMap(flagsIn));

const man = (text: string): string => text.replaceAll('\\-', '-').replaceAll(/\\f[BIR]/g, '');
/** The tags of a part of the manual, from its heading to the next. */
function flagsOfManual(heading: string): readonly string[] {
  const [, part = ''] = man(page).split(`\n${heading}`);
  const [own = ''] = part.split(/\n\.S[HS] /);
  return sorted(all(own, /^\.TP\n(-.*)$/gm).flatMap(flagsIn));
}

const scripts = new Map(shells.map((shell) => [shell, completionScript(shell, offered)]));
const script = (shell: (typeof shells)[number]): string => scripts.get(shell) ?? '';
const escaped = (word: string): string => word.replaceAll('-', '\\-');

/** The flags that a script completes for a command. */
const flagsCompleted: Readonly<
  Record<(typeof shells)[number], (name: string) => readonly string[]>
> = {
  bash: (name) => {
    const line = new RegExp(`^ {4}${name}\\) if .*?words='([^']*)'`, 'm').exec(script('bash'));
    return sorted((line?.[1] ?? '').split(' '));
  },
  zsh: (name) => {
    const [, part = ''] = script('zsh').split(`    ${name}) _arguments -S `);
    const [own = ''] = part.split(' ;;');
    return sorted(all(own, /^ {6}(.*?)\[/gm).flatMap(flagsIn));
  },
  fish: (name) => {
    const lines = script('fish')
      .split('\n')
      .filter((line) =>
        new RegExp(`__leastcut_command [^']*\\b${escaped(name)}\\b[^']*'.* -l `).test(line),
      );
    return sorted(
      lines.flatMap((line) => [
        ...all(line, / -l ([\w-]+)/g).map((long) => `--${long}`),
        ...all(line, / -s (\w)/g).map((short) => `-${short}`),
      ]),
    );
  },
  powershell: (name) => {
    const [, options = ''] = script('powershell').split('$options = @{');
    const line = new RegExp(`'${name}' = @\\((.*)\\)`).exec(options.split('\n  }')[0] ?? '');
    return sorted(all(line?.[1] ?? '', /'([^']*)'/g));
  },
};

describe('parser, help, manual and completion offer the same', () => {
  test.each(loaded)('options of $name', (command) => {
    const taken = flagsParsed(command);
    expect(taken).toContain('--format');
    expect(flagsOfHelp(command)).toEqual(taken);
    const operands = man(`.SS leastcut ${command.name} `);
    const ofReading = flagsOfManual('.SH OPTIONS OF HOW AN EXPORT IS READ');
    expect(ofReading).toContain('--header-line');
    const manual = [
      ...flagsOfManual(operands),
      ...flagsOfManual('.SH OPTIONS OF EVERY COMMAND'),
      ...(taken.includes('--header-line') ? ofReading : []),
    ];
    expect(sorted(manual)).toEqual(taken);
    for (const shell of shells) expect(flagsCompleted[shell](command.name), shell).toEqual(taken);
  });

  test('commands', () => {
    expect(all(rootHelp(80).split('\n\n')[2] ?? '', /^ {2}(\w+) /gm)).toEqual(names);
    expect(all(page, /^\.SS leastcut (\w+)/gm)).toEqual(names);
    expect(all(script('bash'), /local commands='([^']*)'/g)).toEqual([names.join(' ')]);
    expect(all(script('zsh'), /^ {4}'(\w+):/gm)).toEqual([...names, 'help']);
    expect(all(script('fish'), /no_command -a (\w+)/g)).toEqual(['help', ...names]);
    const [tips = ''] = script('powershell').split('$options');
    expect(all(tips, /^ {4}'(\w+)' = /gm)).toEqual(names);
  });

  test.each(loaded)('words that --format of $name takes', (command) => {
    const { options } = offersOf(command);
    const choices = options.find(({ long }) => long === '--format')?.choices ?? [];
    const taken = choices.filter(
      (word) => parseArguments(command, ['--format', word]).value !== undefined,
    );
    expect(taken).toEqual(choices);
    const [, manual = ''] = man(page).split(`.SS leastcut ${command.name} `);
    expect(manual).toMatch(
      new RegExp(`^[^\\n]*\\n[^\\n]*\\nForms of the output: ${choices.join(', ')}\\.\\n`),
    );
    const said = commandHelp(command).replaceAll(/\s+/g, ' ');
    expect(said).toContain(
      `form of the output (choices: ${choices.map((one) => `"${one}"`).join(', ')})`,
    );
  });
});
