/**
 * Tables of something else below the readings: a summary of the panels, a check of the gauge. They
 * are left out as a whole and aloud, as are gloss, hours or limits of the panels; one that may hold readings
 * of them is asked about.
 */

import { suggest } from '../../base/did-you-mean.ts';
import { wordsIn } from '../cells/word-list.ts';
import { besideReadings } from '../header/beside-readings.ts';
import { gaugeVocabulary } from '../header/gauge-vocabulary.ts';
import { isNumber, type Reader, type State } from '../parts/section-state.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { isStatistic, namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf } from '../tables/table.ts';
import { sizesOf } from '../units/size-in-units.ts';
import { filledCells, roleOfKey } from './sayings.ts';

/** A row of names that heads something else: a summary, a list of settings. */
export function startsForeignTable(
  row: Row,
  before: Row | undefined,
  next: Row | undefined,
  { layout, asideLine }: State,
  { context }: Reader,
): boolean {
  const texts = filledCells(row).map((k) => cellText(row, k));
  if (texts.length < 2 || texts.some((text) => /^\d/u.test(text) || context.isPanel(text)))
    return false;
  const known = texts.filter((text) => roleOfKey(text) !== undefined || namesStatistic(text));
  const first = texts[0] ?? '';
  if (isStatistic(first)) return false;
  if (known.length >= 2) return true;
  const apart = before !== undefined && (row.line > before.line + 1 || before.line === asideLine);
  const panelAt = layout.columns.get('panel');
  return (
    apart &&
    next !== undefined &&
    (next.cells.length !== layout.header.length ||
      (panelAt !== undefined && !context.isPanel(cellText(next, panelAt))))
  );
}

export function closeForeign(state: State, { findings, context, ...where }: Reader): void {
  if (state.foreign === undefined) return;
  const { header: foreign, rows: foreignRows } = state.foreign;
  state.foreign = undefined;
  const names = filledCells(foreign).map((k) => cellText(foreign, k));
  const summary = names.some((name) => isStatistic(name) || name.toLowerCase() === 'n');
  const mayHold = foreignRows.find(
    ({ cells }) =>
      cells.some((cell) => context.isPanel(cell.trim())) &&
      cells.some((cell) => isNumber(cell.trim())),
  );
  const last = foreignRows.at(-1)?.line ?? foreign.line;
  const at = placeOf(where, foreign, filledCells(foreign)[0] ?? 0);
  const isOther = holdsOther(foreign, foreignRows, state);
  if (mayHold !== undefined && !summary && !isOther) {
    findings.add('error', 'column-missing', () => ({
      message: `another table starts here, and no column of it is known as the reading`,
      at,
      hint: `${suggest(names[1] ?? '', wordsIn(gaugeVocabulary.reading)) ?? 'name the column "reading"'}; columns found: ${names.join(', ')}`,
    }));
    return;
  }
  if (summary) state.summaries.push({ header: foreign, rows: foreignRows });
  const what = summary
    ? 'a table of statistics'
    : isOther
      ? 'a table of something else than readings'
      : 'a table without panels and readings';
  findings.add('warning', summary ? 'statistics-left-out' : 'table-left-out', () => ({
    message: `${what} (lines ${foreign.line} to ${last}) is not read`,
    at,
  }));
}

/** Units of gloss, temperature, area, shares and time, behind a name. */
const otherUnit =
  /(?:[([]|[,;:/]\s*)(?:gu|g\.?u\.?|°\s?[cf]|c|f|m²|m2|ft²|%|h|hrs?|min|kg|€|\$|£)[)\]]?$/iu;

const otherName =
  /^(?:gloss|glanz|glanzgrad|brillance|brillant|brillo|brillantezza|glans|блеск|połysk|光沢|光泽|temperatur|température|temperatura|humidity|feuchte|hours|stunden)/iu;

/**
 * Whether every column of numbers is of something else: by its unit, by its name, or since all of its numbers
 * are too small beside the readings above to be of their kind.
 */
function holdsOther(header: Row, rows: readonly Row[], { tables }: State): boolean {
  const sizes = sizesOf(
    tables.flatMap(({ layout, rows: own }) =>
      own.flatMap(({ cells }) => layout.readings.map(({ column }) => cells[column] ?? '')),
    ),
  );
  const columns = filledCells(header).filter((k) => rows.some((row) => isNumber(cellText(row, k))));
  return (
    sizes !== undefined &&
    columns.length > 0 &&
    columns.every((k) => {
      const name = cellText(header, k);
      if (otherUnit.test(name) || otherName.test(name) || besideReadings.test(name)) return true;
      const own = sizesOf(rows.map(({ cells }) => cells[k] ?? ''));
      return own !== undefined && own.most * farBelow <= sizes.least;
    })
  );
}

/** So many times under the least reading nothing is film on the same car. */
const farBelow = 5;
