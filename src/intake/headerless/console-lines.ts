/**
 * Lines that a gauge sends to a terminal: `08:01:12 bonnet 101 um`, `N=3 Fe 99 um`, `N=1 101um`.
 *
 * A line is what counts or times the shot, words, and one reading. The words are a known panel in every
 * line, or the metal below in every line, or there are none: anything else is not guessed at, and neither
 * is a file with a line that begins as a shot and is none. The cells stay where they stand in the text, one
 * sign apart.
 */

import { once } from '../../base/kept.ts';
import { notReading } from '../cells/not-readings.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { Layout } from '../header/layout.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { withoutHeader } from './headerless.ts';

export type ConsoleLines = {
  readonly layout: Layout;
  readonly rows: readonly Row[];
  /** The first of them. */
  readonly line: number;
};

/** `08:01:12`, `2026-03-31 08:01`, `N=1`, `No. 12:`. */
const beginning =
  /^\s*(?:\[?(?:\d{4}-\d\d-\d\d[T ])?\d{1,2}:\d\d(?::\d\d)?\]?|(?:N[ =:]|No\.? ?)\d{1,4}[.):]?)(?= |$)/u;
/** The last word, or the last two where a blank stands before the unit. */
const ending = once(() => /(\S+ \p{L}[\p{L}.]*|\S+)\s*$/u);
const metals = /^(?:n?fe|nfe|al|alu|steel|f|n)$/iu;
/** A longer line is no shot. */
const longest = 200;

type Shot = { readonly row: Row; readonly cells: readonly string[]; readonly words: string };
type Middle = 'panel' | 'substrate' | 'nothing';

export function consoleLines(
  source: Source,
  rows: readonly Row[],
  isPanel: (label: string) => boolean,
): ConsoleLines | undefined {
  const lines = rows.map((row) => ({ row, line: lineOf(source, row) }));
  const begun = lines.filter(({ line }) => beginning.test(line));
  const own = begun.length > 0 ? begun : lines.filter(({ line }) => /\s\S*\d/u.test(line));
  const shots = own.flatMap(({ row, line }) => shotOf(row, line));
  const [first] = shots;
  if (first === undefined || shots.length < Math.max(2, own.length)) return undefined;
  const middle = middleOf(shots, isPanel);
  if (middle === undefined || (begun.length === 0 && middle !== 'panel')) return undefined;
  const cells = new Map(shots.map((shot) => [shot.row, shot.cells]));
  return {
    layout: layoutOfShots(middle, begun[0]?.line),
    rows: rows.map((row) => ({ ...row, cells: cells.get(row) ?? row.cells })),
    line: first.row.line,
  };
}

function lineOf({ text }: Source, row: Row): string {
  const line = lineFrom(text, row.start);
  return row.quoted || line.length > longest ? '' : line;
}

function shotOf(row: Row, line: string): readonly Shot[] {
  const start = beginning.exec(line)?.[0] ?? '';
  const from = start === '' ? 0 : start.length + 1;
  const at = ending().exec(line.slice(from))?.index;
  if (at === undefined) return [];
  const two = line.slice(from + at);
  // `bonnet OL` is a panel and no reading: only a unit stands as a second word.
  const reading = isReading(two) ? two : two.slice(two.indexOf(' ') + 1);
  if (!isReading(reading)) return [];
  const words = line.slice(from, line.length - reading.length);
  const middle = words === '' ? [] : [words.slice(0, -1)];
  const cells = [...(start === '' ? [] : [start]), ...middle, reading];
  return [{ row, cells, words: words.trim() }];
}

function isReading(text: string): boolean {
  const bare = text.trim();
  const shape = numberShape(bare);
  if (shape === undefined) return !bare.includes(' ') && notReading(bare) !== undefined;
  const isOne = shape.suffix === '' || unitNamed(shape.suffix) !== undefined;
  return isOne && numberOf(shape) <= mostFilm;
}

/** `112,109,115` is three readings, and no number. */
const mostFilm = 5000;

function middleOf(shots: readonly Shot[], isPanel: (label: string) => boolean): Middle | undefined {
  if (shots.every(({ words }) => words === '')) return 'nothing';
  if (shots.every(({ words }) => isPanel(words))) return 'panel';
  return shots.every(({ words }) => metals.test(words)) ? 'substrate' : undefined;
}

/** Without a panel in the lines, others must name it. */
function layoutOfShots(middle: Middle, begun: string | undefined): Layout {
  const at = begun === undefined ? 0 : 1;
  const columns = new Map<GaugeRole, number>(middle === 'nothing' ? [] : [[middle, at]]);
  if (begun !== undefined && /\d:\d/u.test(begun)) columns.set('time', 0);
  const reading = middle === 'nothing' ? at : at + 1;
  return withoutHeader(middle === 'panel' ? 'list' : 'blocks', columns, [reading]);
}
