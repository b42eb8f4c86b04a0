import { closest } from '../../base/did-you-mean.ts';
import { once } from '../../base/kept.ts';
import { type KnownPanel, panelsThatFit } from './panel-fit.ts';
import { isKnownWord, type LabelMeaning, labelWords, meanings } from './panel-label.ts';
import type { KerbWord, Sense } from './panel-sense.ts';
import { vocabulary } from './panel-vocabulary.ts';
import type { Panel } from './template.ts';

/** Why nearside, offside, driver and passenger are not taken for left or right, and what to write. */
export const kerbHint = (word: KerbWord): string => {
  const means = {
    nearside: 'nearside means the kerb side, which depends on the country',
    offside: 'offside means the side away from the kerb, which depends on the country',
    driver: 'which side is the driver’s depends on the country',
    passenger: 'which side is the passenger’s depends on the country',
  };
  const say = word === 'nearside' || word === 'offside' ? ', or say which with --nearside' : '';
  return `${means[word]}: write left or right${say}`;
};

/** What to do about a label that leaves several panels open: some reasons say themselves what to write. */
export const openHint = (why: string, label: string): string =>
  `${why}${/: write /u.test(why) ? '; or' : ': write the panel in full, or'} --panel-names "${label}=PANEL" says which it is`;

/** What the label leaves open, in words. */
export function whyUndecided(
  panels: readonly KnownPanel[],
  fitting: readonly Panel[],
  words: readonly string[],
): string {
  if (words.includes('r')) return '"r" may mean right or rear: write the word';
  const read = panels
    .filter(({ panel }) => fitting.includes(panel))
    .map((known) => known.meanings[0]);
  const differ = (key: 'part' | 'end' | 'side') => new Set(read.map((m) => m?.[key])).size > 1;
  if (differ('part')) return 'it may mean panels of more than one kind';
  const open = [
    ...(differ('end') ? ['front or rear'] : []),
    ...(differ('side') ? ['left or right'] : []),
  ];
  return open.length === 0 ? 'several panels fit it' : `it does not say ${open.join(', nor ')}`;
}

const isFiller = (senses: readonly Sense[]): boolean =>
  senses.every((sense) => Object.keys(sense).length === 0);

/** Words worth correcting a misspelling to: long enough to tell, and with something to say. */
const spellings = once(() =>
  [...vocabulary()]
    .filter(([word, senses]) => word.length > 3 && !isFiller(senses))
    .map(([word]) => word),
);

/**
 * The name of the one panel that was probably meant, if one can be told. A word too many is forgiven (`left
 * bonnet`); a panel at another end or on another side is another panel, and never named (`rear right door` of a
 * car with two).
 */
export function suggestionFor(
  panels: readonly KnownPanel[],
  words: readonly string[],
  named: readonly LabelMeaning[],
): string | undefined {
  const only = (said: readonly LabelMeaning[], among = panels): string | undefined => {
    const fitting = panelsThatFit(among, said);
    return fitting.length === 1 ? fitting[0]?.name : undefined;
  };
  const mended = words.map((word) =>
    isKnownWord(word) ? word : (closest(word, spellings()) ?? word),
  );
  const without = (key: 'side' | 'end') =>
    panels.filter((panel) => panel.meanings.every((meaning) => meaning[key] === undefined));
  const near =
    only(meanings(mended).filter(({ part }) => part !== undefined)) ??
    only(
      named.map(({ side: _, kerb: __, ...rest }) => rest),
      without('side'),
    ) ??
    only(
      named.map(({ end: _, kerb: __, ...rest }) => rest),
      without('end'),
    );
  if (near !== undefined || named.length > 0) return near;
  return closestName(panels, words.join(' ')) ?? only(oneWordSays(mended));
}

/** `bonnet scoop`: what the one known word says, where it names a part and nothing speaks against it. */
function oneWordSays(words: readonly string[]): readonly LabelMeaning[] {
  const [only, ...others] = words.filter(isKnownWord);
  return only === undefined || others.length > 0 || only.length <= 3
    ? []
    : meanings([only]).filter(({ part }) => part !== undefined);
}

function closestName(panels: readonly KnownPanel[], label: string): string | undefined {
  const names = new Map(
    panels.flatMap(({ panel }) =>
      [panel.id, panel.name].map((text) => [labelWords(text).join(' '), panel.name]),
    ),
  );
  const near = closest(label, names.keys());
  return near === undefined ? undefined : names.get(near);
}
