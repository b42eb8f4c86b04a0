import { describe, expect, test } from 'vitest';
import { boxLines, formLines } from '../../src/render/fill-in-text.ts';

const die = [
  { name: '1', u: 0.2, v: 0.2 },
  { name: '2', u: 0.8, v: 0.2 },
  { name: '3', u: 0.5, v: 0.5 },
  { name: '4', u: 0.2, v: 0.8 },
  { name: '5', u: 0.8, v: 0.8 },
];

describe('boxes for the points of a panel', () => {
  test('stand in rows as the points lie, beside the name of the panel', () => {
    expect(boxLines('bonnet', die, { width: 80 })).toEqual([
      'bonnet                        1 [______]                        2 [______]',
      '                                               3 [______]',
      '                              4 [______]                        5 [______]',
    ]);
  });

  test('go under a name that is too long to stand beside them', () => {
    const [name, row] = boxLines('front bumper (composite)', die.slice(2, 3), { width: 80 });
    expect(name).toBe('front bumper (composite)');
    expect(row?.trim()).toBe('3 [______]');
  });

  test('stand closely from the left, over as many lines as it takes, where they would touch', () => {
    const crowd = Array.from({ length: 7 }, (_, i) => ({ name: `${i}`, u: i / 6, v: 0.5 }));
    expect(boxLines('rail', crowd, { width: 80 })).toEqual([
      'rail                    0 [______] 1 [______] 2 [______] 3 [______] 4 [______]',
      '                        5 [______] 6 [______]',
    ]);
  });

  test('at the very edge of a panel stay on the sheet', () => {
    const ends = [
      { name: 'front', u: 0, v: 0.5 },
      { name: 'rear', u: 1, v: 0.5 },
    ];
    for (const line of boxLines('sill', ends, { width: 80 })) {
      expect(line.length).toBeLessThanOrEqual(80);
    }
  });

  test('show no control character of a point’s name', () => {
    expect(
      boxLines('a\u001b', [{ name: '\u001b', u: 0, v: 0 }], { width: 80 }).join(),
    ).not.toContain('\u001b');
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
