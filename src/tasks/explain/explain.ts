/** Words → what they mean here; a word may mean several things, and all of them are told. */
import { type Diagnostic, error, type Outcome } from '../../base/diagnostics.ts';
import { closest } from '../../base/did-you-mean.ts';
import { allTopics, type TopicSources } from './explain-topics.ts';
import type { Explanation } from './explanation.ts';
import { allWritten, writtenAs, writtenTopics } from './record-topics.ts';

export type Explained = {
  /** As it was asked for; null where everything is listed. */
  readonly word: string | null;
  readonly topics: readonly Explanation[];
};

type Explain = (words: readonly string[]) => Outcome<readonly Explained[]>;

/** Several words may be one term (`orange peel`) or a term each. */
export const explain = (words: readonly string[], sources: TopicSources): ReturnType<Explain> =>
  explainerOf(sources)(words);

/** For many questions: all that can be asked for is gathered once. */
export function explainerOf(sources: TopicSources): Explain {
  const written = allWritten();
  const topics = allTopics(sources, written);
  const find = finder(topics);
  return (words) => {
    const phrase = words.join(' ');
    // A key may have its record before it, or the keys that lead to it.
    const together = [...find(phrase), ...writtenTopics(writtenAs(phrase, written))];
    if (together.length > 0) {
      return { value: [{ word: phrase, topics: together }], diagnostics: [] };
    }
    const parts = longestKnown(words, find);
    const terms = parts.filter(({ word }) => !asking.has(plain(word)));
    const each = terms.length === 0 ? parts : terms;
    const unknown = each.filter((one) => one.topics.length === 0);
    return unknown.length === 0
      ? { value: each, diagnostics: [] }
      : { diagnostics: unknown.map(({ word }) => unknownTopic(word, topics)) };
  };
}

type Part = { readonly word: string; readonly topics: readonly Explanation[] };
type Find = (word: string) => readonly Explanation[];

/** From left to right the longest run of words that is a term; a word that is in none stands by itself. */
function longestKnown(words: readonly string[], find: Find): readonly Part[] {
  if (words.length === 0) return [];
  const runs = words.map((_, i) => words.slice(0, words.length - i));
  const run = runs.find((one) => find(one.join(' ')).length > 0) ?? words.slice(0, 1);
  const word = run.join(' ');
  return [{ word, topics: find(word) }, ...longestKnown(words.slice(run.length), find)];
}

/** `what may go`, `what is a low spot`: beside a term the words of a question ask for none, be they keys of ours. */
const asking = new Set(
  'what which how who does do did is are was mean means a an the of for to on in at and or it'.split(
    ' ',
  ),
);
/** Case, blanks, hyphens and underlines do not matter, nor how the micro sign is typed, nor the mark after a word: `thin?`. */
const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[-\s_]+/g, ' ')
    .trim()
    .replace(/(?<=.)[?:]$/, '');

const namesOf = ({ id, also }: Explanation): readonly string[] => [id, ...also];

function finder(topics: readonly Explanation[]): Find {
  const byName = new Map<string, Explanation[]>();
  for (const topic of topics) {
    for (const name of new Set(namesOf(topic).map(plain))) {
      byName.set(name, [...(byName.get(name) ?? []), topic]);
    }
  }
  return (word) => byName.get(plain(word)) ?? underPrefix(word, topics);
}

/** `film.limits` stands for every default under it. */
const underPrefix = (word: string, topics: readonly Explanation[]): readonly Explanation[] => {
  const beginning = `${word.toLowerCase().replace(/\.?\*?$/, '')}.`;
  return topics.filter(({ kind, id }) => kind === 'default' && id.startsWith(beginning));
};

const MOST_NEAR = 3;

function unknownTopic(word: string, topics: readonly Explanation[]): Diagnostic {
  const near = nearest(word, topics);
  return error('usage-unknown-topic', `"${word}" is nothing that explain knows`, {
    hint:
      near.length === 0
        ? 'leastcut explain lists what it knows'
        : `did you mean ${near.map((name) => `"${name}"`).join(', ')}?`,
  });
}

/** The name a slip of the keys away, and names that hold the word. */
function nearest(word: string, topics: readonly Explanation[]): readonly string[] {
  const names = [...new Set(topics.flatMap(namesOf))];
  const slip = closest(word, names);
  const typed = plain(word);
  const holding = typed.length < 3 ? [] : names.filter((name) => plain(name).includes(typed));
  return [...new Set([...(slip === undefined ? [] : [slip]), ...holding])].slice(0, MOST_NEAR);
}
