/** Days as text, `2026-03-31`: no clock is read here, and no time zone has a say. */

const DAY = /^\d{4}-\d{2}-\d{2}$/;
const MS_PER_DAY = 86_400_000;

/** Milliseconds of the day's beginning in UTC; undefined where the calendar has no such day. */
function beginningOf(text: string): number | undefined {
  if (!DAY.test(text)) return undefined;
  const [year, month, day] = [text.slice(0, 4), text.slice(5, 7), text.slice(8)];
  const beginning = Date.UTC(Number(year), Number(month) - 1, Number(day));
  return dayText(beginning) === text ? beginning : undefined;
}

const dayText = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

/** Whether there is such a day: 2026-02-30 is none. */
export const isDay = (text: string): boolean => beginningOf(text) !== undefined;

/** So many days later; undefined where `day` is none, or the year would have more than four digits. */
export function daysLater(day: string, days: number): string | undefined {
  const beginning = beginningOf(day);
  if (beginning === undefined) return undefined;
  const later = dayText(beginning + days * MS_PER_DAY);
  return DAY.test(later) ? later : undefined;
}

/** The day by the clock on the wall of whoever asks. */
export const localDay = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-');
