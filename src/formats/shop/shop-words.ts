/** What shop files are filled in with in other units and other words, and what to write instead. */
import { suggest } from '../../base/did-you-mean.ts';
import { roundTo } from '../../base/rounding.ts';
import { type Advice, wordAdvice } from '../json/advised.ts';

const MILLIMETRES_PER_INCH = 25.4;
/** Pads and throws are sold in inches up to this size. */
const LARGEST_IN_INCHES = 12;

const MEASURED = /^\s*(\d+(?:[.,]\d+)?)\s*(mm|cm|in|inch|inches|["”″])?\s*$/i;

const millimetresPer = (unit: string): number => {
  if (/^(in|["”″])/i.test(unit)) return MILLIMETRES_PER_INCH;
  return /^cm/i.test(unit) ? 10 : 1;
};

/** `6` in, `"150 mm"`, `"6\""`: the size in millimetres. */
export const inchAdvice: Advice = (value) => {
  if (typeof value === 'number') {
    return value > 0 && value <= LARGEST_IN_INCHES
      ? `sizes are in mm: ${value} inches are ${roundTo(value * MILLIMETRES_PER_INCH, 1)}`
      : undefined;
  }
  const [, digits = '', unit = ''] = typeof value === 'string' ? (MEASURED.exec(value) ?? []) : [];
  if (digits === '') return undefined;
  const size = Number(digits.replace(',', '.')) * millimetresPer(unit);
  return `write the number of mm alone: ${roundTo(size, 1)}`;
};

/** An arm moves some centimetres a second: larger numbers are in cm/s, or slower ones in mm/s. */
export const speedAdvice: Advice = (value) => {
  if (typeof value !== 'number' || value <= 1 || value > 1000) return undefined;
  return value < 100
    ? `an arm moves at some 0.05 to 0.2 m/s: ${value} cm/s are ${roundTo(value / 100, 3)}`
    : `an arm moves at some 0.05 to 0.2 m/s: ${value} mm/s are ${roundTo(value / 1000, 3)}`;
};

const stageWords: ReadonlyMap<string, string> = new Map(
  (
    [
      ['cut', 'cutting compound compounding heavy'],
      ['refine', 'refining polish polishing medium'],
      ['finish', 'finishing final fine jewel jewelling burnish'],
    ] as const
  ).flatMap(([stage, words]) => words.split(' ').map((word) => [word, stage] as const)),
);

/** `compounding`, `polish`, `finishing`: the stage as it is called here. */
export const stageAdvice = wordAdvice(stageWords);

const orbitalWords =
  /^(dual action|dual-action|da|random orbital|orbital|eccentric|forced.*|free.*)$/i;

/** `dual action`, `polisher`: the motion as it is called here. */
export const motionAdvice: Advice = (value) => {
  if (typeof value !== 'string') return undefined;
  if (orbitalWords.test(value.trim())) {
    return 'a dual action is "orbital"; one that is driven has a forced_rpm';
  }
  return /^(rotation|rotating|circular|grinder)$/i.test(value.trim())
    ? 'write "rotary"'
    : undefined;
};

/** A thing by a part of its id (`soft`), or one that is not known: which there are. */
export function idAdvice(value: unknown, ids: readonly string[]): string | undefined {
  if (typeof value !== 'string') return undefined;
  const near = suggest(value, ids);
  if (near !== undefined) return near;
  const word = value.trim().toLowerCase();
  const within = ids.filter((id) => id.split('-').some((part) => part === word));
  return within.length === 1
    ? `did you mean "${within[0]}"?`
    : `known are ${(within.length > 1 ? within : ids).join(', ')}; describe one of your own`;
}
