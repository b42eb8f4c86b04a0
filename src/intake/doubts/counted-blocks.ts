/**
 * Panels whose readings have running numbers before them where others have none: `1;4,72` among lines `4,31` is read as
 * two readings, and `1,105.6`, `2,103.1` as thousands. No film reads 1, 2, 3 … from its first point on.
 */
import { groupBy } from '../../base/group-by.ts';
import type { Findings } from '../findings.ts';
import type { Grid, GridCell } from '../readings/number-grid.ts';
import { cellText } from '../rows/row.ts';
import { placeOf } from '../tables/table.ts';

/** One number says nothing. */
const fewest = 2;

export function tellCountedBlocks(grids: readonly Grid[], findings: Findings): void {
  for (const { kind, rows } of grids) {
    if (kind === 'wide') continue;
    const firsts = rows.flatMap((row) => {
      const cells = row.flatMap((cell) => cell ?? []);
      return cells[0] === undefined ? [] : [{ first: cells[0], isAlone: cells.length === 1 }];
    });
    const panels = [...groupBy(firsts, ({ first }) => first.panel).values()];
    const areLone = panels.length >= fewest && panels.every(({ length }) => length === 1);
    const isCounted = (own: readonly FirstOfRow[]): boolean =>
      own.every((one, k) => startOf(one) === String(k + 1));
    const areLoneCounted = areLone && panels.every(isCounted);
    // Of one reading a panel the numbers may run on over the panels.
    for (const own of areLone ? [...panels, firsts] : panels) {
      const counts = (own.length >= fewest || areLoneCounted) && isCounted(own);
      const [top] = own;
      if (counts && top !== undefined) tell(top.first, findings);
    }
  }
}

type FirstOfRow = { readonly first: GridCell; readonly isAlone: boolean };

const textOf = ({ row, column }: GridCell): string => cellText(row, column);

/** What may be the number of the row: its first cell, or what stands before the mark of the thousands in its only one. */
function startOf({ first, isAlone }: FirstOfRow): string | undefined {
  const text = textOf(first);
  if (!isAlone) return text;
  const [, start] = /^(\d{1,3})[.,'’ ]\d{3}(?!\d)/u.exec(text) ?? [];
  return start;
}

function tell(first: GridCell, findings: Findings): void {
  findings.add('error', 'reading-ambiguous', () => ({
    message: `"${textOf(first)}" may begin with the number of its row: they count 1, 2 …`,
    at: placeOf(first.table, first.row, first.column),
    hint: /^\d+,\d/u.test(textOf(first))
      ? '--delimiter comma parts them from the readings; or take the running numbers out'
      : 'take the running numbers out; or put them before the readings of every panel, in a column of their own',
  }));
}
