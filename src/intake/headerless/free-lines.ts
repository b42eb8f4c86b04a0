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
import { once } from '../../base/kept.ts';
import { plainDigits } from '../cells/digits.ts';
import { unitNamed } from '../cells/unit.ts';
import { countUp } from '../header/numbered-columns.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { type FreeTable, type LineReading, tableOfReadings } from './free-table.ts';
import { isLetter, isPoint, saidBy } from './line-meaning.ts';
import { type Piece, wordsOfLine } from './line-words.ts';
import {
  commasIn,
  type IsPanel,
  isKept,
  type Line,
  mayBeFilm,
  type Understood,
  understand,
} from './understood-line.ts';

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
    rows.map((row): Line => ({ row, text: inDigits(lineFrom(source.text, row.start)) })),
  );
  if (lines.length > mostLines || lines.some(({ text }) => text.length > longestLine)) {
    return undefined;
  }
  const commas = commasIn(lines);
  if (commas === undefined) return undefined;
  const understood = lines.map((line) => understand(line, commas, isPanel));
  const first = understood.findIndex((one) => one?.kind === 'readings' || one?.kind === 'caption');
  const last = understood.findLastIndex((one) => one?.kind === 'readings');
  const [own, outside] =
    last < first
      ? [[], lines]
      : [understood.slice(first, last + 1), [...lines.slice(0, first), ...lines.slice(last + 1)]];
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
  return readings === undefined ||
    isHeaded(outside, ofReadings) ||
    !pointsCount(readings) ||
    loneLetter(known) !== undefined
    ? undefined
    : tableOfReadings(
        rows.filter((row) => kept.has(row)),
        readings,
      );
}

/** Digits of another script as ours, sign for sign. */
const inDigits = (text: string): string => (/[^\P{Nd}0-9]/u.test(text) ? plainDigits(text) : text);

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

/** More no title says of a job; a year is more. */
const mostFilm = 1000;

/** Whether a line beside the others may hold readings as well: it ends in a number as large as a film, or names a panel. */
function mayBeReading(line: Line, isPanel: IsPanel): boolean {
  if (isMisread(line.text, isPanel)) return true;
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

/** `bonnet l12 1O9`: a panel, and behind it letters that are written for digits. */
function isMisread(text: string, isPanel: IsPanel): boolean {
  const { index = -1 } = letterForDigit().exec(text) ?? {};
  return index > 0 && isPanel(text.slice(0, index).replace(/[\s:=-]+$/u, ''));
}
const letterForDigit = once(
  () => /(?<![\p{L}\p{N}])(?=[lIOoSBZ]*\d)(?=\d*[lIOoSBZ])[\dlIOoSBZ]{3,4}(?![\p{L}\p{N}])/u,
);

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

/** A letter behind panels that no other goes with: an A behind every panel may say that the number is an average. */
export function loneLetter(lines: readonly Understood[]): Piece | undefined {
  const letters = lines
    .flatMap((one) =>
      one.kind === 'readings' ? one.readings.flatMap(({ point }) => point ?? []) : [],
    )
    .filter(({ text }) => isLetter(text) && !isPoint(text));
  const own = new Set(letters.map(({ text }) => text));
  return own.size === 1 ? letters[0] : undefined;
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
