/**
 * Readings of several days, or under names of columns that stand again, which a file holds as one survey of a vehicle.
 *
 * What was read before and after a polish, or on two visits, is two surveys: pooled, the later readings would count as
 * repeats of the earlier ones, and what came off would be averaged. So the same panels on two days are refused. On one
 * day they may be a second round: where it agrees with the first it is told, where not refused. Days are told apart by
 * their digits as written; which of them is the month is no question here.
 */
import { error, type Place, warning } from '../../base/diagnostics.ts';
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';
import { dayWritten, visitsHint } from '../cells/visit-words.ts';
import type { Findings } from '../findings.ts';
import { linePlace, readingPlace } from '../readings/reading-place.ts';
import type { Source } from '../rows/source.ts';
import type { Metadatum } from '../tables/table.ts';
import { type How, readingParts } from './read-again.ts';

const DATE_KEY = /^(?:date|datum|fecha|data|day|tag|jour|measured)\b/iu;

/** Readings that belong together, and where they begin. */
export type Part = { readonly readings: readonly Reading[]; readonly at: Place };
type InFile = {
  readonly source: Source;
  /** What lines beside the tables say. */
  readonly metadata: readonly Metadatum[];
  readonly how: How;
};
type Day = Part & { readonly day: string };

/** By the column of times, vehicle by vehicle; else by lines that name a day above each part. Says if it found any. */
export function doubtDays(
  readings: readonly Reading[],
  { source, metadata, how }: InFile,
  findings: Findings,
): boolean {
  const timed = readings.filter(({ time }) => time !== undefined);
  const groups = [...groupBy(timed, ({ vehicle }) => vehicle).values()];
  const inRows = groups.map((own) => daysInRows(own, source)).filter(({ length }) => length > 1);
  for (const days of inRows) tellDays(days, how, findings);
  if (inRows.length > 0) return true;
  if (groups.length > 1) return false;
  const days = daysInLines(readings, metadata, source);
  if (days.length < 2) return false;
  tellDays(days, how, findings);
  return true;
}

function daysInRows(own: readonly Reading[], source: Source): readonly Day[] {
  const days = new Map<string, OneOrMore<Reading>>();
  for (const reading of own) {
    const day = dayWritten(reading.time ?? '');
    if (day === undefined) continue;
    const before = days.get(day);
    if (before === undefined) days.set(day, [reading]);
    else before.push(reading);
  }
  return [...days].map(([day, of]) => ({ day, readings: of, at: readingPlace(source, of[0]) }));
}

function daysInLines(
  readings: readonly Reading[],
  metadata: readonly Metadatum[],
  source: Source,
): readonly Day[] {
  const named = metadata.flatMap(({ key, value, line }) => {
    const day = DATE_KEY.test(key) ? dayWritten(value) : undefined;
    return day === undefined ? [] : [{ day, line }];
  });
  return [...groupBy(named, ({ day }) => day)].map(([day, [{ line }]]) => {
    return {
      day,
      readings: readings.filter(({ origin }) => named.findLast(above(origin.line))?.day === day),
      at: linePlace(source, line),
    };
  });
}

const above =
  (line: number) =>
  (one: { readonly line: number }): boolean =>
    one.line < line;

function tellDays(days: readonly Day[], how: How, findings: Findings): void {
  const [first, second] = days;
  if (first === undefined || second === undefined) return;
  const next = readingParts(how);
  for (const { day, readings, at } of days) {
    if (next(readings) === undefined) continue;
    const message = `readings of ${day} are of the same ${what(how)} as those of ${first.day}: two visits, and what came off between them would be averaged in`;
    findings.addAll([error('visits-together', message, { at, hint: visitsHint })]);
    return;
  }
  const more = days.length > 2 ? ` and ${days.length - 2} more days` : '';
  const message = `readings of ${first.day} and ${second.day}${more} are taken together, as one survey`;
  const hint = 'if paint came off in between, give each day a file of its own';
  findings.addAll([warning('days-several', message, { at: second.at, hint })]);
}

export const what = ({ pointsAreNamed }: How): string => (pointsAreNamed ? 'points' : 'panels');
