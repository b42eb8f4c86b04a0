/** No built-in number is anonymous: each has a value, a unit, a meaning and the grounds it claims. */
import { describe, expect, test } from 'vitest';
import { listAllDefaults } from '../../src/formats/data/all-defaults.ts';
import {
  type DefaultTree,
  type ListedDefault,
  listDefaults,
  number,
} from '../../src/formats/default.ts';
import { filmModel } from '../../src/formats/models.ts';
import { modelsWith } from '../../src/formats/models-with.ts';

/** What is wrong with a default, in words; empty when it can stand. */
const faultsOf = ({
  path,
  value,
  unit,
  basis,
  source,
  meaning,
}: ListedDefault): readonly string[] =>
  [
    Number.isFinite(value) ? '' : 'value is not finite',
    unit.trim() === '' ? 'no unit' : '',
    basis === 'published' && source.trim() === '' ? 'published without a source' : '',
    meaning.trim() === '' ? 'no meaning' : '',
  ]
    .filter((fault) => fault !== '')
    .map((fault) => `${path}: ${fault}`);

const faultsIn = (tree: DefaultTree): readonly string[] => listDefaults(tree).flatMap(faultsOf);

describe('a default that hides its grounds is refused', () => {
  const sound = number(1, 'µm', 'published', 'ISO 2808:2019, 5.4', 'the least step shown');
  test.each([
    [
      'with no source though published',
      { ...sound, source: ' ' },
      'a.b: published without a source',
    ],
    ['that is not a number', { ...sound, value: Number.NaN }, 'a.b: value is not finite'],
    ['that is endless', { ...sound, value: Number.POSITIVE_INFINITY }, 'a.b: value is not finite'],
    ['without a meaning', { ...sound, meaning: '' }, 'a.b: no meaning'],
    ['without a unit', { ...sound, unit: '' }, 'a.b: no unit'],
  ])('%s', (_, planted, fault) => {
    expect(faultsIn({ a: { sound, b: planted } })).toEqual([fault]);
  });

  test('and one that states them is not, nor is an assumption without a source', () => {
    expect(faultsIn([sound, { ...sound, basis: 'assumption', source: '' }])).toEqual([]);
  });
});

describe('every built-in number', () => {
  const all = listAllDefaults();

  test('states its grounds', () => {
    expect(all.length).toBeGreaterThan(200);
    expect(all.flatMap(faultsOf)).toEqual([]);
  });

  test('means something of its own: no two say the same', () => {
    const meanings = all.map(({ meaning }) => meaning);
    expect(meanings.filter((meaning, i) => meanings.indexOf(meaning) !== i)).toEqual([]);
  });

  test('has an id of its own, which ends in its unit', () => {
    const ids = all.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const thickness = all.filter(({ unit }) => unit === 'µm').map(({ id }) => id);
    expect(thickness.filter((id) => !id.endsWith('_um'))).toEqual([]);
    expect(ids).toEqual(
      expect.arrayContaining([
        'film.earlier.unknown_clear_um',
        'correction.removal.overlap',
        'correction.machines.da-forced.forced_rpm',
        'correction.defects.swirl-marks.grade_3_um',
        'work.set_up_min',
      ]),
    );
  });

  test('lies within the range it may be set to', () => {
    const outside = all.filter(({ value, range: [least, most] }) => value < least || value > most);
    expect(outside.map(({ id }) => id)).toEqual([]);
  });
});

describe('the models', () => {
  test('take the numbers that are set, and keep the others', () => {
    const models = modelsWith(
      new Map([
        ['film.limits.clear_floor_um', 30],
        ['correction.machines.rotary.rpm', 900],
        ['work.stages.mask.likely_min', 44],
      ]),
    );
    expect(models.film).toEqual({
      ...filmModel,
      limits: { ...filmModel.limits, clearFloor: 30 },
    });
    expect(models.correction.machines[0]?.motion).toEqual({ kind: 'rotary', rpm: 900 });
    expect(models.work.stages.find(({ id }) => id === 'mask')?.time?.likely).toBe(44);
  });
});
