import { describe, expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { resolveSettings, type Settings } from '../../../src/tasks/settings/settings.ts';
import { flag, layersOf } from '../layers.ts';

const settingsOf = (said: Parameters<typeof layersOf>[0] = {}): Settings =>
  resolveSettings(layersOf(said));
const codes = (list: readonly { readonly code: string }[]): readonly string[] =>
  list.map(({ code }) => code);
const effective = ({ effective: all }: Settings, name: string) =>
  all.find((one) => one.name === name);

describe('the first layer that speaks', () => {
  const environment = { value: 3, origin: 'environment', where: 'LEASTCUT_RISK_PCT' } as const;
  const files = {
    job: { risk_pct: 4 },
    shop: { risk_pct: 6 },
    project: { risk_pct: 7 },
    user: { risk_pct: 8 },
  };

  test.each([
    ['the flag', { ...files, typed: { riskPct: flag(2, '--risk-pct') } }, 2, '--risk-pct'],
    ['the environment', { ...files, typed: { riskPct: environment } }, 3, 'LEASTCUT_RISK_PCT'],
    ['the job', files, 4, 'job.json:3'],
    ['the shop file that is named', { ...files, job: {} }, 6, 'shop.json:3'],
    ['the project', { project: files.project, user: files.user }, 7, 'project.json:3'],
    ['the user', { user: files.user }, 8, 'user.json:3'],
    ['what is built in', {}, 5, 'built-in'],
  ])('is heard: %s', (_, said, riskPct, where) => {
    const settings = settingsOf(said);
    expect(settings.terms.risk).toBeCloseTo(riskPct / 100, 12);
    expect(effective(settings, 'risk_pct')).toMatchObject({ value: riskPct, where });
  });

  test('says what the nearside is, listed among the settings only where it is said', () => {
    expect(settingsOf({ shop: { nearside: 'left' } }).nearside.value).toBe('left');
    expect(effective(settingsOf({ shop: { nearside: 'left' } }), 'nearside')?.where).toBe(
      'shop.json:3',
    );
    expect(effective(settingsOf({}), 'nearside')).toBeUndefined();
  });

  test('decides its own keys only: the others come from the next layer', () => {
    const settings = settingsOf({
      shop: { policy: 'strict' },
      project: { policy: 'standard', show_unit: 'mil', numbers: { 'work.set_up_min': 3 } },
      user: { numbers: { 'work.set_up_min': 4, 'work.per_section.wipe_min': 0.5 } },
    });
    expect(settings.terms.policy).toBe('strict');
    expect(settings.showUnit).toEqual({
      value: 'mil',
      origin: 'project',
      where: 'project.json:4',
    });
    expect(settings.models.work.setUp).toBe(3);
    expect(settings.models.work.perSection.wipe).toBe(0.5);
  });
});

test('each part of the prices is traced to its own line, and one left out to where they begin', () => {
  const settings = settingsOf({
    shop: { name: 'Shop', prices: { currency: 'GBP', labour_minor_per_h: 4200 } },
  });
  const where = ['currency', 'labour_minor_per_h', 'tax'].map(
    (part) => effective(settings, `prices.${part}`)?.where,
  );
  expect(where).toEqual(['shop.json:5', 'shop.json:6', 'shop.json:4']);
  expect(effective(settingsOf(), 'prices.tax')?.where).toBe('built-in');
});

test('a number is traced to its line, by its own id or its older name', () => {
  const settings = settingsOf({
    shop: { minutes: { setup_min_per_combination: 7 } },
    project: { numbers: { 'film.earlier.unknown_clear_um': 3 } },
  });
  expect(settings.models.work.setUp).toBe(7);
  expect(settings.film.earlier.unknownClear).toBe(3);
  expect([...settings.numbers]).toEqual([
    ['film.earlier.unknown_clear_um', { value: 3, origin: 'project', where: 'project.json:4' }],
    ['work.set_up_min', { value: 7, origin: 'shop', where: 'shop.json:4' }],
  ]);
});

test('what nobody stated is an assumption, and what was stated is none', () => {
  const nothing = settingsOf();
  expect(codes(nothing.assumptions)).toEqual(['finish', 'galvanised', 'history', 'risk']);
  expect(codes(nothing.planAssumptions)).toEqual(['aim', 'machines', 'scope', 'temperature']);
  const stated = settingsOf({
    typed: { riskPct: flag(5), aim: flag('correct') },
    job: {
      finish: 'clear-over-base',
      galvanised: false,
      taken_um: 0,
      scope: {
        wheels: 'none',
        shuts: false,
        decontamination: 'none',
        trim: false,
        engine_bay: false,
        interior: false,
        glass: false,
        protection: 'none',
      },
      arrival: 'light',
      panel_c: 20,
      room_c: 20,
    },
    shop: { machines: ['da'], hands: 1, hours_per_day: 8 },
  });
  expect([...stated.assumptions, ...stated.planAssumptions]).toEqual([]);
});

test('files that were found and not named are said, with what their numbers make of the sentences', () => {
  const { assumptions } = settingsOf({
    project: { numbers: { 'film.earlier.unknown_clear_um': 3 } },
    user: {},
  });
  expect(assumptions.filter(({ code }) => code === 'settings-file')).toEqual([
    {
      code: 'settings-file',
      text: 'settings of project.json (found, not named)',
      origin: 'project',
    },
    { code: 'settings-file', text: 'settings of user.json (found, not named)', origin: 'user' },
  ]);
  expect(assumptions.find(({ code }) => code === 'history')?.text).toBe(
    'earlier work unknown: 3 µm of topcoat and 4 µm of the life limit allowed for it',
  );
});

test('an unknown finish and the strict policy are said also when they were asked for', () => {
  const asked = settingsOf({ typed: { finish: flag('unknown'), policy: flag('strict') } });
  expect(codes(asked.assumptions)).toContain('finish');
  expect(codes(asked.assumptions)).toContain('strict-policy');
});

test('a floor, a finish and galvanised steel of the shop hold where the job is silent', () => {
  const shop = { floor_um: 90, finish: 'lacquer', galvanised: true };
  const settings = settingsOf({ shop, job: { finish: 'matte' } });
  expect(settings.terms.totalFloor).toBe(micrometres(90));
  expect(settings.facts.finish).toMatchObject({ value: 'matte', where: 'job.json:3' });
  expect(settings.facts.galvanised).toMatchObject({ value: true, where: 'shop.json:5' });
});

test('dark or soft paint and the aim full let no haze stand', () => {
  expect(settingsOf().hazeAllowed).toBe(1);
  expect(settingsOf({ job: { colour_depth: 'dark' } }).hazeAllowed).toBe(0);
  expect(settingsOf({ job: { hardness: 'soft' } }).hazeAllowed).toBe(0);
  expect(settingsOf({ typed: { aim: flag('full') } }).hazeAllowed).toBe(0);
  // A number speaks of the marks alone: else a higher one would correct less where film is short.
  expect(settingsOf({ typed: { aim: flag(99) } }).hazeAllowed).toBe(1);
});

test('a template is looked for beside the file that names it', () => {
  const own = { template: 'own/van.json' };
  expect(settingsOf().template).toBeUndefined();
  expect(settingsOf({ typed: { template: flag('coupe') } }).template?.folder).toBe('');
  expect(settingsOf({ job: own, shop: own }).template).toMatchObject({
    value: 'own/van.json',
    folder: 'jobs',
    where: 'job.json:3',
  });
  const { templates } = settingsOf({ user: { templates: ['a.json', 'b.json'] } });
  expect(templates.map(({ folder, where }) => [folder, where])).toEqual([
    ['user', 'user.json:4'],
    ['user', 'user.json:5'],
  ]);
});
