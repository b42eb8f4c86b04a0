import { describe, expect, test } from 'vitest';
import { boxLines, formLines } from '../../src/render/fill-in-text.ts';
import type { BoxPanel, BoxPlace, Towards } from '../../src/report/model.ts';

const die = [
  { name: '1', u: 0.2, v: 0.2 },
  { name: '2', u: 0.8, v: 0.2 },
  { name: '3', u: 0.5, v: 0.5 },
  { name: '4', u: 0.2, v: 0.8 },
  { name: '5', u: 0.8, v: 0.8 },
];
const row = [
  { name: '1', u: 0.2, v: 0.5 },
  { name: '2', u: 0.5, v: 0.5 },
];
const panel = (
  label: string,
  places: readonly BoxPlace[],
  towards: Towards | null = null,
): BoxPanel => ({ label, places, towards, boxes: 1 });

describe('boxes for the points of a panel', () => {
  test('stand in rows as the points lie, two panels beside one another, with an arrow', () => {
    const panels = [
      panel('bonnet', die, { word: 'front', at: 'top' }),
      panel('right sill', row, { word: 'front', at: 'right' }),
      panel('left sill', row, { word: 'front', at: 'left' }),
    ];
    expect(boxLines(panels, { width: 80 })).toEqual([
      'bonnet  ↑ front                           right sill                     front →',
      '   1 [______]            2 [______]          1 [______] 2 [______]',
      '              3 [______]',
      '   4 [______]            5 [______]',
      '',
      'left sill  ← front',
      '   1 [______] 2 [______]',
    ]);
  });

  test('stand one under the other for several readings of a point, the name at the first', () => {
    expect(boxLines([{ ...panel('sill', row), boxes: 3 }], { width: 60 })).toEqual([
      'sill',
      '       1 [______]        2 [______]',
      '         [______]          [______]',
      '         [______]          [______]',
    ]);
  });

  test.each(['top', 'left', 'right'] as const)(
    'have a long name, and an arrow to the %s, over themselves alone',
    (at) => {
      const name = 'right door under the handle, above the rail';
      const panels = [panel(name, row, { word: 'front', at }), panel('sill', row)];
      const lines = boxLines(panels, { width: 80 });
      const [first = '', second = '', third = ''] = lines;
      expect(first).toBe('right door under the handle, above the    sill');
      expect(second).toMatch(/^rail +1 \[/);
      expect(third).toMatch(at === 'right' ? /^ {31}front →$/ : /^[↑←] front$/);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
    },
  );

  test('stand one under the other where a word of a name is too long for two', () => {
    const word = 'x'.repeat(45);
    const lines = boxLines([panel(word, row), panel('sill', row)], { width: 80 });
    expect(lines[0]).toBe(word);
    expect(lines).toContain('sill');
  });

  test('take no more lines than their rows and their name', () => {
    expect(boxLines([panel('sill', row), panel('rail', row)], { width: 80 })).toHaveLength(2);
    expect(boxLines([panel('sill', row), panel('roof', die)], { width: 80 })).toHaveLength(4);
  });

  test('stand one panel under the other where there is no room for two', () => {
    const lines = boxLines([panel('sill', row), panel('rail', row)], { width: 60 });
    expect(lines.filter((line) => line !== '').map((line) => line.trim().split(' ')[0])).toEqual([
      'sill',
      '1',
      'rail',
      '1',
    ]);
  });

  test('stand closely from the left, over as many lines as it takes, where they would touch', () => {
    const crowd = Array.from({ length: 7 }, (_, i) => ({ name: `${i}`, u: i / 6, v: 0.5 }));
    expect(boxLines([panel('rail', crowd)], { width: 60 })).toEqual([
      'rail',
      '0 [______] 1 [______] 2 [______] 3 [______] 4 [______]',
      '5 [______] 6 [______]',
    ]);
  });

  test('at the very edge of a panel stay on the sheet', () => {
    const ends = [
      { name: 'front', u: 0, v: 0.5 },
      { name: 'rear', u: 1, v: 0.5 },
    ];
    for (const line of boxLines([panel('sill', ends), panel('rail', ends)], { width: 80 })) {
      expect(line.length).toBeLessThanOrEqual(80);
    }
  });

  test('show no control character of a name', () => {
    const naughty = panel('a\u001b', [{ name: '\u001b', u: 0, v: 0 }]);
    expect(boxLines([naughty], { width: 80 }).join()).not.toContain('\u001b');
  });
});

describe('blanks to fill in', () => {
  test('share the lines that they fit in', () => {
    const lines = formLines(['Vehicle', 'Date', 'Operator', 'Gauge check before'], 60);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(60);
    expect(lines.join('\n')).toMatch(/Vehicle: _{16,} {2}Date: _{16,}/);
    expect(lines.join('\n').match(/_{16,}/g)).toHaveLength(4);
  });
});
