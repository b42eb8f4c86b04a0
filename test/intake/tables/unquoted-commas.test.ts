import { describe, expect, test } from 'vitest';
import { values } from '../helpers.ts';

const kept = (text: string) => values(text)?.map(([panel, , , value]) => [panel, value]);
const read = [
  ['bonnet', 112.4],
  ['bonnet', 109.6],
  ['roof', 98.5],
];

describe('decimal commas that split a cell are joined where what stands behind fits only then', () => {
  test.each([
    ['an operator', 'panel,point,reading_um,operator', (v: string) => `${v},Jan`],
    ['a date', 'panel,point,reading_um,date', (v: string) => `${v},2024-03-05`],
  ])('%s', (_, header, write) => {
    const rows = ['bonnet,1,112,4', 'bonnet,2,109,6', 'roof,1,98,5'].map(write);
    expect(kept([header, ...rows, ''].join('\n'))).toEqual(read);
  });

  test('points that count', () => {
    const text = 'panel,reading_um,point\nbonnet,112,4,1\nbonnet,109,6,2\nroof,98,5,1\n';
    expect(kept(text)).toEqual(read);
    expect(kept(text.replace('6,2', '6,3'))).toBeUndefined();
  });

  test('a panel', () => {
    const text = 'reading_um,panel\n112,4,bonnet\n109,6,bonnet\n98,5,roof\n';
    expect(kept(text)).toEqual(read);
  });

  test('or several readings, each of which is split', () => {
    const text = 'panel,r1 µm,r2 µm\nbonnet,112,4,109,6\nroof,98,5,99,5\n';
    expect(kept(text)?.map(([, value]) => value)).toEqual([112.4, 109.6, 98.5, 99.5]);
  });
});

test.each([
  ['a number behind', 'panel,reading_um,temperature\nbonnet,112,4,21\nroof,98,5,21\n'],
  ['nothing behind', 'panel,point,reading_um\nbonnet,1,112,4\nroof,1,98,5\n'],
  ['one row that does not fit', 'panel,reading_um,operator\nbonnet,112,4,Jan\nroof,98,Jan\n'],
])('%s settles nothing', (_, text) => {
  expect(values(text)).toBeUndefined();
});
