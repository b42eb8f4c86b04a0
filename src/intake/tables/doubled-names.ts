/** Two columns of readings under one name: `Reading 2` twice. They count no more, and so none is known. */
import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { type HeaderCell, plainWords } from '../header/header.ts';
import { countedColumn } from '../header/numbered-columns.ts';

type Header = readonly HeaderCell<GaugeRole>[];

export function tellDoubled(
  header: Header,
  placeOf: (column: number) => Place,
): Diagnostic | undefined {
  const names = header.map(({ label }) => plainWords(label));
  const second = header.findIndex(
    (cell, column) => mayBeReading(cell) && names.indexOf(names[column] ?? '') < column,
  );
  const cell = header[second];
  if (cell === undefined) return undefined;
  const first = names.indexOf(names[second] ?? '');
  const message = `columns ${first + 1} and ${second + 1} are both called "${cell.text}"`;
  return error('column-repeated', message, { at: placeOf(second), hint: wayOut(cell, header) });
}

const mayBeReading = ({ role, label, unit }: HeaderCell<GaugeRole>): boolean =>
  role === undefined &&
  label !== '' &&
  (unit === 'um' || unit === 'mil' || countedColumn(label) !== undefined);

function wayOut({ text, label }: HeaderCell<GaugeRole>, header: Header): string {
  const again =
    'if one is the other once more, take it out; if they are of two visits, give each a file of its own';
  const number = countedColumn(label)?.number;
  if (number === undefined) return `give each a name of its own; ${again}`;
  const meant = text.replace(/\d+(?=\D*$)/u, String(number + 1));
  const isFree = meant !== text && header.every((other) => other.text !== meant);
  return isFree
    ? `number the readings of one visit 1, 2, 3 …: is the second "${meant}"? ${again}`
    : `number the readings of one visit 1, 2, 3 … without a gap; ${again}`;
}
