import { expect, test } from 'vitest';
import { briefs, read } from '../helpers.ts';

const isPanel = (label: string) =>
  /^(?:(?:left|right|front) ){0,2}(?:door|wing)$|^bonnet$/iu.test(label);
const panels = (text: string) => read(text, { isPanel }).value?.readings.map(({ panel }) => panel);

test('a column of sides and the names beside it are panels together', () => {
  const text = 'Panel,Side,Point,Reading µm\nFront door,Left,1,104\nFront door,R,1,106\n';
  expect(panels(text)).toEqual(['left Front door', 'right Front door']);
  expect(read(text, { isPanel }).diagnostics).toEqual([]);
});

test('so are columns of sides and ends', () => {
  const text = 'Part,L/R,F/R,Point,Reading µm\ndoor,L,F,1,104\nwing,R,F,1,106\n';
  expect(panels(text)).toEqual(['front left door', 'front right wing']);
});

test('a side that makes no known panel with some name is not put together', () => {
  const text = 'Panel,Side,Point,Reading µm\nbonnet,Left,1,104\nbonnet,Right,1,106\n';
  expect(briefs(text, { isPanel })).toContain('3:1+6 error panel-ambiguous');
});

test('a name that says the other side is refused', () => {
  const text = 'Panel,Side,Point,Reading µm\nFront left door,Right,1,104\n';
  expect(briefs(text, { isPanel })).toContain('2:1+15 error panel-ambiguous');
  expect(panels(text.replace('Right', 'Left'))).toEqual(['Front left door']);
});
