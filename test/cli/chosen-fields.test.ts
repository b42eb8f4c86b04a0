import { expect, test } from 'vitest';
import { chosenFields, withFields } from '../../src/cli/chosen-fields.ts';

const table = {
  columns: ['panel', 'mean_um', 'budget_um'],
  rows: [
    ['bonnet', 112, 3],
    ['roof', null, 4],
  ],
};

test('columns come as they are asked for, in that order', () => {
  expect(chosenFields(table, 'budget_um, panel').value).toEqual({
    columns: ['budget_um', 'panel'],
    rows: [
      [3, 'bonnet'],
      [4, 'roof'],
    ],
  });
});

test('nothing asked for lists the columns there are', () => {
  const rows = [['panel'], ['mean_um'], ['budget_um']];
  expect(chosenFields(table, ' ').value).toEqual({ columns: ['field'], rows });
});

test('each column that is not there is told, with the one that may be meant', () => {
  const { value, diagnostics } = chosenFields(table, 'panel,mean,colour');
  expect(value).toBeUndefined();
  expect(diagnostics.map(({ message, hint }) => `${message}: ${hint}`)).toEqual([
    '"mean" is no column of this table: did you mean "mean_um"?',
    '"colour" is no column of this table: one of panel, mean_um, budget_um',
  ]);
  expect(chosenFields(table, 'panl').diagnostics[0]?.hint).toBe('did you mean "panel"?');
});

test('a column named twice is told, since a reader by names would lose one of the two', () => {
  const { value, diagnostics } = chosenFields(table, 'panel,mean_um, panel');
  expect(value).toBeUndefined();
  expect(diagnostics).toMatchObject([
    {
      code: 'usage-option-value',
      message: '--fields names the column "panel" twice',
      hint: 'name each column once',
    },
  ]);
});

test('a comma too many, or a blank between two, is told by its place in what was typed', () => {
  const odd: readonly (readonly [string, number])[] = [
    ['panel,,mean_um', 2],
    ['panel, ,mean_um', 2],
    ['panel, mean_um, ', 3],
    [',', 1],
  ];
  for (const [fields, place] of odd) {
    expect(chosenFields(table, fields).diagnostics.map(({ message }) => message)).toEqual([
      `--fields names no column in place ${place}: "${fields}"`,
    ]);
  }
});

test('an answer without a table, or with nothing chosen, stays as it is', () => {
  const answer = { pages: () => [], records: () => [], diagnostics: [] };
  expect(withFields(answer, { fields: 'panel' })).toBe(answer);
  const tabled = { ...answer, table: () => table };
  expect(withFields(tabled, {})).toBe(tabled);
  expect(withFields(tabled, { fields: 'panel' }).table?.().columns).toEqual(['panel']);
  expect(withFields(tabled, { fields: 'panl' }).diagnostics).toHaveLength(1);
});
