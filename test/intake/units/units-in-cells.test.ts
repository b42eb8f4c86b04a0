import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test.each(['bonnet: 104 106 103', 'bonnet: 104 106 103 µm?', 'bonnet: 104 106 - µm'])(
  'the line of a list without a unit is shown, not the first of those with one: %s',
  (last) => {
    const text = `roof: 111 109 112 µm\nboot: 97 98 99 µm\n${last}\n`;
    expect(briefs(text)[0]).toMatch(/^3:\d+\+\d+ error unit-missing$/u);
  },
);

const inCells = (...cells: readonly string[]) =>
  `panel,point,thickness\n${cells.map((cell, k) => `bonnet,${k + 1},${cell}\n`).join('')}`;

test('cells that each name a unit are read in their own, one in mm that can be nothing else too', () => {
  const text = inCells('112.4 µm', '0.109 mm', '98.6µm', '4.0 mil');
  expect(values(text)?.map((own) => Number(own[3]?.toString()).toFixed(1))).toEqual([
    '112.4',
    '109.0',
    '98.6',
    '101.6',
  ]);
  expect(read(text).value?.decisions.evidence.join()).toContain('2 in µm, 1 in mil, 1 in mm');
});

test('one in mm that is no paint, is not given to a µm, or stands beside a number without a unit, is asked about', () => {
  expect(briefs(inCells('112.4 µm', '109 mm', '98.6 µm')).join()).toContain('error unit-missing');
  expect(briefs(inCells('112.4 µm', '0.1 mm', '98.6 µm')).join()).toContain('error unit-missing');
  expect(briefs(inCells('112.4 µm', '0.109 mm', '98.6')).join()).toContain('error unit-missing');
});

test('a block of nothing but statistics asks for no unit, and each missing one is told once, in its place', () => {
  const block = 'Roof\n09:01;112.4\n09:02;108.9\n';
  expect(briefs(`${block}Bonnet\nMin;108.9\n`)).toEqual([
    '5:1+3 warning statistics-left-out',
    '2:7+5 error unit-missing',
  ]);
  expect(briefs('Panel;Reading\nMin;108.9\nMax;112.4\n').at(-1)).toBe('1:1+5 error no-readings');
});

test('behind a first block of nothing but statistics the unit is doubted as ever', () => {
  const block = 'Roof\n09:01;4.4\n09:02;4.2\n09:03;4.1\n09:04;4.3\n';
  const doubts = (text: string) => briefs(text).filter((one) => one.includes('unit-doubtful'));
  expect(doubts(`Unit: µm\n${block}`).length).toBe(1);
  expect(doubts(`Unit: µm\nBonnet\nMin;4.1\n${block}`).length).toBe(1);
});
