import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

describe('one unit behind the name of every point is that of its readings', () => {
  test.each([
    ['in a first column without a name', ''],
    ['in a column of points', 'Point'],
  ])('%s, and no part of the name', (_, corner) => {
    const text = `${corner};Bonnet;Roof\nP1 (mil);4.12;4.02\nP2 (mil);4.1;4.01\n`;
    expect(values(text)).toEqual([
      ['Bonnet', 'P1', 1, 4.12 * 25.4],
      ['Roof', 'P1', 1, 4.02 * 25.4],
      ['Bonnet', 'P2', 1, 4.1 * 25.4],
      ['Roof', 'P2', 1, 4.01 * 25.4],
    ]);
    expect(read(text).value?.decisions.evidence).toContain('each name of a point says mil');
  });

  test('but behind some of them only, or two units, or a length from an edge, settles nothing', () => {
    const table = (first: string, second: string): string =>
      `Point;Bonnet;Roof\n${first};112;102\n${second};110;101\n`;
    for (const text of [
      table('P1 (µm)', 'P2'),
      table('P1 (µm)', 'P2 (mil)'),
      table('5 mm', '9 mm'),
    ])
      expect(briefs(text).join()).toContain('unit-missing');
  });

  test('and another one above the readings contradicts it', () => {
    const text = 'Point;Bonnet (mil);Roof (mil)\nP1 (µm);4.1;4.2\nP2 (µm);4.0;4.1\n';
    expect(briefs(text)).toContain('2:1+2 error unit-conflict');
  });
});
