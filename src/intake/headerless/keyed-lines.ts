/**
 * Readings that are written as keys and values, and no table: `panel=bonnet point=1 value=112.4um` in a line;
 * `Panel: bonnet`, `Point: 1`, `Reading: 112.4 µm` in lines of their own; points under the name of their panel,
 * `1: 112.4 µm`; objects of JSON, one to a line.
 *
 * The keys are looked at as the names of columns are. Each line becomes a row of its keys and values, where they
 * stand, with one sign between them.
 */

import { once } from '../../base/kept.ts';
import { numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { type Layout, type LayoutContext, layoutOf, readGaugeHeader } from '../header/layout.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Row } from '../rows/tokens.ts';
import { panelNamedBy, withoutHeader } from './headerless.ts';

export type KeyedLines = {
  readonly layout: Layout;
  readonly rows: readonly Row[];
  /** The first of them. */
  readonly line: number;
  readonly evidence: string;
};

const longestLine = 2000;
const fewest = 2;

type Line = { readonly row: Row; readonly text: string };

export function keyedLines(
  source: Source,
  rows: readonly Row[],
  context: LayoutContext,
): KeyedLines | undefined {
  const lines = rows.flatMap((row): readonly Line[] => {
    const text = lineFrom(source.text, row.start);
    return row.quoted && !/^\s*\[?\s*\{/u.test(text)
      ? []
      : [{ row, text: text.slice(0, longestLine) }];
  });
  const filled = lines.filter(({ text }) => text.trim() !== '');
  return recordsIn(rows, filled, context) ?? pointsUnderNames(rows, filled, context);
}

/** Every line but few holds the same keys. */
function recordsIn(
  rows: readonly Row[],
  lines: readonly Line[],
  context: LayoutContext,
): KeyedLines | undefined {
  const pairs = lines.map(({ row, text }) => ({ row, cells: pairsIn(text) }));
  const records = pairs.filter(({ cells }) => cells.length >= 4);
  const [first] = records;
  if (first === undefined || records.length < fewest || records.length * 2 < lines.length) {
    return undefined;
  }
  const keys = keysOf(first.cells);
  if (records.some(({ cells }) => keysOf(cells).join('\0') !== keys.join('\0'))) return undefined;
  const layout = layoutOf(keys, context);
  if (layout?.kind !== 'long') return undefined;
  const cells = new Map(records.map((record) => [record.row, record.cells]));
  return {
    layout: ofValues(layout),
    rows: rows.map((row) => withCells(row, cells.get(row))),
    line: first.row.line,
    evidence: 'each line names its values: the keys are taken for the names of columns',
  };
}

const withCells = (row: Row, cells: readonly string[] | undefined): Row =>
  cells === undefined ? row : { ...row, cells, quoted: false };

const keysOf = (cells: readonly string[]): readonly string[] =>
  cells.filter((_, k) => k % 2 === 0).map((key) => key.trim());

/** Key, value, key, value …, one sign apart; empty where the line is not of pairs throughout. */
function pairsIn(text: string): readonly string[] {
  const bare = /^\s*\[?\s*\{.*\}\s*,?\s*\]?\s*$/u.test(text) ? withoutBraces(text) : text;
  const parted = [';', '|', '\t', ','].find(
    (mark) => bare.includes(mark) && bare.split(mark).every((piece) => pair().test(piece)),
  );
  const pieces = parted === undefined ? blankPairs(bare) : bare.split(parted);
  const cells = pieces.flatMap((piece) => {
    const at = piece.search(/[:=]/u);
    return at === -1 ? [] : [piece.slice(0, at), piece.slice(at + 1)];
  });
  return cells.length === pieces.length * 2 ? cells : [];
}

const pair = once(() => /^[^:=]*\p{L}[^:=]*[:=]/u);

/** `{"panel":"bonnet","um":112.4}`, alone or in a list, with blanks for its braces, brackets and quotes. */
const withoutBraces = (text: string): string =>
  text
    .replace(/[{}"]|^\s*\[|\]\s*$/gu, (signs) => ' '.repeat(signs.length))
    .replace(/,(?=\s*$)/u, ' ');

/** `panel=bonnet point=1`: a blank before each key. */
const blankPairs = (text: string): readonly string[] =>
  text.split(/\s(?=\s*[\p{L}_][\p{L}\p{N}_.-]*[=:](?!\s*$))/u);

/** The columns of the values, each behind that of its key. */
function ofValues(layout: Layout): Layout {
  const at = (column: number): number => 2 * column + 1;
  const header = layout.header.flatMap((cell) => [{ text: '', label: '' }, cell]);
  return {
    ...layout,
    header,
    columns: new Map([...layout.columns].map(([role, column]) => [role, at(column)])),
    readings: layout.readings.map((one) => ({ ...one, column: at(one.column) })),
    unknown: layout.unknown.map(at),
    repeated: layout.repeated.map(at),
  };
}

/** A number of a point, a sign of a list or the word for a reading, and the reading behind it; `09:01,114` is a time. */
const numbered = once(
  () =>
    /^(?!\s*\d\d:[0-5]\d[,;]\s?\d)(\s*(?:\p{L}{1,12}\.?\s?)?#?\d{1,4}\s*)[:=)](?=\s*[\d.,+-])(.*)$/u,
);
const listed = /^(\s*(?:\d{1,4}\.|[-*•–+]))\s(.*)$/u;
const named = /^([^:=\d]{2,40})[:=](.*)$/u;

type Begun = { readonly row: Row; readonly cells: readonly [string, string]; readonly kind: Kind };
type Kind = 'numbered' | 'listed' | 'named';

/** Lines of one reading each, below lines that name their panels. */
function pointsUnderNames(
  rows: readonly Row[],
  lines: readonly Line[],
  context: LayoutContext,
): KeyedLines | undefined {
  const begun = lines.flatMap((line) => begunBy(line));
  const [first] = begun;
  if (first === undefined || begun.length < fewest) return undefined;
  if (begun.some(({ kind }) => kind !== first.kind)) return undefined;
  const own = new Set(begun.map(({ row }) => row));
  const others = lines.filter(({ row }) => !own.has(row));
  const captions = others.filter(({ row, text }) => panelOfLine(row, text, context) !== undefined);
  const before = captions.filter(({ row }) => row.line < first.row.line);
  if (before.length === 0 || others.some(({ text }) => isReading(text))) return undefined;
  const [key, value] = [0, 1];
  const isPoint = first.kind === 'numbered' || /\d/u.test(first.cells[0]);
  const columns = new Map<GaugeRole, number>(isPoint ? [['point', key]] : []);
  const layout = withoutHeader('blocks', columns, [value]);
  const cells = new Map(begun.map((one) => [one.row, one.cells]));
  const whole = new Map(captions.map(({ row, text }) => [row, [text]]));
  const header = readGaugeHeader([first.cells[0]]);
  return {
    layout:
      first.kind === 'named' ? { ...layout, header: [{ text: '', label: '' }, ...header] } : layout,
    rows: rows.map((row) => withCells(row, cells.get(row) ?? whole.get(row))),
    line: (before[0] ?? first).row.line,
    evidence: 'each line is one reading, of the panel that a line above names',
  };
}

const panelOfLine = (row: Row, text: string, context: LayoutContext): string | undefined =>
  panelNamedBy({ ...row, cells: [text] }, context);

function begunBy({ row, text }: Line): readonly Begun[] {
  for (const [kind, form] of [
    ['numbered', numbered()],
    ['listed', listed],
    ['named', named],
  ] as const) {
    const [, key = '', value = ''] = form.exec(text) ?? [];
    if (key === '' || !isReading(value)) continue;
    const [cell] = readGaugeHeader([key.trim()]);
    if (kind === 'named' && cell?.role !== 'reading') continue;
    return [{ row, cells: [key, value], kind }];
  }
  return [];
}

function isReading(text: string): boolean {
  const shape = numberShape(text.trim());
  return shape !== undefined && (shape.suffix === '' || unitNamed(shape.suffix) !== undefined);
}
