/**
 * Readings as people type them, no table and no colon: `Bonnet 112um 109um`, `P1 Bonnet: 121`, `Roof / left: 98`,
 * `bonnet 112, roof 99 µm`; places and their numbers below the name of a panel; or numbers and nothing else.
 *
 * A line is understood where every word of it is: a panel that is known, the place or the number of a point, or a
 * word such as "and". One line that is not, between others that are, and the file is none of these. Whatever
 * unit stands in a line, behind its last number or each of them, is that of its numbers; one behind the name of a
 * panel that stands alone is that of the lines below it.
 */

import { groupBy } from '../../base/group-by.ts';
import { aboutFile, roleOfKey, sayingOf } from '../beside/sayings.ts';
import { notReading } from '../cells/not-readings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { splitUnit, unitNamed } from '../cells/unit.ts';
import { countUp } from '../header/numbered-columns.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { captionOfLine } from './caption-lines.ts';
import { type FreeTable, type LineReading, tableOfReadings } from './free-table.ts';
import { divisions, isFiller, type Said, saidBy } from './line-meaning.ts';
import { type LineWords, moved, type NumberInLine, type Piece, wordsOfLine } from './line-words.ts';

type IsPanel = (label: string) => boolean;
export type Line = { readonly row: Row; readonly text: string };
type Understood =
  | { readonly kind: 'readings'; readonly line: Line; readonly readings: readonly OwnReading[] }
  | {
      readonly kind: 'caption';
      readonly line: Line;
      readonly panel: Piece;
      readonly unit: Piece | undefined;
    }
  /** A unit, a date: read as what it is. A rule between blocks: nothing. */
  | { readonly kind: 'kept' | 'rule'; readonly line: Line };
type OwnReading = Said & Pick<NumberInLine, 'number' | 'unit'>;

/** People type shorter lines. */
const longestLine = 400;
const mostLines = 2000;

/** The lines, and from the first to the last of them that is of readings what each is understood as. */
type LinesUnderstood = {
  readonly own: readonly (Understood | undefined)[];
  readonly outside: readonly Line[];
  /** Those that are no notes of readings, and may be no remark beside them. */
  readonly strange: readonly Line[];
};

export function understoodLines(
  source: Source,
  rows: readonly Row[],
  isPanel: IsPanel,
): LinesUnderstood | undefined {
  const lines = withoutSenders(
    rows.map((row): Line => ({ row, text: lineFrom(source.text, row.start) })),
  );
  if (lines.length > mostLines || lines.some(({ text }) => text.length > longestLine)) {
    return undefined;
  }
  const commas = commasIn(lines);
  if (commas === undefined) return undefined;
  const understood = lines.map((line) => understand(line, commas, isPanel));
  const first = understood.findIndex((one) => one?.kind === 'readings' || one?.kind === 'caption');
  const last = understood.findLastIndex((one) => one?.kind === 'readings');
  if (first === -1 || last < first) return undefined;
  const own = understood.slice(first, last + 1);
  const outside = [...lines.slice(0, first), ...lines.slice(last + 1)];
  const strange = lines.filter((line, k) =>
    k < first || k > last ? mayBeReading(line, isPanel) : understood[k] === undefined,
  );
  return { own, outside, strange };
}

export function freeLines(
  source: Source,
  rows: readonly Row[],
  isPanel: IsPanel,
): FreeTable | undefined {
  const all = understoodLines(source, rows, isPanel);
  if (all === undefined || all.strange.length > 0) return undefined;
  const { own, outside } = all;
  const known = own.flatMap((one) => one ?? []);
  const kept = new Set(known.flatMap(({ kind, line }) => (kind === 'kept' ? [line.row] : [])));
  for (const { row } of outside) kept.add(row);
  const readings = withPanels(known);
  const ofReadings = known.flatMap(({ kind, line }) => (kind === 'readings' ? [line] : []));
  return readings === undefined || isHeaded(outside, ofReadings) || !pointsCount(readings)
    ? undefined
    : tableOfReadings(
        rows.filter((row) => kept.has(row)),
        readings,
      );
}

/** `[12/03/24, 10:12] Ann: Bonnet 112`: when a message was sent and by whom, as blanks. */
const sender =
  /^[[(]?\d{1,4}[./-]\d{1,2}[./-]\d{1,4},? \d{1,2}:\d\d(?::\d\d)?(?:\s?[ap]m)?[\])]?\s*[-–]?\s*[^:]{1,40}:\s/iu;

function withoutSenders(lines: readonly Line[]): readonly Line[] {
  if (!lines.every(({ text }) => sender.test(text))) return lines;
  return lines.map((line) => ({
    ...line,
    text: line.text.replace(sender, (sent) => ' '.repeat(sent.length)),
  }));
}

/** Whether a comma without a blank parts two numbers or stands before decimals; undefined where it may do either. */
type Commas = 'between' | 'decimal';
function commasIn(lines: readonly Line[]): Commas | undefined {
  const marked = lines.flatMap(({ text }) => text.match(/\d+(?:[.,]\d+)*,\d+(?:[.,]\d+)*/gu) ?? []);
  if (marked.length === 0) return 'decimal';
  const parts = marked.map((text) => text.split(','));
  const areFilms = parts.every((own) => own.every((part) => Number(part) >= 20));
  if (parts.some((own) => own.length > 2)) return areFilms ? 'between' : undefined;
  const areDecimals = parts.some(([, part = '']) => part.length === 1 || Number(part) < 20);
  return areDecimals && parts.every(([, part = '']) => part.length < 3) ? 'decimal' : undefined;
}

