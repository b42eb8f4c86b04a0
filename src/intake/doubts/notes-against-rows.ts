/**
 * Notes that say something else than their row: another panel (`roof!` beside the bonnet), or another unit (`in mil!`
 * in a column of µm). The row is read as its own columns say, and it is told. A unit behind a number is a length of
 * something: `2 mil chip`. A number alone beside an empty reading may be that reading, a column too far.
 */

import { once } from '../../base/kept.ts';
import { numberShape } from '../cells/numbers.ts';
import { type TableUnit, unitNamed, unitSign } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** A longer note speaks of more than its row. */
const longestNote = 40;
const edges = once(() => /^[^\p{L}\p{N}]+|[^\p{L}\p{N})]+$/gu);

export function tellNotesAgainstRows(
  table: Table,
  unit: TableUnit,
  isPanel: (label: string) => boolean,
  findings: Findings,
): void {
  const panelAt = table.layout.columns.get('panel');
  for (const [column, { role }] of table.layout.header.entries()) {
    if (role !== 'note') continue;
    tellMovedReadings(table, column, findings);
    const other = new Map<string, string>();
    for (const text of columnTexts(table.rows, column).keys()) {
      const says = text.length > longestNote ? undefined : whatElse(text, unit, isPanel);
      if (says !== undefined) other.set(text, says);
    }
    if (other.size === 0) continue;
    for (const row of table.rows) {
      const text = cellText(row, column);
      const says = other.get(text);
      const own = cellText(row, panelAt ?? -1).toLowerCase();
      if (says === undefined || text.replace(edges(), '').toLowerCase() === own) continue;
      findings.add('warning', 'reading-doubted', () => ({
        message: `the reading is kept as its row says, and its note names ${says}: "${text}"`,
        at: placeOf(table, row, column),
        hint: 'if the note is right, correct the row',
      }));
    }
  }
}

function tellMovedReadings(table: Table, column: number, findings: Findings): void {
  const { layout, rows } = table;
  if (![...columnTexts(rows, column).keys()].some((text) => numberShape(text) !== undefined))
    return;
  for (const row of rows) {
    const text = cellText(row, column);
    const isEmpty = layout.readings.every((own) => cellText(row, own.column) === '');
    if (!isEmpty || numberShape(text) === undefined) continue;
    findings.add('warning', 'reading-doubted', () => ({
      message: `the row has no reading, and "${text}" in its note may be one`,
      at: placeOf(table, row, column),
      hint: 'if it is, write it where the readings stand',
    }));
  }
}

function whatElse(
  text: string,
  unit: TableUnit,
  isPanel: (label: string) => boolean,
): string | undefined {
  const bare = text.replace(edges(), '');
  if (bare !== '' && isPanel(bare)) return 'another panel';
  const words = text.split(/[\s!?.,;:()]+/u);
  const named = words.map((word, k) =>
    /\d$/u.test(words[k - 1] ?? '') ? undefined : unitNamed(word),
  );
  const other = named.find((own) => (own === 'um' || own === 'mil') && own !== unit);
  return other === 'um' || other === 'mil' ? unitSign[other] : undefined;
}
