/**
 * Numbers that a spreadsheet turned into dates or times: `1.5` typed where a point stands between day
 * and month becomes `01-May`. The number cannot be had back for certain, and is never dropped: among readings
 * about 110 µm it is the thinnest (12.5, 30.11) that a spreadsheet takes for days. Such a cell refuses the file.
 */

import { once } from '../../base/kept.ts';

const monthStarts: ReadonlySet<string> = new Set(
  `jan ene gen фев янв feb fev fév mar mär mrz maa мар apr abr avr апр may mai mag mei май мая jun jui
    giu jún июн jul lug июл aug ago aoû août авг sep set сен oct okt ott out окт nov ноя dec dez déc dic
    дек`.split(/\s+/u),
);
/** By its first three letters, in the languages of the headers. */
export const isMonth = (word: string): boolean => monthStarts.has(word.toLowerCase().slice(0, 3));

/** `01-May`, `1. Mai 2024`, `Jan 04`. */
const dayMonth = once(
  () => /^\d{1,2}\.?[-\s./]?(?:de\s)?(\p{L}{3,9})\.?(?:[-\s./,]{0,2}(?:de\s)?\d{2,4})?$/u,
);
const monthDay = once(() => /^(\p{L}{3,9})\.?[-\s./]?\d{1,4}(?:[,\s-]+\d{2,4})?$/u);
const day = '(?:0?[1-9]|[12]\\d|3[01])';
const month = '(?:0?[1-9]|1[0-2])';
const year = '(?:(?:19|20)\\d{2}|\\d{2})';
const inFigures = once(() =>
  [
    `${day}([./-])${month}\\1${year}`,
    `${month}([./-])${day}\\1${year}`,
    `${day}\\.${month}\\.`,
    `(?:19|20)\\d{2}([./-])${month}\\1${day}`,
    `${day}[/-]${month}|${month}[/-](?:${day}|(?:19|20)\\d{2})`,
    `(?:\\d{4}年)?${month}月(?:${day}日)?`,
  ].map((form) => new RegExp(`^(?:${form})$`, 'u')),
);
const time = /^\d{1,3}:\d{2}(?::\d{2}(?:[.,]\d+)?)?\s?(?:[ap]\.?m\.?)?$/iu;
const dateThenTime = /^(.+?)[T\s]+(\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?(?:\s?[AP]M)?Z?)$/u;

/** Which is most texts: it is neither, and the forms above take long to be compiled. */
const plainNumber = /^\d+(?:[.,]\d+)?$/;

export type CalendarKind = 'date' | 'time';

/** What a cell is if it is a date or a time, else undefined. */
export function calendarKind(text: string): CalendarKind | undefined {
  if (text.length > 40 || plainNumber.test(text)) return undefined;
  if (time.test(text)) return 'time';
  const date = dateThenTime.exec(text)?.[1] ?? text;
  const word = dayMonth().exec(date)?.[1] ?? monthDay().exec(date)?.[1];
  const isDate =
    (word !== undefined && isMonth(word)) || inFigures().some((form) => form.test(date));
  return isDate ? 'date' : undefined;
}

/** `45413` is 1 May 2024 in a spreadsheet's own count of days: 2000 to 2049 in whole days. */
export const mayBeDaySerial = (value: number): boolean =>
  Number.isInteger(value) && value >= 36526 && value <= 54788;
