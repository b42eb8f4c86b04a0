import { describe, expect, test } from 'vitest';
import { createLongFile } from '../../../src/intake/read-long-file.ts';
import { options, read, utf8 } from '../helpers.ts';

const operators = (text: string) =>
  read(text).value?.readings.map(({ panel, operator, repeat }) => [panel, operator, repeat]);

describe('lines that name who read the rows below', () => {
  const rows = (um: number) => `bonnet,1,${um}\nroof,1,${um + 9}\n`;

  test('give each person the readings under the name', () => {
    const text = `Operator: Ann\npanel,point,um\n${rows(112)}Operator: Ben\n${rows(118)}operator: ANN\nboot,1,99\n`;
    expect(operators(text)).toEqual([
      ['bonnet', 'Ann', 1],
      ['roof', 'Ann', 1],
      ['bonnet', 'Ben', 2],
      ['roof', 'Ben', 2],
      ['boot', 'Ann', 1],
    ]);
    expect(read(text).diagnostics.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  test('do so under names of columns that stand again, and repeats count for each', () => {
    const header = 'panel,point,repeat,um\n';
    const own = 'bonnet,1,1,112\nbonnet,1,2,113\n';
    const text = `Technician: Ann\n${header}${own}Technician: Ben\n${header}${own.replaceAll('11', '12')}`;
    expect(read(text).value?.readings.map(({ operator }) => operator)).toEqual([
      ...['Ann', 'Ann', 'Ben', 'Ben'],
    ]);
  });

  test('of one person say it of the file alone', () => {
    expect(operators(`Operator: Ann\npanel,point,um\n${rows(112)}`)).toEqual([
      ['bonnet', undefined, 1],
      ['roof', undefined, 1],
    ]);
  });

  test('below the readings they may be of give nobody the rows below', () => {
    const text = `panel,point,um\n${rows(112)}Operator: Ann\n${rows(112.4)}Operator: Ben\n`;
    expect(new Set(read(text).value?.readings.map(({ operator }) => operator))).toEqual(
      new Set([undefined]),
    );
  });

  test('beside a column of operators say nothing of its rows', () => {
    const text = `Operator: Ann\npanel,point,um,operator\nbonnet,1,112,Cy\nOperator: Ben\nbonnet,1,113,Di\n`;
    expect(operators(text)?.map(([, operator]) => operator)).toEqual(['Cy', 'Di']);
  });
});

test('a long file of several vehicles, read in pieces, is refused where such lines change', () => {
  const vehicle = (id: string) =>
    Array.from({ length: 4000 }, (_, k) => `${id},bonnet,${k + 1},${110 + (k % 9)}\n`).join('');
  const text = `Operator: Ann\nvehicle,panel,point,um\n${vehicle('A')}${vehicle('B')}Operator: Ben\n${vehicle('C')}${vehicle('D')}`;
  const { value, diagnostics } = createLongFile('r.csv', options, 1000).push(utf8(text), true);
  expect(value).toBeUndefined();
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toMatchObject([
    { code: 'tables-apart', message: expect.stringContaining('name several operators') },
  ]);
});
