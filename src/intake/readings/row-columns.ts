/** What a row says besides its readings: on which panel and point, by whom, whether it counts. */

import type { PointPlace, Reading } from '../../film/reading.ts';
import {
  flagNamed,
  flagNames,
  layerNamed,
  meansDeleted,
  meansInvalid,
  ordinal,
  placeNamed,
  placeNames,
  stateMeaning,
} from '../cells/words.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import type { Layout } from '../header/layout.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Table } from '../tables/table.ts';

export type KeptTexts = Pick<Reading, 'operator' | 'time' | 'substrate' | 'note' | 'u' | 'v'>;

export type AboutRow = Pick<
  Reading,
  'vehicle' | 'panel' | 'point' | 'layer' | 'place' | 'marked' | 'curved'
> & {
  readonly repeat: number | undefined;
  /** The mark that takes the row back, or says that the gauge failed. */
  readonly deleted:
    | { readonly column: number; readonly text: string; readonly class: 'deleted' | 'error' }
    | undefined;
  readonly kept: KeptTexts | undefined;
};

/** A cell whose text its column does not know. */
export type WrongCell = (
  row: Row,
  column: number,
  message: string,
  allowed: readonly string[],
) => void;

export type RowReader = (row: Row) => AboutRow;

/** How names are written: each in its first spelling. */
export type Spelling = {
  readonly name: (text: string) => string;
  readonly point: (text: string) => string;
  readonly panel: (text: string) => string;
};

const textRoles = ['operator', 'time', 'substrate', 'note', 'u', 'v'] as const;

export function rowReader(table: Table, spelling: Spelling, wrong: WrongCell): RowReader {
  const { layout, given } = table;
  const { name } = spelling;
  const at = (role: GaugeRole): number | undefined => layout.columns.get(role);
  const text = (row: Row, column: number): string => name(cellText(row, column));
  const vehicle = column(
    at('vehicle'),
    () => given.vehicle,
    (own) => name(own) || given.vehicle,
  );
  const panel = column(
    at('panel'),
    () => spelling.panel(given.panel ?? ''),
    (own) => spelling.panel(name(asText(own))),
  );
  const point = column(
    at('point'),
    () => spelling.point(given.point ?? ''),
    (own) => spelling.point(name(asText(own))),
  );
  const layer = column(
    at('layer'),
    () => given.layer ?? '',
    (own) => layerNamed(name(own)),
  );
  const place = word<PointPlace>(at('place'), 'face', placeNamed, placeNames, wrong);
  const marked = word(at('marked'), false, flagNamed, flagNames, wrong);
  const curved = word(at('curved'), false, flagNamed, flagNames, wrong);
  const repeat = repeatReader(at('repeat'), wrong);
  const deleted = deletionReader(table, text, wrong);
  const kept = keptReader(layout, text);
  return (row) => ({
    vehicle: vehicle(row),
    panel: panel(row),
    point: point(row),
    layer: layer(row),
    place: place(row),
    marked: marked(row),
    curved: curved(row),
    repeat: repeat(row),
    deleted: deleted(row),
    kept: kept(row),
  });
}

/** `="1"` and `'1` keep a number as text in a spreadsheet, and are no part of a name. */
const asText = (text: string): string =>
  text.replace(/^="([^"]*)"$/u, '$1').replace(/^'(?=\d+$)/u, '');

type Column<T> = (row: Row) => T;
type TextAt = (row: Row, column: number) => string;

/** Rows of one panel stand together, and few texts name points: a cell is read once. */
function column<T>(at: number | undefined, without: () => T, read: (text: string) => T): Column<T> {
  if (at === undefined) {
    const value = without();
    return () => value;
  }
  const known = new Map<string, { readonly cell: string; readonly value: T }>();
  let above: { readonly cell: string; readonly value: T } | undefined;
  return ({ cells }) => {
    const cell = cells[at] ?? '';
    if (above?.cell !== cell) {
      above = known.get(cell) ?? { cell, value: read(cell.trim()) };
      if (known.size < mostTexts) known.set(cell, above);
    }
    return above.value;
  };
}
/** Texts kept of a column: points and panels are fewer, and names of vehicles come in one place each. */
const mostTexts = 1000;

