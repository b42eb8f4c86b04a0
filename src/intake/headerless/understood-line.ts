/**
 * One line of notes as people type them → what it is: readings, each with what the words before it name; a panel's
 * name alone; a saying about the file; a rule between blocks. Undefined where a word of it is none of these.
 */

import { aboutFile, roleOfKey, sayingOf } from '../beside/sayings.ts';
import { notReading } from '../cells/not-readings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { countsMarks, isRemark } from '../cells/remark-words.ts';
import { splitUnit } from '../cells/unit.ts';
import type { Row } from '../rows/tokens.ts';
import { captionOfLine } from './caption-lines.ts';
import { divisions, isFiller, type Said, saidBy } from './line-meaning.ts';
import { type LineWords, moved, type NumberInLine, type Piece, wordsOfLine } from './line-words.ts';

export type IsPanel = (label: string) => boolean;
export type Line = { readonly row: Row; readonly text: string };
export type Understood =
  | { readonly kind: 'readings'; readonly line: Line; readonly readings: readonly OwnReading[] }
  | {
      readonly kind: 'caption';
      readonly line: Line;
      readonly panel: Piece;
      readonly unit: Piece | undefined;
    }
  /** A unit, a date: read as what it is. A rule between blocks: nothing. */
  | { readonly kind: 'kept' | 'rule'; readonly line: Line };
type OwnReading = Said &
  Pick<NumberInLine, 'number' | 'unit'> & {
    /** What stands behind the numbers of its panel and speaks of the paint. */
    readonly note?: Piece | undefined;
  };

/** Whether a comma without a blank parts two numbers or stands before decimals; undefined where it may do either. */
type Commas = 'between' | 'decimal';
export function commasIn(lines: readonly Line[]): Commas | undefined {
  const marked = lines.flatMap(({ text }) => text.match(/\d+(?:[.,]\d+)*,\d+(?:[.,]\d+)*/gu) ?? []);
  if (marked.length === 0) return 'decimal';
  const parts = marked.map((text) => text.split(','));
  const areFilms = parts.every((own) => own.every((part) => Number(part) >= 20));
  if (parts.some((own) => own.length > 2)) return areFilms ? 'between' : undefined;
  const areDecimals = parts.some(([, part = '']) => part.length === 1 || Number(part) < 20);
  return areDecimals && parts.every(([, part = '']) => part.length < 3) ? 'decimal' : undefined;
}

