import { describe, expect, test } from 'vitest';
import { micrometres, minutes } from '../../src/base/units.ts';
import type { Job } from '../../src/formats/job.ts';
import { panelFacts, resolveSettings } from '../../src/tasks/settings.ts';

const job = (rest: Partial<Job> = {}): Job => ({ panels: new Map(), ...rest });
const bare = { flags: {}, job: undefined, shop: undefined };
const codes = (list: readonly { readonly code: string }[]): readonly string[] =>
  list.map(({ code }) => code);

describe('settings', () => {
  test('a flag stands above the job, the job above the shop, the shop above the built-in', () => {
    const shop = { riskPct: 4 };
    expect(resolveSettings(bare).terms.risk).toBeCloseTo(0.05, 12);
    expect(resolveSettings({ ...bare, shop }).terms.risk).toBeCloseTo(0.04, 12);
    const jobRisk = { ...bare, shop, job: job({ riskPct: 3 }) };
    expect(resolveSettings(jobRisk).terms.risk).toBeCloseTo(0.03, 12);
    expect(resolveSettings({ ...jobRisk, flags: { riskPct: 2 } }).terms.risk).toBeCloseTo(0.02, 12);
  });

  test('what nobody stated is an assumption, and what was stated is none', () => {
    const nothing = resolveSettings(bare);
    expect(codes(nothing.assumptions)).toEqual(['finish', 'galvanised', 'history', 'risk']);
    expect(codes(nothing.planAssumptions)).toEqual(['aim', 'machines']);
    const stated = resolveSettings({
      flags: { riskPct: 5, aim: 'correct' },
      job: job({ finish: 'clear-over-base', galvanised: false, taken: micrometres(0) }),
      shop: { machines: ['da'] },
    });
    expect([...stated.assumptions, ...stated.planAssumptions]).toEqual([]);
  });

  test('an unknown finish and the strict policy are said also when they were asked for', () => {
    const asked = resolveSettings({ ...bare, flags: { finish: 'unknown', policy: 'strict' } });
    expect(codes(asked.assumptions)).toContain('finish');
    expect(codes(asked.assumptions)).toContain('strict-policy');
  });

  test('a shop works with its own machines, and with its hands', () => {
    const { correction } = resolveSettings({ ...bare, shop: { machines: ['da'], pads: ['wool'] } });
    expect(correction.machines.map(({ id }) => id)).toEqual(['da', 'hand']);
    expect(correction.pads.map(({ id }) => id)).toEqual(['wool']);
    expect(correction.products).toHaveLength(3);
  });

  test("a shop's own minutes replace the built-in ones, one by one", () => {
    const { work } = resolveSettings({
      ...bare,
      shop: { times: { setupPerCombination: minutes(3) } },
    });
    expect(work.setUp).toBe(3);
    expect(work.perSection.wipe).toBe(resolveSettings(bare).work.perSection.wipe);
  });

  test('dark or soft paint and the aim full let no haze stand', () => {
    expect(resolveSettings(bare).hazeAllowed).toBe(1);
    expect(resolveSettings({ ...bare, job: job({ colourDepth: 'dark' }) }).hazeAllowed).toBe(0);
    expect(resolveSettings({ ...bare, job: job({ hardness: 'soft' }) }).hazeAllowed).toBe(0);
    expect(resolveSettings({ ...bare, flags: { aim: 'full' } }).hazeAllowed).toBe(0);
  });

  test('what the job says of a panel stands above what it says of the car', () => {
    const settings = resolveSettings({
      ...bare,
      job: job({ finish: 'lacquer', taken: micrometres(1) }),
    });
    expect(panelFacts(settings, undefined)).toMatchObject({ finish: 'lacquer', taken: 1 });
    const own = panelFacts(settings, { finish: 'matte', taken: micrometres(6), covered: true });
    expect(own).toMatchObject({ finish: 'matte', taken: 6, covered: true });
  });
});
