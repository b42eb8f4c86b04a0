import { expect, test } from 'vitest';
import { readBatchList } from '../../src/intake/read-batch-list.ts';
import { utf8 } from './helpers.ts';

const columns = {
  columns: ['job', 'readings', 'vehicle', 'risk_pct', 'floor_um', 'aim'],
  needed: ['job', 'readings'],
  several: ['readings'],
};
const cellsOf = (text: string): readonly string[] =>
  (readBatchList({ name: 'jobs.csv', bytes: utf8(text) }, columns).value ?? []).flatMap(
    ({ cells }) => [...cells].map(([key, [cell]]) => `${key} ${cell?.text}`),
  );

test.each([';', '\t'])(
  'numbers have a decimal comma or a decimal point in a list whose columns %j parts',
  (mark) => {
    const rows = [
      ['job', 'readings', 'risk_pct', 'floor_um', 'aim'],
      ['A', 'a.csv', '3,5', '80.5', '85,5'],
    ];
    expect(cellsOf(rows.map((row) => row.join(mark)).join('\n'))).toEqual([
      'job A',
      'readings a.csv',
      'risk_pct 3.5',
      'floor_um 80.5',
      'aim 85.5',
    ]);
  },
);

test('a name keeps its comma, and three digits behind one may be thousands', () => {
  const text = 'job;readings;vehicle;floor_um\n1,5;2,5;3,5;1,500\n';
  expect(cellsOf(text)).toEqual(['job 1,5', 'readings 2,5', 'vehicle 3,5', 'floor_um 1,500']);
});

test('where commas part the columns a comma in a quoted number is left as it is', () => {
  expect(cellsOf('job,readings,risk_pct\nA,a.csv,"3,5"\n')).toContain('risk_pct 3,5');
});
