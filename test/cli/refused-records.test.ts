/** Which refused runs print a record for a program that asked for one. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askLeastcut } from './ask-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const folder = temporaryFolder();
const inFolder = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
const sound = inFolder('sound.csv', 'panel,point,reading_um\nroof,1,120\nroof,2,122\nroof,3,119\n');
const unclear = inFolder('unclear.csv', 'panel,point,reading\nroof,1,1.234\n');
const two = inFolder(
  'two.csv',
  'vehicle,panel,point,reading_um\nA,roof,1,120\nA,roof,2,121\nB,roof,1,119\nB,roof,2,118\n',
);
const shop = inFolder('shop.json', '{ "schema": "leastcut/shop/1" }');

type Refused = readonly [what: string, exit: number, words: readonly string[]];
const withRecord: readonly Refused[] = [
  ['data that cannot be read', 65, ['survey', unclear]],
  ['a file that is not there', 66, ['survey', join(folder, 'nowhere.csv')]],
  ['settings that are not valid', 78, ['survey', sound, '--job', shop]],
  ['a value that is none', 2, ['survey', sound, '--risk-pct', '99']],
  ['an option that there is none of', 2, ['survey', sound, '--bogus']],
];
const withoutRecord: readonly Refused[] = [
  ['an output that would overwrite', 73, ['survey', sound, '-o', shop]],
  ['a batch that is not begun', 66, ['batch', join(folder, 'nowhere.csv')]],
];
const ask = (words: readonly string[], format: string) =>
  askLeastcut([...words, '--format', format]);

describe('a refused run', () => {
  test.each(withRecord)('of %s (%i) prints a record without a result', async (_, exit, words) => {
    for (const format of ['json', 'ndjson']) {
      const { code, out, err } = await ask(words, format);
      expect(code).toBe(exit);
      const record = JSON.parse(out) as { schema: string; diagnostics: { code: string }[] };
      expect(record).toMatchObject({ schema: 'leastcut/survey/1', command: 'survey' });
      expect(record).not.toHaveProperty('panels');
      const told = record.diagnostics.map(({ code }) => code);
      expect(err).toContain(`error[${told[0]}]`);
    }
    expect((await ask(words, 'csv')).out).toBe('');
  });

  test('of several vehicles (2) prints one under json, which is one record', async () => {
    const { code, out } = await ask(['survey', two], 'json');
    expect(code).toBe(2);
    expect(JSON.parse(out)).toMatchObject({
      schema: 'leastcut/survey/1',
      diagnostics: [{ code: 'usage-several-vehicles' }],
    });
  });

  test.each(withoutRecord)('of %s (%i) prints nothing', async (_, exit, words) => {
    const { code, out, err } = await ask(words, 'ndjson');
    expect({ code, out }).toEqual({ code: exit, out: '' });
    expect(err).toContain('error[');
  });

  test('of options that are not understood prints one wherever the form can be made out', async () => {
    const json = { env: { LEASTCUT_FORMAT: 'json' } };
    for (const [words, around] of [
      [['plan', sound, '--format=json', '--aim', 'zork']],
      [['plan', '--aim', 'zork', '--format', 'ndjson', sound]],
      [['plan', sound, '--format', 'json', '--aim']],
      [['plan', sound, '--aim', 'zork'], json],
      [['plan', sound], { env: { LEASTCUT_FORMAT: 'json', LEASTCUT_RISK_PCT: '99' } }],
    ] as const) {
      const { code, out, err } = await askLeastcut(words, around);
      const record = JSON.parse(out) as { command: string; diagnostics: { code: string }[] };
      expect(record.command).toBe('plan');
      expect(err).toContain(`error[${record.diagnostics[0]?.code}]`);
      expect(code).toBeGreaterThan(1);
    }
  });

  test('of options that are not understood prints nothing where no record is asked for', async () => {
    for (const words of [
      ['plan', sound, '--format', 'xml'],
      ['plan', sound, '--aim', 'zork'],
      ['plan', sound, '--aim', 'zork', '--', '--format', 'json'],
      ['completion', 'bash', '--format', 'json'],
      ['batch', folder, '--bogus', '--format', 'ndjson'],
      ['zork'],
      ['zork', '--format', 'csv'],
      ['zork', '--', '--format', 'json'],
    ]) {
      const { code, out, err } = await askLeastcut(words);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toContain('error[');
    }
  });

  test('of a word that is no command prints one of no command', async () => {
    const { version } = JSON.parse((await ask(['doctor'], 'json')).out) as { version: string };
    for (const [words, env] of [
      [['zork', '--format', 'json'], {}],
      [['zork', sound, '--format=ndjson'], {}],
      [['help', 'zork', '--format', 'json'], {}],
      [['--format', 'json', 'survey', sound], {}],
      [['zork', '-o', shop], { LEASTCUT_FORMAT: 'json' }],
    ] as const) {
      const { code, out, err } = await askLeastcut(words, { env });
      expect(code).toBe(2);
      expect(JSON.parse(out)).toEqual({
        schema: null,
        version,
        command: null,
        vehicle: null,
        inputs: [],
        assumptions: [],
        diagnostics: [
          {
            code: 'usage-unknown-command',
            severity: 'error',
            message: `"${words[0] === 'help' ? words[1] : words[0]}" is not a command`,
            at: null,
            hint: expect.stringContaining('survey, plan'),
          },
        ],
      });
      expect(err).toContain('error[usage-unknown-command]');
    }
    expect(readFileSync(shop, 'utf8')).toContain('leastcut/shop/1');
  });

  test('writes nothing over a file before it was looked at', async () => {
    const kept = inFolder('kept.json', 'mine');
    const words = ['plan', sound, '--format', 'json', '-o', kept];
    for (const [more, env] of [
      [['--aim', 'zork'], {}],
      [[], { LEASTCUT_RISK_PCT: '99' }],
    ] as const) {
      const { out } = await askLeastcut([...words, ...more], { env });
      expect(JSON.parse(out)).toMatchObject({ command: 'plan' });
      expect(readFileSync(kept, 'utf8')).toBe('mine');
    }
  });
});
