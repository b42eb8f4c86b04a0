import { expect, test } from 'vitest';
import { briefs, values } from '../helpers.ts';

const text = (heading: string, value: string) =>
  `panel;point;reading_um\nbonnet;1;104\nroof;1;111\n\nPanel;${heading}\nbonnet;${value}\nroof;${value}\n`;

test.each([
  ['Gloss (GU)', '91'],
  ['Temp (°C)', '21'],
  ['Limit (µm)', '80'],
  ['Hours', '1.5'],
])('a second table of %s is left out aloud', (heading, value) => {
  expect(briefs(text(heading, value))).toEqual(['5:1+5 warning table-left-out']);
  expect(values(text(heading, value))).toHaveLength(2);
});

test('a second table that may hold readings is asked about', () => {
  expect(briefs(text('Factory (µm)', '104'))).toEqual(['5:1+5 error column-missing']);
  expect(briefs(text('Second', '104'))).toEqual(['5:1+5 error column-missing']);
});

test('readings of a shim below a line of its own are left out aloud', () => {
  const shims = 'Gauge check\nShim (µm);Reading (µm)\n50.0;50.3\n125.0;125.6\n';
  const file = `Panel;Point;Thickness (µm)\nBonnet;1;112.4\nRoof;1;98.6\n\n${shims}`;
  expect(briefs(file)).toEqual(['5:1+11 warning line-left-out', '6:1+9 warning table-left-out']);
  expect(values(file)?.map((own) => own[3])).toEqual([112.4, 98.6]);
});
