import { expect, test } from 'vitest';
import { daysLater, isDay, localDay } from '../../src/base/calendar.ts';

test('a day is one that the calendar has, year first and two digits each', () => {
  for (const day of ['2026-03-31', '2024-02-29', '2000-02-29', '9999-12-31']) {
    expect(isDay(day), day).toBe(true);
  }
  for (const none of ['2026-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '2026-04-31']) {
    expect(isDay(none), none).toBe(false);
  }
  for (const none of ['31.3.2026', '2026-3-31', '', 'today', '2026-03-31T00:00']) {
    expect(isDay(none), none).toBe(false);
  }
});

test('days are counted over the ends of months, of years and of February', () => {
  expect(daysLater('2026-11-25', 30)).toBe('2026-12-25');
  expect(daysLater('2026-12-15', 30)).toBe('2027-01-14');
  expect(daysLater('2024-02-28', 1)).toBe('2024-02-29');
  expect(daysLater('2026-02-28', 1)).toBe('2026-03-01');
  expect(daysLater('2026-11-25', 0)).toBe('2026-11-25');
  expect(daysLater('9999-12-31', 1)).toBeUndefined();
  expect(daysLater('2026-02-30', 1)).toBeUndefined();
});

test('the day on the wall is the local one, whatever it is in Greenwich', () => {
  expect(localDay(new Date(2026, 0, 5, 0, 30))).toBe('2026-01-05');
  expect(localDay(new Date(2026, 10, 25, 23, 59))).toBe('2026-11-25');
});