function word<T>(
  at: number | undefined,
  without: T,
  named: (text: string) => T | undefined,
  allowed: readonly string[],
  wrong: WrongCell,
): Column<T> {
  const read = column<T | undefined>(at, () => without, named);
  return (row) => {
    const value = read(row);
    if (value !== undefined || at === undefined) return value ?? without;
    const written = cellText(row, at);
    wrong(row, at, `"${written}" is none of ${allowed.join(', ')}`, allowed);
    return without;
  };
}

function repeatReader(at: number | undefined, wrong: WrongCell): Column<number | undefined> {
  if (at === undefined) return () => undefined;
  return (row) => {
    const written = cellText(row, at);
    if (written === '') return undefined;
    const number = ordinal(written);
    if (number === undefined) wrong(row, at, `"${written}" is no number of a repeat`, []);
    return number;
  };
}

type Deletion = { readonly column: number; readonly role: 'deleted' | 'valid' | 'status' };

const meaningOfMark = {
  deleted: meansDeleted,
  valid: meansInvalid,
} as const;

/** A column of deletions must be understood; one of states may say many things. */
function deletionReader(
  { layout: { header }, rows }: Table,
  text: TextAt,
  wrong: WrongCell,
): Column<AboutRow['deleted']> {
  const columns = [...header.entries()].flatMap(([column, { role }]): readonly Deletion[] =>
    role === 'deleted' || role === 'valid' || role === 'status' ? [{ column, role }] : [],
  );
  if (columns.length === 0) return () => undefined;
  const rings = new Set(columns.map(({ column }) => column).filter((k) => ringed(rows, k)));
  return (row) => {
    for (const { column, role } of columns) {
      const written = text(row, column);
      if (role === 'status') {
        const meaning = stateMeaning(written);
        if (meaning === undefined || meaning === 'counts') continue;
        return { column, text: written, class: meaning };
      }
      // Beside rings that delete, a cross is the answer no.
      const crossed = role === 'deleted' && rings.has(column) && cross.test(written);
      const deleted = meaningOfMark[role](written);
      if (deleted === true && !crossed) return { column, text: written, class: 'deleted' };
      if (deleted === undefined) {
        wrong(row, column, `"${written}" does not say whether the row counts`, ['yes', 'no']);
      }
    }
    return undefined;
  };
}

const ring = /^[○◯〇●]$/u;
const cross = /^[×✗✘x]$/iu;
const ringed = (rows: readonly Row[], column: number): boolean =>
  rows.some((row) => ring.test(cellText(row, column)));

/** Date and time of a reading may stand in two columns: they are kept as one text. */
function keptReader({ header }: Layout, text: TextAt): Column<KeptTexts | undefined> {
  const roles = textRoles.flatMap((role) => {
    const columns = [...header.keys()].filter((column) => header[column]?.role === role);
    return columns.length === 0 ? [] : [{ role, columns }];
  });
  if (roles.length === 0) return () => undefined;
  return (row) => {
    const kept: { -readonly [K in keyof KeptTexts]: KeptTexts[K] } = {};
    let some = false;
    for (const { role, columns } of roles) {
      const own = joinedTexts(row, columns, text);
      if (own === '') continue;
      kept[role] = own;
      some = true;
    }
    return some ? kept : undefined;
  };
}

function joinedTexts(row: Row, columns: readonly number[], text: TextAt): string {
  const [first = 0] = columns;
  if (columns.length === 1) return text(row, first);
  const texts = columns.map((column) => text(row, column));
  return texts.filter((own) => own !== '').join(' ');
}
