import { describe, expect, test } from 'vitest';
import { briefs, read, values } from '../helpers.ts';

const table = 'panel;1;2\nroof;101.5;104.2\nboot;111.5;114.2\n';

describe('a preamble whose lines are each written in a way of their own', () => {
  test.each([
    ['a quoted pair', '"Unit","µm"\n'],
    ['quoted pairs and others', 'Serial.....: 42\nOperator\tN. Quill\n"Unit","µm"\nTemp; 21.4\n'],
    ['quoted pairs with an empty cell more', '"Serial","42",""\n"Unit","µm",""\n'],
    ['a pipe', 'Serial = 42\nUnit | µm\n'],
    ['single quotes', "'Unit','µm'\n"],
  ])('names the unit by %s', (_, above) => {
    const text = `${above}\n${table}`;
    expect(values(text)?.map(([, , , value]) => value)).toEqual([101.5, 104.2, 111.5, 114.2]);
    expect(briefs(text)).toEqual([]);
  });

  test('is told, and every reading knows its place', () => {
    const { value } = read(`"Unit","µm"\n\n${table}`);
    expect(value?.decisions.evidence.join()).toContain('quoted pairs above the table');
    expect(value?.readings[0]?.origin).toMatchObject({ line: 4, column: 6 });
  });

  test('and a quote in the wrong place below it is refused where it stands', () => {
    const told = briefs(`"Unit","µm"\n\npanel;1\nroof;"101"5\n`);
    expect(told).toEqual([expect.stringMatching(/^4:\d+\+1 error cell-invalid$/u)]);
  });
});
