/** Texts that hold several facts: how they are put together, so that each can be told by itself. */

import type { Remark } from '../base/remark.ts';
import { saying } from '../base/remark.ts';
import { type Sentence, tell, tellApart } from '../base/sentence.ts';
import type { LengthUnit } from '../base/units.ts';
import { eachFact, type Facts, type Said, textOf } from './model.ts';

/** `one; another.`: what ends them is of the text alone. */
export const joined = (parts: readonly Said[], joiner: string, end = ''): Facts => ({
  text: `${parts.map(textOf).join(joiner)}${end}`,
  facts: parts.flatMap(eachFact),
});

/** `one; another of all.`: what is said at the end is said of each. */
export const ofEach = (parts: readonly string[], said: string): Facts => ({
  text: `${parts.join('; ')}${said}`,
  facts: parts.map((part) => `${part}${said}`),
});

/** `roof: one; another`, of which each is `roof: …`. */
export const about = (name: string, said: Said): Facts => ({
  text: `${name}: ${textOf(said)}`,
  facts: eachFact(said).map((fact) => `${name}: ${fact}`),
});

/** What is set in under what it is of, or stands there as a heading, which is no fact. */
export const setIn = (above: string, said: Said): Facts => ({
  text: `\u00a0\u00a0${textOf(said)}`,
  facts: eachFact(said).map((fact) => `${above}: ${fact}`),
});
export const headingOf = (text: string): Facts => ({ text, facts: [] });

export const toldFacts = (sentence: Sentence, unit: LengthUnit): Facts => ({
  text: tell(sentence, unit),
  facts: tellApart(sentence, unit),
});

export const remarkFacts = (remark: Pick<Remark, 'text' | 'sentence'>, unit: LengthUnit): Facts =>
  toldFacts(saying(remark), unit);
