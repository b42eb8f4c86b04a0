import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutes } from '../../src/base/units.ts';
import { workModel } from '../../src/formats/models.ts';
import { dailyExposure, planDays, type WorkPiece } from '../../src/work/day-plan.ts';

const piece = (stage: string, time: number, rest: Partial<WorkPiece> = {}): WorkPiece => ({
  stage,
  panel: null,
  time: minutes(time),
  alone: false,
  points: 0,
  wait: minutes(0),
  ...rest,
});
const terms = { hands: 1, hoursPerDay: 8, vibration: workModel.vibration };

describe('daily exposure to vibration, A(8) = a√(t/8 h) (2002/44/EC)', () => {
  it.each([
    // Magnitude, hours: 4 m/s² for 3.1 h and 12.5 h, 7 for 1.0 and 4.1 h reach 2.5 and 5 m/s² (HSE tables).
    [2.5, 8],
    [5, 8],
    [4, 3.1],
    [10, 2],
    [7, 4.1],
  ])('of %d m/s² for %d h is that of its points', (a, hours) => {
    const points = 2 * a ** 2 * hours;
    expect(dailyExposure(points)).toBeCloseTo(a * Math.sqrt(hours / 8), 9);
  });

  it('is 2.5 m/s² at 100 points and 5 at 400', () => {
    expect(dailyExposure(100)).toBe(2.5);
    expect(dailyExposure(400)).toBe(5);
  });
});

describe('a job laid into days', () => {
  it('takes a stage into the next day when the hours are over', () => {
    const days = planDays([piece('wash', 300), piece('interior', 300)], terms);
    expect(days.map(({ time }) => time)).toEqual([480, 120]);
    expect(days.map(({ stages }) => stages.map(({ stage }) => stage))).toEqual([
      ['wash', 'interior'],
      ['interior'],
    ]);
  });

  it('ends a day when the exposure is used up, and goes on the next', () => {
    // 500 points in 250 minutes: 2 a minute, 400 of them in 200 minutes.
    const days = planDays([piece('cut', 250, { panel: 'roof', points: 500 })], terms);
    expect(days.map(({ points }) => points[0])).toEqual([400, expect.closeTo(100, 9)]);
    expect(days.map(({ time }) => time)).toEqual([200, expect.closeTo(50, 9)]);
    expect(days.map(({ actionPassed }) => actionPassed)).toEqual([true, false]);
    expect(days[0]?.stages).toEqual([{ stage: 'cut', time: 200, panels: ['roof'], atMarks: [] }]);
  });

  it('passes the action value with more than its 100 points, not with just so many', () => {
    const passed = (points: number) =>
      planDays([piece('cut', 60, { points })], terms).map(({ actionPassed }) => actionPassed);
    expect(passed(100)).toEqual([false]);
    expect(passed(100.5)).toEqual([true]);
  });

  it('refuses a time or an exposure that is no number: such a day would never end', () => {
    expect(() => planDays([piece('cut', Number.NaN)], terms)).toThrow('cut would never end');
    expect(() => planDays([piece('cut', 10, { points: Number.NaN })], terms)).toThrow(RangeError);
    expect(() => planDays([piece('cut', Number.POSITIVE_INFINITY)], terms)).toThrow(RangeError);
  });

  it('shares work and exposure between hands', () => {
    const days = planDays([piece('cut', 250, { points: 500 })], { ...terms, hands: 2 });
    expect(days.map(({ time }) => time)).toEqual([125]);
    expect(days[0]?.points).toEqual([250, 250]);
  });

  it('leaves to one person what only one can do', () => {
    const [day] = planDays([piece('read', 100, { alone: true, points: 10 })], {
      ...terms,
      hands: 3,
    });
    expect(day?.time).toBe(100);
    expect(day?.points).toEqual([10, 0, 0]);
  });

  it('lets a coating cure over night: what is left is done next day', () => {
    // Done at 100 min of day 1, cured 720 min later: past the day’s 480, before the next one begins.
    const days = planDays(
      [piece('coating', 100, { wait: minutes(720) }), piece('hand-over', 10)],
      terms,
    );
    expect(days.map(({ day, time }) => [day, time])).toEqual([
      [1, 100],
      [2, 10],
    ]);
  });

  it('begins the exposure anew after a wait over night', () => {
    const days = planDays(
      [piece('cut', 200, { points: 400, wait: minutes(720) }), piece('cut', 10, { points: 100 })],
      terms,
    );
    expect(days.map(({ day, points }) => [day, points[0]])).toEqual([
      [1, 400],
      [2, 100],
    ]);
  });

  it('goes on the same day after a short wait', () => {
    const days = planDays([piece('iron', 10, { wait: minutes(5) }), piece('tar', 10)], terms);
    expect(days.map(({ time }) => time)).toEqual([20]);
  });

  it('keeps a day on which only a wait goes on', () => {
    const days = planDays(
      [piece('coating', 10, { wait: minutes(2 * 1440) }), piece('hand-over', 10)],
      terms,
    );
    expect(days.map(({ time }) => time)).toEqual([10, 0, 10]);
  });

  it('comes to an end with a piece that takes next to no time and shakes beyond measure', () => {
    const days = planDays([piece('cut', 1e-6, { points: 1000 })], terms);
    expect(days.map(({ points }) => Math.round(points[0] ?? 0))).toEqual([400, 400, 200]);
  });

  it('of nothing is no day', () => {
    expect(planDays([], terms)).toEqual([]);
  });
});

