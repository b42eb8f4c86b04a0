/**
 * Notes that one line spoils: most lines are a known panel and its readings, and this one is not. It is refused
 * where it stands, in its own words.
 */
import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import { once } from '../../base/kept.ts';
import { hasLetter } from '../../base/letters.ts';
import { kerbWordIn } from '../../film/template/kerb-word.ts';
import { kerbHint, openHint } from '../../film/template/panel-advice.ts';
import { headsSide, sidesHint } from '../header/side-words.ts';
import type { IntakeOptions } from '../intake-options.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { loneLetter, understoodLines } from './free-lines.ts';
import { divisions, saidBy } from './line-meaning.ts';
import { type Piece, wordsOfLine } from './line-words.ts';
import { type Line, mayBeFilm, withoutBullet } from './understood-line.ts';

/** Undefined where the file is no such notes, or every line of it is. */
export function strangeLine(
  source: Source,
  rows: readonly Row[],
  names: PanelNames,
): Diagnostic | undefined {
  const { isPanel } = names;
  const { own = [], outside = [], strange = [] } = understoodLines(source, rows, isPanel) ?? {};
  const letter = strange.length === 0 ? loneLetter(own.flatMap((one) => one ?? [])) : undefined;
  if (letter !== undefined) {
    return error(
      'reading-ambiguous',
      `"${letter.text}" may be a point, or say that the number is an average`,
      {
        at: source.placeAt(letter.at, letter.text.length),
        hint: 'if it is a point, write a number for the letter; an average is no reading: take it out',
      },
    );
  }
  const sound = own.filter(
    (one) => one?.kind === 'readings' && one.readings.some(({ panel }) => panel !== undefined),
  );
  const sides = strange.filter((line) => {
    const open = unknownName(line, isPanel);
    return open !== undefined && openName(open.text, names) !== undefined;
  });
  const others = strange.length - sides.length;
  const line = sides[0] ?? strange[0];
  // `nsf door` is a panel, whichever: notes that have most of their panels by such names are notes.
  const known = sound.length + sides.length;
  const areNotes = known === 0 ? areNamed(outside, strange, isPanel) : known >= others;
  if (line === undefined || !areNotes) return undefined;
  const name = unknownName(line, isPanel);
  const piece = name ?? trimmed(line.text);
  const at = source.placeAt(line.row.start + piece.at, piece.text.length);
  if (name === undefined) {
    const count = smallNumber(line);
    if (count !== undefined) {
      const message = `"${count.text}" may be a reading, or count something`;
      const hint = `if it is a reading, write ${count.text}.0; else take it out of the line`;
      const place = source.placeAt(line.row.start + count.at, count.text.length);
      return error('reading-ambiguous', message, { at: place, hint });
    }
    const said = markedIn(line);
    if (said !== undefined) {
      const place = source.placeAt(line.row.start + said.at, said.text.length);
      return error('reading-ambiguous', `"${said.text}" ${said.why}`, {
        at: place,
        hint: said.hint,
      });
    }
    const message = `"${piece.text}" is not a panel and its readings, as other lines are`;
    return error('reading-not-a-number', message, {
      at,
      hint: 'correct the line, or take it out if it is no reading',
    });
  }
  if (name.text.split(/\s+/u).some((word) => unsure.has(word.toLowerCase()))) {
    const message = `"${name.text}" leaves open what the reading is`;
    return error('reading-ambiguous', message, {
      at,
      hint: 'write one number, as the gauge showed it',
    });
  }
  const isUnderSide = rows.some((row) => headsSide(lineFrom(source.text, row.start)));
  return unknownPanel(name.text, at, names, isUnderSide);
}

/** What is known of a name: whether it is a panel’s, and which panels it leaves open. */
type PanelNames = Pick<IntakeOptions, 'isPanel' | 'leftOpen'>;

function unknownPanel(
  name: string,
  at: Place,
  names: PanelNames,
  isUnderSide: boolean,
): Diagnostic {
  const remedy = `--panel-names "${name}=PANEL" says which panel it is`;
  const open = openName(name, names);
  if (open !== undefined) {
    const { may, why } = open;
    // One name for both sides would put them on one panel.
    const hint = isUnderSide ? sidesHint : openHint(why, name);
    return error('panel-ambiguous', `"${name}" may be ${may}`, { at, hint });
  }
  const [panel] =
    [...divisions({ text: name, at: 0 })].find(([one]) => names.isPanel(one.text)) ?? [];
  return error('panel-unknown', `"${name}" is no panel that any template has`, {
    at,
    hint:
      panel === undefined
        ? `write the name of a panel; or ${remedy}`
        : `a point behind a panel is a number or a place, "${panel.text} 1" or "${panel.text} left"; or ${remedy}`,
  });
}

