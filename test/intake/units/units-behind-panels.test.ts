import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test('one unit behind the name of every panel is that of its readings, and no part of the name', () => {
  const text = 'panel;1;2\nBonnet (µm);112;109\nRoof (µm);98;99\n';
  expect(values(text)).toEqual([
    ['Bonnet', '1', 1, 112],
    ['Bonnet', '2', 1, 109],
    ['Roof', '1', 1, 98],
    ['Roof', '2', 1, 99],
  ]);
  expect(read(text).value?.decisions.evidence.join()).toContain('µm behind each panel');
});

test('one behind some of them only, or two units, settle nothing', () => {
  expect(briefs('panel;1;2\nBonnet (µm);112;109\nRoof;98;99\n').join()).toContain('unit-missing');
  const two = 'panel;1;2\nBonnet (µm);112;109\nRoof (mil);4.1;4.2\n';
  expect(briefs(two).join()).toContain('unit-missing');
});
