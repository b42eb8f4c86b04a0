import { expect, test } from 'vitest';
import { mostTold } from '../../../src/base/of-a-kind.ts';
import { quoteOutcome, readingsOf } from '../quotes.ts';

const readings = readingsOf({ bonnet: 112, roof: 114 });
const MANY = 1234;
const told = (rowOf: (i: number) => string) => {
  const rows = Array.from({ length: MANY }, (_, i) => rowOf(i)).join('\n');
  const { value, diagnostics } = quoteOutcome({
    readings,
    defects: `panel,defect,grade\n${rows}\n`,
  });
  return { value, count: diagnostics.length, last: diagnostics.at(-1) };
};

test('panels that a template lacks are told for the first, and the rest counted', () => {
  const { value, count, last } = told((i) => `rooof${i},swirls,2`);
  expect([value, count]).toEqual([undefined, mostTold + 1]);
  expect(last?.code).toBe('panel-unknown');
  expect(last?.message).toBe(`${MANY - mostTold} names after these not looked at`);
});

test('defects that nobody knows are told for the first, and the rest counted', () => {
  const { value, count, last } = told((i) => `roof,swurl${i},2`);
  expect([value, count]).toEqual([undefined, mostTold + 1]);
  expect(last?.message).toBe(`and ${MANY - mostTold} more of this kind`);
});
