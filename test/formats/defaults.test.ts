/** No built-in number is anonymous: each has a value, a unit, a meaning and the grounds it claims. */
import { describe, expect, test } from 'vitest';
import * as correction from '../../src/formats/data/correction-defaults.ts';
import * as film from '../../src/formats/data/film-defaults.ts';
import * as work from '../../src/formats/data/work-defaults.ts';
import {
  type DefaultTree,
  type ListedDefault,
  listDefaults,
  number,
} from '../../src/formats/default.ts';

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

describe('every built-in number states its grounds', () => {
  const trees: Readonly<Record<string, DefaultTree>> = {
    film: film.filmDefaults,
    machines: correction.machineDefaults,
    pads: correction.padDefaults,
    products: correction.productDefaults,
    defects: correction.defectDefaults,
    grain: correction.grainDefaults,
    'sanding marks': correction.sandingDefaults,
    removal: correction.removalDefaults,
    correction: correction.correctionDefaults,
    'stage times': work.stageTimeDefaults,
    work: work.workDefaults,
  };

  test.each(Object.entries(trees))('%s', (_, tree) => {
    expect(listDefaults(tree).length).toBeGreaterThan(0);
    expect(faultsIn(tree)).toEqual([]);
  });
});
