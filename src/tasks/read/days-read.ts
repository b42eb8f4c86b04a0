/**
 * When readings were taken, as far as their own words tell: the time of each reading, else a line of the file that
 * names a day. Which of two figures is the month is not guessed: such a text may be of either day.
 */
import { isDay } from '../../base/calendar.ts';
import type { Reading } from '../../film/reading.ts';
import { clockIn } from '../../intake/cells/clock.ts';
import { dayIn } from '../../intake/cells/visit-words.ts';
import type { ReadInput } from './read-request.ts';

/** The first and the last moment that they may be of, as `2026-03-31T14:05`: texts in the order of time. */
export type DaysRead = { readonly from: string; readonly to: string };

/** Null where nothing tells, or a text tells no day of the calendar. */
export function daysRead(
  readings: readonly Pick<Reading, 'time'>[],
  inputs: readonly Pick<ReadInput, 'decisions'>[],
): DaysRead | null {
  const times = new Set(readings.flatMap(({ time }) => time ?? []));
  const moments = [...(times.size > 0 ? times : inputs.flatMap(linesOfDay))].map(momentsOf);
  if (moments.length === 0 || moments.some((possible) => possible.length === 0)) return null;
  const [from = '', to = ''] = [
    moments.flatMap((possible) => possible.map((one) => one.from)).sort()[0],
    moments
      .flatMap((possible) => possible.map((one) => one.to))
      .sort()
      .at(-1),
  ];
  return { from, to };
}

const DAY_KEY = /^(?:date|datum|fecha|data|day|tag|jour|measured)\b/iu;

const linesOfDay = ({ decisions }: Pick<ReadInput, 'decisions'>): readonly string[] =>
  (decisions?.metadata ?? []).flatMap(({ key, value }) =>
    DAY_KEY.test(key) && dayIn(value) !== undefined ? [value] : [],
  );

/** As many as there are ways to read its day; a clock that a zone stands behind tells nothing. */
function momentsOf(text: string): readonly DaysRead[] {
  const clock = clockIn(text.trim());
  const minute =
    clock?.after === '' && /[\sT]$/u.test(clock.before) ? clockOf(clock.minutes) : null;
  return possibleDays(dayIn(text) ?? '').map((day) => ({
    from: `${day}T${minute ?? '00:00'}`,
    to: `${day}T${minute ?? '24:00'}`,
  }));
}

const clockOf = (minutes: number): string =>
  [minutes / 60, minutes % 60].map((part) => String(Math.floor(part)).padStart(2, '0')).join(':');

/** A year of two figures says too little. */
function possibleDays(written: string): readonly string[] {
  const [first = '', second = '', third = ''] = written.split(/[-./]\s?/u);
  const dayOf = (year: string, month: string, day: string): string =>
    [year, month.padStart(2, '0'), day.padStart(2, '0')].join('-');
  const days =
    first.length === 4
      ? [dayOf(first, second, third)]
      : [dayOf(third, second, first), dayOf(third, first, second)];
  return [...new Set(days)].filter(isDay);
}

/** As people read it: without the clock. */
export const dayTold = ({ from, to }: DaysRead): string => {
  const [first, last] = [from.slice(0, DAY_LENGTH), to.slice(0, DAY_LENGTH)];
  return first === last ? first : `${first} to ${last}`;
};

const DAY_LENGTH = '2026-03-31'.length;
