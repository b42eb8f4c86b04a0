import { expect, test } from 'vitest';
import { briefs, read } from './helpers.ts';

test('the cells that a short row lacks are told once, at its end, and each is left out', () => {
  const text = 'Panel;1;2;3 (µm)\nbonnet;112;115;110\nroof;98\n';
  expect(briefs(text)).toEqual(['3:8+1 note reading-missing']);
  expect(read(text).value?.excluded.length).toBe(2);
});

test('a row without a panel is told once, however many readings it has', () => {
  const told = briefs('Panel;1;2;3 (µm)\nbonnet;112;115;110\n;98;99;101\n\n');
  expect(told.filter((one) => one.includes('panel-missing')).length).toBeLessThan(2);
  expect(new Set(told).size).toBe(told.length);
});

test('what two readings of one row lack in different places is told in each', () => {
  const text = 'Panel;1;2;3 (µm)\nbonnet;112;;\nroof;98;99;101\n';
  expect(briefs(text).filter((one) => one.includes('reading-missing')).length).toBe(2);
});
