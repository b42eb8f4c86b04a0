import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { machineRecords } from '../../../src/formats/records/machine-records.ts';
import { askLeastcut } from '../ask-leastcut.ts';
import { projectRoot } from '../run-leastcut.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const readings = join(projectRoot, 'samples/sound-saloon/readings.csv');
const shopWith = (keys: object): string =>
  JSON.stringify({ schema: 'leastcut/shop/1', ...keys }, null, 2);

type Setting = { name: string; value: unknown; origin: string; where: string };

/** A home with a user file, and below it a project with a bay to work in. */
function workshop(files: { readonly user?: object; readonly project?: object }) {
  const home = temporaryFolder();
  const bay = join(home, 'garage', 'bay');
  mkdirSync(bay, { recursive: true });
  mkdirSync(join(home, '.config/leastcut'), { recursive: true });
  if (files.user !== undefined) {
    writeFileSync(join(home, '.config/leastcut/shop.json'), shopWith(files.user));
  }
  if (files.project !== undefined) {
    writeFileSync(join(home, 'garage/leastcut.json'), shopWith(files.project));
  }
  const env = { HOME: home };
  const survey = async (words: readonly string[] = [], more: Record<string, string> = {}) => {
    const options = { env: { ...env, ...more }, cwd: bay };
    const run = await askLeastcut(['survey', readings, '--format', 'json', ...words], options);
    const record = JSON.parse(run.out) as {
      settings: readonly Setting[];
      assumptions: readonly { code: string; text: string; origin: string }[];
    };
    return { ...run, record, of: (name: string) => record.settings.find((s) => s.name === name) };
  };
  return { home, bay, env, survey };
}

