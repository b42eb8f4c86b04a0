/**
 * `112,109` and `98,99`: numbers with a comma of which every part is a film like the other, as if each were two
 * readings. Decimals are as many in every number of a column and as good as never all of the size of what
 * stands before them; so numbers that are unlike decimals in that way are refused, unless the user named the
 * decimal mark.
 */

import { numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** Two films of one panel, one beside the other, are seldom further apart. */
const mostApart = 1.5;

export function doubtTwoAboutCommas(
  tables: readonly Table[],
  counts: ReadonlyMap<string, number>,
  findings: Findings,
): void {
  const texts = [...counts.keys()];
  if (!texts.some((text) => text.includes(','))) return;
  const shapes = texts.flatMap((text) => {
    const shape = numberShape(text);
    return shape === undefined ? [] : [shape];
  });
  const pairs = shapes.filter(
    ({ mark, whole, fraction }) => mark === ',' && alike(whole, fraction),
  );
  const [first] = pairs;
  if (first === undefined || pairs.length < 2 || pairs.length < shapes.length) return;
  const lengths = new Set(pairs.map(({ fraction }) => fraction.length));
  if (lengths.size < 2 && !lengths.has(3)) return;
  for (const table of tables) {
    for (const row of table.rows) {
      const column = table.layout.readings.find(
        (one) => numberShape(cellText(row, one.column))?.mark === ',',
      )?.column;
      if (column === undefined) continue;
      const { whole, fraction } = numberShape(cellText(row, column)) ?? first;
      findings.add('error', 'reading-ambiguous', () => ({
        message: `"${whole},${fraction}" may be ${whole}.${fraction}, or two readings, ${whole} and ${fraction}: so may every other`,
        at: placeOf(table, row, column),
        hint: 'part two readings by a semicolon; or, if it is one, read with --decimal ,',
      }));
      return;
    }
  }
}

function alike(whole: string, fraction: string): boolean {
  if (!/^[1-9]\d{1,2}$/u.test(whole) || !/^[1-9]\d{1,2}$/u.test(fraction)) return false;
  const ratio = Number(whole) / Number(fraction);
  return ratio <= mostApart && ratio >= 1 / mostApart;
}
