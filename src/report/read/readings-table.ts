/**
 * Readings as canonical CSV: a row a reading, in µm, under the names that `read` knows. A column
 * stands only where some reading fills it. Read again, the table gives the same readings.
 */
import { roundTo } from '../../base/rounding.ts';
import type { Reading } from '../../film/reading.ts';
import type { VehicleReadings } from '../../tasks/read/read-request.ts';
import type { DataCell, DataTable } from '../model.ts';

/** Far below what any gauge shows, and more than a value in mil loses on the way to µm. */
const DIGITS = 9;

type CsvColumn = {
  readonly name: string;
  readonly always?: true;
  readonly of: (reading: Reading) => DataCell;
};

const yes = (is: boolean): DataCell => (is ? 'yes' : null);
const text = (value: string | null | undefined): DataCell =>
  value === '' || value === undefined ? null : value;

const csvColumns: readonly CsvColumn[] = [
  { name: 'vehicle', of: ({ vehicle }) => text(vehicle) },
  { name: 'panel', always: true, of: ({ panel }) => text(panel) },
  { name: 'point', always: true, of: ({ point }) => point },
  { name: 'repeat', always: true, of: ({ repeat }) => repeat },
  { name: 'reading_um', always: true, of: ({ thickness }) => figure(thickness) },
  { name: 'layer', of: ({ layer }) => text(layer) },
  { name: 'place', of: ({ place }) => (place === 'face' ? null : place) },
  { name: 'marked', of: ({ marked }) => yes(marked) },
  { name: 'curved', of: ({ curved }) => yes(curved) },
  { name: 'operator', of: ({ operator }) => text(operator) },
  { name: 'time', of: ({ time }) => text(time) },
  { name: 'substrate', of: ({ substrate }) => text(substrate) },
  { name: 'u', of: ({ u }) => text(u) },
  { name: 'v', of: ({ v }) => text(v) },
  { name: 'note', of: ({ note }) => text(note) },
];

const figure = (thickness: number): number => {
  const rounded = roundTo(thickness, DIGITS);
  return rounded === 0 ? 0 : rounded;
};

export function readingsTable(vehicles: readonly VehicleReadings[]): DataTable {
  const readings = vehicles.flatMap((one) => one.readings);
  const columns = csvColumns.filter(
    ({ always, of }) => always === true || readings.some((reading) => of(reading) !== null),
  );
  return {
    columns: columns.map(({ name }) => name),
    rows: readings.map((reading) => columns.map(({ of }) => of(reading))),
  };
}
