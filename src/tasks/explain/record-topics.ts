/** Keys of machine records and columns of csv: each of their meanings, with the places it stands in. */
import { groupBy, type OneOrMore } from '../../base/group-by.ts';
import { columnMeaning, commandOf } from '../../formats/data/column-meanings.ts';
import { type RecordMeaning, recordMeaning } from '../../formats/data/record-meanings.ts';
import { tableColumns } from '../../formats/data/table-columns.ts';
import { machineRecords } from '../../formats/records/machine-records.ts';
import {
  type KeyPlace,
  keyOfPlace,
  placeText,
  recordKeyPlaces,
} from '../../formats/records/record-keys.ts';
import type { Explanation } from './explanation.ts';

type Column = { readonly table: string; readonly name: string; readonly place: string | null };

const allColumns: readonly Column[] = Object.entries(tableColumns).flatMap(([table, columns]) =>
  Object.entries(columns).map(([name, place]) => ({ table, name, place })),
);

type ToldPlace = KeyPlace & { readonly said: RecordMeaning };

/** What is written for machines: all of it, or what was asked for. */
export type Written = {
  readonly places: readonly ToldPlace[];
  readonly columns: readonly Column[];
};

/** What stands nearer to the record itself comes first. */
export const allWritten = (): Written => ({
  places: recordKeyPlaces()
    .flatMap((place) => {
      const said = recordMeaning(place.record, place.path);
      return said === undefined ? [] : [{ ...place, said }];
    })
    .sort((one, other) => one.path.length - other.path.length),
  columns: allColumns,
});

/** A key that means in records what it means in settings files is told with that: `inRecords`. */
export const recordTopics = ({ places, columns }: Written): readonly Explanation[] =>
  writtenTopics({ places: places.filter(({ said }) => said.ofFile === null), columns });

export const writtenTopics = ({ places, columns }: Written): readonly Explanation[] => [
  ...groups(places, (place) => `${keyOfPlace(place)} ${place.said.meaning}`).map((alike) =>
    topic('record key', keyOfPlace(alike[0]), alike[0].said.meaning, whereOf(alike, columns)),
  ),
  ...groups(columns, ({ table, name }) => `${name} ${columnMeaning(table, name)?.meaning}`).flatMap(
    columnTopic,
  ),
];

/** Where a key of settings files stands in records with the same meaning. */
export function inRecords({ places, columns }: Written): ReadonlyMap<string, Details> {
  const shared = places.filter(({ said }) => said.ofFile !== null);
  return new Map(
    groups(shared, keyOfPlace).map((alike) => [keyOfPlace(alike[0]), whereOf(alike, columns)]),
  );
}

type Details = Explanation['details'];
const groups = <T>(all: readonly T[], keyOf: (one: T) => string): readonly OneOrMore<T>[] => [
  ...groupBy(all, keyOf).values(),
];

function columnTopic(alike: OneOrMore<Column>): readonly Explanation[] {
  const [{ table, name }] = alike;
  const said = columnMeaning(table, name);
  if (said === undefined || said.isKey) return [];
  const all = alike.flatMap(({ table: of, place }) =>
    place === null ? [] : [`${commandOf(of)}: ${place}`],
  );
  const places = [...new Set(all)];
  return [
    topic('column', name, said.meaning, [
      { label: 'In csv of', text: alike.map(({ table: of }) => of).join(', ') },
      ...(places.length === 0 ? [] : [{ label: 'In records', text: places.join('; ') }]),
    ]),
  ];
}

const topic = (
  kind: Explanation['kind'],
  id: string,
  meaning: string,
  details: Details,
): Explanation => ({ kind, id, also: [], meaning, details, number: null, example: null });

function whereOf(alike: OneOrMore<ToldPlace>, columns: readonly Column[]): Details {
  const key = keyOfPlace(alike[0]);
  const own = new Set(alike.map((place) => `${place.record} ${placeText(place)}`));
  const tables = columns.filter(
    ({ table, name, place }) =>
      name === key &&
      own.has(`${commandOf(table)} ${place}`) &&
      columnMeaning(table, name)?.isKey === true,
  );
  return [
    { label: 'In records', text: placesText(alike) },
    ...(tables.length === 0
      ? []
      : [{ label: 'In csv of', text: tables.map(({ table }) => table).join(', ') }]),
  ];
}

/** More places than this are counted, not named. */
const MOST_NAMED = 8;

/** `survey: panels[].clear.mean_um, …; grade: …`. */
function placesText(places: readonly KeyPlace[]): string {
  const texts = new Set(places.map(placeText));
  const records = groups(places, ({ record }) => record);
  if (texts.size === 1 && records.length >= Object.keys(machineRecords).length - 1) {
    return `every one: ${[...texts].join('')}`;
  }
  return records
    .map((own) => {
      const [{ record }] = own;
      return places.length > MOST_NAMED && own.length > 1
        ? `${record} (${own.length} places)`
        : `${record}: ${own.map(placeText).join(', ')}`;
    })
    .join('; ');
}

/** What `survey budget_um`, `survey.panels[].clear.low_um` or `clear.low_um` asks for; nothing for a single word. */
export function writtenAs(phrase: string, { places, columns }: Written): Written {
  const steps = phrase
    .replace(/\[\d*\]/g, '')
    .split(/[.\s]+/)
    .filter((step) => step !== '');
  const [first = '', ...rest] = steps;
  if (rest.length === 0) return { places: [], columns: [] };
  const isRecord = Object.hasOwn(machineRecords, first);
  const end = `.${(isRecord ? rest : steps).join('.')}`;
  const isAsked = (place: ToldPlace): boolean =>
    `.${placeText(place).replaceAll('[]', '')}`.endsWith(end);
  return {
    places: places.filter((one) => isAsked(one) && (!isRecord || one.record === first)),
    columns: columns.filter(
      ({ table, name }) => isRecord && commandOf(table) === first && end === `.${name}`,
    ),
  };
}
