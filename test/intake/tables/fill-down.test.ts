import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const panels = (text: string) => values(text)?.map(([panel]) => panel);

test('rows without a panel go on with the last where points count from 1 on each', () => {
  const text = 'panel;point;reading_um\nbonnet;1;104\nbonnet;2;106\n;3;105\nroof;1;111\n';
  expect(panels(text)).toEqual(['bonnet', 'bonnet', 'bonnet', 'roof']);
  expect(read(text).value?.decisions.evidence.join()).toContain('rows that name none go on');
});

test('a row without a panel that is not the next point lacks its name', () => {
  const text = 'panel;point;reading_um\nbonnet;1;104\nbonnet;2;106\n;1;105\nroof;1;111\n';
  expect(briefs(text)).toEqual(['4:1+1 error panel-missing']);
  const throughout = 'panel;point;reading_um\nbonnet;1;104\nbonnet;2;106\n;3;105\nroof;4;111\n';
  expect(briefs(throughout)).toEqual(['4:1+1 error panel-missing']);
});

test.each(['"', '〃', 'ditto', "''"])('%s below a panel means the same', (sign) => {
  const cell = sign === '"' ? '""""' : sign;
  const text = `panel;point;reading_um\nbonnet;1;104\n${cell};2;106\nroof;1;111\n${cell};2;109\n`;
  expect(panels(text)).toEqual(['bonnet', 'bonnet', 'roof', 'roof']);
});

test('a reading with neither panel nor point under a merged name is asked about', () => {
  const text = 'panel;point;reading_um\nbonnet;1;104\n;2;106\n;;125\nroof;1;111\n;2;109\n';
  expect(briefs(text)).toEqual(['4:1+1 error panel-missing']);
});