/** The panels that a name leaves open, and why; a side to the kerb until somebody says which it is. */
function openName(
  name: string,
  { leftOpen }: PanelNames,
): { readonly may: string; readonly why: string } | undefined {
  const open = leftOpen?.(name);
  const kerb = kerbWordIn(name);
  const why = kerb === undefined ? undefined : kerbHint(kerb);
  if (why !== undefined && (open === undefined || open.why === why)) {
    return { may: 'left or right', why };
  }
  return open === undefined ? undefined : { may: open.names.join(', '), why: open.why };
}

const marks = once(
  () =>
    [
      {
        pattern: /\d[\d.,]*\s?\?+/u,
        why: 'is doubted, and nothing says whether the reading counts',
        hint: 'take the mark out, or the reading',
      },
      {
        pattern: /\d[\d.,]*\+(?![\d\p{L}])/u,
        why: 'may be more than the gauge could show, or a reading with a mark',
        hint: 'write the number alone if the gauge showed it, else OL',
      },
      {
        pattern:
          /\d[\d.,]*\s(?:\p{L}+\s){0,2}(?:chips|stonechips|scratches|scuffs|dents|marks|kratzer|dellen|steinschläge|rayures)/iu,
        why: 'may be a reading and what was seen there, or count something',
        hint: 'if it is a reading, write its unit behind it; else take it out of the line',
      },
      {
        pattern: /[([]?\bwas\s+\d[\d.,]*[)\]]?/iu,
        why: 'may be what a reading was before, and nothing says of which',
        hint: 'leave the one number that counts, and take the other out',
      },
    ] as const,
);

/** What stands at a number of a line and makes it doubtful. */
function markedIn({
  text,
}: Line): (Piece & Omit<ReturnType<typeof marks>[number], 'pattern'>) | undefined {
  for (const { pattern, why, hint } of marks()) {
    const match = pattern.exec(text);
    if (match !== null) return { text: match[0], at: match.index, why, hint };
  }
  return undefined;
}

/** Before a number: two readings of which one holds, or none that was read off. */
const unsure: ReadonlySet<string> = new Set(
  'or oder ou about approx approximately around circa ca maybe perhaps etwa env environ'.split(' '),
);

/** `nsf 112 109`, `osf 118 117`: names that no panel has and their films, from the first line on, with no mark of a table. */
function areNamed(
  lines: readonly Line[],
  strange: readonly Line[],
  isPanel: (label: string) => boolean,
): boolean {
  return (
    strange.length > 1 &&
    strange[0] === lines[0] &&
    strange.every((line) => {
      const [first] = wordsOfLine(withoutBullet(line.text))?.numbers ?? [];
      const name = unknownName(line, isPanel);
      return name !== undefined && name.at === first?.words.at && !/[;\t|]/u.test(line.text);
    })
  );
}

/** The one whole number among readings that is too small for a film in µm: `4` of `roof 4.0 3.9 4`. */
function smallNumber({ text }: Line): Piece | undefined {
  const numbers = wordsOfLine(withoutBullet(text))?.numbers ?? [];
  const [small, second] = numbers.filter((one) => !mayBeFilm(one));
  const isWhole = small !== undefined && /^\d$/.test(small.number.text);
  return isWhole && second === undefined && numbers.length > 1 ? small.number : undefined;
}

/** The words before a number of the line that name no panel and no point, where they may be a name. */
function unknownName({ text }: Line, isPanel: (label: string) => boolean): Piece | undefined {
  const numbers = wordsOfLine(withoutBullet(text))?.numbers ?? [];
  const words = numbers.find((one) => saidBy(one.words, isPanel) === undefined)?.words;
  return words !== undefined && hasLetter(words.text) && !/["=;\t|]/u.test(words.text)
    ? words
    : undefined;
}

function trimmed(text: string): Piece {
  const own = text.trim();
  return { text: own, at: text.indexOf(own) };
}
