import { describe, expect, test } from 'vitest';
import { printFaults } from './print-faults.ts';
import { readTaggedPdf } from './tagged-pdf.ts';

/** A file of two sheets as a browser writes one: a table whose heading is 3, its rows 4 and 5, a drawing 6. */
const pdf = (heading: string, row: string, drawing: string): Uint8Array =>
  Buffer.from(
    [
      '%PDF-1.4',
      '1 0 obj\n<</Type /Catalog\n/Pages 9 0 R\n/StructTreeRoot 7 0 R>>\nendobj',
      '9 0 obj\n<</Type /Pages\n/Count 2\n/Kids [20 0 R 10 0 R]>>\nendobj',
      '20 0 obj\n<</Type /Page\n/Parent 9 0 R>>\nendobj',
      '10 0 obj\n<</Type /Page\n/Parent 9 0 R>>\nendobj',
      '7 0 obj\n<</Type /StructTreeRoot\n/K 8 0 R>>\nendobj',
      '8 0 obj\n<</Type /StructElem\n/S /Document\n/P 7 0 R\n/K [2 0 R 6 0 R]>>\nendobj',
      '2 0 obj\n<</Type /StructElem\n/S /Table\n/P 8 0 R\n/K [3 0 R 4 0 R 5 0 R]>>\nendobj',
      '3 0 obj\n<</Type /StructElem\n/S /TR\n/P 2 0 R\n/K [31 0 R]>>\nendobj',
      `31 0 obj\n<</Type /StructElem\n/S /TH\n/P 3 0 R\n/Pg 20 0 R\n/K [${heading}]\n/A [<</O /Table\n/Scope /Column>>]>>\nendobj`,
      '4 0 obj\n<</Type /StructElem\n/S /TR\n/P 2 0 R\n/K 41 0 R>>\nendobj',
      '41 0 obj\n<</Type /StructElem\n/S /TD\n/P 4 0 R\n/Pg 20 0 R\n/K 1>>\nendobj',
      '5 0 obj\n<</Type /StructElem\n/S /TR\n/P 2 0 R\n/K [51 0 R]>>\nendobj',
      `51 0 obj\n<</Type /StructElem\n/S /TD\n/P 5 0 R\n/Pg 10 0 R\n/K [${row}]>>\nendobj`,
      `6 0 obj\n<</Type /StructElem\n/S /Figure\n/P 8 0 R\n/Pg 10 0 R\n/K [${drawing}]>>\nendobj`,
    ].join('\n'),
    'latin1',
  );
const onFirst = (ink: number): string => `<</Type /MCR\n/Pg 20 0 R\n/MCID ${ink}>>`;
const onSecond = (ink: number): string => `<</Type /MCR\n/Pg 10 0 R\n/MCID ${ink}>>`;

describe('the reading of a printed page', () => {
  test('finds nothing wrong where every part is whole and the heading repeats', () => {
    const page = readTaggedPdf(pdf(`0 ${onSecond(1)}`, '2 3', '4'));
    expect(page.sheets).toBe(2);
    expect(page.root.sheets).toEqual([1, 2]);
    expect(page.root.parts.map(({ role, sheets }) => ({ role, sheets }))).toEqual([
      { role: 'Table', sheets: [1, 2] },
      { role: 'Figure', sheets: [2] },
    ]);
    expect(printFaults(page)).toEqual([]);
  });

  test.each([
    [
      'a row in two pieces',
      `0 ${onSecond(1)}`,
      `2 ${onFirst(3)}`,
      '4',
      'a row is cut between sheets 1 and 2',
    ],
    [
      'a drawing in two pieces',
      `0 ${onSecond(1)}`,
      '2',
      `4 ${onFirst(5)}`,
      'a drawing is cut between sheets 1 and 2',
    ],
    [
      'a heading that does not repeat',
      '0',
      '2',
      '4',
      'sheet 2 has a table whose heading does not repeat',
    ],
    ['an empty sheet', '0', onFirst(2), onFirst(4), 'sheet 2 is empty'],
  ])('finds %s', (_, heading, row, drawing, fault) => {
    expect(printFaults(readTaggedPdf(pdf(heading, row, drawing)))).toEqual([fault]);
  });

  test('refuses a file without a tree of elements: it would prove nothing', () => {
    expect(() => readTaggedPdf(Buffer.from('%PDF-1.4'))).toThrow('no tree of elements');
  });
});
