/** Rows of names in the middle of a file: the header of another table, or of the same one in another order. */
import { roleOfKey } from '../beside/sayings.ts';
import { type Layout, layoutOf } from '../header/layout.ts';
import type { Row } from '../rows/tokens.ts';
import { isDataRow, type Reader, type State, startsAsNumber } from './section-state.ts';

/** Another row of names in the middle of the file, with readings under it. */
export function otherHeader(
  row: Row,
  next: Row | undefined,
  { layout }: State,
  { context }: Reader,
): Layout | undefined {
  if (row.cells.length < 2 && layout.kind !== 'blocks') return undefined;
  const numbered =
    layout.kind === 'repeats' ||
    countsColumns(row, layout) ||
    namesPanels(row) ||
    context.byCells?.(row.cells) !== undefined;
  if (!numbered && row.cells.some((cell) => startsAsNumber(cell.trim()))) return undefined;
  const other = layoutOf(row.cells, { ...context, captions: layout.kind === 'blocks' });
  if (other === undefined || next === undefined) return undefined;
  return isDataRow(next, other) || isUnitsLike(next) ? other : undefined;
}

/** `Panel;1;2` below rows of one reading: names of columns, where a row would have its numbers. */
export function countsColumns({ cells }: Row, { columns }: Layout): boolean {
  const panelAt = columns.get('panel');
  if (panelAt === undefined) return false;
  const counted = cells[panelAt + 1]?.trim() === '1' && cells[panelAt + 2]?.trim() === '2';
  return counted && roleOfKey((cells[panelAt] ?? '').trim()) === 'panel';
}

const namesPanels = ({ cells }: Row): boolean =>
  cells.some((cell) => roleOfKey(cell.trim()) === 'panel');

/** `1 µm;2 µm;Panel` below rows of other columns: the name of the panels stands where a row has a reading. */
export const isMovedHeader = ({ cells }: Row, { readings, header }: Layout): boolean =>
  header.length > 0 &&
  readings.some(({ column }) => {
    const text = cells[column] ?? '';
    return text !== '' && !startsAsNumber(text) && roleOfKey(text.trim()) === 'panel';
  });

const isUnitsLike = ({ cells }: Row): boolean => cells.every((cell) => !/\d/u.test(cell));
