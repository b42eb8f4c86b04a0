/**
 * A doubt about readings of several days that a file holds as one survey of a vehicle.
 *
 * What was read before and after a polish, or on two visits, is two surveys: pooled, the later readings
 * would count as repeats of the earlier ones. Days are told apart by their digits as written; which of
 * them is the month is no question here.
 */
import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';
import { dayIn } from '../cells/visit-words.ts';
import type { Metadatum } from '../tables/table.ts';

const DATE_KEY = /^(?:date|datum|fecha|data|day|tag|jour|measured)\b/iu;

/** By the column of times, vehicle by vehicle; else by lines that name a day above each part. */
export function doubtDays(
  file: string,
  readings: readonly Reading[],
  metadata: readonly Metadatum[],
): readonly Diagnostic[] {
  const timed = readings.filter(({ time }) => time !== undefined);
  const groups = [...groupBy(timed, ({ vehicle }) => vehicle).values()];
  const inRows = groups.flatMap((own) => {
    const days = firstOfEach(own, ({ time = '' }) => dayIn(time));
    const [, second] = [...days.values()];
    return second === undefined ? [] : [severalDays([...days.keys()], second.origin)];
  });
  if (inRows.length > 0 || groups.length > 1) return inRows;
  const lines = firstOfEach(metadata, ({ key, value }) =>
    DATE_KEY.test(key) ? dayIn(value) : undefined,
  );
  const [, second] = [...lines.values()];
  return second === undefined
    ? []
    : [severalDays([...lines.keys()], { file, line: second.line, column: 1 })];
}

/** The first thing that says each day. */
function firstOfEach<T>(
  things: readonly T[],
  dayOf: (thing: T) => string | undefined,
): ReadonlyMap<string, T> {
  const first = new Map<string, T>();
  for (const thing of things) {
    const day = dayOf(thing);
    if (day !== undefined && !first.has(day)) first.set(day, thing);
  }
  return first;
}

function severalDays(days: readonly string[], at: Place): Diagnostic {
  const [first, second] = days;
  const more = days.length > 2 ? ` and ${days.length - 2} more days` : '';
  const message = `readings of ${first} and ${second}${more} are taken together, as one survey`;
  const hint = 'if paint came off in between, give each day a file of its own';
  return warning('days-several', message, { at, hint });
}
