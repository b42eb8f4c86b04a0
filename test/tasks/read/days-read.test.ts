import { describe, expect, test } from 'vitest';
import { daysRead, dayTold } from '../../../src/tasks/read/days-read.ts';

const of = (...times: readonly string[]) =>
  daysRead(
    times.map((time) => ({ time })),
    [],
  );

describe('when readings were taken', () => {
  test.each([
    ['2026-06-20', '2026-06-20T00:00', '2026-06-20T24:00'],
    ['2026/6/2', '2026-06-02T00:00', '2026-06-02T24:00'],
    ['2026-06-20 14:05', '2026-06-20T14:05', '2026-06-20T14:05'],
    ['2026-06-20T14:05:31.5', '2026-06-20T14:05', '2026-06-20T14:05'],
    // A zone moves the clock: the day is what is told.
    ['2026-06-20T14:05:00Z', '2026-06-20T00:00', '2026-06-20T24:00'],
    ['2026-06-20 14:05+02:00', '2026-06-20T00:00', '2026-06-20T24:00'],
    ['2026-06-20 9:05', '2026-06-20T09:05', '2026-06-20T09:05'],
    ['2026-06-20 02:05 pm', '2026-06-20T14:05', '2026-06-20T14:05'],
    ['2026-06-20 12:05:30 a.m.', '2026-06-20T00:05', '2026-06-20T00:05'],
    ['21.06.2026', '2026-06-21T00:00', '2026-06-21T24:00'],
    ['06/21/2026', '2026-06-21T00:00', '2026-06-21T24:00'],
    ['05/06/2026', '2026-05-06T00:00', '2026-06-05T24:00'],
  ])('%s is from %s to %s', (text, from, to) => {
    expect(of(text)).toEqual({ from, to });
  });

  test('is told by the first and the last of them', () => {
    expect(of('2026-06-21 09:00', '2026-06-20 16:30')).toEqual({
      from: '2026-06-20T16:30',
      to: '2026-06-21T09:00',
    });
  });

  test.each([[[]], [['noon']], [['2026-06-31']], [['21.06.26']], [['2026-06-20', '14:00']]])(
    'is not told by %j',
    (times) => {
      expect(of(...times)).toBeNull();
    },
  );

  test('is told by a line of the file where no reading has a time', () => {
    const line = (key: string, value: string) => ({ key, value, line: 1 });
    const decisions = {
      metadata: [line('Serial', '2019-01-01'), line('Date', '2026-06-20')],
    } as never;
    expect(daysRead([{}], [{ decisions }])?.from).toBe('2026-06-20T00:00');
    expect(daysRead([{ time: '2026-06-22' }], [{ decisions }])?.from).toBe('2026-06-22T00:00');
    expect(daysRead([{}], [{ decisions: null }])).toBeNull();
  });

  test('is read by people as a day, or as the first and the last', () => {
    expect(dayTold({ from: '2026-06-20T00:00', to: '2026-06-20T24:00' })).toBe('2026-06-20');
    expect(dayTold({ from: '2026-06-20T09:00', to: '2026-06-21T10:00' })).toBe(
      '2026-06-20 to 2026-06-21',
    );
  });
});
