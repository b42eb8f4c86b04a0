import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const table = (names: string, row: string): string => `Point;${names}\n1;${row}\n2;${row}\n`;
const kept = (text: string) => values(text)?.map(([panel, , , value]) => [panel, value]);

test('columns of panels may each be in their own unit', () => {
  const text = table('Bonnet (µm);Roof (mil)', '112,4;4');
  expect(kept(text)?.slice(0, 2)).toEqual([
    ['Bonnet', 112.4],
    ['Roof', 101.6], // 4 × 25.4 µm
  ]);
  expect(read(text).value?.decisions.evidence.join()).toContain(
    'each column names its unit: µm in "Bonnet (µm)", mil in "Roof (mil)"',
  );
});

test.each([
  ['one of them is no film in its unit', 'Bonnet (µm);Roof (mil)', '112,4;104'],
  ['a panel has two of them', 'Bonnet (µm);Bonnet (mil)', '112,4;4,4'],
])('they contradict each other where %s', (_, names, row) => {
  expect(briefs(table(names, row)).join()).toMatch(/error unit-conflict/u);
});

test('one of them without a unit is not read in that of the others', () => {
  expect(values(table('Bonnet (µm);Roof (mil);Boot', '112,4;4;104'))).toBeUndefined();
});
