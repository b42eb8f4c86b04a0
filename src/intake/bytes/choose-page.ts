/**
 * The code page of a file that is not Unicode, concluded from its words or not at all.
 *
 * Every page spells the words that hold bytes beyond ASCII in its own way. A page that spells one
 * of them with signs inside, or as no language writes, is out (`plain-spelling.ts`). If those left
 * agree on every letter there is nothing to choose; else the one that makes more words of the
 * trade is taken, and where none makes more the file is refused. Words that stand only in comments
 * and notes are left aside where all of them together settle nothing: no reading depends on them.
 */
import {
  type CodePage,
  decodeAs,
  eastAsianPages,
  singleBytePages,
  westernPage,
} from './code-pages.ts';
import { type HighWord, highWords } from './high-bytes.ts';
import { alphabetOf, judgeSpelling } from './plain-spelling.ts';
import { alphabetOfWord } from './spelled-words.ts';
import { sequenceLength } from './utf8.ts';

export type PageChoice =
  | { readonly kind: 'page'; readonly page: CodePage; readonly evidence: string }
  /** Two pages spell a word differently and nothing decides. */
  | { readonly kind: 'open'; readonly word: HighWord; readonly spellings: readonly PageSpelling[] }
  /** No page makes plain words of all; the first word that the last of them fails at. */
  | { readonly kind: 'none'; readonly word: HighWord | undefined; readonly fitsBefore: boolean };
export type PageSpelling = { readonly page: CodePage; readonly text: string };

type Candidate = {
  readonly page: CodePage;
  /** Each word as this page spells it, in the order of the words. */
  readonly spelled: readonly string[];
  /** Those of them that are words of the trade. */
  readonly known: readonly string[];
};

const aside = 'bytes beyond ASCII stand in comments and notes, where no value depends on them';

export function choosePage(bytes: Uint8Array): PageChoice {
  const words = highWords(bytes);
  const deciding = words.filter(({ decides }) => decides);
  const byAll = settle(words, bytes);
  if (byAll.kind === 'page' || deciding.length === words.length) return byAll;
  if (deciding.length === 0) {
    return { kind: 'page', page: westernPage, evidence: `${westernPage.name}: all ${aside}` };
  }
  const byDeciding = settle(deciding, bytes);
  if (byDeciding.kind !== 'page') return byDeciding;
  return { ...byDeciding, evidence: `${byDeciding.evidence}; other ${aside}` };
}

function settle(words: readonly HighWord[], bytes: Uint8Array): PageChoice {
  const trials = singleBytePages.map((page) => ({ page, ...spell(page, words) }));
  const candidates = [
    ...trials.filter((one) => one.spelled.length === words.length && isOwn(one)),
    ...eastAsianPages.flatMap((page) => eastAsian(page, words, bytes) ?? []),
  ];
  const best = usualOf(
    mostOf(
      mostOf(candidates, ({ known }) => known.length),
      nativeWords,
    ),
  );
  const [first] = best;
  if (first === undefined) {
    const furthest = Math.max(...trials.map(({ spelled }) => spelled.length));
    return { kind: 'none', word: words[furthest], fitsBefore: furthest > 0 };
  }
  const differs = words.findIndex((_, k) =>
    best.some((one) => one.spelled[k] !== first.spelled[k]),
  );
  const word = words[differs];
  if (word !== undefined) {
    const spellings = best.map(({ page, spelled }) => ({ page, text: spelled[differs] ?? '' }));
    return { kind: 'open', word, spellings };
  }
  return { kind: 'page', page: first.page, evidence: evidenceOf(first) };
}

const isOwn = (one: Candidate): boolean => one.page.isRare !== true || nativeWords(one) > 0;

/** Of those that make as many words, the usual pages; a rare one must make more. */
function usualOf(candidates: readonly Candidate[]): readonly Candidate[] {
  const usual = candidates.filter(({ page }) => page.isRare !== true);
  return usual.length > 0 ? usual : candidates;
}

function mostOf(candidates: readonly Candidate[], count: (one: Candidate) => number) {
  const most = Math.max(...candidates.map(count));
  return candidates.filter((one) => count(one) === most);
}

/** Words of the trade in the languages a page was made for: `Capó` speaks for ñ against ń. */
const nativeWords = ({ page, known }: Candidate): number =>
  known.filter((text) => alphabetOf(text) === page.alphabet).length;

function evidenceOf({ page, spelled, known }: Candidate): string {
  const [word = spelled[0] ?? ''] = known;
  const why = known.length > 0 ? '' : ', and no other page makes other plain words of them';
  return `${titled(page)}: its letters for the bytes beyond ASCII make "${word}"${why}`;
}

/** People know the pages of DOS by that name, and by the æ that other programs show for their µ. */
const titled = ({ name }: CodePage): string =>
  /^(?:cp|ibm)\d+$/u.test(name) ? `${name}, a page of DOS` : name;

/** The words up to the first that this page cannot mean. */
function spell(page: CodePage, words: readonly HighWord[]): Omit<Candidate, 'page'> {
  const spelled: string[] = [];
  const known: string[] = [];
  let lone: number | undefined;
  for (const { bytes } of words) {
    const text = decodeAs(page, bytes);
    if (text === undefined) break;
    const spelling = judgeSpelling(text);
    if (spelling === 'fault') break;
    // A pair that is UTF-8 is a letter and a sign here: two encodings in one file, unless it is a word.
    if (spelling !== 'known' && holdsUtf8(bytes)) break;
    if (spelling === 'known') known.push(text);
    if (spelling === 'lone') lone ??= spelled.length;
    spelled.push(text);
  }
  // A letter by itself is believed where the page makes words of the trade as well.
  return { spelled: known.length > 0 ? spelled : spelled.slice(0, lone), known };
}

/** In these pages a letter may end with an ASCII byte: the text is decoded whole, and words looked for. */
function eastAsian(
  page: CodePage,
  words: readonly HighWord[],
  bytes: Uint8Array,
): Candidate | undefined {
  const text = decodeAs(page, bytes);
  // Characters for private use, and controls, are no text.
  if (text === undefined || /[\u0080-\u009f\ue000-\uf8ff]/u.test(text)) return undefined;
  const known = new Set<string>();
  for (const [word] of text.matchAll(/[\p{L}\p{M}]+/gu)) {
    const plain = word.normalize('NFKC');
    if (alphabetOfWord(plain) === 'east-asian') known.add(plain);
  }
  if (known.size === 0) return undefined;
  return { page, spelled: words.map(() => ''), known: [...known] };
}

export function holdsUtf8(bytes: Uint8Array): boolean {
  for (let at = 0; at < bytes.length; at += 1) {
    if (sequenceLength(bytes, at) > 1) return true;
  }
  return false;
}
