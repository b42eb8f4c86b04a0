/**
 * Notes that one line spoils: most lines are a known panel and its readings, and this one is not. It is refused
 * where it stands, in its own words.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { hasLetter } from '../../base/letters.ts';
import { kerbHint } from '../../film/template/panel-advice.ts';
import { readLabel } from '../../film/template/panel-names.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { type Line, understoodLines, withoutBullet } from './free-lines.ts';
import { saidBy } from './line-meaning.ts';
import { type Piece, wordsOfLine } from './line-words.ts';

/** Undefined where the file is no such notes, or every line of it is. */
export function strangeLine(
  source: Source,
  rows: readonly Row[],
  isPanel: (label: string) => boolean,
): Diagnostic | undefined {
  const { own = [], strange = [] } = understoodLines(source, rows, isPanel) ?? {};
  const sound = own.filter(
    (one) => one?.kind === 'readings' && one.readings.some(({ panel }) => panel !== undefined),
  );
  const [line] = strange;
  if (line === undefined || sound.length < strange.length) return undefined;
  const name = unknownName(line, isPanel);
  const piece = name ?? trimmed(line.text);
  const at = source.placeAt(line.row.start + piece.at, piece.text.length);
  if (name === undefined) {
    const message = `"${piece.text}" is not a panel and its readings, as other lines are`;
    return error('reading-not-a-number', message, {
      at,
      hint: 'correct the line, or take it out if it is no reading',
    });
  }
  const kerb = readLabel(name.text).meanings.find((meaning) => meaning.kerb !== undefined)?.kerb;
  const remedy = `--panel-names "${name.text}=PANEL" says which panel it is`;
  return kerb === undefined
    ? error('panel-unknown', `"${name.text}" is no panel that any template has`, {
        at,
        hint: `write the name of a panel; or ${remedy}`,
      })
    : error('panel-ambiguous', `"${name.text}" may be left or right`, {
        at,
        hint: `${kerbHint(kerb)}; or ${remedy}`,
      });
}

/** The words before a number of the line that name no panel and no point, where they may be a name. */
function unknownName({ text }: Line, isPanel: (label: string) => boolean): Piece | undefined {
  const numbers = wordsOfLine(withoutBullet(text))?.numbers ?? [];
  const words = numbers.find((one) => saidBy(one.words, isPanel) === undefined)?.words;
  return words !== undefined && hasLetter(words.text) && !/["=]/u.test(words.text)
    ? words
    : undefined;
}

function trimmed(text: string): Piece {
  const own = text.trim();
  return { text: own, at: text.indexOf(own) };
}
