/** Every page in every form that people read: plain, ASCII, Markdown, and at every width. */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { asciiDecision } from '../../src/cli/terminal.ts';
import { displayWidth } from '../../src/render/printable.ts';
import { askLeastcut } from './ask-leastcut.ts';
import { program, projectRoot } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const saloon = 'samples/sound-saloon';
const coupe = 'samples/older-coupe';
const job = ['--job', `${coupe}/job.json`];
const readings = `${coupe}/readings.csv`;

const pages: readonly (readonly string[])[] = [
  ['read', readings],
  ['survey', readings, ...job, '-v'],
  ['survey', readings, '--why', 'bonnet'],
  ['plan', `${saloon}/readings.csv`, '--job', `${saloon}/job.json`, '-v'],
  ['plan', `${saloon}/readings.csv`, '--card'],
  ['quote', `${saloon}/readings.csv`, '--shop', 'samples/shop.json'],
  ['spot', `${coupe}/spots.csv`],
  ['compare', `${saloon}/readings.csv`, `${saloon}/after.csv`, '--marked'],
  ['grade', 'samples/class/reference.csv', 'samples/class/bram.csv'],
  ['gauge', 'samples/gauge-checks.csv', '--adjust'],
  ['template', 'list'],
  ['template', 'sheet', 'coupe'],
  ['methods', 'show', 'da/foam-medium/medium'],
  ['explain', 'film.limits'],
  ['explain', 'dft'],
  ['doctor'],
];
const ESC = '\u001b';

