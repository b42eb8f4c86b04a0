import { expect, test } from 'vitest';
import { briefs } from '../helpers.ts';

const text = (...rows: readonly string[]) =>
  `panel,point,reading_um\n${rows.map((row) => `${row}\n`).join('')}`;

test('readings that count 1, 2, 3 on each panel beside points as large as films are refused', () => {
  const swapped = text('bonnet,130.6,1', 'bonnet,133.2,2', 'roof,107.5,1', 'roof,114.5,2');
  expect(briefs(swapped)).toContain('2:14+1 error reading-ambiguous');
});

test('one reading that does not count is none of a swapped column', () => {
  const other = text('bonnet,130.6,1', 'bonnet,133.2,3', 'roof,107.5,1', 'roof,114.5,2');
  expect(briefs(other).join()).not.toContain('reading-ambiguous');
});
