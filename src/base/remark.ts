import { type Sentence, says, tell } from './sentence.ts';
import type { LengthUnit } from './units.ts';

/**
 * Something a result has to say: a stable code for machines, a sentence for people, maybe a figure.
 * `text` is in micrometres; `sentence` is there where it names a thickness, to be told in another unit.
 */
export type Remark = {
  readonly code: string;
  readonly text: string;
  readonly sentence?: Sentence;
  readonly value?: number;
};

export function remark(code: string, said: string | Sentence, value?: number): Remark {
  const told = { ...spoken(said), code };
  return value === undefined ? told : { ...told, value };
}

/** The part of a remark that is read by people. */
export const spoken = (said: string | Sentence): Pick<Remark, 'text' | 'sentence'> =>
  typeof said === 'string' ? { text: said } : { text: tell(said, 'um'), sentence: said };

/** What a remark says, to be told in a unit or taken into another sentence. */
export const saying = ({ text, sentence }: Pick<Remark, 'text' | 'sentence'>): Sentence =>
  sentence ?? [text];

export const textIn = (said: Pick<Remark, 'text' | 'sentence'>, unit: LengthUnit): string =>
  tell(saying(said), unit);

/** The same remark with words before it. */
export const prefixed = (before: string, one: Remark): Remark => ({
  ...one,
  ...spoken(says`${before}${saying(one)}`),
});