const anyPiece = fc.record({
  stage: fc.constantFrom('wash', 'cut', 'read', 'coating'),
  panel: fc.constantFrom(null, 'roof', 'bonnet'),
  time: fc.double({ min: 0, max: 1500, noNaN: true }).map(minutes),
  alone: fc.boolean(),
  points: fc.double({ min: 0, max: 3000, noNaN: true }),
  wait: fc.constantFrom(0, 5, 60, 720, 3000).map(minutes),
});
const anyJob = fc.array(anyPiece, { maxLength: 25 });
const anyTerms = fc.record({
  hands: fc.integer({ min: 1, max: 6 }),
  hoursPerDay: fc.double({ min: 1, max: 16, noNaN: true }),
  vibration: fc.constant(workModel.vibration),
});

describe('every job laid into days', () => {
  it('exposes no hand beyond the limit on any day', () => {
    fc.assert(
      fc.property(anyJob, anyTerms, (job, conditions) => {
        for (const { points, a8 } of planDays(job, conditions)) {
          expect(Math.max(...points)).toBeLessThanOrEqual(400 + 1e-6);
          expect(a8).toBeLessThanOrEqual(5 + 1e-8);
        }
      }),
    );
  });

  it('does all the work, and no day longer than its hours', () => {
    fc.assert(
      fc.property(anyJob, anyTerms, (job, conditions) => {
        const days = planDays(job, conditions);
        const done = days.reduce((sum, { time }) => sum + time, 0);
        const asked = job.reduce(
          (sum, { time, alone }) => sum + time / (alone ? 1 : conditions.hands),
          0,
        );
        expect(done).toBeCloseTo(asked, 3);
        for (const { time } of days) {
          expect(time).toBeLessThanOrEqual(60 * conditions.hoursPerDay + 1e-6);
        }
      }),
    );
  });

  it('is never longer with more hands, nor with longer days', () => {
    fc.assert(
      fc.property(anyJob, anyTerms, (job, conditions) => {
        const days = planDays(job, conditions).length;
        const more = { ...conditions, hands: conditions.hands + 1 };
        expect(planDays(job, more).length).toBeLessThanOrEqual(days);
        const longer = { ...conditions, hoursPerDay: conditions.hoursPerDay + 1 };
        expect(planDays(job, longer).length).toBeLessThanOrEqual(days);
      }),
    );
  });

  it('is never shorter with a stage more', () => {
    fc.assert(
      fc.property(anyJob, anyPiece, anyTerms, fc.nat(), (job, extra, conditions, at) => {
        const place = job.length === 0 ? 0 : at % (job.length + 1);
        const more = [...job.slice(0, place), extra, ...job.slice(place)];
        expect(planDays(more, conditions).length).toBeGreaterThanOrEqual(
          planDays(job, conditions).length,
        );
      }),
    );
  });
});
