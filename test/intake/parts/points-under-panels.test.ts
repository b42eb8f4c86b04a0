import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const expected = [
  ['bonnet', '1', 1, 137],
  ['bonnet', '2', 1, 143],
  ['roof', '1', 1, 115],
  ['roof', '2', 1, 109],
];

describe('panels over the numbers of their points are one header', () => {
  test.each([
    ['the unit in the upper corner', 'µm,bonnet,,roof,\npass,1,2,1,2\nA,137,143,115,109\n'],
    ['the unit in the lower corner', ',bonnet,,roof,\nµm,1,2,1,2\nA,137,143,115,109\n'],
    ['the unit behind the panels', 'bonnet (µm),,roof (µm),\n1,2,1,2\n137,143,115,109\n'],
    [
      'the readings named in their unit before the row',
      'panel,bonnet,,roof,\npoint,1,2,1,2\nThickness (µm),137,143,115,109\n',
    ],
    ['the unit before each row', 'panel,bonnet,,roof,\npoint,1,2,1,2\nµm,137,143,115,109\n'],
    ['the unit as a saying', 'Unit: µm,bonnet,,roof,\npoint,P1,P2,P1,P2\nA,137,143,115,109\n'],
    ['a row of units', 'bonnet;bonnet;roof;roof\n1;2;1;2\nµm;µm;µm;µm\n137;143;115;109\n'],
  ])('with %s', (_, text) => {
    expect(values(text)).toEqual(expected);
    expect(read(text).value?.decisions.evidence.join()).toContain('name the columns together');
  });

  test('and rows below are repeats there, a counter of them no panel', () => {
    const text = 'µm,bonnet,,roof,\nshot,1,2,1,2\n1,137,143,115,109\n2,138,144,116,110\n';
    expect(values(text)).toHaveLength(8);
    expect(values(text)?.filter(([, , repeat]) => repeat === 2)).toHaveLength(4);
    expect(briefs(text)).toEqual(['2:1+4 warning column-unknown']);
  });

  test('and a mean beside the points of a panel is left out', () => {
    const text = ';bonnet;;Mean;roof;;Mean\nµm;1;2;;1;2;\nA;137;143;140;115;109;112\n';
    expect(values(text)).toEqual(expected);
    expect(briefs(text)).toEqual([
      '2:8+1 note statistics-left-out',
      '2:13+1 note statistics-left-out',
    ]);
  });

  test('but not where the numbers do not count from 1 under each', () => {
    expect(values('µm,bonnet,,roof,\npass,1,3,1,2\nA,137,143,115,109\n')).toBeUndefined();
  });
});

test('sides over the numbers of points are no panels where the rows name panels', () => {
  const text = 'µm,Left,,Right,\nPanel,1,2,1,2\nBonnet,112,110,98,97\nRoof,111,109,99,96\n';
  const found = values(text, {
    mayBePanel: (label) => /^(?:left|right|bonnet|roof)$/iu.test(label),
  });
  expect(found?.map(([panel, , , value]) => [panel, value])).toEqual([
    ['Bonnet', 112],
    ['Bonnet', 110],
    ['Bonnet', 98],
    ['Bonnet', 97],
    ['Roof', 111],
    ['Roof', 109],
    ['Roof', 99],
    ['Roof', 96],
  ]);
});