describe.concurrent.each(pages.map((words) => ({ words, page: words.join(' ') })))(
  '$page',
  ({ words }) => {
    test('is one fact a line when plain, never with a colour', async () => {
      const { out, err, code } = await askLeastcut([...words, '--plain', '--color', 'always']);
      expect({ err: err.replace(/.*-v shows them\n/, ''), code }).toEqual({ err: '', code: 0 });
      expect(out).not.toContain(ESC);
      expect(out).not.toMatch(/\n\n|^ | {2}|[│└─]|\[ \]|__/mu);
    });

    test('is ASCII when asked for, and says the same', async () => {
      const [ascii, text] = await Promise.all([
        askLeastcut([...words, '--ascii']),
        askLeastcut(words),
      ]);
      expect(ascii.code).toBe(text.code);
      expect(ascii.out).toMatch(/^[\n\x20-\x7e]+$/);
      expect(ascii.out).not.toContain('\\u{');
    });

    test('is Markdown whose tables have as many cells in every row', async () => {
      const { out, code } = await askLeastcut([...words, '--format', 'md']);
      expect(code).toBe(0);
      expect(out).toMatch(/^# \S/);
      for (const table of out
        .trim()
        .split('\n\n')
        .filter((part) => part.startsWith('|'))) {
        const cells = table.split('\n').map((row) => row.replaceAll('\\|', '').split('|').length);
        expect(new Set(cells).size).toBe(1);
      }
    });

    test.each([60, 120, 200])(
      'keeps within %i columns, but for a word longer than that',
      async (width) => {
        const { out } = await askLeastcut(words, { env: { COLUMNS: String(width) } });
        const long = out.split('\n').filter((line) => displayWidth(line) > width);
        const breakable = long.filter((line) => line.trim().includes(' '));
        expect(breakable).toEqual([]);
      },
    );
  },
);

describe('whether the text is ASCII', () => {
  const terminal = { isTTY: true };
  test.each([
    [true, {}, { LANG: 'en_GB.UTF-8' }, 'linux', true],
    [false, terminal, { LANG: 'C' }, 'linux', false],
    [undefined, {}, { LANG: 'C' }, 'linux', false],
    [undefined, terminal, { LANG: 'C' }, 'linux', true],
    [undefined, terminal, {}, 'linux', true],
    [undefined, terminal, { LANG: 'de_DE.UTF-8' }, 'linux', false],
    [undefined, terminal, { LANG: 'de_DE.utf8' }, 'linux', false],
    [undefined, terminal, { LC_ALL: '', LC_CTYPE: 'C.UTF-8', LANG: 'C' }, 'darwin', false],
    [undefined, terminal, { LC_ALL: 'POSIX', LANG: 'C.UTF-8' }, 'linux', true],
    [undefined, terminal, {}, 'win32', false],
  ] as const)('--ascii %s on %j in %j of %s: %s', (typed, stream, env, platform, ascii) => {
    expect(asciiDecision(typed, stream, env, platform).ascii).toBe(ascii);
  });

  const canOpenTerminal = spawnSync('script', ['--version']).error === undefined;
  test.skipIf(!canOpenTerminal)(
    'follows the locale of a terminal, for help and messages too',
    () => {
      const onTerminal = (locale: string, words: string): string => {
        const line = `"${process.execPath}" "${program()}" ${words}`;
        const { stdout } = spawnSync('script', ['-qec', line, '/dev/null'], {
          cwd: projectRoot,
          encoding: 'utf8',
          env: { PATH: process.env['PATH'], LC_ALL: locale, NO_COLOR: '1' },
        });
        return stdout;
      };
      const survey = `survey ${readings}`;
      expect(onTerminal('C', survey)).toContain('panel (um)');
      expect(onTerminal('C.UTF-8', survey)).toContain('panel (µm)');
      expect(onTerminal('C', '--help')).not.toMatch(/\P{ASCII}/u);
      expect(onTerminal('C', 'Vordertür').replaceAll(/\s+/g, ' ')).toContain(
        '"Vordert\\u{fc}r" is not a command',
      );
    },
  );
});

describe.concurrent('the environment', () => {
  test('sets plain text and ASCII for every run, and what is typed adds to it', async () => {
    const env = { LEASTCUT_PLAIN: 'yes', LEASTCUT_ASCII: '1' };
    const [set, typed, unset] = await Promise.all([
      askLeastcut(['survey', readings], { env }),
      askLeastcut(['survey', readings, '--plain', '--ascii']),
      askLeastcut(['survey', readings], { env: { LEASTCUT_PLAIN: '0' } }),
    ]);
    expect(set).toEqual(typed);
    expect(unset.out).toContain('panel (µm)');
  });

  test('is answered with the word that was meant', async () => {
    const { err } = await askLeastcut(['doctor'], { env: { LEASTCUT_AIM: 'fulll' } });
    expect(err).toContain('hint: did you mean "full"?');
  });

  test('is told where it says neither yes nor no', async () => {
    const { err, code } = await askLeastcut(['doctor'], { env: { LEASTCUT_PLAIN: 'maybe' } });
    expect(code).toBe(78);
    expect(err).toContain('LEASTCUT_PLAIN is "maybe"; it takes yes or no, 1 or 0');
  });

  test('asks in vain, aloud, for a form that a command does not give', async () => {
    const env = { LEASTCUT_FORMAT: 'csv' };
    const [doctor, typed, completion] = await Promise.all([
      askLeastcut(['doctor'], { env }),
      askLeastcut(['doctor', '--format', 'md'], { env }),
      askLeastcut(['completion', 'bash'], { env }),
    ]);
    expect(doctor.err).toContain(
      'warning[environment-unknown]: LEASTCUT_FORMAT is "csv", which doctor does not give\n' +
        '  hint: it gives text, json, ndjson, md, html; --format chooses',
    );
    expect(doctor.out).toMatch(/leastcut/);
    expect([typed.err, completion.err]).toEqual(['', '']);
  });
});

describe.concurrent('a misspelt word is answered with the one that was meant', () => {
  test.each([
    [['surveys'], 'survey'],
    [['help', 'quot'], 'quote'],
    [['survey', readings, '--plian'], '--plain'],
    [['survey', readings, '--format', 'mkd'], 'md'],
    [['survey', readings, '--format', 'htm'], 'html'],
    [['survey', readings, '--panel', 'bonet'], 'bonnet'],
    [['survey', readings, '--template', 'saloan'], 'saloon'],
    [['completion', 'bsh'], 'bash'],
    [['completion', 'pwershell'], 'powershell'],
    [['template', 'lst'], 'list'],
    [['methods', 'shwo'], 'show'],
    [['read', readings, '--format', 'csv', '--fields', 'pannel'], 'panel'],
    [['plan', readings, '--policy', 'strct'], 'strict'],
    [['plan', readings, '--aim', 'enhnce'], 'enhance'],
    [['read', readings, '--delimiter', 'coma'], 'comma'],
    [['explain', 'hardnes'], 'hardness'],
    [['read', readings, '--columns', 'panle=Panel'], 'panel'],
    [['read', readings, '--columns', 'panel=Pannel'], 'Panel'],
    [['quote', readings, '--date', 'todya'], 'today'],
    [['--verion'], '--version'],
    [['price', readings], 'quote'],
    [['measure', readings], 'survey'],
    [['polish', readings], 'plan'],
    [['check', 'job.json'], 'doctor'],
    [['mark', readings], 'grade'],
  ] as const)('%j', async (words, meant) => {
    const { err, code } = await askLeastcut(words);
    expect(code).not.toBe(0);
    expect(err).toMatch(new RegExp(`did you mean "?${meant}"?[?,]`));
  });
});

describe.concurrent('what belongs elsewhere is answered with where', () => {
  test('a job file in the place of a shop file: with the option of each', async () => {
    const { err } = await askLeastcut([
      'quote',
      readings,
      '--shop',
      'samples/sound-saloon/job.json',
    ]);
    expect(err).toContain('this is a job file, where a shop file is wanted');
    expect(err).toContain('hint: name it with --job, and a shop file with --shop');
    expect(err).not.toContain('leastcut/shop/1');
  });

  test('a panel typed as an option: with --panel', async () => {
    const { err } = await askLeastcut(['survey', readings, '--roof']);
    expect(err).toContain('hint: a panel is named with --panel roof');
  });

  test('a vehicle that is not there: with those that are, or that there are none', async () => {
    const none = await askLeastcut(['survey', readings, '--vehicle', 'XX']);
    expect(none.err).toContain('the input names no vehicle: leave --vehicle out');
    const csv = 'panel,point,reading_um\nroof,1,110\n';
    const two = ['A', 'B'].map((id) => `${id},roof,1,110\n`).join('');
    const nameless = await askLeastcut(['survey', '-', '--vehicle', 'C'], { stdin: csv });
    expect(nameless.err).toContain('the input names no vehicle: leave --vehicle out');
    const named = await askLeastcut(['survey', '-', '--vehicle', 'C'], {
      stdin: `vehicle,panel,point,reading_um\n${two}`,
    });
    expect(named.err).toMatch(/hint: the input holds (?:A, B|B, A)/);
  });

  test('a panel that the template has not: with --panel-names, and what it may be', async () => {
    const stdin = 'panel,point,reading_um\nBonet scoop,1,112\nroof,1,110\nroof,2,111\n';
    const { err } = await askLeastcut(['survey', '-', '--template', 'coupe'], { stdin });
    expect(err).toContain('did you mean "bonnet"? Then --panel-names "Bonet scoop=bonnet"');
    const named = await askLeastcut(
      ['survey', '-', '--template', 'coupe', '--panel-names', 'Bonet scoop=bonnet'],
      { stdin },
    );
    expect(named.code).toBe(0);
    const strange = await askLeastcut(['survey', '-', '--template', 'coupe'], {
      stdin: stdin.replace('Bonet scoop', 'Qwxz'),
    });
    expect(strange.err).toContain('--panel-names "Qwxz=NAME"');
  });

  test('a list of jobs whose column is misspelt: with the column, and with nothing of panels', async () => {
    const stdin = 'vehicle,reeadings\nA,x.csv\n';
    const { err } = await askLeastcut(['batch', '-'], { stdin });
    expect(err).toContain('did you mean "readings" by "reeadings"?');
    expect(err).not.toContain('panel');
  });

  test('the short help of read has the options that an export may need', async () => {
    const { out } = await askLeastcut(['read', '-h']);
    for (const option of ['--header-line', '--columns', '--reading-unit', '--panel-names']) {
      expect(out).toContain(option);
    }
  });
});

describe.concurrent('one fact a line', () => {
  test('never tells advice as if it had been measured', async () => {
    const { out } = await askLeastcut(['survey', readings, '--plain', '-v']);
    const gains = out.split('\n').filter((line) => /\+\d+\.\d+ (?:to|µm)/.test(line));
    expect(gains.length).toBeGreaterThan(3);
    expect(gains.filter((line) => !/would help|Near (?:its|their) line/.test(line))).toEqual([]);
  });

  test('shows the readings of a panel with as many decimals each', async () => {
    const { out } = await askLeastcut(['survey', readings, '--plain']);
    const rows = out.split('\n').filter((line) => / readings [\d.]+, /.test(line));
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      const decimals = (row.match(/\d+\.?\d*(?=[, ])/g) ?? []).map(
        (one) => (one.split('.')[1] ?? '').length,
      );
      expect(new Set(decimals).size, row).toBe(1);
    }
  });
});

