import { expect, test } from 'vitest';
import { clearsLess } from '../../../src/report/quote/against-before.ts';
import { choiceBlocks } from '../../../src/report/quote/quote-choices.ts';
import { customerBlocks } from '../../../src/report/quote/quote-customer-blocks.ts';

import { quoteOf, readingsOf } from '../../tasks/quotes.ts';

const result = quoteOf({
  readings: readingsOf({ bonnet: 112, roof: 114, boot: 111 }),
  job: { taken_um: 0 },
});
const pageWith = (correct: number, full: number): string => {
  const shares = [0.5, correct, full];
  const options = result.options.map((one, i) => ({ ...one, expected: shares[i] ?? 0 }));
  const changed = { ...result, options };
  return JSON.stringify([
    choiceBlocks(changed, 'um'),
    customerBlocks(changed, { unit: 'um', verbose: false, date: null }),
  ]).replaceAll('\u00a0', ' ');
};

test('more marks are said to go by full only where the table shows more for it', () => {
  expect(pageWith(0.79, 0.8)).toContain('C full: more of them go');
  for (const [correct, full] of [
    [0.804, 0.79],
    [0.8, 0.8],
    [0.801, 0.804],
  ] as const) {
    expect(pageWith(correct, full)).not.toContain('more of them go');
    expect(pageWith(correct, full)).toContain('C full: a finish without any veil');
  }
});

test('an aim is said to clear less than another only where the table shows less for it', () => {
  expect(pageWith(0.8, 0.79)).toContain('full clears less than correct here');
  expect(pageWith(0.804, 0.796)).not.toContain('clears less');
});

test('an aim that clears less since it leaves a panel says which', () => {
  const [, before, last] = result.options;
  const [first, ...others] = last?.plan.panels ?? [];
  if (before === undefined || last === undefined || first === undefined) throw new Error('no plan');
  const left = { ...first, steps: [], zones: [], local: [], verdict: 'leave' as const };
  const option = { ...last, expected: 0.5, plan: { ...last.plan, panels: [left, ...others] } };
  const said = clearsLess([{ ...before, expected: 0.8 }, option], ({ panel }) => panel.name);
  expect(said.map(({ text }) => text)).toEqual([
    'full clears less than correct here: it leaves bonnet as found, which correct works',
  ]);
});
