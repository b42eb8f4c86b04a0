/** Columns of csv are called as the keys of the record are. */
import { describe, expect, test } from 'vitest';
import {
  columnMeaning,
  commandOf,
  ownColumnMeanings,
} from '../../src/formats/data/column-meanings.ts';
import { tableColumns } from '../../src/formats/data/table-columns.ts';
import { placeText, recordKeyPlaces } from '../../src/formats/records/record-keys.ts';

const tables = Object.entries(tableColumns).map(([table, columns]) => ({ table, columns }));
const columnsOfAll = tables.flatMap(({ table, columns }) =>
  Object.entries(columns).map(([name, place]) => ({ table, name, place })),
);

/** `removed_low_um` of `removed_um` and `low`: both names, the unit last; a list is named by one of it. */
function joined(outer: string, inner: string): string {
  const unit = /_(um|pct|h|min|minor)$/;
  const end = unit.exec(inner)?.[0] ?? unit.exec(outer)?.[0] ?? '';
  const bare = (word: string): string =>
    end !== '' && word.endsWith(end) ? word.slice(0, -end.length) : word;
  return `${bare(outer)}_${bare(inner)}${end}`;
}

const MIDDLES = ['mean', 'median'];

/** What a column may be called that holds what stands there. */
function namesOf(place: string): readonly string[] {
  const [inner = '', outer = ''] = place.split('.').reverse();
  const [key, around] = [inner.replace('[]', ''), outer.replace(/s?\[\]$/, '')];
  if (MIDDLES.includes(key)) return [around];
  if (key === 'text') return [`${outer.replace('[]', '')}_text`];
  return [key, ...(around === '' ? [] : [joined(around, key)])];
}

test('a column is called as its key, or as that and the key around it', () => {
  expect(namesOf('panels[].budget_um')).toContain('budget_um');
  expect(namesOf('panels[].removed_um.low')).toContain('removed_low_um');
  expect(namesOf('panels[].removal_um.median')).toEqual(['removal_um']);
  expect(namesOf('trainees[].bias.mean_um')).toContain('bias_mean_um');
  expect(namesOf('options[].lines[].kind')).toContain('line_kind');
  expect(namesOf('panels[].if_otherwise.condition')).toContain('if_otherwise_condition');
  expect(namesOf('trainees[].bias.mean_um')).not.toContain('bias_um');
});

test('a column that says nothing without the key around it bears both names', () => {
  const mute = /^(?:p\d+_h|low(?:_um)?|high(?:_um)?|sd(?:_um)?|mean|median)$/;
  const short = columnsOfAll.filter(({ name, place }) => place?.includes('.') && mute.test(name));
  // The statistics of a panel stand in the panel itself.
  expect(short.filter(({ name }) => name !== 'sd_um')).toEqual([]);
});

describe('each table', () => {
  test.each(tables)('$table has columns from places that its record has', ({ table, columns }) => {
    const places = recordKeyPlaces()
      .filter(({ record }) => record === commandOf(table))
      .map(placeText);
    const strange = Object.values(columns)
      .filter((place) => place !== null)
      .filter((place) => !places.includes(place));
    expect(strange).toEqual([]);
  });

  test.each(tables)('$table calls them as the record does', ({ columns }) => {
    // The first error of a job, of all that is told of it.
    const own = ['error', 'error_code'];
    const otherwise = Object.entries(columns).filter(
      ([name, place]) => place !== null && !own.includes(name) && !namesOf(place).includes(name),
    );
    expect(otherwise).toEqual([]);
  });

  test.each(tables)('$table has no column without a meaning', ({ table, columns }) => {
    const mute = Object.keys(columns).filter((name) => columnMeaning(table, name) === undefined);
    expect(mute).toEqual([]);
  });
});

test('no meaning is written of a column that no table has', () => {
  const names = columnsOfAll.flatMap(({ table, name }) => [
    name,
    `${table}/${name}`,
    `${commandOf(table)}/${name}`,
  ]);
  expect(Object.keys(ownColumnMeanings).filter((name) => !names.includes(name))).toEqual([]);
});