describe.concurrent('settings files that are found', () => {
  test('speak without being named, the project before the user, and are said', async () => {
    const { survey } = workshop({
      user: { risk_pct: 8, finish: 'lacquer' },
      project: { risk_pct: 7 },
    });
    const { of, record } = await survey();
    expect(of('risk_pct')).toEqual({
      name: 'risk_pct',
      value: 7,
      origin: 'project',
      where: '../leastcut.json:3',
    });
    expect(of('finish')?.where).toBe('~/.config/leastcut/shop.json:4');
    const files = record.assumptions.filter(({ code }) => code === 'settings-file');
    expect(files.map(({ text, origin }) => [text, origin])).toEqual([
      ['settings of ../leastcut.json (found, not named)', 'project'],
      ['settings of ~/.config/leastcut/shop.json (found, not named)', 'user'],
    ]);
  });

  test('stand behind the one that is named, the job, the environment and the flags', async () => {
    const { survey, bay } = workshop({ project: { risk_pct: 7 } });
    writeFileSync(join(bay, 'shop.json'), shopWith({ risk_pct: 6 }));
    writeFileSync(join(bay, 'job.json'), '{"schema": "leastcut/job/1",\n"risk_pct": 5.5}');
    const shop = ['--shop', 'shop.json'];
    const job = ['--job', 'job.json'];
    expect((await survey(shop)).of('risk_pct')?.where).toBe('shop.json:3');
    expect((await survey([...shop, ...job])).of('risk_pct')?.where).toBe('job.json:2');
    const env = { LEASTCUT_RISK_PCT: '4' };
    expect((await survey([...shop, ...job], env)).of('risk_pct')).toMatchObject({
      value: 4,
      where: 'LEASTCUT_RISK_PCT',
    });
    const flagged = await survey([...shop, ...job, '--risk-pct', '3'], env);
    expect(flagged.of('risk_pct')).toMatchObject({ value: 3, where: '--risk-pct' });
  });

  test('are told when they are wrong, without the private path, and end with 78', async () => {
    const { env, bay, home } = workshop({ user: { risk_pt: 8 }, project: { machines: ['daa'] } });
    const { code, err } = await askLeastcut(['survey', readings], { env, cwd: bay });
    expect(code).toBe(78);
    expect(err).toContain('../leastcut.json:4:5: error[settings-invalid]');
    expect(err).toContain('~/.config/leastcut/shop.json:3:3: error[settings-unknown-key]');
    expect(err).not.toContain(home);
  });

  test('name files beside them, which are told as they are named there', async () => {
    const { env, bay, home } = workshop({ user: { templates: ['vans/two-door.json'] } });
    mkdirSync(join(home, '.config/leastcut/vans'));
    const template = readFileSync(join(projectRoot, 'samples/two-door.json'));
    writeFileSync(join(home, '.config/leastcut/vans/two-door.json'), template);
    const list = ['template', 'list'];
    const { out } = await askLeastcut(list, { env, cwd: bay });
    const { out: record } = await askLeastcut([...list, '--format', 'json'], { env, cwd: bay });
    expect(out).toContain('two-door: vans/two-door.json, changes saloon');
    expect(record).toContain('"file": "vans/two-door.json"');
    expect(out + record).not.toContain(home);
  });

  test.each([
    ['gauge', 'gauge.json', 'survey'],
    ['rates_file', 'rates.json', 'survey'],
    ['history', 'hours.csv', 'plan'],
    ['template', 'long-roof.json', 'survey'],
  ])('name as %s what cannot be read, and no private path is told of it', async (...named) => {
    const [key, name, command] = named;
    const { env, bay, home } = workshop({ user: { [key]: name } });
    const missing = await askLeastcut([command, readings], { env, cwd: bay });
    expect(missing.err).toContain(
      `~/.config/leastcut/shop.json:3:${key.length + 7}: error[file-missing]: there is no file "${name}"`,
    );
    expect(missing.err).toContain('hint: mend the path: it is relative to this file');
    mkdirSync(join(home, '.config/leastcut', name));
    const folder = await askLeastcut([command, readings], { env, cwd: bay });
    expect(folder.err).toContain(`${name}: error[file-unreadable]: "${name}" cannot be read`);
    expect([missing.code, folder.code]).toEqual([66, 66]);
    expect(missing.err + folder.err).not.toContain(home);
  });

  test('count as named where they are', async () => {
    const { survey } = workshop({ project: { risk_pct: 7 } });
    const { of, record } = await survey(['--shop', '../leastcut.json']);
    expect(of('risk_pct')).toMatchObject({ origin: 'shop', where: '../leastcut.json:3' });
    expect(record.assumptions.map(({ code }) => code)).not.toContain('settings-file');
  });

  test('are looked for under XDG_CONFIG_HOME where it is set, and absolute', async () => {
    const { survey, home } = workshop({ user: { risk_pct: 8 } });
    mkdirSync(join(home, 'xdg/leastcut'), { recursive: true });
    writeFileSync(join(home, 'xdg/leastcut/shop.json'), shopWith({ risk_pct: 9 }));
    const moved = await survey([], { XDG_CONFIG_HOME: join(home, 'xdg') });
    expect(moved.of('risk_pct')?.where).toBe('$XDG_CONFIG_HOME/leastcut/shop.json:3');
    const relative = await survey([], { XDG_CONFIG_HOME: 'xdg' });
    expect(relative.of('risk_pct')?.where).toBe('~/.config/leastcut/shop.json:3');
  });

  test('are the same file through a link', async () => {
    const { survey, home, bay } = workshop({ project: { risk_pct: 7 } });
    symlinkSync(join(home, 'garage/leastcut.json'), join(bay, 'mine.json'));
    const { record } = await survey(['--shop', 'mine.json']);
    expect(record.assumptions.map(({ code }) => code)).not.toContain('settings-file');
  });
});

