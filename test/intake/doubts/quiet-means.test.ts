import fc from 'fast-check';
import { expect, test } from 'vitest';
import { briefs, read } from '../helpers.ts';

const long = (...rows: readonly string[]) => `panel,point,reading_um\n${rows.join('\n')}\n`;

test('rows without a point that are the means of their panels on three panels refuse the file', () => {
  const text = long(
    ...['bonnet,1,101', 'bonnet,2,103', 'bonnet,,102', 'roof,1,99', 'roof,2,96', 'roof,,97.5'],
    ...['boot,1,104', 'boot,2,107', 'boot,,105.5'],
  );
  expect(briefs(text)).toEqual(['4:9+3 error statistics-unnamed']);
});

test('on fewer panels they are read, and told', () => {
  expect(briefs(long('bonnet,1,101', 'bonnet,2,103', 'bonnet,,102'))).toEqual([
    '4:9+3 warning statistics-unnamed',
  ]);
});

test('one such row that is no mean shows that the others are none either', () => {
  const text = long('bonnet,1,101', 'bonnet,2,103', 'bonnet,,102', 'roof,1,99', 'roof,,120');
  expect(read(text).diagnostics.filter(({ code }) => code === 'statistics-unnamed')).toEqual([]);
});

test('the last of nameless columns that is the mean of the others in every row refuses the file', () => {
  const text = 'bonnet,101,103,102\nroof,99,96,97.5\nboot,104,107,105.5\n';
  expect(read(text, { unit: 'um' }).diagnostics.map(({ code }) => code)).toContain(
    'statistics-unnamed',
  );
});

test('readings that are drawn at random are hardly ever taken for means', () => {
  let told = 0;
  const panel = fc.array(fc.integer({ min: 900, max: 1300 }), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(panel, panel, panel, (a, b, c) => {
      const row = (name: string, values: readonly number[]) =>
        [name, ...values.map((value) => value / 10)].join(',');
      const text = `${row('bonnet', a)}\n${row('roof', b)}\n${row('boot', c)}\n`;
      const { diagnostics } = read(text, { unit: 'um' });
      told += diagnostics.some(({ code }) => code === 'statistics-unnamed') ? 1 : 0;
    }),
    { numRuns: 300 },
  );
  expect(told).toBeLessThanOrEqual(1);
});

test('a word of state that says nothing of whether a reading counts is told', () => {
  const text = 'panel,reading_um,state\nbonnet,101,before\nbonnet,98,after\n';
  const [told] = read(text).diagnostics;
  expect(told).toMatchObject({ code: 'column-unknown', severity: 'warning', at: { line: 2 } });
  expect(told?.message).toContain('"before"');
  expect(briefs('panel,reading_um,state\nbonnet,101,ok\nbonnet,98,ok\n')).toEqual([]);
});
