/**
 * The column of readings where its name is in no list, `Дебљина (µm)`, or where it has none. It is the only column whose
 * name carries a unit of film thickness, or else the only one without a name whose every cell carries one; its cells are
 * numbers, and another column names the panels.
 *
 * The word may still mean something else, a mean or a limit, so it is told.
 */

import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { isThickness } from '../beside/unit-lines.ts';
import { numberShape } from '../cells/numbers.ts';
import { besideReadings } from '../header/beside-readings.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { stemOfLabel } from '../header/label-numbers.ts';
import { type LayoutContext, layoutOf, readGaugeHeader } from '../header/layout.ts';
import { delimiters } from '../rows/dialect.ts';
import { cellText } from '../rows/row.ts';
import type { Source } from '../rows/source.ts';
import { type Delimiter, type Row, tokenize } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf } from './table.ts';

const headRows = 60;
const fewestRows = 2;

type Header = ReturnType<typeof readGaugeHeader>;
type Columns = { readonly panel: number; readonly reading: number };

/** How rows of names are looked at where that column is taken for the readings; undefined if there is none. */
export function readingByUnit(
  source: Source,
  context: LayoutContext,
): { readonly context: LayoutContext; readonly told: Diagnostic } | undefined {
  if (context.given !== undefined) return undefined;
  for (const delimiter of delimiters) {
    const rows = tokenize(source, delimiter, { offset: 0, line: 1 }, headRows).value ?? [];
    for (const [at, row] of rows.entries()) {
      const columns = columnsOf(row, rows.slice(at + 1), context);
      if (columns === undefined) continue;
      const names = row.cells.join('\0');
      const roles = new Map<number, GaugeRole>([
        [columns.panel, 'panel'],
        [columns.reading, 'reading'],
      ]);
      const given = (cells: readonly string[]) => (cells.join('\0') === names ? roles : undefined);
      const own = { ...context, given };
      if (layoutOf(row.cells, own) === undefined) continue;
      return { context: own, told: tellTaken({ source, delimiter }, row, columns) };
    }
  }
  return undefined;
}

function tellTaken(
  where: { readonly source: Source; readonly delimiter: Delimiter },
  row: Row,
  { reading }: Columns,
): Diagnostic {
  const called = cellText(row, reading);
  const which = called === '' ? `column ${reading + 1}, which has no name,` : `"${called}"`;
  const message = `${which} is taken for the readings: it alone is in a unit of film thickness`;
  return warning('reading-doubted', message, {
    at: placeOf(where, row, reading),
    hint: 'if it is another quantity, name the readings: --columns reading=NAME',
  });
}

function columnsOf({ cells }: Row, below: readonly Row[], context: LayoutContext) {
  const header = readGaugeHeader(cells);
  if (header.length < 2 || header.some(({ role }) => role === 'reading')) return undefined;
  const inUnit = [...header.entries()].filter(([, { unit }]) => unit === 'um' || unit === 'mil');
  const known = inUnit.length > 0 ? inUnit : namelessInUnit(header, below);
  const [only, second] = known;
  if (only === undefined || second !== undefined || below.length < fewestRows) return undefined;
  const [reading, { role, label, text }] = only;
  if (role !== undefined || (text !== '' && !/^\D*\p{L}\D*$/u.test(label))) return undefined;
  if (namesStatistic(label) || besideReadings.test(label)) return undefined;
  const texts = textsOf(below, reading);
  if (texts.length < fewestRows || !texts.every((text) => numberShape(text) !== undefined)) {
    return undefined;
  }
  const panel = panelOf(header, below, context);
  return panel === undefined || panel === reading ? undefined : { panel, reading };
}

/** Columns without a name whose every cell is a number and a unit of film thickness. */
const namelessInUnit = (
  header: Header,
  below: readonly Row[],
): readonly [number, Header[number]][] =>
  [...header.entries()].filter(
    ([column, { text }]) =>
      text === '' && below.every((row) => isThickness(numberShape(cellText(row, column))?.suffix)),
  );

function panelOf(
  header: Header,
  below: readonly Row[],
  { isPanel }: LayoutContext,
): number | undefined {
  const named = header.findIndex(({ role }) => role === 'panel');
  if (named !== -1) return named;
  const column = header.findIndex(({ role }, k) => {
    const names = textsOf(below, k).filter((text) => !namesStatistic(text));
    const known = names.filter((text) => isPanel(stemOfLabel(text)));
    return role === undefined && names.length > 0 && known.length * 2 > names.length;
  });
  return column === -1 ? undefined : column;
}

const textsOf = (rows: readonly Row[], column: number): readonly string[] =>
  rows.map((row) => cellText(row, column)).filter((text) => text !== '');
