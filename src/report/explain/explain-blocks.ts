/** Explanations as a page: one word may mean several things, each under its own heading. */
import { figure } from '../../base/rounding.ts';
import type { Explained } from '../../tasks/explain/explain.ts';
import type { ExplainedNumber, Explanation, TopicKind } from '../../tasks/explain/explanation.ts';
import { column, figures } from '../columns.ts';
import { joined } from '../facts.ts';
import { type Block, cell, type Facts, gap, list, paragraph, title } from '../model.ts';
import { byVerbose, type PageOptions } from '../page-options.ts';

/** More defaults than this under one beginning are listed a line each. */
const FEW = 3;

export function explainBlocks(explained: readonly Explained[]): readonly Block[] {
  const pages = explained.flatMap(({ word, topics }) =>
    topics.length > FEW && topics.every(({ kind }) => kind === 'default')
      ? [defaultList(word ?? '', topics)]
      : topics.map(topicBlocks),
  );
  return pages.flatMap((page, i) => (i === 0 ? page : [gap, ...page]));
}

function topicBlocks({
  kind,
  id,
  also,
  meaning,
  details,
  number,
  example,
}: Explanation): readonly Block[] {
  return [
    title(`${id} (${kind})`),
    paragraph(null, inSentences(meaning)),
    ...(number === null ? [] : numberBlocks(number)),
    ...details.map(({ label, text }) => paragraph(label, inSentences(text))),
    ...(example === null ? [] : exampleBlocks(example)),
    ...(also.length === 0 ? [] : [paragraph('Also', also.join(', '))]),
  ];
}

/** Words of ours that no file has a part in. */
const inSentences = (text: string): Facts => joined(text.split(/(?<=\.) (?=\p{Lu})/u), ' ');

function numberBlocks(number: ExplainedNumber): readonly Block[] {
  const { formula, used, basis, source, range, unit, change } = number;
  const [least, most] = range;
  return [
    paragraph('Value', valueText(number)),
    paragraph('Basis', source === '' ? basis : `${basis}: ${source}`),
    ...(formula === '' ? [] : [paragraph('Formula', formula)]),
    paragraph('Used in', used),
    paragraph(
      'To change it',
      `in the shop file, ${change}; from ${figure(least)} to ${withUnit(most, unit)}`,
    ),
  ];
}

const valueText = ({ value, unit, origin, where, builtIn }: ExplainedNumber): string =>
  origin === 'built-in'
    ? `${withUnit(value, unit)}, built-in`
    : `${withUnit(value, unit)}, from ${where}; built-in ${withUnit(builtIn, unit)}`;

/** A pure number has no unit to show. */
const withUnit = (value: number, unit: string): string =>
  unit === '1' ? figure(value) : `${figure(value)}\u00a0${unit}`;

function exampleBlocks({ command, files }: NonNullable<Explanation['example']>): readonly Block[] {
  return [
    paragraph('For example', `leastcut ${command}`),
    ...files.map(({ name, text }) => list(`with ${name}`, text.trimEnd().split('\n'))),
  ];
}

const defaultList = (word: string, topics: readonly Explanation[]): readonly Block[] => [
  title(`${word}: ${topics.length} numbers`),
  {
    kind: 'table',
    columns: [column('id'), figures('value'), column('basis')],
    rows: topics.map(({ id, number }) => [
      cell(id),
      cell(number === null ? '' : figure(number.value)),
      cell(number?.basis ?? ''),
    ]),
  },
  paragraph(null, 'leastcut explain with one of the ids says what it is and how to change it.'),
];

const HEADINGS: readonly (readonly [TopicKind, string])[] = [
  ['word', 'Words of the trade and of measuring'],
  ['heading', 'Headings and other words on the pages'],
  ['condition', 'Conditions of a panel'],
  ['verdict', 'Verdicts'],
  ['defect', 'Defects'],
  ['basis', 'What a number stands on'],
  ['option', 'Options'],
  ['key', 'Keys of settings files'],
  ['value', 'Words that they, or the columns of a page, are set to'],
  ['record key', 'Keys of records (json), also columns of csv'],
  ['column', 'Columns of csv that no key is called'],
  ['diagnostic', 'Errors, warnings and notes'],
  ['remark', 'Codes of a record'],
  ['stage', 'Stages of a job'],
  ['exit code', 'Exit codes'],
];

/** More codes than this are looked up one at a time, not read as a list. */
const MANY = 40;
const SOME = 4;

/** Words are looked for by the alphabet; codes stand in the order of the work. */
const BY_ALPHABET: ReadonlySet<TopicKind> = new Set([
  'word',
  'heading',
  'value',
  'key',
  'record key',
  'column',
]);

const byAlphabet = (ids: readonly string[]): readonly string[] =>
  ids
    .map((id) => ({ id, folded: id.toLowerCase() }))
    .sort((one, other) => (one.folded < other.folded ? -1 : 1))
    .map(({ id }) => id);

/** What can be asked for, where nothing was: every word, of long lists of codes a few unless all are asked for. */
export function topicListBlocks(
  topics: readonly Explanation[],
  { verbose = false, ...options }: Partial<Pick<PageOptions, 'verbose' | 'onPaper'>> = {},
): readonly Block[] {
  const idsOf = (kind: TopicKind): readonly string[] => [
    ...new Set(topics.filter((topic) => topic.kind === kind).map(({ id }) => id)),
  ];
  const listed = (kind: TopicKind): readonly string[] =>
    BY_ALPHABET.has(kind) ? byAlphabet(idsOf(kind)) : idsOf(kind);
  const shownOf = (kind: TopicKind): string => {
    const all = listed(kind);
    return verbose || kind === 'word' || all.length <= MANY
      ? all.join(', ')
      : `${all.length}, as ${all.slice(0, SOME).join(', ')}${byVerbose(' lists them', options)}`;
  };
  return [
    title('What can be explained'),
    paragraph(
      null,
      'leastcut explain WORD says what it means; other words for it are found too. A word may be one of the trade (clear coat), one that stands on a page (may go), a code, an option (--risk-pct), a key with or without its command (survey budget_um), or the id of a number (film.limits).',
    ),
    ...HEADINGS.map(([kind, heading]) => paragraph(heading, shownOf(kind))),
    paragraph('Numbers, by the beginning of their ids', sectionsOf(idsOf('default')).join(', ')),
  ];
}

/** `film.limits (7)`: the first two parts of the ids, with how many there are. */
function sectionsOf(ids: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const id of ids) {
    const parts = id.split('.');
    const beginning = parts.slice(0, parts.length > 2 ? 2 : 1).join('.');
    counts.set(beginning, (counts.get(beginning) ?? 0) + 1);
  }
  return [...counts].map(([beginning, count]) => `${beginning}\u00a0(${count})`);
}
