/** What records say by their keys: every key has a meaning in its place, with its unit and what null means. */
import { describe, expect, test } from 'vitest';
import { recordKeyMeanings } from '../../src/formats/data/record-key-meanings.ts';
import { recordMeaning } from '../../src/formats/data/record-meanings.ts';
import { recordPlaceMeanings } from '../../src/formats/data/record-place-meanings.ts';
import {
  type KeyPlace,
  keyOfPlace,
  placeText,
  recordKeyPlaces,
} from '../../src/formats/records/record-keys.ts';

const places = recordKeyPlaces();
const named = (place: KeyPlace): string => `${place.record}: ${placeText(place)}`;
const meaningOf = ({ record, path }: KeyPlace): string =>
  recordMeaning(record, path)?.meaning ?? '';

/** The end of a key, and what a sentence about it names. */
const UNITS: readonly (readonly [RegExp, RegExp])[] = [
  [/_um(_per_set)?$/, /µm/],
  [/_pct$/, /per cent|%/],
  [/_prob$/, /chance|risk/i],
  [/_h$/, /hours/i],
  [/_min$/, /minute/i],
  [/_minor$/, /least unit/],
  [/_m2$/, /m²/],
  [/_mm$/, /mm/],
  [/_m$/, /\bm\b/],
  [/_c$/, /°C/],
  [/_k$/, /kelvin/],
  [/_gu$/, /gloss unit/],
  [/_deg$/, /degree/],
];

/** Not minutes, and no seconds. */
const OTHERWISE = new Set(['orbits_per_min']);

test('the keys of a record are found wherever they stand in its schema', () => {
  const all = places.map(named);
  expect(all).toContain('survey: panels[].clear.low_um');
  expect(all).toContain('grade: class.gauge_rr.ndc');
  expect(all).toContain('plan: panels[].zones[].zone');
  expect(all).toContain('batch: settings_sha256');
  expect(all).not.toContain('survey: panels[].zones[].mean_um');
  expect(all).toEqual([...new Set(all)]);
  expect(new Set(places.map(keyOfPlace)).size).toBeGreaterThan(500);
  const nullable = places.find((one) => named(one) === 'grade: class.gauge_rr.ndc');
  expect(nullable?.nullable).toBe(true);
});

describe('each key of each record', () => {
  test('has a meaning', () => {
    expect(places.filter((one) => meaningOf(one) === '').map(named)).toEqual([]);
  });

  test('that may be null says what null means', () => {
    const mute = places.filter((one) => one.nullable && !/\bnull\b/i.test(meaningOf(one)));
    expect(mute.map((one) => `${named(one)}: ${meaningOf(one)}`)).toEqual([]);
  });

  test('with a unit in its name says the unit', () => {
    const units = places.filter((one) => {
      const key = keyOfPlace(one);
      return UNITS.some(([end, word]) => end.test(key) && !word.test(meaningOf(one)));
    });
    const mute = units.filter((one) => !OTHERWISE.has(keyOfPlace(one)));
    expect(mute.map((one) => `${named(one)}: ${meaningOf(one)}`)).toEqual([]);
  });
});

test('no meaning is written of a key that no record has, or of a place where another one holds', () => {
  const ends = places.map(({ record, path }) => {
    const steps = [record, ...path.map((step) => step.replace('[]', ''))];
    return steps
      .map((_, i) => steps.slice(i).join('.'))
      .find((end) => Object.hasOwn(recordPlaceMeanings, end));
  });
  const general = places.flatMap((one, i) => (ends[i] === undefined ? [keyOfPlace(one)] : []));
  const idle = [
    ...Object.keys(recordPlaceMeanings).filter((end) => !ends.includes(end)),
    ...Object.keys(recordKeyMeanings).filter((key) => !general.includes(key)),
  ];
  expect(idle).toEqual([]);
});

test('a key means in a zone what it means in its panel', () => {
  const inZone = recordMeaning('survey', ['panels[]', 'zones[]', 'clear', 'mean_um']);
  expect(inZone).toEqual(recordMeaning('survey', ['panels[]', 'clear', 'mean_um']));
  expect(recordMeaning('survey', ['no_such_key'])).toBeUndefined();
});

test('probabilities, percentages, money and lengths end as they are to', () => {
  const keys = [...new Set(places.map(keyOfPlace))];
  const chances = places.filter(
    (one) =>
      /^(The )?(highest )?(chance|risk) /i.test(meaningOf(one)) &&
      !/_prob$|_pct$/.test(keyOfPlace(one)),
  );
  expect(chances.map(named).filter((one) => !/\.risk$/.test(one))).toEqual([]);
  expect(keys.filter((key) => /(thickness|percent|probability|price|cost)$/.test(key))).toEqual([]);
});