describe.concurrent('help is as wide as the terminal', () => {
  test.each(['60', '80'])('of %s columns', async (columns) => {
    for (const words of [['--help'], ['survey', '-h'], ['plan', '--help'], ['read', '-h']]) {
      const { out } = await askLeastcut(words, { env: { COLUMNS: columns } });
      const long = out.split('\n').filter((line) => line.length > Number(columns));
      // An example is to be copied: it stays in one line.
      expect(long.filter((line) => !/^ {2}(?:cat|leastcut) /.test(line))).toEqual([]);
    }
  });
});

describe.concurrent('a misspelt word in a file is answered with the one that was meant', () => {
  const job = (keys: object): string => JSON.stringify({ schema: 'leastcut/job/1', ...keys });
  test.each([
    ['a key', 'job.json', job({ finsh: 'matte' }), '--job', 'finish'],
    ['a word', 'job.json', job({ finish: 'mate' }), '--job', 'matte'],
    ['a panel', 'job.json', job({ panels: { bonet: {} } }), '--job', 'bonnet'],
    ['a panel', 'defects.csv', 'panel,defect,grade\nbonet,swirl-marks,3\n', '--defects', 'bonnet'],
    [
      'a defect',
      'defects.csv',
      'panel,defect,grade\nroof,swirl-mraks,3\n',
      '--defects',
      'swirl-marks',
    ],
    ['a needed column', 'defects.csv', 'panel,defct,grade\n', '--defects', 'defect'],
    ['any column', 'defects.csv', 'panel,defect,grde\nroof,swirl-marks,3\n', '--defects', 'grade'],
    [
      'a number of the model',
      'shop.json',
      '{"schema":"leastcut/shop/1","numbers":{"film.limits.life_mu":3}}',
      '--shop',
      'film.limits.life_um',
    ],
  ])('%s of %s', async (_, name, content, option, meant) => {
    const file = join(temporaryFolder(), name);
    writeFileSync(file, content);
    const { err } = await askLeastcut(['plan', readings, option, file]);
    expect(err).toMatch(new RegExp(`did you mean "${meant}"`));
  });
});