describe.concurrent('the environment', () => {
  test('names a shop file, which is said as an assumption', async () => {
    const { survey, bay } = workshop({});
    writeFileSync(join(bay, 'ours.json'), shopWith({ policy: 'strict' }));
    const { of, record } = await survey([], { LEASTCUT_SHOP: 'ours.json' });
    expect(of('policy')).toMatchObject({ origin: 'shop', where: 'ours.json:3' });
    expect(record.assumptions.find(({ code }) => code === 'settings-file')?.text).toBe(
      'settings of ours.json (named by LEASTCUT_SHOP)',
    );
  });

  test('that is empty says nothing, and what is about one run cannot be set there', async () => {
    const { survey } = workshop({});
    const { err, of } = await survey([], { LEASTCUT_AIM: '', LEASTCUT_OUT: 'a.txt' });
    expect(of('aim')).toBeUndefined();
    expect(err).toBe(
      'leastcut: warning[environment-unknown]: LEASTCUT_OUT sets nothing\n  hint: -o, --out is said anew for every run\n',
    );
  });

  test('decides unit and template as the flags would', async () => {
    const { env, bay } = workshop({});
    const words = ['survey', readings];
    const set = { ...env, LEASTCUT_SHOW_UNIT: 'mil', LEASTCUT_TEMPLATE: 'coupe' };
    const [byFlag, byVariable] = await Promise.all([
      askLeastcut([...words, '--show-unit', 'mil', '--template', 'coupe'], { env, cwd: bay }),
      askLeastcut(words, { env: set, cwd: bay }),
    ]);
    expect(byVariable).toEqual(byFlag);
  });

  test('tells every wrong variable at once', async () => {
    const { env, bay } = workshop({});
    const set = { ...env, LEASTCUT_AIM: 'everything', LEASTCUT_RISK_PCT: '0' };
    const { code, err } = await askLeastcut(['survey', readings], { env: set, cwd: bay });
    expect(code).toBe(78);
    expect(err).toContain(
      'LEASTCUT_AIM is "everything"; it takes enhance, correct, full, or a number from 1 to 99',
    );
    expect(err).toContain('LEASTCUT_RISK_PCT is "0"; it takes a number from 0.1 to 50');
  });
});

