import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/cli/commands.ts';
import { completionScript, shells } from '../../src/cli/completion/shells.ts';
import { offersOf } from '../../src/cli/help/offers.ts';
import { runLeastcut } from './run-leastcut.ts';

const offered = (await Promise.all(commands.map(({ load }) => load()))).map(offersOf);
const script = (shell: (typeof shells)[number]): string => completionScript(shell, offered);

const bash = (line: string, input = ''): string => {
  const { stdout, stderr, status } = spawnSync('bash', ['--norc', '-c', line], {
    input,
    encoding: 'utf8',
  });
  expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
  return stdout;
};

/** What bash offers where the last word is being typed; `=` is a word of its own there. */
const offers = (...words: readonly string[]): readonly string[] => {
  const typed = ['leastcut', ...words].map((word) => `'${word}'`).join(' ');
  const ask = `COMP_WORDS=(${typed}); COMP_CWORD=${words.length}; _leastcut; printf '%s\\n' "\${COMPREPLY[@]}"`;
  return bash(`eval "$(cat)"; ${ask}`, script('bash'))
    .split('\n')
    .filter((word) => word !== '');
};

describe('in bash', () => {
  test('commands are offered first, and after help', () => {
    expect(offers('s')).toEqual(['survey', 'spot']);
    expect(offers('--v')).toEqual(['--version']);
    expect(offers('help', 'sur')).toEqual(['survey']);
  });

  test('options of the command are offered where one is begun, and only those', () => {
    expect(offers('survey', 'a.csv', '--re')).toEqual(['--reading-unit']);
    expect(offers('explain', '--re')).toEqual([]);
  });

  test('words that an option takes are offered behind it, also behind =', () => {
    expect(offers('plan', 'a.csv', '--format', '')).toEqual([
      'text',
      'json',
      'ndjson',
      'csv',
      'md',
      'html',
    ]);
    expect(offers('survey', 'a.csv', '--format', 'c')).toEqual(['csv']);
    expect(offers('survey', 'a.csv', '--format', 'x')).toEqual([]);
    expect(offers('plan', '--policy', '=', 'st')).toEqual(['standard', 'strict']);
    expect(offers('plan', '--policy', '=')).toEqual(['standard', 'strict']);
    expect(offers('plan', '--aim', 'e')).toEqual(['enhance']);
  });

  test('words of a command are offered first behind it', () => {
    expect(offers('template', 's')).toEqual(['show', 'sheet']);
    expect(offers('template', 'show', 's')).toEqual([]);
    expect(offers('completion', '')).toEqual([...shells]);
  });

  test('files are left to the shell', () => {
    expect(offers('plan', '--job', '')).toEqual([]);
    expect(offers('plan', 'sam')).toEqual([]);
    expect(bash('eval "$(cat)"; complete -p leastcut', script('bash'))).toBe(
      'complete -o default -F _leastcut leastcut\n',
    );
  });

  test('what is typed is never run', () => {
    for (const typed of ['$(echo owned >&2)', '`echo owned >&2`', '; echo owned >&2']) {
      expect(offers('survey', typed)).toEqual([]);
      expect(offers(typed)).toEqual([]);
      expect(offers('plan', '--format', typed)).toEqual([]);
    }
  });
});

const checks = [
  { shell: 'bash', program: 'bash', words: ['-n'] },
  { shell: 'zsh', program: 'zsh', words: ['-n'] },
  { shell: 'fish', program: 'fish', words: ['--no-execute'] },
  {
    shell: 'powershell',
    program: 'pwsh',
    words: [
      '-NoProfile',
      '-Command',
      '$input | Out-String | ForEach-Object { [scriptblock]::Create($_) } | Out-Null',
    ],
  },
] as const;

describe.each(checks)('the script for $shell', ({ shell, program, words }) => {
  const installed = spawnSync(program, ['--version']).error === undefined;

  test.skipIf(!installed)('is read by the shell itself', () => {
    const { status, stderr } = spawnSync(program, [...words], {
      input: script(shell),
      encoding: 'utf8',
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  });

  test('is ASCII, and every quote in it is closed on its line', () => {
    expect(script(shell)).toMatch(/^[\n\x20-\x7e]*$/);
    const code = script(shell)
      .split('\n')
      .filter((line) => !line.startsWith('#'));
    const bare = code.map((line) =>
      line.replaceAll("'\\''", '').replaceAll("\\'", '').replaceAll("''", ''),
    );
    expect(bare.filter((line) => line.split("'").length % 2 === 0)).toEqual([]);
  });
});

test('a summary with signs of a shell stays text', () => {
  const evil = `it's "$(touch owned)" \`x\` [a:b] \\ ’`;
  const [first] = offered;
  if (first === undefined) throw new Error('no command');
  const option = first.options.map((one) => ({ ...one, summary: evil }));
  const scripts = shells.map((shell) =>
    completionScript(shell, [{ ...first, summary: evil, options: option }]),
  );
  const [bashText = '', zsh = '', fish = '', powershell = ''] = scripts;
  expect(bashText).not.toContain('touch');
  expect(zsh).toContain(`'[it'\\''s "$(touch owned)" \`x\` \\[a\\:b\\] \\\\ ’]`);
  expect(fish).toContain(`-d 'it\\'s "$(touch owned)" \`x\` [a:b] \\\\ ’'`);
  expect(powershell).toContain(`= 'it''s "$(touch owned)" \`x\` [a:b] \\ ’’'`);
});

describe.concurrent('leastcut completion', () => {
  test.each(shells)('%s writes the script and nothing else', async (shell) => {
    expect(await runLeastcut(['completion', shell])).toEqual({
      code: 0,
      out: script(shell),
      err: '',
    });
  });
});
