import { describe, expect, it } from 'vitest';
import { paceOf } from '../../../src/tasks/plan/plan-vehicle.ts';
import { resolveSettings } from '../../../src/tasks/settings/settings.ts';
import { withHistory } from '../../../src/tasks/settings/work-history.ts';
import { usualScope } from '../../../src/work/job-scope.ts';
import { layersOf } from '../layers.ts';

const settingsOf = (job: object, shop: object = {}) => resolveSettings(layersOf({ job, shop }));
const assumed = (job: object, code: string) =>
  settingsOf(job).planAssumptions.find((one) => one.code === code)?.text;

describe('the scope of a job', () => {
  it('is the usual one where nothing is said, and told as an assumption', () => {
    expect(settingsOf({}).scope).toEqual(usualScope);
    expect(assumed({}, 'scope')).toBe(
      'whole job: wheels on, full decontamination, wax; usual dirt, 1 person, 8 h a day',
    );
  });

  it('is what the job says, key by key', () => {
    const job = {
      scope: {
        wheels: 'none',
        decontamination: 'chemical',
        engine_bay: true,
        interior: true,
        trim: true,
        protection: 'none',
      },
      arrival: 'light',
      hands: 2,
      hours_per_day: 7.5,
    };
    expect(settingsOf(job).scope).toEqual({
      ...usualScope,
      wheels: 'none',
      decontamination: 'chemical',
      engineBay: true,
      interior: true,
      trim: true,
      protection: 'none',
      soiling: 'light',
      hands: 2,
      hoursPerDay: 7.5,
    });
    expect(assumed(job, 'scope')).toBe(
      'whole job: wheels left alone, iron and tar off, engine bay, interior, trim, no protection; light dirt, 2 people, 7.5 h a day',
    );
  });

  it('takes people and hours from the shop where the job is silent, and the job’s where it is not', () => {
    const shop = { hands: 3, hours_per_day: 10 };
    expect(settingsOf({}, shop).scope).toMatchObject({ hands: 3, hoursPerDay: 10 });
    expect(settingsOf({ hands: 1 }, shop).scope).toMatchObject({ hands: 1, hoursPerDay: 10 });
  });

  it('names no parts where the order is the job’s own', () => {
    const order = ['record', 'wash', 'dry', 'read', 'mask', 'cut', 'refine', 'finish'];
    const rest = ['unmask-dust', 'panel-wipe'];
    const job = { order: [...order, ...rest] };
    expect(settingsOf(job).scope.order).toEqual(job.order);
    expect(assumed(job, 'scope')).toMatch(/^whole job: in the order stated; usual dirt/);
  });

  it('tells where each part is said', () => {
    const said = settingsOf({ scope: { interior: true } }).effective.find(
      ({ name }) => name === 'scope.interior',
    );
    expect(said).toEqual({
      name: 'scope.interior',
      value: true,
      origin: 'job',
      where: 'job.json:4',
    });
  });
});

describe('the temperatures of a job', () => {
  it('are those of the model where nothing is said, and told as an assumption', () => {
    const { correction } = settingsOf({});
    expect([correction.heat.start, correction.heat.room]).toEqual([20, 20]);
    expect(assumed({}, 'temperature')).toBe('panel, room 20 °C');
  });

  it('are the job’s, so that every step is reckoned from them', () => {
    const { correction } = settingsOf({ panel_c: 31, room_c: 17 });
    expect([correction.heat.start, correction.heat.room]).toEqual([31, 17]);
    expect(assumed({ panel_c: 31, room_c: 17 }, 'temperature')).toBeUndefined();
    expect(assumed({ panel_c: 31 }, 'temperature')).toBe('panel at 31 °C, room at 20 °C');
  });

  it('are the shop’s numbers where the job is silent', () => {
    const numbers = { 'correction.heat.start_c': 25, 'correction.heat.room_c': 24 };
    const settings = settingsOf({}, { numbers });
    expect([settings.correction.heat.start, settings.correction.heat.room]).toEqual([25, 24]);
    expect(settings.planAssumptions.map(({ code }) => code)).not.toContain('temperature');
  });
});

describe('the hours of a shop', () => {
  const bytes = (text: string) => new TextEncoder().encode(text);
  const file = (text: string) => ({ name: 'hours.csv', bytes: bytes(text), sha256: '' });

  it('move the pace, and are told with what they come to', () => {
    const { value } = withHistory(settingsOf({}), {
      file: file('job,estimated_min,actual_min\nA,100,120\nB,200,220\n'),
      origin: 'shop',
    });
    expect(value?.hours?.pace.overall.mean).toBeCloseTo(0.092544, 6);
    expect(value?.planAssumptions.at(-1)).toEqual({
      code: 'hours',
      text: 'hours of hours.csv: 2 jobs took 1.1 times their estimates',
      origin: 'shop',
    });
  });

  it('leave the pace as assumed where there are none', () => {
    const settings = settingsOf({});
    expect(settings.hours).toBeNull();
    expect(paceOf(settings).overall).toEqual({ mean: 0, sd: 0.15 });
  });

  it('are refused with the place where a row cannot be read', () => {
    const { value, diagnostics } = withHistory(settingsOf({}), {
      file: file('job,stage,estimated_min,actual_min\nA,waxing,100,120\n'),
      origin: 'flag',
    });
    expect(value).toBeUndefined();
    expect(diagnostics[0]).toMatchObject({ code: 'cell-invalid', at: { line: 2, column: 3 } });
  });
});