describe.concurrent('doctor', () => {
  const doctor = async (
    words: readonly string[],
    { env, cwd }: { env: Record<string, string>; cwd: string },
  ) => {
    const run = await askLeastcut(['doctor', '--format', 'json', ...words], { env, cwd });
    const record = JSON.parse(run.out) as {
      schema: string;
      node: string;
      terminal: object;
      files: readonly object[];
      settings: readonly Setting[];
    };
    return { ...run, record, of: (name: string) => record.settings.find((s) => s.name === name) };
  };

  test('says where it looked, what it found, and every setting with its place', async () => {
    const { env, bay } = workshop({ project: { numbers: { 'work.set_up_min': 4 } } });
    const { record, of, code } = await doctor(['--aim', 'full'], { env, cwd: bay });
    expect(code).toBe(0);
    expect(record).toMatchObject({ schema: 'leastcut/doctor/1', node: process.version });
    expect(record.files).toEqual([
      { kind: 'project', file: '../leastcut.json', state: 'found' },
      { kind: 'user', file: '~/.config/leastcut/shop.json', state: 'not found' },
    ]);
    expect(of('aim')).toMatchObject({ value: 'full', where: '--aim' });
    expect(of('work.set_up_min')).toMatchObject({ value: 4, where: '../leastcut.json:4' });
    expect(of('machines')).toMatchObject({ origin: 'built-in' });
    expect(of('film.limits.life_um')).toMatchObject({ value: 12.7, origin: 'built-in' });
    expect(record.settings.length).toBeGreaterThan(200);
  });

  test('lists among its assumptions the files that nobody named, with no private path', async () => {
    const { env, bay, home } = workshop({ user: { aim: 'full' }, project: { risk_pct: 7 } });
    const { record } = await doctor([], { env, cwd: bay });
    expect(record).toMatchObject({
      assumptions: [
        {
          code: 'settings-file',
          text: 'settings of ../leastcut.json (found, not named)',
          origin: 'project',
        },
        {
          code: 'settings-file',
          text: 'settings of ~/.config/leastcut/shop.json (found, not named)',
          origin: 'user',
        },
      ],
    });
    expect(JSON.stringify(record)).not.toContain(home);
    const none = workshop({});
    expect((await doctor([], { env: none.env, cwd: none.bay })).record).toMatchObject({
      assumptions: [],
    });
  });

  test('carries no private path, also where one was typed', async () => {
    const { env, bay, home } = workshop({ user: { aim: 'full' }, project: { risk_pct: 7 } });
    writeFileSync(join(bay, 'shop.json'), shopWith({ policy: 'strict' }));
    const words = ['--shop', join(bay, 'shop.json'), '-v'];
    const { out } = await doctor(words, { env, cwd: bay });
    const text = await askLeastcut(['doctor', ...words], { env, cwd: bay });
    expect(out + text.out).not.toContain(home);
    expect(text.out).toContain('policy strict (~/garage/bay/shop.json:3, shop)');
  });

  test('says why there is colour or none, and how wide a page is', async () => {
    const { env, bay } = workshop({});
    const cwd = bay;
    const plain = await doctor([], { env, cwd });
    expect(plain.record.terminal).toEqual({
      width: 80,
      width_from: 'the output is no terminal',
      color: false,
      color_why: 'the output is no terminal',
      ascii: false,
      ascii_why: 'the output is no terminal',
    });
    const set = { ...env, FORCE_COLOR: '1', COLUMNS: '100' };
    expect((await doctor([], { env: set, cwd })).record.terminal).toEqual({
      width: 100,
      width_from: 'COLUMNS',
      color: true,
      color_why: 'FORCE_COLOR is 1',
      ascii: false,
      ascii_why: 'the output is no terminal',
    });
    const flagged = await doctor(['--color', 'never'], { env: set, cwd });
    expect(flagged.record.terminal).toMatchObject({
      color: false,
      color_why: '--color says never',
    });
  });

  test('keeps its page within 80 columns, also with every number', async () => {
    const { env, bay } = workshop({});
    const { out } = await askLeastcut(['doctor', '-v'], { env, cwd: bay });
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  test('keeps to the schema of its record, with settings and with files to check', async () => {
    const { env, bay } = workshop({});
    const { record } = await doctor([], { env, cwd: bay });
    expect(machineRecords.doctor.safeParse(record).error?.issues ?? []).toEqual([]);
    writeFileSync(join(bay, 'shop.json'), shopWith({ policy: 'strict' }));
    const files = ['shop.json', 'shop.json', '--shop', 'shop.json'];
    const check = await doctor(files, { env, cwd: bay });
    expect(machineRecords.doctor.safeParse(check.record).error?.issues ?? []).toEqual([]);
    expect(check.record).toMatchObject({
      inputs: [{ file: 'shop.json', decisions: null }],
      checked: [{ file: 'shop.json', kind: 'shop' }],
      settings: [],
    });
  });

  test('checks a file whatever the settings files around it hold', async () => {
    const { env, bay, home } = workshop({ project: { risk_pct: 'five' } });
    const file = join(bay, 'shop.json');
    writeFileSync(file, shopWith({ policy: 'strict' }));
    expect((await doctor([], { env, cwd: bay })).code).toBe(78);
    const { code, out } = await doctor([file], { env, cwd: bay });
    expect(code).toBe(0);
    expect(out).not.toContain(home);
  });

  test('takes no table of readings', async () => {
    const { code, err } = await askLeastcut(['doctor', 'readings.csv']);
    expect(code).toBe(2);
    expect(err).toContain('"readings.csv" is a table');
    expect(err).toContain('leastcut read readings.csv');
  });
});

test('-v says which settings are not built in, and where each is from', async () => {
  const { env, bay } = workshop({ project: { risk_pct: 7, show_unit: 'mil' } });
  const { out } = await askLeastcut(['survey', readings, '-v', '--finish', 'lacquer'], {
    env,
    cwd: bay,
  });
  expect(out).toContain(
    [
      'Settings that are not built in',
      '  risk_pct 7 (../leastcut.json:3, project)',
      '  finish lacquer (--finish)',
      '  show_unit mil (../leastcut.json:4, project)',
      '',
    ].join('\n'),
  );
});
