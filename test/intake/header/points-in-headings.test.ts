import { expect, test } from 'vitest';
import { read, values } from '../helpers.ts';

const text = (...names: readonly string[]) =>
  `${names.join(';')};Unit\n${names.map((_, k) => 104 + k).join(';')};µm\n`;

test('one panel with several points is enough where every heading is a panel and its point', () => {
  const table = text('Bonnet 1', 'Bonnet 2', 'Roof 1', 'Boot 1');
  expect(values(table)).toEqual([
    ['Bonnet', '1', 1, 104],
    ['Bonnet', '2', 1, 105],
    ['Roof', '1', 1, 106],
    ['Boot', '1', 1, 107],
  ]);
  expect(read(table).value?.decisions.evidence).toContain(
    '4 columns of readings are points, as their names say',
  );
});

test('the vehicle and the day of a row may stand beside them', () => {
  const table = 'Vehicle;Date;Bonnet 1;Bonnet 2;Roof 1;Unit\nA;2026-01-02;104;105;106;µm\n';
  expect(values(table)).toHaveLength(3);
});

test.each([
  ['each panel has one', ['Bonnet 1', 'Roof 1', 'Boot 1']],
  ['a number is left out', ['Bonnet 1', 'Bonnet 3', 'Roof 1']],
  ['a panel begins with another number than 1', ['Bonnet 1', 'Bonnet 2', 'Roof 2']],
  ['the numbered name is that of several panels', ['Door 1', 'Door 2', 'Roof 1']],
  ['a heading is no panel', ['Bonnet 1', 'Bonnet 2', 'Roof 1', 'Limit 1']],
  ['there is but one panel', ['Bonnet 1', 'Bonnet 2']],
])('where %s the headings are no points and nothing is read', (_, names) => {
  expect(values(text(...names))).toBeUndefined();
});

test('beside a heading without a number they stay names, which no template has', () => {
  const names = values(text('Bonnet 1', 'Bonnet 2', 'Roof', 'Boot'))?.map(([panel]) => panel);
  expect(names).toEqual(['Bonnet 1', 'Bonnet 2', 'Roof', 'Boot']);
});
