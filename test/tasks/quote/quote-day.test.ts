import { describe, expect, test } from 'vitest';
import { quoteOutcome } from '../quotes.ts';

const timed = (days: readonly string[]): string =>
  `panel,point,reading_um,time\n${days.map((day, i) => `roof,${i + 1},${112 + i},${day}`).join('\n')}\n`;

const told = (days: readonly string[], date: string | undefined) =>
  quoteOutcome({ readings: timed(days), date }).diagnostics.filter(
    ({ code }) => code === 'quote-before-read',
  );

const car = ['2026-12-05 10:00', '2026-12-05 10:02', '2026-12-06 09:30'];

describe('a quote that is dated before anybody had read the car', () => {
  test('is told with both days, and the file that tells the later', () => {
    expect(told(car, '2026-11-27')).toMatchObject([
      {
        severity: 'warning',
        message:
          '--date 2026-11-27 is before readings.csv was read, on 2026-12-05 to 2026-12-06: the quote rests on those readings',
        at: { file: 'readings.csv' },
      },
    ]);
  });

  test('is not one of a day of the readings, or later, or without a day', () => {
    for (const date of ['2026-12-05', '2026-12-06', '2027-01-01', undefined]) {
      expect(told(car, date)).toEqual([]);
    }
  });

  test('is not told where the day may be either of two, and one of them fits', () => {
    const either = ['05/12/2026', '05/12/2026', '05/12/2026'];
    expect(told(either, '2026-11-27')).toEqual([]);
    expect(told(either, '2026-05-11')).toHaveLength(1);
  });

  test('is not told where no reading tells a day', () => {
    const readings = 'panel,point,reading_um\nroof,1,112\nroof,2,113\nroof,3,114\n';
    const { diagnostics } = quoteOutcome({ readings, date: '1999-01-01' });
    expect(diagnostics.map(({ code }) => code)).not.toContain('quote-before-read');
  });
});
