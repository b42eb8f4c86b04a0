/**
 * Rows of statistics among those of readings.
 *
 * A device or a spreadsheet writes them below or beside the readings. What stands next to one is
 * computed from readings and is none itself: taken as one it would count its sources twice.
 */
import type { Findings } from './findings.ts';
import { isStatistic, namesStatistic, plainStatistic } from './statistic-words.ts';
import type { ExcludedCell, Table } from './table.ts';
import { cellSpan, type Row } from './tokens.ts';

/** A table without its rows of statistics; each is told, and listed among the cells left out. */
export function leaveOutStatistics(
  table: Table,
  findings: Findings,
): { readonly table: Table; readonly excluded: readonly ExcludedCell[] } {
  const { source, delimiter } = table;
  const excluded: ExcludedCell[] = [];
  const find = statisticFinder(table);
  const rows = table.rows.filter((row) => {
    const column = find(row);
    if (column === -1) return true;
    const text = (row.cells[column] ?? '').trim();
    const reason = `a statistics row: ${text} is no reading`;
    const { offset, length } = cellSpan(source, row, column, delimiter);
    const at = source.placeAt(offset, length);
    excluded.push({ file: at.file, line: at.line ?? 0, column: at.column ?? 0, text, reason });
    findings.add('warning', 'statistics-left-out', () => ({ message: reason, at }));
    return false;
  });
  return excluded.length === 0 ? { table, excluded } : { table: { ...table, rows }, excluded };
}

/** The column of a row's word of statistics, or -1. */
function statisticFinder({ layout, rows }: Table): (row: Row) => number {
  const tests = new Map<number, (text: string) => boolean>();
  const known = (test: (text: string) => boolean): ((text: string) => boolean) => {
    const told = new Map<string, boolean>();
    return (text) => {
      const before = told.get(text);
      if (before !== undefined) return before;
      const answer = test(text);
      told.set(text, answer);
      return answer;
    };
  };
  for (const [column, { role }] of layout.header.entries()) {
    if (layout.readings.some((reading) => reading.column === column)) continue;
    if (role === 'panel')
      tests.set(
        column,
        known((text) => namesStatistic(text) || plainStatistic(text) === 'n'),
      );
    else if (role === 'point')
      tests.set(
        column,
        known((text) => isStatistic(text) || plainStatistic(text) === 'n'),
      );
    // A layer-resolving instrument calls the whole film so.
    else if (role === 'layer')
      tests.set(
        column,
        known((text) => plainStatistic(text) !== 'total' && isStatistic(text)),
      );
    else if (role === 'operator') tests.set(column, known(besidePeople(rows, column)));
    else tests.set(column, known(isStatistic));
  }
  const columns = [...tests];
  return ({ cells }) => {
    for (const [column, test] of columns) {
      const text = (cells[column] ?? '').trim();
      if (text !== '' && !isNumeral(text) && test(text)) return column;
    }
    return -1;
  };
}

/** Max and Min are people too, unless their column knows another word of statistics. */
function besidePeople(rows: readonly Row[], column: number): (text: string) => boolean {
  const people = new Set(['max', 'min']);
  const statistical = rows.some(({ cells }) => {
    const text = (cells[column] ?? '').trim();
    return isStatistic(text) && !people.has(plainStatistic(text));
  });
  return (text) => isStatistic(text) && (statistical || !people.has(plainStatistic(text)));
}

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** Numbers, dates and times start with a digit; of the words of statistics only `1-2 avg` does. */
const isNumeral = (text: string): boolean =>
  isDigit(text.charCodeAt(0)) && !/^\d[\d\s–-]*\s\D/u.test(text);
