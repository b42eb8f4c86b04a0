import { readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { optionsOf } from '../../../src/cli/command.ts';
import { commands } from '../../../src/cli/commands.ts';
import { commandHelp, findCommand, parseArguments } from '../../../src/cli/options/arguments.ts';
import { commonOptions, optionSpecs, readingOptions } from '../../../src/cli/options.ts';
import { version } from '../../../src/cli/version.ts';
import { askLeastcut } from '../ask-leastcut.ts';
import type { Run } from '../run-command.ts';
import { projectRoot, runLeastcut, runShell } from '../run-leastcut.ts';
import { shellWords } from '../shell-words.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const loaded = await Promise.all(commands.map(({ load }) => load()));
const commandNamed = (name: string) => {
  const command = loaded.find((one) => one.name === name);
  if (command === undefined) throw new Error(`no command ${name}`);
  return command;
};
const parse = (name: string, words: readonly string[]) => parseArguments(commandNamed(name), words);

describe('words of the command line', () => {
  test.each([
    ['options before operands', ['--aim', 'full', 'a.csv', 'b.csv']],
    ['options after operands', ['a.csv', 'b.csv', '--aim', 'full']],
    ['options between operands', ['a.csv', '--aim=full', 'b.csv']],
  ])('%s mean the same', (_, words) => {
    expect(parse('plan', words).value).toEqual({
      kind: 'run',
      operands: ['a.csv', 'b.csv'],
      options: { aim: 'full' },
    });
  });

  test('after -- every word is an operand', () => {
    const { value } = parse('survey', ['-v', '--', '--odd-name.csv', '-']);
    expect(value).toMatchObject({ operands: ['--odd-name.csv', '-'], options: { verbose: true } });
  });

  test('-o takes its file with a blank or without one', () => {
    for (const words of [['-o', 'x.txt'], ['-ox.txt'], ['--out=x.txt']]) {
      expect(parse('survey', words).value).toMatchObject({ options: { out: 'x.txt' } });
    }
  });

  test('--panel adds up', () => {
    const { value } = parse('plan', ['--panel', 'roof', '--panel=left quarter']);
    expect(value).toMatchObject({ options: { panel: ['roof', 'left quarter'] } });
  });

  test('a second value that says otherwise is refused by every option that takes one, and both are named', () => {
    const takesOne = loaded.flatMap((command) =>
      optionsOf(command).flatMap((name) => {
        const { flags, ...spec } = optionSpecs[name];
        const flag = /--[a-z-]+/.exec(flags)?.[0] ?? '';
        const isText = !('choices' in spec || 'range' in spec || 'words' in spec);
        return flags.includes('<') && isText && !('repeatable' in spec) ? [{ command, flag }] : [];
      }),
    );
    const free = takesOne.filter(({ flag }) => !['--aim', '--date', '--encoding'].includes(flag));
    expect(free.map(({ flag }) => flag)).toContain('--defects');
    expect(free.map(({ flag }) => flag)).toContain('--job');
    for (const { command, flag } of free) {
      const { value, diagnostics } = parse(command.name, [flag, 'one.x', flag, 'two.x']);
      expect(value, `${command.name} ${flag}`).toBeUndefined();
      expect(diagnostics[0]).toMatchObject({ code: 'usage-option-value', severity: 'error' });
      expect(diagnostics[0]?.message).toMatch(/'two\.x' .*one\.x already, and cannot be both/);
    }
  });

  test.each([
    [['--risk-pct', '5', '--risk-pct', '6'], /'6'.* It is 5 already/],
    [['--aim', 'full', '--aim', 'enhance'], /'enhance'.* It is full already/],
    [['--format', 'json', '--format', 'csv'], /'csv'.* It is json already/],
  ])('%j cannot be both', (words, message) => {
    expect(parse('plan', words).diagnostics[0]?.message).toMatch(message);
  });

  test('the same value twice is one, and a switch twice is on', () => {
    const words = [
      '--defects',
      'a.csv',
      '--defects=a.csv',
      '--risk-pct',
      '5',
      '--risk-pct',
      '5',
      '-v',
    ];
    expect(parse('plan', [...words, '-v']).value).toMatchObject({
      options: { defects: 'a.csv', riskPct: 5, verbose: true },
    });
  });

  test.each(['survey', 'plan', 'quote', 'compare'])(
    '%s takes several files of test spots',
    (command) => {
      expect(parse(command, ['--spots', 'a.csv', '--spots', 'b.csv']).value).toMatchObject({
        options: { spots: ['a.csv', 'b.csv'] },
      });
    },
  );

  test.each([
    ['12.5', 12.5],
    ['0.1', 0.1],
    ['50', 50],
  ])('--risk-pct takes %s', (text, number) => {
    expect(parse('plan', ['--risk-pct', text]).value).toMatchObject({
      options: { riskPct: number },
    });
  });

  test.each(['0', '50.1', '-5', '5%', '1e1', '0x10', '5,5', ' ', '', 'five'])(
    '--risk-pct refuses "%s"',
    (text) => {
      const { value, diagnostics } = parse('plan', [`--risk-pct=${text}`]);
      expect(value).toBeUndefined();
      expect(diagnostics.map(({ code }) => code)).toEqual(['usage-option-value']);
    },
  );

  test.each([
    ['enhance', 'enhance'],
    ['70', 70],
  ])('--aim takes %s', (text, aim) => {
    expect(parse('plan', ['--aim', text]).value).toMatchObject({ options: { aim } });
  });

  test.each(['0', '100', 'perfect', '70 per cent'])('--aim refuses "%s"', (text) => {
    expect(parse('plan', ['--aim', text]).diagnostics[0]?.message).toMatch(
      /enhance, correct, full, or a number from 1 to 99$/,
    );
  });

  test('a misspelt option is answered with the one that was meant', () => {
    expect(parse('plan', ['--defect', 'd.csv']).diagnostics).toMatchObject([
      { code: 'usage-unknown-option', hint: 'did you mean --defects?' },
    ]);
  });

  test('a misspelt choice is answered with the one that was meant', () => {
    expect(parse('plan', ['--format', 'jsn']).diagnostics).toMatchObject([
      { code: 'usage-option-value', hint: 'did you mean "json"?' },
    ]);
  });

  test('a number that is no choice is no slip of another', () => {
    expect(parse('template', ['--repeats', '7']).diagnostics).toMatchObject([
      { code: 'usage-option-value', hint: 'leastcut template --help says what it takes' },
    ]);
  });

  test('an option of another command is not known', () => {
    expect(parse('read', ['--aim', 'full']).diagnostics).toMatchObject([
      { code: 'usage-unknown-option', hint: 'leastcut read --help lists them' },
    ]);
  });

  test('a misspelt command is answered with the one that was meant', () => {
    expect(findCommand('surveys').diagnostics[0]?.hint).toBe('did you mean "survey"?');
    expect(findCommand('surv').diagnostics[0]?.hint).toBe('did you mean "survey"?');
    expect(findCommand('comp').diagnostics[0]?.hint).toMatch(/^one of read, /);
  });

  test('an option where the command should stand is told to come later', () => {
    expect(findCommand('--aim').diagnostics[0]?.hint).toMatch(/^the command comes first/);
  });
});

test('the version is that of the package', async () => {
  const packageJson = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8'));
  expect(version).toBe(packageJson.version);
  const [long, short] = await Promise.all([runLeastcut(['--version']), runLeastcut(['-V'])]);
  expect(long).toEqual({ code: 0, out: `leastcut ${version}\n`, err: '' });
  expect(short).toEqual(long);
});

/** In a shell where it has a pipe or a comment. */
function runExample(example: string, cwd: string): Promise<Run> {
  const [, ...words] = shellWords(example);
  if (!/[|#]/.test(example)) return askLeastcut(words, { cwd });
  return runShell(example.replaceAll(/(^|\| )leastcut /g, '$1"$NODE" "$PROGRAM" '), { cwd });
}

describe.concurrent('help', () => {
  test('every option has a use, and every command takes the common ones', () => {
    const used = new Set(loaded.flatMap(optionsOf));
    expect([...used].sort()).toEqual(Object.keys(optionSpecs).sort());
  });

  test.each(loaded)('of $name lists each of its options with its meaning', ({ ...command }) => {
    const help = commandHelp(command).replaceAll(/\s+/g, ' ');
    for (const name of optionsOf(command)) {
      const { flags, summary } = optionSpecs[name];
      expect(help).toContain(`${flags} ${summary}`);
    }
  });

  test('has what a job needs first, then how the export is read, then the output', () => {
    const help = commandHelp(commandNamed('plan'));
    const places = ['--aim <', 'How the export is read', '--reading-unit <', 'Output:', '--out <'];
    const found = places.map((text) => help.indexOf(text));
    expect(found).not.toContain(-1);
    expect(found).toEqual([...found].sort((a, b) => a - b));
  });

  test('of every command, asked for in two ways, is one page within 80 columns', async () => {
    const [root, ...pages] = await Promise.all([
      askLeastcut(['--help']),
      ...loaded.map(async ({ name }) => {
        const ways = await Promise.all([
          askLeastcut([name, '--help']),
          askLeastcut(['help', name]),
        ]);
        expect(new Set(ways.map(({ out }) => out)).size).toBe(1);
        expect(ways.map(({ code, err }) => `${code}${err}`)).toEqual(['0', '0']);
        return ways[0];
      }),
    ]);
    for (const { name } of commands) expect(root.out).toContain(`\n  ${name} `);
    for (const { out } of [root, ...pages]) {
      expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
    }
  });

  test.each(loaded)(
    'in short of $name has what is its own, one example, and the way to the rest',
    async (command) => {
      const { out, err, code } = await askLeastcut([command.name, 'x.csv', '-h']);
      expect({ err, code }).toEqual({ err: '', code: 0 });
      const [usage = '', , summary = ''] = commandHelp(command).split('\n');
      const own = optionsOf(command).filter(
        (name) => ![...commonOptions, ...readingOptions, 'fields'].includes(name),
      );
      const shown = out.replaceAll(/\s+/g, ' ');
      for (const name of own) expect(shown).toContain(optionSpecs[name].flags);
      expect(out.split('\n').slice(0, 3)).toEqual([usage, '', summary]);
      expect(out.replaceAll(' \\\n    ', ' ')).toContain(`\nExample:\n  ${command.examples[0]}\n`);
      expect(out).toMatch(new RegExp(`\nleastcut ${command.name} --help has \\d+ more options`));
      expect(out).not.toContain('--color');
      expect(out.split('\n').length).toBeLessThan(45);
    },
  );

  test('is not asked for by an operand, nor by the value of an option', () => {
    expect(parse('survey', ['--', '-h']).value).toMatchObject({ kind: 'run', operands: ['-h'] });
    expect(parse('survey', ['--vehicle', '-h']).value).toMatchObject({
      options: { vehicle: '-h' },
    });
  });

  test.each(loaded)('of $name has three examples at least', ({ examples }) => {
    expect(new Set(examples).size).toBeGreaterThanOrEqual(3);
  });

  test.each(loaded.flatMap(({ examples }) => examples))('%s runs as it stands', async (example) => {
    // Some examples write: they find the samples beside them, and nothing else.
    const cwd = temporaryFolder();
    symlinkSync(join(projectRoot, 'samples'), join(cwd, 'samples'));
    const { code, out, err } = await runExample(example, cwd);
    // A batch counts its jobs there.
    const said = /^leastcut: (?:\d+ notes? \(.+\), -v shows them|\d+ jobs?: \d+ done)\n$/;
    expect({ code, err: err.replace(said, '') }).toEqual({
      code: 0,
      err: '',
    });
    expect(out).not.toBe('');
  });
});
