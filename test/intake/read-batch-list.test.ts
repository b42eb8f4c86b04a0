import { expect, test } from 'vitest';
import { readBatchList } from '../../src/intake/read-batch-list.ts';
import { utf8 } from './helpers.ts';

const columns = {
  columns: ['job', 'readings', 'vehicle', 'risk_pct', 'floor_um', 'aim'],
  needed: ['job', 'readings'],
  several: ['readings'],
  others: ['panel', 'date'],
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

const toldOf = (column: string) => {
  const text = `job,readings,${column}\nA,a.csv,x\n`;
  const { value, diagnostics } = readBatchList({ name: 'jobs.csv', bytes: utf8(text) }, columns);
  return {
    jobs: value?.length,
    told: diagnostics.map(({ severity, code, hint }) => [severity, code, hint].join(' ').trim()),
  };
};

test.each(['Notes', 'customer', 'phone', 'Bay', 'due date', 'colour', 'plate'])(
  'a column of the shop’s own is warned of and left alone: %s',
  (column) => {
    expect(toldOf(column)).toEqual({ jobs: 1, told: ['warning column-unknown'] });
  },
);

test.each([
  ['ain', 'aim'],
  ['vehicel', 'vehicle'],
  ['risk', 'risk_pct'],
  ['risk percent', 'risk_pct'],
  ['flor', 'floor_um'],
  ['floor', 'floor_um'],
])('a column near one that is known is refused: %s', (column, meant) => {
  const told = [`error batch-column-unknown did you mean "${meant}"?`];
  expect(toldOf(column)).toEqual({ jobs: undefined, told });
});

test.each(['panel', 'Panel-Names', 'date'])(
  'a column named as an option for all jobs is refused: %s',
  (column) => {
    const { jobs, told } = toldOf(column);
    expect(jobs).toBeUndefined();
    expect(told).toEqual([
      'error batch-column-unknown columns of a list are job, readings, vehicle, risk_pct, floor_um, aim',
    ]);
  },
);
