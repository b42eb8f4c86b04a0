import { expect, test } from 'vitest';
import { readBatchListJson } from '../../src/formats/batch-list.ts';
import { readBatchList, unknownColumn } from '../../src/intake/read-batch-list.ts';

const columns = {
  columns: ['job', 'readings', 'vehicle', 'risk_pct', 'aim'],
  needed: ['job', 'readings'],
  several: ['readings'],
  others: ['panel', 'date'],
};
const ofJson = (json: string) =>
  readBatchListJson('jobs', json, {
    ...columns,
    unknown: (key, at) => unknownColumn(key, at, columns),
  });
const job = (more: object): object => ({ job: 'A', readings: 'a.csv', ...more });
const toldOfJson = (jobs: readonly object[]) => {
  const { value, diagnostics } = ofJson(JSON.stringify(jobs));
  return { jobs: value?.length, told: diagnostics.map(told) };
};
const told = ({ severity, code, hint = '' }: { severity: string; code: string; hint?: string }) =>
  `${severity} ${code} ${hint}`;

test.each(['Notes', 'customer', 'due date', 'ain', 'vehicel', 'risk', 'panel', 'date'])(
  'a key of a list as JSON is told as a column of a list as CSV is: %s',
  (name) => {
    const bytes = new TextEncoder().encode(`job,readings,${name}\nA,a.csv,x\n`);
    const { value, diagnostics } = readBatchList({ name: 'jobs', bytes }, columns);
    expect(diagnostics).toHaveLength(1);
    expect(toldOfJson([job({ [name]: 'x' })])).toEqual({
      jobs: value?.length,
      told: diagnostics.map(told),
    });
  },
);

test('a key of the shop’s own may hold anything, is told once where it stands first, and says nothing', () => {
  const jobs = [job({}), job({ paid: true, parts: [{ id: 1 }] }), job({ paid: null })];
  const { value, diagnostics } = ofJson(JSON.stringify(jobs, null, 1));
  expect(diagnostics.map(({ message, at }) => [message, at?.line])).toEqual([
    ['column "paid" is not read', 9],
    ['column "parts" is not read', 10],
  ]);
  expect(value?.map(({ cells }) => [...cells.keys()])).toEqual(jobs.map(() => ['job', 'readings']));
});

test('a job without what it needs, and a value of another kind, are refused as ever', () => {
  const { value, diagnostics } = ofJson('[{"job": "A", "notes": 1}, {"job": "B", "readings": {}}]');
  expect(value).toBeUndefined();
  expect(diagnostics.map(({ message }) => message)).toEqual([
    expect.stringContaining('"[0].readings" is missing'),
    expect.stringContaining('"[1].readings" is'),
  ]);
  expect(ofJson('[{"job": "A", "readings": "a.csv", "__proto__": 1}]').diagnostics).toHaveLength(1);
});
