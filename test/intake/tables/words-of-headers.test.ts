import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

test.each(['Coating (µm)', 'Lack (µm)', 'Peinture (µm)', 'Valeur mesurée (µm)', 'Измерено (мкм)'])(
  '%s holds the readings where no other column does',
  (heading) => expect(values(`Panel;${heading}\nbonnet;118,1\nroof;132,4\n`)).toHaveLength(2),
);

test('a heading in two languages is known where both mean the same', () => {
  const text = 'Bauteil / Panel;Punkt / Point;Schichtdicke / Thickness (µm)\nbonnet;1;117\n';
  expect(values(text)).toEqual([['bonnet', '1', 1, 117]]);
  expect(briefs(text.replace('Bauteil / Panel', 'Datum / Panel'))[0]).toContain('column-missing');
});

test('a number behind a semicolon and a comma is no heading of a comma file', () => {
  const text = 'Panel;This (µm);That (µm)\nbonnet;118,1;2\nroof;132,4;3\n';
  expect(briefs(text)).toEqual(['1:1+5 error column-missing']);
});

test('the one column in a unit of film is taken for the readings, whatever it is called, and told', () => {
  const text = (name: string) => `Panel;${name} (µm)\nbonnet;118,1\nroof;132,4\n`;
  expect(briefs(text('Something'))).toEqual(['1:7+14 warning reading-doubted']);
  expect(values(text('Something'))?.map((one) => one[3])).toEqual([118.1, 132.4]);
  expect(values(text('Mean'))).toBeUndefined();
  expect(values(text('Limit'))).toBeUndefined();
  expect(values(text('Something (µm);Other'))).toBeUndefined();
});

test('the rows that a database says it wrote are no row', () => {
  const text = 'panel|point|reading_um\nroof|1|104\nroof|2|106\n(2 rows)\n';
  expect(briefs(text)).toEqual(['4:1+8 warning line-left-out']);
});

test.each([
  ['Teil;Punkt;Stärke µm'],
  ['Osa;Piste;Paksuus (µm)'],
  ['Elem;Pont;Rétegvastagság (µm)'],
  ['Τμήμα;Σημείο;Πάχος (μm)'],
])('%s are a panel, a point and a reading', (header) => {
  expect(values(`${header}\nbonnet;1;112,4\n`)).toEqual([['bonnet', '1', 1, 112.4]]);
});
