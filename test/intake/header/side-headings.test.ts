import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const known = ['front door left', 'front door right', 'front door links', 'front door rechts'];
const sides = {
  isPanel: (label: string) => ['bonnet', 'roof', ...known].includes(label.toLowerCase()),
  mayBePanel: (label: string) => ['front door', ...known].includes(label.toLowerCase()),
};
const brief = (text: string) =>
  values(text, sides)?.map(([panel, point, , value]) => `${panel}/${point} ${value}`);

test('columns of sides beside half a panel make the name whole, each in its unit', () => {
  expect(brief('Panel,Left [um],Right [mil]\nFront door,118,4.72\n')).toEqual([
    'Front door Left/1 118',
    expect.stringMatching(/^Front door Right\/1 119\.88/u),
  ]);
});

test('beside a whole panel they are places on it', () => {
  expect(brief('Panel,Left [um],Right [um]\nbonnet,118,121\nFront door,98,99\n')).toEqual([
    'bonnet/Left 118',
    'bonnet/Right 121',
    'Front door Left/1 98',
    'Front door Right/1 99',
  ]);
});

test('several columns of a side are its points', () => {
  const text = 'Panel;links 1 (µm);links 2 (µm);rechts 1 (µm);rechts 2 (µm)\nFront door;1;2;3;4\n';
  expect(brief(text.replace('1;2;3;4', '101;102;103;104'))).toEqual([
    'Front door links/1 101',
    'Front door links/2 102',
    'Front door rechts/1 103',
    'Front door rechts/2 104',
  ]);
});

test('sides merged over places, and the unit in the corner', () => {
  const text = 'µm,Left,,Right,\n,front,rear,front,rear\nFront door,101,102,103,104\n';
  expect(brief(text)).toEqual([
    'Front door Left/front 101',
    'Front door Left/rear 102',
    'Front door Right/front 103',
    'Front door Right/rear 104',
  ]);
});

test('beside a name that is no panel with either side they are asked about', () => {
  expect(briefs('Panel,Left [um],Right [um]\nThing,118,121\n', sides)).toEqual([
    '2:1+5 error panel-ambiguous',
  ]);
});
