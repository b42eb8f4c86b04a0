/**
 * The encoding of a file: by option, by its byte order mark, by zero bytes in pairs, by escape sequences, as UTF-8 if it
 * is that from first to last, else the code page that its words prove. Without proof, none.
 */
import { type Diagnostic, error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { shownLine } from '../rows/source.ts';
import { bytePlace } from './byte-place.ts';
import { choosePage, holdsUtf8, type PageChoice } from './choose-page.ts';
import { bytesToUnit, type CodePage, pageDecoder, pageNamed, pageNames } from './code-pages.ts';
import { otherFile } from './other-file.ts';
import { firstForeignByte, unfinishedTail } from './utf8.ts';
import { zeroPattern } from './utf16.ts';

export type EncodingChoice = {
  readonly page: CodePage;
  /** Name in records: `utf-8-bom` tells of the mark. */
  readonly encoding: string;
  /** Bytes of the mark at the start, no part of the text. */
  readonly markLength: number;
  readonly evidence: readonly string[];
};

type Mark = { readonly name: string; readonly encoding: string; readonly bytes: readonly number[] };
const marks: readonly Mark[] = [
  { name: 'utf-8', encoding: 'utf-8-bom', bytes: [0xef, 0xbb, 0xbf] },
  // Before the mark of UTF-16, which it begins with.
  { name: 'utf-32le', encoding: 'utf-32le', bytes: [0xff, 0xfe, 0, 0] },
  { name: 'utf-32be', encoding: 'utf-32be', bytes: [0, 0, 0xfe, 0xff] },
  { name: 'utf-16le', encoding: 'utf-16le', bytes: [0xff, 0xfe] },
  { name: 'utf-16be', encoding: 'utf-16be', bytes: [0xfe, 0xff] },
  { name: 'gb18030', encoding: 'gb18030', bytes: [0x84, 0x31, 0x95, 0x33] },
];

const saveAsUtf8 = 'save the file as UTF-8, or name its encoding: --encoding windows-1252';

/** `whole` says whether the bytes are all of the file; else they may end within a character. */
export function chooseEncoding(
  name: string,
  bytes: Uint8Array,
  given: string | undefined,
  whole: boolean,
): Outcome<EncodingChoice> {
  const other = otherFile(name, bytes);
  if (other !== undefined) return refused(other);
  const mark = marks.find((one) => one.bytes.every((byte, k) => bytes[k] === byte));
  if (given !== undefined) return asGiven(name, given, mark);
  if (mark !== undefined) return ofPage(mark.name, mark.encoding, mark.bytes.length, []);
  const zeros = zeroPattern(bytes);
  if (zeros !== undefined) return ofPage(zeros.name, zeros.name, 0, [zeros.evidence]);
  const shifts = bytes.indexOf(escapeSign) === -1 ? undefined : shiftedKanji(bytes);
  if (shifts !== undefined) return ofPage('iso-2022-jp', 'iso-2022-jp', 0, [shifts]);
  const foreign = firstForeignByte(bytes);
  const cut = whole ? 0 : unfinishedTail(bytes);
  if (foreign >= bytes.length - cut) return ofPage('utf-8', 'utf-8', 0, []);
  const choice = choosePage(bytes);
  if (choice.kind === 'page')
    return ofPage(choice.page.name, choice.page.name, 0, [choice.evidence]);
  return refused(undecided(name, bytes, foreign, choice));
}

const escapeSign = 0x1b;

/** ISO 2022-JP is ASCII throughout: an escape sequence begins each run of kanji and another one ends it. */
function shiftedKanji(bytes: Uint8Array): string | undefined {
  const page = pageNamed('iso-2022-jp');
  const count = (...end: readonly number[]): number =>
    bytes.filter(
      (byte, at) => byte === escapeSign && end.every((one, k) => bytes[at + 1 + k] === one),
    ).length;
  const begun = count(0x24, 0x42) + count(0x24, 0x40);
  const ended = count(0x28, 0x42) + count(0x28, 0x4a);
  if (begun === 0 || ended < begun || page === undefined) return undefined;
  const text = pageDecoder(page).next(bytes, true);
  if (text === undefined || text.includes('\u001b')) return undefined;
  return `iso-2022-jp: ${begun} escape sequences begin kanji and as many end them`;
}

function ofPage(
  name: string,
  encoding: string,
  markLength: number,
  evidence: readonly string[],
): Outcome<EncodingChoice> {
  const page = pageNamed(name);
  if (page === undefined) throw new Error(`no code page "${name}"`);
  return found({ page, encoding, markLength, evidence });
}

function asGiven(name: string, given: string, mark: Mark | undefined): Outcome<EncodingChoice> {
  const page = pageNamed(given);
  const at = { file: name, line: 1, column: 1, length: 1 };
  if (page === undefined) {
    const hint = `one of ${pageNames.join(', ')}`;
    return refused(
      error('encoding-unknown', `"${given}" is no encoding that is read`, { at, hint }),
    );
  }
  const [wide = ''] = /^utf-?(?:16|32)$/iu.exec(given.trim()) ?? [];
  const ofMark = wide !== '' && mark?.name.startsWith(`utf-${wide.slice(-2)}`) === true;
  if (mark !== undefined && mark.name !== page.name && !ofMark) {
    const message = `the file starts with the byte order mark of ${mark.name}, asked for is ${page.name}`;
    return refused(error('encoding-unknown', message, { at, hint: 'leave --encoding out' }));
  }
  const read = mark?.name ?? page.name;
  return ofPage(read, read, mark?.bytes.length ?? 0, [`${read} as asked`]);
}

function undecided(
  name: string,
  bytes: Uint8Array,
  foreign: number,
  choice: Exclude<PageChoice, { kind: 'page' }>,
): Diagnostic {
  if (choice.kind === 'open') {
    const { word, spellings } = choice;
    const texts = new Map(
      spellings.map(({ page, text }) => [text, page]).reverse() as [string, CodePage][],
    );
    const offers = [...texts].reverse();
    const ways = offers.map(([text, page]) =>
      text === '' ? page.name : `"${text}" in ${page.name}`,
    );
    const hint = `say which it is: ${offers.map(([, page]) => `--encoding ${page.name}`).join(' or ')}`;
    const message = `byte ${hex(bytes, word.highAt)} is not UTF-8: the word is ${ways.join(', ')}`;
    return error('encoding-unknown', message, { at: bytePlace(name, bytes, word.highAt), hint });
  }
  const at = bytePlace(name, bytes, foreign);
  if (foreign + unfinishedTail(bytes) === bytes.length && unfinishedTail(bytes) > 0) {
    const message = `byte ${hex(bytes, foreign)} begins a character of UTF-8 and the file ends within it`;
    return error('encoding-unknown', message, {
      at,
      hint: 'is the file cut short? export it again',
    });
  }
  const before = lineWithUtf8(bytes, foreign);
  if (before !== undefined) {
    const message = `byte ${hex(bytes, foreign)} is not UTF-8, but line ${before} is: the file is in two encodings`;
    return error('encoding-unknown', message, { at, hint: mendTheLine });
  }
  if (choice.fitsBefore && choice.word !== undefined) {
    const { highAt } = choice.word;
    const message = `byte ${hex(bytes, highAt)} fits no code page that the words before it are in: the file is in two encodings`;
    return error('encoding-unknown', message, {
      at: bytePlace(name, bytes, highAt),
      hint: mendTheLine,
    });
  }
  const message = `byte ${hex(bytes, foreign)} is not UTF-8, and no code page makes plain words of the file`;
  return error('encoding-unknown', message, { at, hint: saveAsUtf8 });
}

const mendTheLine = 'export the file again, or write this line anew in the encoding of the others';

/** The line of a character of several bytes that is UTF-8, before a foreign byte or after it. */
function lineWithUtf8(bytes: Uint8Array, foreign: number): number | undefined {
  let line = 1;
  let start = 0;
  for (let at = 0; at <= bytes.length; at += 1) {
    if (at < bytes.length && bytes[at] !== 10) continue;
    const own = bytes.subarray(start, at);
    const part = foreign >= start && foreign < at ? own.subarray(0, foreign - start) : own;
    if (holdsUtf8(part)) return line;
    line += 1;
    start = at + 1;
  }
  return undefined;
}

const hex = (bytes: Uint8Array, at: number): string =>
  `0x${(bytes[at] ?? 0).toString(16).toUpperCase().padStart(2, '0')}`;

/** Bytes that the encoding does not allow, where it was asked for or proved by a mark. */
export function brokenText(
  name: string,
  { page, encoding }: EncodingChoice,
  bytes: Uint8Array,
  linesBefore: number,
): Diagnostic {
  if (page.name === 'utf-8') {
    const foreign = firstForeignByte(bytes);
    const { line = 1, ...place } = bytePlace(name, bytes, foreign);
    const message = `byte ${hex(bytes, foreign)} is not UTF-8`;
    return error('encoding-unknown', message, {
      at: { ...place, line: line + linesBefore },
      hint: saveAsUtf8,
    });
  }
  const good = goodStart(page, bytes);
  const lines = good.split(/\r\n?|\n/u);
  return error('encoding-unknown', `the file does not go on as ${encoding} in this line`, {
    at: {
      ...{ file: name, line: linesBefore + lines.length, column: 1, length: 1 },
      ...shownLine(lines.at(-1) ?? '', 1),
    },
    hint: `is it cut short, or in another encoding? ${saveAsUtf8}`,
  });
}

/** The text before the first bytes that cannot be decoded, by bisection over the length in units. */
function goodStart(page: CodePage, bytes: Uint8Array): string {
  const unit = bytesToUnit(page);
  let [low, high] = [0, Math.ceil(bytes.length / unit)];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (startOf(page, bytes, middle * unit) === undefined) high = middle;
    else low = middle;
  }
  return startOf(page, bytes, low * unit) ?? '';
}

const startOf = (page: CodePage, bytes: Uint8Array, length: number): string | undefined =>
  pageDecoder(page).next(bytes.subarray(0, length), false);
