import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const list = (...rows: readonly string[]): string => `µm\n${rows.join('\n')}\n`;

test('two numbers to a row, with several rows to a panel and no names of columns, are read and told', () => {
  const text = list('bonnet;112;98', 'bonnet;115;98', 'roof;101;97', 'roof;99;96');
  expect(values(text)).toHaveLength(8);
  expect(briefs(text)).toEqual(['3:12+2 warning column-unnamed']);
});

test('one line for each panel is a list of its readings, and one number to a row says nothing', () => {
  expect(briefs(list('bonnet;112;98', 'roof;101;97'))).toEqual([]);
  expect(briefs(list('bonnet;112', 'bonnet;115', 'roof;101'))).toEqual([]);
});

test('names of the columns say what they are', () => {
  expect(briefs('panel;1 (µm);2 (µm)\nbonnet;112;110\nbonnet;115;113\n')).toEqual([]);
});
