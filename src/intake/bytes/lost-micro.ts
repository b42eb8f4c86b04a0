/**
 * Letters that were lost before the file came here: U+FFFD, or `?` where the µ of µm stood.
 *
 * What a lost letter was cannot be known: `?m` may have been µm or nm. A Windows pipe writes `?` for
 * every letter its code page lacks; other programs write U+FFFD.
 */
import { type Diagnostic, error, note, warning } from '../../base/diagnostics.ts';
import type { Source } from '../rows/source.ts';

/**
 * The place where a micro sign was lost, for want of a unit an error; where the unit is known from
 * elsewhere a note.
 */
export function tellLostMicro(source: Source, unitKnown: boolean): Diagnostic | undefined {
  const match =
    /(?<![\p{L}\p{N}?\ufffd])(?:\ufffd{1,3}|\?{1,3})m(?![\p{L}\p{N}?])/u.exec(source.text) ??
    /(?<=\d ?)(?:\ufffd{1,3}|\?{1,3})m(?![\p{L}\p{N}?])/u.exec(source.text);
  if (match === null) return undefined;
  const [text] = match;
  const at = source.placeAt(match.index, text.length);
  if (unitKnown) {
    return note(
      'character-lost',
      `the sign before the m was lost in "${text}"; the unit is known`,
      { at },
    );
  }
  const message = `"${text}" is a unit that lost its first letter: a program on the way, or a Windows pipe, could not write it`;
  const hint = 'if the readings are in µm: --reading-unit um; or export the file as UTF-8';
  return error('character-lost', message, { at, hint });
}

/** Other letters that were lost: two names that differ in one look the same. */
export function tellLostLetters(source: Source): readonly Diagnostic[] {
  if (!source.text.includes('\ufffd')) return [];
  const match = /\ufffd+(?!\ufffd|m(?!\p{L}))/u.exec(source.text);
  if (match === null) return [];
  const at = source.placeAt(match.index, 1);
  const message =
    'a letter was lost here before the file was written: names that differed may look the same';
  return [warning('character-lost', message, { at, hint: 'export the file again as UTF-8' })];
}
