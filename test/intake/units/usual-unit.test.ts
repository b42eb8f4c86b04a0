/** The unit that a shop’s gauge usually shows: it holds where nothing else says one. */
import { expect, test } from 'vitest';
import { briefs, read } from '../helpers.ts';

const unitOf = (text: string) => read(text, { usualUnit: 'um' }).value?.decisions.unit;

test('the usual unit is that of a file that says none', () => {
  expect(unitOf('panel,reading\nbonnet,112\nroof,99\n')).toBe('um');
});

test.each([
  'panel,reading (mil)\nbonnet,4.4\nroof,3.9\n',
  'Unit: mil\npanel,reading\nbonnet,4.4\nroof,3.9\n',
  'panel,reading\nbonnet,4.4 mil\nroof,3.9 mil\n',
])('a file that says its unit is read in it, whatever is usual: %j', (text) => {
  expect(unitOf(text)).toBe('mil');
});

test('a unit asked for is held against the file, as ever', () => {
  const text = 'panel,reading (mil)\nbonnet,4.4\nroof,3.9\n';
  expect(briefs(text, { unit: 'um' })).toEqual(['1:7+13 error unit-conflict']);
});

test('a usual unit in which no reading can be paint is refused: nobody named it for this file', () => {
  const text = 'panel,reading\nbonnet,4.4\nroof,3.9\nboot,4.1\n';
  expect(briefs(text, { usualUnit: 'um' })).toEqual(['1:7+7 error unit-doubtful']);
});

test('two units in one file are told as such, and not held against the usual one', () => {
  const text = 'Unit: um\npanel,reading (mil)\nbonnet,4.4\nroof,3.9\n';
  expect(read(text, { usualUnit: 'um' }).diagnostics[0]?.message).toMatch(/says mil|says µm/u);
  expect(briefs(text, { usualUnit: 'um' })[0]).toMatch(/error unit-conflict/u);
});
