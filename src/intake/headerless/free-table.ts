/** Readings that were found in lines of words → the rows of a table, each cell at its place in the text. */
import { keptAsNotes } from '../cells/remarks-said.ts';
import { unitNamed } from '../cells/unit.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { HeaderCell } from '../header/header.ts';
import type { Layout } from '../header/layout.ts';
import type { Row } from '../rows/tokens.ts';
import { withoutHeader } from './headerless.ts';
import type { Piece } from './line-words.ts';

/** Places are those in the whole text. */
export type LineReading = {
  readonly row: Row;
  readonly panel: Piece | undefined;
  readonly point: Piece | undefined;
  readonly number: Piece;
  readonly unit: Piece | undefined;
  readonly note?: Piece | undefined;
};

export type FreeTable = {
  readonly layout: Layout;
  readonly rows: readonly Row[];
  /** The first of them. */
  readonly line: number;
  /** Whether nothing names a panel. */
  readonly nameless: boolean;
  readonly evidence: readonly string[];
};

export const namelessSentence =
  'nothing names a panel: the numbers are read as one group, and nothing says that all are of one panel';

const roles = ['panel', 'point', 'unit', 'note'] as const;

/** `beside`: the lines that hold no reading and say something of them. */
export function tableOfReadings(
  beside: readonly Row[],
  readings: readonly LineReading[],
): FreeTable | undefined {
  const [first] = readings;
  if (first === undefined) return undefined;
  if (readings.some(({ unit }) => unitNamed(unit?.text ?? '') === 'other')) return undefined;
  const own = roles.filter((role) => readings.some((reading) => reading[role] !== undefined));
  const made = readings.map((reading): Row => {
    const { line, start } = reading.row;
    const cells = [...own.map((role) => reading[role]), reading.number];
    return {
      ...{ line, start, quoted: false },
      cells: cells.map((piece) => piece?.text ?? ''),
      offsets: cells.map((piece) => piece?.at ?? start),
    };
  });
  const nameless = !own.includes('panel');
  const columns = new Map<GaugeRole, number>(own.map((role, k) => [role, k]));
  const layout = withoutHeader('list', columns, [own.length]);
  const notes = [...new Set(readings.flatMap(({ note }) => note?.text ?? []))];
  return {
    layout: notes.length === 0 ? layout : { ...layout, header: [...own, undefined].map(headingOf) },
    rows: [...beside, ...made].sort((a, b) => a.line - b.line),
    line: first.row.line,
    nameless,
    evidence: [
      nameless
        ? namelessSentence
        : `each number is a reading of the panel${own.includes('point') ? ' and the point' : ''} that the words before it name`,
      ...(notes.length === 0 ? [] : [keptAsNotes(notes, 'the numbers of a line')]),
    ],
  };
}

/** Notes are known by the name of their column, which has none here. */
const headingOf = (role: GaugeRole | undefined): HeaderCell<GaugeRole> =>
  role === 'note' ? { text: '', label: '', role } : { text: '', label: '' };
