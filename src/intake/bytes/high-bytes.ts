/**
 * The words of a file that hold bytes beyond ASCII: what a code page is judged by.
 *
 * A word is a run of ASCII letters, digits and bytes from 0x80; in every single-byte page it ends
 * at the same places. A word that stands only behind a `#` or in a column of notes decides nothing
 * about a reading: it is kept apart.
 */
import { once } from '../../base/kept.ts';
import { wordsIn } from '../cells/word-list.ts';
import { gaugeVocabulary } from '../header/gauge-vocabulary.ts';

export type HighWord = {
  readonly bytes: Uint8Array;
  /** Offset of the word, and of its first byte from 0x80. */
  readonly offset: number;
  readonly highAt: number;
  /** False where it stands in comments and notes only. */
  readonly decides: boolean;
};

/** Different words looked at: a file in one language has no more that matter. */
const mostWords = 2_000;

const isWordByte = (byte: number): boolean =>
  byte >= 0x80 ||
  (byte >= 0x30 && byte <= 0x39) ||
  (byte >= 0x41 && byte <= 0x5a) ||
  (byte >= 0x61 && byte <= 0x7a);

export function highWords(bytes: Uint8Array): readonly HighWord[] {
  const words = new Map<string, HighWord>();
  const isNote = noteTest(bytes);
  for (let at = 0; at < bytes.length && words.size < mostWords; at += 1) {
    if ((bytes[at] ?? 0) < 0x80) continue;
    let start = at;
    while (start > 0 && isWordByte(bytes[start - 1] ?? 0)) start -= 1;
    let end = at;
    while (end < bytes.length && isWordByte(bytes[end] ?? 0)) end += 1;
    const word = bytes.subarray(start, Math.min(end, start + 200));
    const key = keyOf(word);
    const before = words.get(key);
    if (before === undefined || !before.decides) {
      const decides = !isNote(start);
      words.set(
        key,
        before === undefined || decides
          ? { bytes: word, offset: start, highAt: at, decides }
          : before,
      );
    }
    at = end;
  }
  return [...words.values()];
}

const keyOf = (bytes: Uint8Array): string => String.fromCharCode(...bytes);

const noteWords = once((): ReadonlySet<string> => new Set(wordsIn(gaugeVocabulary.note)));
const delimiterBytes = [',', ';', '\t', '|'].map((mark) => mark.charCodeAt(0));
const lineFeed = 10;
const carriageReturn = 13;
const isLineEnd = (byte: number | undefined): boolean =>
  byte === lineFeed || byte === carriageReturn;

/** Whether an offset stands in a comment or under a head that says "note". */
function noteTest(bytes: Uint8Array): (offset: number) => boolean {
  const column = noteColumn(bytes);
  return (offset) => {
    let start = offset;
    while (start > 0 && !isLineEnd(bytes[start - 1])) start -= 1;
    if (bytes[start] === 0x23) return true;
    if (column === undefined || start <= column.line) return false;
    const before = bytes.subarray(start, offset);
    // Behind a quote, a delimiter may be part of a cell.
    const quoted = before.subarray(0, before.length - 1).includes(0x22);
    const index = before.filter((byte) => byte === column.delimiter).length;
    return !quoted && index === column.index;
  };
}

type NoteColumn = { readonly line: number; readonly delimiter: number; readonly index: number };

/** The column of notes in the first line that names one. */
function noteColumn(bytes: Uint8Array): NoteColumn | undefined {
  let start = 0;
  for (let line = 0; line < 60 && start < bytes.length; line += 1) {
    let end = start;
    while (end < bytes.length && !isLineEnd(bytes[end])) end += 1;
    const text = keyOf(bytes.subarray(start, Math.min(end, start + 2_000))).toLowerCase();
    for (const delimiter of delimiterBytes) {
      const cells = text.split(String.fromCharCode(delimiter));
      const index = cells.findIndex((cell) =>
        noteWords().has(cell.replace(/^[\s"]+|[\s"]+$/gu, '')),
      );
      if (index !== -1 && cells.length > 1) return { line: start, delimiter, index };
    }
    start = end + 1;
  }
  return undefined;
}
