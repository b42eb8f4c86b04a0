import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { placeAllowance } from '../../../src/film/limits/place-allowance.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { knownFacts, standardTerms } from '../car-builder.ts';

const around = (...ums: readonly number[]) =>
  placeAllowance(ums.map(micrometres), knownFacts, standardTerms, filmModel);

test('a place allows the more, the more its marks read', () => {
  const [thin, thick] = [around(104, 106, 105), around(114, 116, 115)];
  expect(thin?.budget).toBeGreaterThanOrEqual(0);
  expect(thick?.budget).toBeGreaterThan(thin?.budget ?? Number.POSITIVE_INFINITY);
});

test('a place that was read at fewer marks than a machine plan needs allows nothing to be said', () => {
  const { leastPoints } = filmModel.reading;
  const marks = Array.from({ length: leastPoints }, () => 112);
  expect(around(...marks)).not.toBeNull();
  expect(around(...marks.slice(1))).toBeNull();
});

test('a place as thick as a repaint allows nothing to be said, and one just under it does', () => {
  const { refinished } = filmModel.conditions;
  expect(around(refinished, refinished, refinished)).not.toBeNull();
  expect(around(refinished + 1, refinished, refinished)).toBeNull();
});
