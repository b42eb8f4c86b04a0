import { expect, test } from 'vitest';
import { values } from '../helpers.ts';

const um = { unit: 'um' } as const;
const read = (text: string) =>
  values(text, um)?.map(([panel, point, , film]) => `${panel}/${point} ${film}`);
const points = ['bonnet/1 112', 'bonnet/2 109', 'roof/1 98', 'roof/2 101'];

test.each([
  ['two columns', 'bonnet\n1;112\n2;109\nroof\n1;98\n2;101\n'],
  ['an empty column behind them', 'bonnet;;\n1;112;\n2;109;\nroof;;\n1;98;\n2;101;\n'],
  ['empty columns where a comma parts them', 'bonnet,,\n1,112,\n2,109,\nroof,,\n1,98,\n2,101,\n'],
])('below the name of a panel a column that counts is that of its points, with %s', (_, text) => {
  expect(read(text)).toEqual(points);
});

test('and so it is before several readings of each point', () => {
  expect(values('bonnet\n1;112;113\n2;109;108\nroof\n1;98;97\n', um)).toEqual([
    ['bonnet', '1', 1, 112],
    ['bonnet', '1', 2, 113],
    ['bonnet', '2', 1, 109],
    ['bonnet', '2', 2, 108],
    ['roof', '1', 1, 98],
    ['roof', '1', 2, 97],
  ]);
});
