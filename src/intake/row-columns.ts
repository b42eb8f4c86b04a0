/** What a row says besides its readings: on which panel and point, by whom, whether it counts. */
import type { PointPlace, Reading } from '../film/reading.ts';
import type { GaugeRole } from './gauge-vocabulary.ts';
import { notReading } from './not-readings.ts';
import type { Table } from './table.ts';
import type { Row } from './tokens.ts';
import {
  flagNamed,
  flagNames,
  layerNamed,
  meansDeleted,
  ordinal,
  placeNamed,
  placeNames,
} from './words.ts';

export type KeptTexts = Pick<Reading, 'operator' | 'time' | 'substrate' | 'note' | 'u' | 'v'>;

export type AboutRow = Pick<
  Reading,
  'vehicle' | 'panel' | 'point' | 'layer' | 'place' | 'marked' | 'curved'
> & {
  readonly repeat: number | undefined;
  /** The mark that takes the row back. */
  readonly deleted: { readonly column: number; readonly text: string } | undefined;
  readonly kept: KeptTexts | undefined;
};

/** A cell whose text its column does not know. */
export type WrongCell = (column: number, message: string, allowed: readonly string[]) => void;

export type RowReader = (row: Row, wrong: WrongCell) => AboutRow;

/** How names are written: each in its first spelling. */
export type Spelling = {
  readonly name: (text: string) => string;
  readonly point: (text: string) => string;
  readonly panel: (text: string) => string;
};

const textRoles = ['operator', 'time', 'substrate', 'note', 'u', 'v'] as const;

export function rowReader({ layout, given }: Table, spelling: Spelling): RowReader {
  const at = (role: GaugeRole): number => layout.columns.get(role) ?? -1;
  const columns = {
    ...{ panel: at('panel'), point: at('point'), vehicle: at('vehicle'), layer: at('layer') },
    ...{ place: at('place'), marked: at('marked'), curved: at('curved'), repeat: at('repeat') },
  };
  const deletion = [...layout.header.entries()].flatMap(([column, { role }]) =>
    role === 'deleted' || role === 'valid' || role === 'status' ? [{ column, role }] : [],
  );
  const texts = textRoles.flatMap((role) => {
    const own = [...layout.header.keys()].filter((column) => layout.header[column]?.role === role);
    return own.length === 0 ? [] : [{ role, columns: own }];
  });
  const givenLayer = given.layer ?? '';
  return (row, wrong) => {
    const text = (column: number): string =>
      column < 0 ? '' : spelling.name((row.cells[column] ?? '').trim());
    return {
      vehicle: text(columns.vehicle) || given.vehicle,
      panel: spelling.panel(columns.panel < 0 ? (given.panel ?? '') : text(columns.panel)),
      point: spelling.point(columns.point < 0 ? (given.point ?? '') : text(columns.point)),
      layer: columns.layer < 0 ? givenLayer : layerNamed(text(columns.layer)),
      place: word<PointPlace>(text, columns.place, placeNamed, placeNames, 'face', wrong),
      marked: word(text, columns.marked, flagNamed, flagNames, false, wrong),
      curved: word(text, columns.curved, flagNamed, flagNames, false, wrong),
      repeat: repeatOf(text, columns.repeat, wrong),
      deleted: deletionOf(text, deletion, wrong),
      kept: texts.length === 0 ? undefined : keptTexts(text, texts),
    };
  };
}

type TextAt = (column: number) => string;

function word<T>(
  text: TextAt,
  column: number,
  named: (text: string) => T | undefined,
  allowed: readonly string[],
  otherwise: T,
  wrong: WrongCell,
): T {
  if (column < 0) return otherwise;
  const written = text(column);
  const value = named(written);
  if (value === undefined) wrong(column, `"${written}" is none of ${allowed.join(', ')}`, allowed);
  return value ?? otherwise;
}

function repeatOf(text: TextAt, column: number, wrong: WrongCell): number | undefined {
  const written = column < 0 ? '' : text(column);
  if (written === '') return undefined;
  const number = ordinal(written);
  if (number === undefined) wrong(column, `"${written}" is no number of a repeat`, []);
  return number;
}

type Deletion = { readonly column: number; readonly role: 'deleted' | 'valid' | 'status' };

/** A column of deletions must be understood; one of states may say many things. */
function deletionOf(
  text: TextAt,
  columns: readonly Deletion[],
  wrong: WrongCell,
): AboutRow['deleted'] {
  for (const { column, role } of columns) {
    const written = text(column);
    const deleted = role === 'valid' ? isInvalid(written) : meansDeleted(written);
    if (deleted === true) return { column, text: written };
    if (deleted === undefined && role !== 'status') {
      wrong(column, `"${written}" does not say whether the row counts`, ['yes', 'no']);
    }
  }
  return undefined;
}

/** In a column of valid rows `no` takes a row back, and an empty cell says nothing. */
function isInvalid(text: string): boolean | undefined {
  if (text === '') return undefined;
  const valid = flagNamed(text);
  if (valid !== undefined) return !valid;
  return notReading(text)?.class === 'error' ? true : meansDeleted(text);
}

/** Date and time of a reading may stand in two columns: they are kept as one text. */
function keptTexts(
  text: TextAt,
  roles: readonly { readonly role: keyof KeptTexts; readonly columns: readonly number[] }[],
): KeptTexts | undefined {
  const kept: { -readonly [K in keyof KeptTexts]: KeptTexts[K] } = {};
  let some = false;
  for (const { role, columns } of roles) {
    const [first = 0, ...more] = columns;
    const own =
      more.length === 0
        ? text(first)
        : columns
            .map(text)
            .filter((t) => t !== '')
            .join(' ');
    if (own === '') continue;
    kept[role] = own;
    some = true;
  }
  return some ? kept : undefined;
}
