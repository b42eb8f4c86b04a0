/** Texts that say when something was measured: before the work or after it, on the second visit, on a day. */

import { once } from '../../base/kept.ts';
import { clockIn } from './clock.ts';
import { foldedText, wholeWords } from './doubting-words.ts';
import { isMonth } from './spreadsheet-dates.ts';

export const visitsHint =
  'one file for each visit: leastcut compare says what came off between them';

const DAY = /(?<!\d)(?:\d{4}[-./]\d{1,2}[-./]\d{1,2}|\d{1,2}[-./]\s?\d{1,2}[-./]\s?\d{2,4})(?!\d)/u;

/** A day in figures, as it is written. */
export const dayIn = (text: string): string | undefined => DAY.exec(text)?.[0];

/** `2 March 2026`, `March 2, 2026`. */
const daysNamed = once(() => [
  /(?<!\d)\d{1,2}\.?[-\s./]{0,2}(?:de\s)?(\p{L}{3,9})\.?[-\s./,]{0,2}(?:de\s)?(?:\d{4}|\d{2})(?!\d)/u,
  /(?<![\p{L}\d])(\p{L}{3,9})\.?\s\d{1,2},?\s\d{4}(?!\d)/u,
]);
/** `20260302T0910`, `2026年3月2日`. */
const PLAIN_DAY = /(?<!\d)(?:20\d{2}[01]\d[0-3]\d(?=T\d)|\d{4}年\d{1,2}月\d{1,2}日)/u;
/** `20260302`, day 061 of a year, `2026-W10-1`: a cell of times may be no more. */
const WHOLE_DAY = /^(?:20\d{2}[01]\d[0-3]\d|20\d{2}-[0-3]\d{2}|20\d{2}-?W[0-5]\d-?[1-7])$/u;

/** A day in any form, as it is written where days are written: in a column of times, behind `Date:`. */
export function dayWritten(text: string): string | undefined {
  const short = text.trim().slice(0, LONGEST);
  const inFigures = dayIn(short) ?? PLAIN_DAY.exec(short)?.[0] ?? WHOLE_DAY.exec(short)?.[0];
  if (inFigures !== undefined) return inFigures;
  const named = daysNamed().map((form) => form.exec(short));
  return named.find((match) => isMonth(match?.[1] ?? ''))?.[0];
}
const LONGEST = 60;

/** The day of a text that holds nothing else, but perhaps the time of day. */
export function dayAlone(text: string): string | undefined {
  const day = dayIn(text);
  const dayless = text.replace(DAY, '');
  const clock = clockIn(dayless);
  const rest = clock === undefined ? dayless : clock.before + clock.after;
  return day !== undefined && /^[\s,;T()[\].]*$/u.test(rest) ? day : undefined;
}

const beforeOrAfter = wholeWords(
  `before|after|afterwards|pre|post|vorher|nachher|vor|nach|danach|avant|apres|antes|despues|depois|apos|prima|dopo|
  voor|na|przed|po|pred|fore|innan|efter|før|etter|ennen|jalkeen|elott|utan|inainte|dupa|prije|poslije|posle|nakon|
  prej|enne|parast|pries|pirms|pec|oncesi|sonrasi|sonrası|sonra|до|после|після|преди|след|πριν|μετα|قبل|بعد|לפני|אחרי`,
);
/** Written without blanks between words. */
const signs = /^(?:抛光|打磨|研磨|磨き|施工|作業|작업|연마|광택)?\s?之?(?:前|后|後|전|후)$/u;

export const saysBeforeOrAfter = (text: string): boolean =>
  beforeOrAfter.test(foldedText(text)) || signs.test(text.trim());

const visits =
  /^(?:visit|session|besuch|termin|sitzung|visite|seance|visita|sesion|bezoek|wizyta|besok|besøg|besøk|kaynti|navsteva|визит|посещение)\s*(?:n[ro]?[.°]?\s*)?\d$/u;
/** `Visit 2`, `Besuch 2, 2026-11-20`. */
export const namesVisit = (text: string): boolean => visits.test(foldedText(withoutDay(text)));
/** `Visit`, `Visit no`, `Besuch`: the name of a column that numbers them. */
export const numbersVisits = (label: string): boolean =>
  !/\d$/u.test(label) && namesVisit(`${label.replace(/\s(?:n[ro]\.?|number|nummer)$/iu, '')} 1`);

/** What is left of a text without its day. */
export const withoutDay = (text: string): string =>
  text.replace(DAY, '').replace(/^[\s,;:()–-]+|[\s,;:()–-]+$/gu, '');
