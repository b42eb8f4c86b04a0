/**
 * What programs leave behind the text of a file: zero bytes that fill a block, the end-of-file mark
 * Ctrl-Z. At the end they are dropped, and it is said. Inside a file they are refused: the text
 * behind them may be the rest of another file. Zero bytes that fill a name up to the end of its cell become blanks;
 * behind a digit they may have been one.
 */

import { type Diagnostic, error, found, type Outcome, refused } from '../../base/diagnostics.ts';
import { once } from '../../base/kept.ts';
import { countLineEnds } from '../rows/lines.ts';
import { createSource } from '../rows/source.ts';

const [zero, ctrlZ] = ['\0', '\u001a'];
const filling = new RegExp(`[${zero}${ctrlZ}]`, 'u');
const beyondFilling = new RegExp(`[^${zero}${ctrlZ}\\s]`, 'u');

const fillsName = once(() => new RegExp(`(?<=[\\p{L}\\p{M})\\]])${zero}+(?= *[;,\\t|"\\n])`, 'gu'));

export type FileEnd = {
  /** The next part of the text, without what may be the filling at the end. */
  readonly strip: (text: string) => Outcome<string>;
  readonly evidence: () => readonly string[];
};

export function createFileEnd(name: string): FileEnd {
  let lines = 0;
  /** From the line in which the filling starts, once it has. */
  let suspect: { readonly text: string; readonly offset: number } | undefined;
  let filled = 0;
  const withoutFilling = (text: string): string =>
    text.replace(fillsName(), (zeros) => {
      filled += 1;
      return ' '.repeat(zeros.length);
    });
  const strip = (written: string): Outcome<string> => {
    const text = written.includes(zero) ? withoutFilling(written) : written;
    const at = suspect === undefined ? text.search(filling) : 0;
    if (at === -1) {
      lines += lineEndsIn(text);
      return found(text);
    }
    const kept = text.slice(0, at);
    const lineStart = kept.lastIndexOf('\n') + 1;
    const before = suspect ?? { text: kept.slice(lineStart), offset: at - lineStart };
    suspect = { ...before, text: before.text + text.slice(at) };
    lines += lineEndsIn(kept);
    const foreign = beyondFilling.test(text.slice(at));
    return foreign ? refused(inside(name, suspect, lines + 1)) : found(kept);
  };
  const evidence = (): readonly string[] => {
    const end = suspect?.text.slice(suspect.offset) ?? '';
    const zeros = end.split(zero).length - 1;
    return [
      ...(filled > 0 ? [`zero bytes that fill ${filled} names are taken for blanks`] : []),
      ...(zeros > 0 ? [`${zeros} zero ${zeros === 1 ? 'byte' : 'bytes'} at the end dropped`] : []),
      ...(end.includes(ctrlZ) ? ['end-of-file mark (Ctrl-Z) at the end dropped'] : []),
    ];
  };
  return { strip, evidence };
}

const lineEndsIn = (text: string): number => countLineEnds(text, 0, text.length);

function inside(
  name: string,
  { text, offset }: { readonly text: string; readonly offset: number },
  firstLine: number,
): Diagnostic {
  const at = createSource(name, text, { firstLine }).placeAt(offset, 1);
  return text[offset] === zero
    ? error('encoding-unknown', 'byte 0x00 is in no text file', {
        at,
        hint: 'the file is damaged or no text: export it again',
      })
    : error('cell-invalid', 'an end-of-file mark (Ctrl-Z) stands here and text follows it', {
        at,
        hint: 'are two files joined here? take them apart, or delete the mark',
      });
}
