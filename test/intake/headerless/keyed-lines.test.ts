import { describe, expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const read = [
  ['bonnet', '1', 1, 112.4],
  ['bonnet', '2', 1, 109.1],
  ['roof', '1', 1, 98.6],
];
const shots = [
  ['bonnet', 1, '112.4'],
  ['bonnet', 2, '109.1'],
  ['roof', 1, '98.6'],
] as const;
const lines = (write: (panel: string, point: number, value: string) => string): string =>
  `${shots.map(([panel, point, value]) => write(panel, point, value)).join('\n')}\n`;

describe('keys and values in a line are a row', () => {
  test.each<[string, (panel: string, point: number, value: string) => string]>([
    ['blanks', (panel, point, value) => `panel=${panel} point=${point} value=${value}um`],
    [
      'semicolons',
      (panel, point, value) => `Panel: ${panel}; Point: ${point}; Reading: ${value} µm`,
    ],
    ['pipes', (panel, point, value) => `Bauteil: ${panel} | Punkt: ${point} | Wert (µm): ${value}`],
    ['JSON', (panel, point, value) => `{"panel":"${panel}","point":${point},"um":${value}}`],
  ])('set apart by %s', (_, write) => {
    expect(values(lines(write))).toEqual(read);
    expect(briefs(lines(write))).toEqual([]);
  });

  test('but not where a line has other keys than the first', () => {
    const text = lines((panel, point, value) => `panel=${panel} point=${point} um=${value}`);
    expect(values(text.replace('roof point', 'roof spot'))).toBeUndefined();
  });

  test('and without a unit it is asked for', () => {
    const text = lines((panel, point, value) => `panel=${panel} point=${point} value=${value}`);
    expect(briefs(text)[0]).toContain('unit-missing');
  });
});

describe('keys and values in lines of their own are read', () => {
  test.each(['Reading: $ µm', 'Thickness (µm): $', 'Reading = $ µm'])('with "%s"', (form) => {
    const text = lines(
      (panel, point, value) => `Panel: ${panel}\nPoint: ${point}\n${form.replace('$', value)}\n`,
    );
    expect(values(text)).toEqual(read);
  });
});

describe('readings below the name of their panel are read', () => {
  test.each([
    ['1: 112.4 µm', '2: 109.1 µm'],
    ['P1 = 112.4 µm', 'P2 = 109.1 µm'],
    ['1) 112.4 µm', '2) 109.1 µm'],
    ['1. 112.4 µm', '2. 109.1 µm'],
    ['* 112.4 µm', '* 109.1 µm'],
    ['- 112.4 µm', '- 109.1 µm'],
  ])('as "%s"', (first, second) => {
    const text = `Bonnet\n${first}\n${second}\nRoof\n${first}\n`;
    expect(values(text)?.map(([panel, , , value]) => [panel, value])).toEqual([
      ['Bonnet', 112.4],
      ['Bonnet', 109.1],
      ['Roof', 112.4],
    ]);
  });

  test('and are of nobody’s panel where no line above names one', () => {
    expect(values('1: 112.4 µm\n2: 109.1 µm\n')?.map(([panel]) => panel)).toEqual(['', '']);
  });
});
