import { expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

test.each([
  ['rows of a table', 'panel;reading_um\nbonnet;112,109\nroof;98,99\n', '2:8+7'],
  ['numbers of three decimals', 'panel;reading_um\nbonnet;112,109\nroof;118,121\n', '2:8+7'],
])('%s whose commas may part two readings each are refused', (_, text, at) => {
  expect(briefs(text)).toEqual([`${at} error reading-ambiguous`]);
});

test('so are lines of a list', () => {
  const isPanel = (label: string) => /^(?:bonnet|roof|boot):?$/iu.test(label);
  expect(briefs('Bonnet: 112,109 µm\nRoof: 98,99 µm\nBoot: 118,121 µm\n', { isPanel })).toEqual([
    '1:9+10 error reading-ambiguous',
  ]);
});

test('the decimal mark that the user names settles them', () => {
  const text = 'panel;reading_um\nbonnet;112,109\nroof;98,99\n';
  expect(values(text, { decimal: ',' })?.map((own) => own[3])).toEqual([112.109, 98.99]);
});

test.each([
  ['112,85', '98,99'],
  ['112,109', '98,042'],
  ['112,109', '98,5'],
])('%s and %s are decimals', (first, second) => {
  const text = `panel;reading_um\nbonnet;${first}\nroof;${second}\n`;
  expect(read(text).value?.readings).toHaveLength(2);
});
