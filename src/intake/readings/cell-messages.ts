/** What is said of single cells on the way from rows to readings. */
import { suggest } from '../../base/did-you-mean.ts';
import type { Reading } from '../../film/reading.ts';
import type { ReadingCell } from '../cells/cell-verdict.ts';
import { mayBeOne } from '../doubts/shifted-cells.ts';
import type { Findings } from '../findings.ts';
import { cellText, type Row } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';
import type { AboutRow, WrongCell } from './row-columns.ts';

/** A cell beside the readings that holds what its column may not. */
export function tellWrong(
  table: Table,
  [row, column, message, allowed]: Parameters<WrongCell>,
  findings: Findings,
): void {
  findings.add('error', 'cell-invalid', () => {
    const hint =
      allowed.length === 0
        ? 'repeats count 1, 2, 3 …; a row of statistics or limits is no reading: take it out'
        : (suggest(cellText(row, column), allowed) ?? `write ${allowed.join(' or ')}`);
    return { message, at: placeOf(table, row, column), hint };
  });
}

/** `112,109` where a comma parts the cells: a reading with its decimals, or two cells. */
export function tellDoubtful(table: Table, row: Row, column: number, findings: Findings): void {
  if (!mayBeOne(row, column)) return;
  const [before, after] = [column, column + 1].map((k) => cellText(row, k));
  const named = table.layout.header[column + 1]?.text ?? '';
  findings.add('error', 'reading-ambiguous', () => {
    const [first, last] = [placeOf(table, row, column), placeOf(table, row, column + 1)];
    const length = (last.column ?? 0) + (last.length ?? 0) - (first.column ?? 0);
    return {
      message: `"${before},${after}" may be ${before}.${after}, or ${before} with "${after}" as ${named}`,
      at: { ...first, length },
      hint: 'quote a decimal comma, or write more than the number in the note',
    };
  });
}

/** A value of nobody knows which panel: told of a cell that is left out anyway, an error of a reading. */
export function tellNoPanel(
  table: Table,
  row: Row,
  column: number,
  told: ReadingCell,
  findings: Findings,
): void {
  const severity = told.kind === 'reading' ? 'error' : 'warning';
  const panelAt = table.layout.columns.get('panel');
  findings.add(severity, 'panel-missing', () => ({
    message: panelAt === undefined ? 'no line above names the panel' : 'the row names no panel',
    at: placeOf(table, row, panelAt ?? column),
    hint:
      panelAt === undefined
        ? 'write a line such as "Panel: bonnet" above its readings, or add a column "panel"'
        : 'name the panel in every row',
  }));
}

/** Why the reading of a row that is marked as deleted is left out. */
export function leaveOutDeleted(
  table: Table,
  row: Row,
  { column, text, class: why }: NonNullable<AboutRow['deleted']>,
  findings: Findings,
): string {
  const reason = `the row is marked "${text}" in the column "${table.layout.header[column]?.text ?? ''}"`;
  findings.add('warning', why === 'error' ? 'reading-error' : 'reading-deleted', () => ({
    message: `${reason}; its reading is left out`,
    at: placeOf(table, row, column),
  }));
  return reason;
}

/** A repeat that a row above has given already. */
export function tellTaken(
  table: Table,
  row: Row,
  { point, repeat, panel }: Pick<Reading, 'point' | 'repeat' | 'panel'>,
  findings: Findings,
): void {
  findings.add('error', 'cell-invalid', () => ({
    message: `repeat ${repeat} of point ${point} on ${panel} was given before`,
    at: placeOf(table, row, table.layout.columns.get('repeat') ?? 0),
    hint: 'is a part of the file there twice?',
  }));
}