function understand(line: Line, commas: Commas, isPanel: IsPanel): Understood | undefined {
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
function isKept({ row, text }: Line): boolean {
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
  const behind = rest.text === '' || isFiller(rest.text) ? [] : withoutNumber(rest, isPanel, shows);
  const unit = numbers.at(-1)?.unit ?? ofLine;
  const readings: OwnReading[] = [];
  for (const one of numbers) {
    const said = saidBy(one.words, isPanel);
    const before = said === undefined ? withoutNumber(one.words, isPanel, shows) : [];
    if (before === undefined || !mayBeFilm(one)) return undefined;
    const own = { panel: said?.panel, point: said?.point, number: one.number };
    readings.push(...before, { ...own, unit: one.unit ?? unit });
  }
  return behind === undefined ? undefined : [...readings, ...behind];
}

/**
 * `112 OL 109`, `112 ERR`: what a gauge shows for a reading that there is none of. Other words beside a number,
 * `112 low`, `112 bad`, may be said of that number.
 */
const shows = (text: string): boolean =>
  /^(?:[o0]l|o\.l\.|ov[lr]|err(?:or)?|n\/?a|nan)$/iu.test(text);

const movedReading = ({ panel, point, number, unit }: OwnReading, by: number): OwnReading => ({
  panel: moved(panel, by),
  point: moved(point, by),
  number: moved(number, by),
  unit: moved(unit, by),
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

/** More no title says of a job; a year is more. */
const mostFilm = 1000;

/** Whether a line beside the others may hold readings as well: it ends in a number as large as a film, or names a panel. */
function mayBeReading(line: Line, isPanel: IsPanel): boolean {
  const words = wordsOfLine(line.text);
  if (words === undefined) {
    const [label = ''] = /^[^\d:=]*/u.exec(line.text) ?? [];
    return isPanel(label.trim());
  }
  const { numbers, rest } = words;
  if (numbers.some((one) => mayBeFilm(one) && one.unit !== undefined)) return true;
  if (numbers.some((one) => saidBy(one.words, isPanel)?.panel !== undefined)) return true;
  const isKnown = isKept(line) || namesStatistic(line.text.split(/[:=]/u)[0]?.trim() ?? '');
  const films = numbers.filter((one) => mayBeFilm(one) && Number(one.number.text) <= mostFilm);
  return !isKnown && rest.text === '' && numbers.length > 0 && films.length === numbers.length;
}

/** A line that is cut into cells as the rows below it is a row of names: what stands in it may say anything of them. */
function isHeaded(outside: readonly Line[], own: readonly Line[]): boolean {
  return [';', '\t', '|', ','].some((mark) => {
    const widths = new Set(own.map(({ text }) => text.split(mark).length));
    const [width = 1] = widths;
    return (
      widths.size === 1 &&
      width > 1 &&
      outside.some(({ text }) => {
        const cells = text.split(mark).map((cell) => cell.trim());
        const isTitle = mark === ',' && unitNamed(cells[1] ?? '') !== undefined;
        return (mark === ',' ? cells.length === width : cells.length > 1) && !isTitle;
      })
    );
  });
}

/** `Bonnet 1`, `Bonnet 3`: numbers alone are points where those of each panel count from 1. */
function pointsCount(readings: readonly LineReading[]): boolean {
  const numbered = readings.filter(({ point }) => /^\d+$/u.test(point?.text ?? ''));
  const panels = groupBy(numbered, ({ panel }) => panel?.text.toLowerCase() ?? '');
  return [...panels.values()].every((own) => {
    const numbers = [...new Set(own.map(({ point }) => Number(point?.text)))];
    return countUp(
      numbers.sort((one, other) => one - other),
      [1],
    );
  });
}

/**
 * Each reading with its panel: its own, that of the number before it in its line, or of a line above. Where no line
 * names one, nobody does.
 */
function withPanels(lines: readonly Understood[]): readonly LineReading[] | undefined {
  const captioned = lines.some(({ kind }) => kind === 'caption');
  const nameless =
    !captioned &&
    lines.every(
      (one) => one.kind !== 'readings' || one.readings.every(({ panel }) => panel === undefined),
    );
  let above: { readonly panel: Piece; readonly unit?: Piece | undefined } | undefined;
  const found: LineReading[] = [];
  for (const one of lines) {
    if (one.kind === 'caption') above = one;
    if (one.kind !== 'readings') continue;
    if (!captioned) above = undefined;
    for (const reading of one.readings) {
      // Below a caption, `Roof 99` may be of the roof, or a remark on the panel above.
      if (captioned && reading.panel !== undefined) return undefined;
      const panel = reading.panel ?? above?.panel;
      if (panel === undefined && !nameless) return undefined;
      if (!captioned && panel !== undefined) above = { panel };
      const { row } = one.line;
      found.push({ ...reading, panel, unit: reading.unit ?? above?.unit, row });
    }
  }
  return found;
}
