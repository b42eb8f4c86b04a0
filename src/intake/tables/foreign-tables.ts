/**
 * Tables of something else below the readings: a summary of the panels, a check of the gauge. They
 * are left out as a whole and aloud; one that may hold readings of panels is asked about.
 */
import { suggest } from '../../base/did-you-mean.ts';
import type { Row } from '../rows/tokens.ts';
import { isStatistic, namesStatistic } from '../statistics/statistic-words.ts';
import { gaugeVocabulary } from './gauge-vocabulary.ts';
import { filledCells, roleOfKey } from './sayings.ts';
import { isNumber, type Reader, type State } from './section-state.ts';
import { placeOf } from './table.ts';

/** A row of names that heads something else: a summary, a list of settings. */
export function startsForeignTable(
  row: Row,
  before: Row | undefined,
  next: Row | undefined,
  { layout }: State,
  { context }: Reader,
): boolean {
  const texts = filledCells(row).map((k) => (row.cells[k] ?? '').trim());
  if (texts.length < 2 || texts.some((text) => /^\d/u.test(text) || context.isPanel(text)))
    return false;
  const known = texts.filter((text) => roleOfKey(text) !== undefined || namesStatistic(text));
  const first = texts[0] ?? '';
  if (isStatistic(first)) return false;
  if (known.length >= 2) return true;
  const apart = before !== undefined && row.line > before.line + 1;
  const panelAt = layout.columns.get('panel');
  return (
    apart &&
    next !== undefined &&
    (next.cells.length !== layout.header.length ||
      (panelAt !== undefined && !context.isPanel((next.cells[panelAt] ?? '').trim())))
  );
}

export function closeForeign(state: State, { findings, context, ...where }: Reader): void {
  if (state.foreign === undefined) return;
  const { header: foreign, rows: foreignRows } = state.foreign;
  state.foreign = undefined;
  const names = filledCells(foreign).map((k) => (foreign.cells[k] ?? '').trim());
  const summary = names.some((name) => isStatistic(name) || name.toLowerCase() === 'n');
  const mayHold = foreignRows.find(
    ({ cells }) =>
      cells.some((cell) => context.isPanel(cell.trim())) &&
      cells.some((cell) => isNumber(cell.trim())),
  );
  const last = foreignRows.at(-1)?.line ?? foreign.line;
  const at = placeOf(where, foreign, filledCells(foreign)[0] ?? 0);
  if (mayHold !== undefined && !summary) {
    findings.add('error', 'column-missing', () => ({
      message: `another table starts here, and no column of it is known as the reading`,
      at,
      hint: `${suggest(names[1] ?? '', gaugeVocabulary.reading) ?? 'name the column "reading"'}; columns found: ${names.join(', ')}`,
    }));
    return;
  }
  if (summary) state.summaries.push({ header: foreign, rows: foreignRows });
  const what = summary ? 'a table of statistics' : 'a table without panels and readings';
  findings.add('warning', summary ? 'statistics-left-out' : 'table-left-out', () => ({
    message: `${what} (lines ${foreign.line} to ${last}) is not read`,
    at,
  }));
}
