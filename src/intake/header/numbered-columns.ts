/**
 * Columns that count: `r1 … rn`, `1 … n`, `Reading 1`, `Messung 2`, `P3`, `測定値1`, `第1点`.
 *
 * What stands before the number says whether it counts readings or points; a bare number counts
 * readings. A series counts from 1 (or 0) without a gap.
 */
import { hasDigit } from '../../base/letters.ts';
import { plainDigits } from '../cells/digits.ts';
import { gaugeVocabulary } from './gauge-vocabulary.ts';
import { plainWords, roleReader } from './header.ts';

export type Counted = { readonly series: 'reading' | 'point'; readonly number: number };

const roleOf = roleReader(gaugeVocabulary);
const readingLetters = new Set(['', '#', 'r', 'm', 'n', 'w', 'v', 'x', 'l', 't', 'd', 'e', 'rep']);
const readingStems = new Set([
  ...readingLetters,
  'mess',
  'val',
  'mes',
  'read',
  'rdg',
  'meas',
  'wdh',
  'ist',
  ...['測定', '計測', '測量', '测量', '测定'],
]);
const pointStems = new Set(['p', 's', 'pt', 'pkt', 'mp', 'pm', 'pnt', 'pto']);

const romanNumbers: readonly string[] = 'I II III IV V VI VII VIII IX X XI XII'.split(' ');

/** What a name counts, or undefined where it ends in no number or counts something else. */
export function countedColumn(label: string): Counted | undefined {
  const roman = romanNumbers.indexOf(label.trim());
  if (roman !== -1) return { series: 'reading', number: roman + 1 };
  if (!hasDigit(label)) return undefined;
  const text = plainWords(plainDigits(label).replace(/^\((.*)\)$/u, '$1'));
  const after = /^(\D*?)[\s#]*0*(\d{1,5})$/u.exec(text);
  const before = /^第?0*(\d{1,5})\s*(?:st|nd|rd|th|er|eme|e|a|o)?\s*(\D*)$/u.exec(text);
  const [stem, digits] = after === null ? [before?.[2], before?.[1]] : [after[1], after[2]];
  if (stem === undefined || digits === undefined) return undefined;
  const series = seriesOf(stem.trim());
  return series === undefined ? undefined : { series, number: Number(digits) };
}

function seriesOf(stem: string): Counted['series'] | undefined {
  if (readingStems.has(stem) || /^[回次]目?$/u.test(stem)) return 'reading';
  if (pointStems.has(stem) || stem === '点目') return 'point';
  // `Mesure n° 1`, `Reading no. 2`
  const role = roleOf(stem) ?? roleOf(stem.replace(/ (?:n|no|nr|num)$/u, ''));
  if (role === 'reading' || role === 'repeat') return 'reading';
  return role === 'point' ? 'point' : undefined;
}

/** Whether numbers count up by one from 0 or 1; from 2 where a column without a number is the first. */
export const countUp = (numbers: readonly number[], from: readonly number[] = [0, 1]): boolean =>
  numbers.length > 0 &&
  from.includes(numbers[0] ?? -1) &&
  numbers.every((number, k) => number === (numbers[0] ?? 0) + k);
