/**
 * Bytes of a file, as they come → its text, whole lines at a time.
 *
 * The encoding is chosen once, from a sample or the whole; what follows must keep to it. Line ends
 * CRLF and CR become LF. However the bytes are cut, the text is the same.
 */
import { error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { lineEndsLost } from '../rows/row-faults.ts';
import { shownLine } from '../rows/source.ts';
import { brokenText, chooseEncoding, type EncodingChoice } from './choose-encoding.ts';
import { bytesToUnit, decodeAs } from './code-pages.ts';
import { createFileEnd } from './file-end.ts';
import { type Limits, usualLimits } from './limits.ts';
import { afterLastLineEnd, createLineEnds } from './line-ends.ts';
import { type Repairs, repairSentences, repairTwiceEncoded } from './mojibake.ts';

export type TextReader = {
  readonly encoding: string;
  /** The text of the next bytes up to the last line end; with `last`, all that is left. */
  readonly read: (bytes: Uint8Array, last: boolean) => Outcome<string>;
  /** How the encoding was told, and what was repaired and dropped so far. */
  readonly evidence: () => readonly string[];
};

export type TextOptions = {
  readonly encoding?: string | undefined;
  /** Whether the sample is all of the file. */
  readonly whole: boolean;
  readonly limits?: Limits | undefined;
};

/** Decides on the encoding; the sample itself is then read like the rest. */
export function openText(
  name: string,
  sample: Uint8Array,
  { encoding, whole, limits = usualLimits }: TextOptions,
): Outcome<TextReader> {
  const choice = chooseEncoding(name, sample, encoding, whole);
  if (choice.value === undefined) return refused(...choice.diagnostics);
  return found(createTextReader(name, choice.value, limits));
}

function createTextReader(
  name: string,
  choice: EncodingChoice,
  { longestRow }: Limits,
): TextReader {
  const lineEnds = createLineEnds();
  const fileEnd = createFileEnd(name);
  const repairs: Repairs = new Map();
  let markLeft = choice.markLength;
  let started = false;
  /** What follows the last line end: no line is decoded before it is whole. */
  let held = new Uint8Array();

  const read = (bytes: Uint8Array, last: boolean): Outcome<string> => {
    const body = joined(held, bytes.subarray(markLeft));
    markLeft = Math.max(0, markLeft - bytes.length);
    const cut = last ? body.length : afterLastLineEnd(body, bytesToUnit(choice.page));
    held = body.slice(cut);
    const linesBefore = lineEnds.count();
    const decoded = decodeAs(choice.page, body.subarray(0, cut));
    if (decoded === undefined) {
      return refused(brokenText(name, choice, body.subarray(0, cut), linesBefore));
    }
    const unified = lineEnds.unify(decoded);
    const long = longLine(unified, longestRow);
    if (long !== undefined) return refused(tooLong(name, linesBefore, long, longestRow));
    if (held.length > mostBytes * longestRow) {
      const line = decodeAs(choice.page, held.subarray(0, longestRow)) ?? '';
      return refused(tooLong(name, lineEnds.count(), { before: 0, line }, longestRow));
    }
    const text = repairTwiceEncoded(unified, repairs);
    const marked = started ? text : text.replace(/^\ufeff+/u, '');
    started ||= cut > 0;
    return fileEnd.strip(marked);
  };

  return {
    encoding: choice.encoding,
    read,
    evidence: () => [
      ...choice.evidence,
      ...repairSentences(repairs),
      ...lineEnds.evidence(),
      ...fileEnd.evidence(),
    ],
  };
}

/** Bytes of a character at most. */
const mostBytes = 4;

export function joined(before: Uint8Array, after: Uint8Array): Uint8Array {
  if (before.length === 0) return after;
  const both = new Uint8Array(before.length + after.length);
  both.set(before);
  both.set(after, before.length);
  return both;
}

type LongLine = { readonly before: number; readonly line: string };

/** The first line longer than that, and how many stand before it; found in leaps, not line by line. */
function longLine(text: string, longest: number): LongLine | undefined {
  for (let at = 0; at + longest < text.length; ) {
    const lineEnd = text.lastIndexOf('\n', at + longest);
    if (lineEnd < at) {
      const line = text.slice(at, at + longest);
      return { before: text.slice(0, at).split('\n').length - 1, line };
    }
    at = lineEnd + 1;
  }
  return undefined;
}

const tooLong = (name: string, linesBefore: number, { before, line }: LongLine, longest: number) =>
  error('row-too-long', `the line goes on for more than ${longest} characters`, {
    at: { file: name, line: linesBefore + before + 1, column: 1, length: 1, ...shownLine(line, 1) },
    hint: lineEndsLost,
  });
