/** What is expected of a topcoat, in words: by its word, and by all that the panel may be besides. */
import { groupBy } from '../../base/group-by.ts';
import { finePercent } from '../../base/rounding.ts';
import { bare, joinSentences, type Sentence, says, um } from '../../base/sentence.ts';
import { sum } from '../../base/sum.ts';
import type { Condition } from '../condition/condition.ts';
import { sideOfWord } from './over-sides.ts';
import type { Besides, PlainTopcoat, TopcoatCase } from './topcoat-cases.ts';

/** `37.7 ± 4.9 µm expected if original, 26.1 ± 4.9 µm if cut-back (7.5 %), 22.3 must stay`. */
export function clearExpected(topcoat: TopcoatCase, conditions: readonly Condition[]): Sentence {
  const { clearFloor } = topcoat;
  const besides = onceEach(topcoat.besides).filter(({ chance }) => chance >= LEAST_CHANCE);
  const ifWord = besides.length === 0 ? '' : ` if ${sideOfWord(conditions)}`;
  return joinSentences(
    [
      says`${sizeOf(topcoat)} expected${ifWord}`,
      ...besides.map(besidesText),
      says`${bare(clearFloor)} must stay`,
    ],
    ', ',
  );
}

/** What it is beyond more than one line, by the chance of any: told once. */
const onceEach = (besides: readonly Besides[]): readonly Besides[] =>
  [
    ...groupBy(besides, ({ condition, topcoat }) => `${condition} ${topcoat === null}`).values(),
  ].map((alike) => ({ ...alike[0], chance: sum(alike.map(({ chance }) => chance)) }));

const sizeOf = ({ clear: { mean, sd } }: PlainTopcoat): Sentence =>
  says`${bare(Math.max(0, mean))} ± ${um(sd)}`;

function besidesText({ condition, chance, topcoat }: Besides): Sentence {
  const how = `if ${condition} (${finePercent(chance)})`;
  return topcoat === null ? says`none to go by ${how}` : says`${sizeOf(topcoat)} ${how}`;
}

/** Chance under which a side moves what may go by hundredths: `--why` has its part in the sum. */
export const LEAST_CHANCE = 0.005;
