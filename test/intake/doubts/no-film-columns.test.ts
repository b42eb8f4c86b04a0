import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { brief, read } from '../helpers.ts';

const panels = ['bonnet', 'roof', 'boot', 'door front left'];
const list = (cells: (row: number) => readonly (number | string)[], rows = 4) =>
  `Unit: µm\n${Array.from({ length: rows }, (_, k) => [panels[k], ...cells(k)].join(';')).join('\n')}\n`;
const readings = [
  [112.3, 115.1],
  [104.8, 107.7],
  [119.9, 110.4],
  [99.6, 103.2],
] as readonly (readonly number[])[];
const told = (text: string) =>
  read(text).diagnostics.map((one) => [brief(one).split(' ').slice(1).join(' '), one.message]);

describe('a column without a name', () => {
  test('that has one number on all panels refuses the file, wherever it stands', () => {
    fc.assert(
      fc.property(fc.constantFrom(80, 118, 21.5, 180, 105.5), fc.nat(2), (same, place) => {
        const text = list((k) => (readings[k] ?? []).toSpliced(place, 0, same));
        expect(told(text)).toEqual([
          [
            'error column-unnamed',
            `column ${place + 2} has ${same} in every row: these are hardly readings, and nothing says what they are`,
          ],
        ]);
      }),
    );
  });

  test('that is far from the others on every panel refuses it, whether it changes or not', () => {
    const temperature = list((k) => [...(readings[k] ?? []), 21.3 + k / 5]);
    expect(told(temperature)).toEqual([
      [
        'error column-unnamed',
        expect.stringMatching(/^column 4 has 21.3 to 21.9 beside 99.6 to 119.9/u),
      ],
    ]);
    const humidity = list((k) => [readings[k]?.[0] ?? 0, [45, 47, 46, 48][k] ?? 0]);
    expect(told(humidity).map(([what]) => what)).toEqual(['error column-unnamed']);
  });

  test('that has less than a quarter of the others refuses it on two rows, as temperatures have', () => {
    for (const names of [
      ['bonnet', 'roof'],
      ['bonnet', 'bonnet'],
    ]) {
      const text = names.map((panel, k) => `${panel};${readings[k]?.[0]};${21.4 + k / 5}`);
      expect(told(`Unit: µm\n${text.join('\n')}\n`).map(([what]) => what)).toEqual([
        'error column-unnamed',
      ]);
    }
  });

  test('that repeats its numbers on every panel refuses it, where they are no counter', () => {
    const text = panels.flatMap((panel, k) =>
      [106.5, 111.5].map((same, at) => `${panel};${readings[k]?.[at]};${same}`),
    );
    expect(told(`Unit: µm\n${text.join('\n')}\n`).map(([what]) => what)).toContain(
      'error column-unnamed',
    );
  });

  test('of which two blocks are one grid is judged over all of them', () => {
    const blocks = panels.map(
      (panel, k) => `${panel}\n${readings[k]?.map((value) => `${value};21.5`).join('\n')}`,
    );
    expect(told(`Unit: µm\n${blocks.join('\n')}\n`).map(([what]) => what)).toContain(
      'error column-unnamed',
    );
  });

  test('is read where readings may well be so', () => {
    for (const same of [
      list((k) => [...(readings[k] ?? []), 110], 2),
      'Unit: µm\nbonnet;101;101\nroof;101;101\nboot;101;101\n',
      'Unit: mil\nbonnet;4.4;4.5\nroof;4.4;4.4\nboot;4.4;4.5\n',
    ]) {
      expect(told(same)).toEqual([]);
    }
  });

  test.each([
    ['Bonnet;118;88\nRoof;121;88', 'column 3 has 88 beside 118 to 121 on every panel'],
    ['Bonnet;92;47\nRoof;87;49', 'column 3 has 47 to 49 beside 87 to 92 on every panel'],
    ['Bonnet;92;90;140\nRoof;87;89;140', 'column 4 has 140 beside 87 to 92 on every panel'],
    ['Roof;114;52', 'column 3 has 52 beside 114'],
  ])('on few panels is read and doubted where it is far from those beside it: %j', (rows, why) => {
    expect(told(`Unit: µm\n${rows}\n`)).toEqual([
      ['warning reading-doubted', `${why}, and is read as readings`],
    ]);
  });

  test.each([
    'Bonnet;118;97\nRoof;121;104',
    'Bonnet;118;88\nRoof;86;121',
    'Roof;114;60',
    'Roof;114;112;310',
    'Bonnet;112;111;310\nRoof;104;105;107',
  ])('is read in silence where a place or filler may well be so: %j', (rows) => {
    expect(told(`Unit: µm\n${rows}\n`)).toEqual([]);
  });

  test('that a panel with filler stands out in is read', () => {
    const text = list((k) =>
      k === 2 ? [480.5, 512.3, 530.1] : [...(readings[k] ?? []), 105.5 + k * k],
    );
    expect(told(text)).toEqual([]);
  });
});

test('of columns called readings one that is far from the others is read, and told', () => {
  const text = `panel;1;2;3;unit\n${panels.map((panel, k) => [panel, ...(readings[k] ?? []), 40.3 + k, 'µm'].join(';')).join('\n')}\n`;
  expect(told(text)).toEqual([
    ['warning reading-doubted', expect.stringContaining('column "3" has 40.3 to 43.3')],
  ]);
});
