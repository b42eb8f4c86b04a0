import { expect, test } from 'vitest';
import { briefs, read } from '../helpers.ts';

const table = (unit: string, ...cells: readonly string[]) =>
  `panel;point;thickness${unit}\n${cells.map((cell, k) => `${k < 2 ? 'bonnet' : 'roof'};${(k % 2) + 1};${cell}`).join('\n')}\n`;
const metals = (text: string) =>
  read(text).value?.readings.map(({ thickness, substrate }) => [thickness, substrate]);

test.each([
  [' (µm)', ['112.4 F', '109.0 F', '121.3 N', '118.0 N']],
  [' (µm)', ['112.4 Fe', '109.0 Fe', '121.3 NFe', '118.0 NFe']],
  [' (µm)', ['112.4F', '109.0F', '121.3N', '118.0N']],
  ['', ['112.4 µm Fe', '109.0 µm Fe', '121.3 µm NFe', '118.0 µm NFe']],
])('the metal behind every number is that of its reading: %s %j', (unit, cells) => {
  const [ferrous = '', other = ''] = [cells[0], cells[2]].map(
    (cell) => /\p{L}+$/u.exec(cell ?? '')?.[0],
  );
  expect(metals(table(unit, ...cells))).toEqual([
    [112.4, ferrous],
    [109, ferrous],
    [121.3, other],
    [118, other],
  ]);
  expect(briefs(table(unit, ...cells))).toEqual([]);
});

test('cells without a number need none', () => {
  expect(metals(table(' (µm)', '112 Fe', 'OL', '121 NFe', ''))).toEqual([
    [112, 'Fe'],
    [121, 'NFe'],
  ]);
});

test.each([
  [['112 F', '109', '121 N', '118 N']],
  [['112 F', '109 F', '121 F', '118 X']],
  [['112 F', '109 F', '121 Fe', '118 N']],
  [['112 F', '109 F', '121 F', '118 F']],
])('letters that may mean anything else are refused: %j', (cells) => {
  expect(read(table(' (µm)', ...cells)).value).toBeUndefined();
});

test('beside several readings in a row the metal is left unread, and that is said', () => {
  const { value } = read('panel;1;2\nbonnet;112 µm Fe;109 µm Fe\nroof;121 µm NFe;118 µm NFe\n');
  expect(value?.readings.map(({ thickness }) => thickness)).toEqual([112, 109, 121, 118]);
  expect(value?.decisions.evidence.join()).toContain('metal');
});