export function understand(line: Line, commas: Commas, isPanel: IsPanel): Understood | undefined {
  const { row, text } = line;
  if (/^[\s=_*~#+.\-–—]{3,}$/u.test(text)) return { kind: 'rule', line };
  const caption = captionOfLine(text, isPanel);
  if (caption !== undefined) {
    const [panel, unit] = [caption.panel, caption.unit].map((piece) => moved(piece, row.start));
    return panel === undefined ? undefined : { kind: 'caption', line, panel, unit };
  }
  const quantity = quantityOf(text);
  if (quantity === undefined && isKept(line)) return { kind: 'kept', line };
  const words = wordsOfLine(quantity?.rest ?? withoutBullet(text));
  if (words === undefined) return undefined;
  const { numbers, rest } = commas === 'between' ? partedAtCommas(words) : words;
  const readings =
    numbers.length === 0
      ? withoutNumber(rest, isPanel)
      : readingsIn(numbers, rest, isPanel, quantity?.unit);
  return readings === undefined
    ? undefined
    : { kind: 'readings', line, readings: readings.map((one) => movedReading(one, row.start)) };
}

const quantity = /^(\s*)([^:=\d]{2,40}?)\s*[:=]\s*(?=[+-]?\d)/u;

/** `Thickness in µm: 112 115 109`: what the numbers of a line are, and in which unit, before them; no panel. */
function quantityOf(text: string): { readonly rest: string; readonly unit: Piece } | undefined {
  const [before = '', blanks = '', label = ''] = quantity.exec(text) ?? [];
  const { label: name, unit, unitText } = splitUnit(label);
  if (unit === undefined || unitText === undefined) return undefined;
  if (name !== '' && roleOfKey(name) !== 'reading') return undefined;
  return {
    rest: ' '.repeat(before.length) + text.slice(before.length),
    unit: { text: unitText, at: blanks.length + label.lastIndexOf(unitText) },
  };
}

/** `Unit: µm`, `Date: 2024-03-05`: said of the file, and no reading. */
export function isKept({ row, text }: Line): boolean {
  const saying = sayingOf({ ...row, cells: [text] });
  if (saying === undefined) return false;
  const role = roleOfKey(saying.key);
  if (role === 'reading') return false;
  return role === 'unit' || role === 'time' || role === 'operator' || aboutFile.test(saying.key);
}

function readingsIn(
  numbers: readonly NumberInLine[],
  rest: Piece,
  isPanel: IsPanel,
  ofLine?: Piece,
): readonly OwnReading[] | undefined {
  const note = isRemark(rest.text) ? rest : undefined;
  if (note !== undefined && countsMarks(note.text) && mayCount(numbers, note)) return undefined;
  const says = rest.text !== '' && !isFiller(rest.text) && note === undefined;
  const behind = says ? withoutNumber(rest, isPanel, shows) : [];
  const unit = numbers.at(-1)?.unit ?? ofLine;
  const readings: OwnReading[] = [];
  for (const [k, one] of numbers.entries()) {
    // `112 (was 125)`: the reading that another took the place of.
    if (k > 0 && /^was$/iu.test(one.words.text)) return undefined;
    const said = saidBy(one.words, isPanel);
    const before = said === undefined ? withoutNumber(one.words, isPanel, shows) : [];
    if (before === undefined || !mayBeFilm(one)) return undefined;
    const own = { panel: said?.panel, point: said?.point, number: one.number };
    readings.push(...before, { ...own, unit: one.unit ?? unit });
  }
  if (behind === undefined) return undefined;
  return note === undefined ? [...readings, ...behind] : withNote(readings, note);
}

/**
 * `30 stone chips` behind thicker films may count them; in brackets, behind a unit or a comma the words are said of the
 * film before them.
 */
function mayCount(numbers: readonly NumberInLine[], note: Piece): boolean {
  const last = numbers.at(-1);
  if (last === undefined || last.unit !== undefined) return false;
  if (note.at !== last.number.at + last.number.text.length + 1) return false;
  const [count = 0, ...films] = numbers.map(filmOf).reverse();
  return films.length > 0 && films.every((film) => count < film * COUNTS);
}
/** Films of one panel seldom differ so. */
const COUNTS = 0.75;

const filmOf = ({ number }: NumberInLine): number => {
  const shape = numberShape(number.text);
  return shape === undefined ? Number.NaN : numberOf(shape);
};

/** The note is of the panel that the line names last. */
function withNote(readings: readonly OwnReading[], note: Piece): readonly OwnReading[] {
  const last = readings.findLastIndex(({ panel }) => panel !== undefined);
  return readings.map((one, k) => (k < last ? one : { ...one, note }));
}

/**
 * `112 OL 109`, `112 ERR`: what a gauge shows for a reading that there is none of. Other words beside a number,
 * `112 low`, `112 bad`, may be said of that number.
 */
const shows = (text: string): boolean =>
  /^(?:[o0]l|o\.l\.|ov[lr]|err(?:or)?|n\/?a|nan)$/iu.test(text);

const movedReading = (
  { panel, point, number, unit, note }: OwnReading,
  by: number,
): OwnReading => ({
  panel: moved(panel, by),
  point: moved(point, by),
  number: moved(number, by),
  unit: moved(unit, by),
  note: moved(note, by),
});

/** `2. Roof`, `3) Boot`: its place in a list, as blanks. */
export const withoutBullet = (text: string): string =>
  text.replace(/^\s*\d{1,3}[.)]\s+(?=\p{L})/u, (bullet) => ' '.repeat(bullet.length));

function partedAtCommas({ numbers, rest }: LineWords): LineWords {
  const parted = numbers.flatMap((one): readonly NumberInLine[] => {
    let { at } = one.number;
    const parts = one.number.text.split(',').map((text) => {
      const piece = { text, at };
      at += text.length + 1;
      return piece;
    });
    return parts.map((number, k) => ({
      words: k === 0 ? one.words : { text: '', at: number.at },
      number,
      unit: k === parts.length - 1 ? one.unit : undefined,
    }));
  });
  return { numbers: parted, rest };
}

/** What stands for a reading that there is none of: `Roof OL`, `OL`. */
function withoutNumber(
  rest: Piece,
  isPanel: IsPanel,
  isNone = (text: string): boolean => notReading(text) !== undefined,
): readonly OwnReading[] | undefined {
  if (rest.text !== '' && isNone(rest.text)) {
    return [{ panel: undefined, point: undefined, number: rest, unit: undefined }];
  }
  for (const [before, behind] of divisions(rest)) {
    const said = isNone(behind.text) ? saidBy(before, isPanel) : undefined;
    if (said !== undefined) return [{ ...said, number: behind, unit: undefined }];
  }
  return undefined;
}

/** As large as a film in one of the units; a small whole number counts something. */
export function mayBeFilm({ number, unit }: NumberInLine): boolean {
  const shape = numberShape(number.text);
  if (shape === undefined || shape.negative) return false;
  const value = numberOf(shape);
  if (value > 5000) return false;
  return unit !== undefined || value >= 10 || (value >= 0.5 && shape.fraction !== '');
}
