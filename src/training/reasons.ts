/** What a trainee is told, and where in the file it shows: a code, a sentence with what to do, a place. */
import { at } from '../base/at.ts';
import { type Remark, saying, spoken } from '../base/remark.ts';
import type { Sentence } from '../base/sentence.ts';
import type { Reading } from '../film/reading.ts';

export type ReasonCode =
  | BlunderCode
  | FaultCode
  | 'not-repeated'
  | 'repeats-alike'
  | 'panel-extra'
  | 'too-few-to-tell';

/** Something went wrong with the readings themselves. */
export type BlunderCode =
  | 'unit-slip'
  | 'decimal-slip'
  | 'sides-swapped'
  | 'panels-swapped'
  | 'points-turned'
  | 'swapped-or-turned'
  | 'values-alike'
  | 'values-repeated'
  | 'values-in-order'
  | 'too-regular'
  | 'step-changes'
  | 'survey-copied';

/** The readings are what they are, and the survey falls short. */
export type FaultCode =
  | 'car-off'
  | 'gauge-drift'
  | 'marks-off'
  | 'not-following'
  | 'panel-off'
  | 'panel-doubtful'
  | 'panels-unread'
  | 'few-points'
  | 'low-spot-missed'
  | 'repair-missed'
  | 'repair-invented'
  | 'repeats-apart';

const SLIPS: readonly ReasonCode[] = [
  'unit-slip',
  'decimal-slip',
  'sides-swapped',
  'panels-swapped',
  'points-turned',
  'swapped-or-turned',
];

/** A slip of the pen, which explains how far off its panels are. */
export const isSlip = ({ code }: Pick<Reason, 'code'>): boolean => SLIPS.includes(code);

/** The readings are those of the panel, under the numbers of other points; or may be, and nobody is held to the worse. */
export const isTurned = ({ code }: Pick<Reason, 'code'>): boolean =>
  code === 'points-turned' || code === 'swapped-or-turned';

/** A slip that leaves no film of a panel to go by. */
export const spoilsReadings = (one: Pick<Reason, 'code'>): boolean => isSlip(one) && !isTurned(one);

const MADE_UP: readonly ReasonCode[] = [
  'values-alike',
  'values-repeated',
  'values-in-order',
  'too-regular',
];

/** No hand at a car writes such values: whether its panels were read, nobody knows. */
export const isMadeUp = ({ code }: Pick<Reason, 'code'>): boolean => MADE_UP.includes(code);

/** Nobody can tell by the values alone who has them from whom. */
export const isCopied = ({ code }: Pick<Reason, 'code'>): boolean => code === 'survey-copied';

export type Reason = Omit<Remark, 'value' | 'code'> & {
  readonly code: ReasonCode;
  /** Ids of the panels it is about; none where it is about the whole survey. */
  readonly panels: readonly string[];
  readonly file: string | null;
  readonly line: number | null;
};

export const reason = (
  code: ReasonCode,
  said: string | Sentence,
  { panels = [], at }: { panels?: readonly string[]; at?: Reading | undefined } = {},
): Reason => ({
  code,
  ...spoken(said),
  panels,
  file: at?.origin.file ?? null,
  line: at?.origin.line ?? null,
});

/** Where the class is held against itself there is no reference: what is said of one is said of the class. */
export function saidOfClass(one: Reason): Reason {
  const { text, sentence, ...rest } = one;
  const said = saying({ text, ...(sentence === undefined ? {} : { sentence }) });
  const ofClass = said.map((piece) => (typeof piece === 'string' ? classFor(piece) : piece));
  return { ...rest, ...spoken(sentence === undefined ? classFor(text) : ofClass) };
}

const classFor = (text: string): string =>
  OF_CLASS.reduce((all, [of, instead]) => all.replaceAll(of, instead), text);

const OF_CLASS = [
  ['agrees with the reference of', 'agrees with the mean of the class for'],
  ['no reference for', 'no consensus on'],
  ['the reference', 'the class'],
] as const;

const MOST_NAMED = 4;

/** `roof`, `roof and boot lid`, `roof, boot lid and bonnet`; of many, the first and how many more. */
export function together(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  const more = names.length - MOST_NAMED;
  return more > 1
    ? `${names.slice(0, MOST_NAMED).join(', ')} and ${more} more`
    : `${names.slice(0, -1).join(', ')} and ${at(names, names.length - 1)}`;
}
