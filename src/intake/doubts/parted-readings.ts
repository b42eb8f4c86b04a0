/**
 * A column that is not read and parts the readings: each point stands once under each of its words, `before` and
 * `after`. Read together they would be averaged. Words of before and after are refused; of others (`Ann`, `Ben`)
 * it is told.
 */

import { groupBy } from '../../base/group-by.ts';
import { hasLetter } from '../../base/letters.ts';
import { saysBeforeOrAfter } from '../cells/visit-words.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

const mostWords = 6;

export function doubtParted(table: Table, findings: Findings): void {
  const { layout, rows } = table;
  const [panelAt, pointAt] = [layout.columns.get('panel'), layout.columns.get('point')];
  const statusAt = layout.columns.get('status');
  if (panelAt === undefined || pointAt === undefined) return;
  for (const column of statusAt === undefined ? layout.unknown : [...layout.unknown, statusAt]) {
    const words = [...columnTexts(rows, column).keys()].filter((text) => hasLetter(text));
    if (words.length < 2 || words.length > mostWords) continue;
    const second = partedRow(rows, [panelAt, pointAt], column, words.length);
    if (second === undefined) continue;
    const isStage = words.some((word) => saysBeforeOrAfter(word));
    const told = words.map((word) => `"${word}"`).join(', ');
    findings.add(
      isStage ? 'error' : 'warning',
      isStage ? 'tables-apart' : 'reading-doubted',
      () => ({
        message: isStage
          ? `"${layout.header[column]?.text ?? ''}" parts the readings of each point: ${told}`
          : `each point is read under ${told}, and all are read together`,
        at: placeOf(table, second, column),
        hint: 'if they are not of one survey, put each in a file of its own',
      }),
    );
  }
}

/** The second row of the first point, if every point stands under all of the words, once under each. */
function partedRow(
  rows: readonly Row[],
  by: readonly number[],
  column: number,
  count: number,
): Row | undefined {
  const points = groupBy(rows, (row) => by.map((at) => cellText(row, at)).join('\0'));
  if (points.size * count !== rows.length) return undefined;
  const parted = [...points.values()].every(
    (own) => new Set(own.map((row) => cellText(row, column))).size === count,
  );
  return parted ? [...points.values()][0]?.[1] : undefined;
}
