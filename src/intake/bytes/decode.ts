/**
 * Bytes of an export → text, or a refusal that shows the byte in the way.
 *
 * Which encoding it is stands in `choose-encoding.ts`; what becomes of line ends, twice-encoded
 * letters and the filling at the end, in `text-pieces.ts`. Whatever was repaired or dropped is told.
 */
import { error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { IntakeDecisions } from '../intake-decisions.ts';
import { chooseQuote } from '../rows/single-quotes.ts';
import { createSource, type Source } from '../rows/source.ts';
import type { Totals } from '../statistics/earlier-totals.ts';
import { type Limits, usualLimits } from './limits.ts';
import { tellLostLetters } from './lost-micro.ts';
import { openText } from './text-pieces.ts';

export type GaugeFileText = {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Given in place of bytes: whole vehicles of a long file, cut out and decoded already. */
  readonly piece?: GaugePiece | undefined;
  /** Lines of rows that are not read, as those of a vehicle whose own fault is told already. */
  readonly leftOut?: ReadonlySet<number> | undefined;
};
export type Decoded = {
  readonly source: Source;
  readonly encoding: string;
  /** How the encoding was told where that was not plain, and each repair, in sentences. */
  readonly evidence: readonly string[];
};

/** `decided`: what the first piece of the file decided; undefined for the first. `earlier`: what those before it add up to. */
export type GaugePiece = Decoded & {
  readonly decided: IntakeDecisions | undefined;
  readonly earlier?: Totals;
};

export type DecodeOptions = {
  readonly encoding?: string | undefined;
  readonly limits?: Limits | undefined;
};

export function decode(
  { name, bytes, piece }: GaugeFileText,
  { encoding, limits = usualLimits }: DecodeOptions = {},
): Outcome<Decoded> {
  if (piece !== undefined) return found(piece);
  const opened = openText(name, bytes, { encoding, whole: true, limits });
  if (opened.value === undefined) return refused(...opened.diagnostics);
  const reader = opened.value;
  const read = reader.read(bytes, true);
  if (read.value === undefined) return refused(...read.diagnostics);
  const text = read.value;
  if (text.trim() === '') {
    return refused(
      error('file-empty', `${shownFile(name)} holds no text`, {
        at: { file: name, line: 1, column: 1, length: 1, lineText: '' },
        hint: 'name the file that holds the readings, or export it again',
      }),
    );
  }
  const { quote, evidence: quoted } = chooseQuote(text);
  const source = createSource(name, text, { quote, limits });
  const evidence = [...reader.evidence(), ...quoted];
  return found({ source, encoding: reader.encoding, evidence }, tellLostLetters(source));
}
