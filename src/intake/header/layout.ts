/**
 * How a table of readings is laid out, from the names of its columns:
 * *long*, one reading a row under a panel and a reading column; *repeats*, several numbered columns
 * of readings a row; *wide*, one column a panel; *blocks*, either of the first two without a column
 * of panels, since a line above the rows names it. A *list* has no names of columns at all.
 */

import { hasLetter } from '../../base/letters.ts';
import { withBorrowedRoles } from './borrowed-roles.ts';
import { columnsByRole } from './columns-by-role.ts';
import { type GaugeRole, gaugeVocabulary } from './gauge-vocabulary.ts';
import { type HeaderCell, headerReader, withoutRole } from './header.ts';
import type { Layout, LayoutContext, ReadingColumn } from './layout-shape.ts';
import { readingColumns } from './reading-columns.ts';
import { sideHeadings } from './side-headings.ts';
import { namesInSpans } from './spans.ts';
import { cornerLayout, wideLayout } from './wide-layout.ts';

export type { Layout, LayoutContext, LayoutName, ReadingColumn } from './layout-shape.ts';

const readHeader = headerReader(gaugeVocabulary);
export const readGaugeHeader = (cells: readonly string[]): HeaderCell<GaugeRole>[] =>
  cells.map((cell) => nameless(readHeader(cell)));

/** A column headed by nothing but a unit of thickness holds the readings. */
const nameless = (cell: HeaderCell<GaugeRole>): HeaderCell<GaugeRole> =>
  cell.label === '' && cell.unit !== undefined
    ? { ...cell, role: 'reading' }
    : isPlaceInUnit(cell) || isLayerInUnit(cell)
      ? withoutRole(cell)
      : cell;

/** `U µm` is a length, and no place across the panel: its uncertainty, perhaps. */
const isPlaceInUnit = ({ role, unit }: HeaderCell<GaugeRole>): boolean =>
  (role === 'u' || role === 'v') && unit !== undefined;

/** `Schicht (µm)` is how thick the film is; the name of a layer has no unit. */
const isLayerInUnit = ({ role, unit }: HeaderCell<GaugeRole>): boolean =>
  role === 'layer' && unit !== undefined;

/** The layout a row of names stands for, or undefined if the row is no header. */
export function layoutOf(cells: readonly string[], context: LayoutContext): Layout | undefined {
  const layout = anyLayoutOf(cells, context);
  return context.layout === undefined || layout?.kind === context.layout ? layout : undefined;
}

function anyLayoutOf(cells: readonly string[], context: LayoutContext): Layout | undefined {
  // One name alone can only be that of the readings, and then lines must name their panel.
  if (cells.length === 1 && !context.captions) return undefined;
  const asked = context.given?.(cells);
  if (context.given !== undefined && asked === undefined) return undefined;
  const given = asked ?? context.byCells?.(cells);
  const named = readGaugeHeader(cells);
  const header = given === undefined ? withBorrowedRoles(named) : withGivenRoles(named, given);
  const beside = sideBySide(header, context);
  if (beside !== undefined) return beside;
  const { columns, repeated } = columnsByRole(header);
  if (columns.get('reading') === 0 && !columns.has('panel')) {
    const corner = cornerLayout(header, repeated, context) ?? besideSides(header, context);
    if (corner !== undefined) return corner;
  }
  const { readings, series, spare } = readingColumns(header, columns);
  if (readings.length === 0) {
    return columns.has('panel')
      ? cornerLayout(header, repeated, context)
      : wideLayout(header, columns, repeated, context);
  }
  if (!columns.has('panel') && (!context.captions || columns.has('unit'))) return undefined;
  if (!isNamed(header, readings)) return undefined;
  const taken = new Set(readings.map(({ column }) => column));
  const unknown = [...header.keys()].filter(
    (k) => header[k]?.role === undefined && header[k]?.text !== '' && !taken.has(k),
  );
  const several = readings.length > 1 || readings[0]?.number !== null;
  const kind = columns.has('panel') ? (several ? 'repeats' : 'long') : 'blocks';
  const doubled = repeated.filter((column) => !taken.has(column));
  return { kind, header, columns, readings, series, unknown, repeated: [...doubled, ...spare] };
}

/**
 * `Left side;1 (µm);2 (µm);;Right side;1 (µm);2 (µm)`: the columns of the first of several tables that stand side by
 * side, each with a panel, and called alike but for that. They are taken apart later.
 */
function sideBySide(
  header: readonly HeaderCell<GaugeRole>[],
  context: LayoutContext,
): Layout | undefined {
  const panels = [...header.keys()].filter((k) => header[k]?.role === 'panel');
  const [first, second] = panels;
  if (first !== 0 || second === undefined) return undefined;
  const names = namesInSpans(header, panels);
  if (names.some((own) => own !== names[0]) || names[0] === '') return undefined;
  const cells = header.slice(0, second).map(({ text }) => text);
  const own = layoutOf(cells, { ...context, given: () => new Map([[0, 'panel']]) });
  return own === undefined
    ? undefined
    : { ...own, header, repeated: [...own.repeated, ...panels.slice(1)] };
}

/** `µm;Left;Right` above the names of panels: the corner holds the unit of the columns called after sides. */
function besideSides(
  header: readonly HeaderCell<GaugeRole>[],
  context: LayoutContext,
): Layout | undefined {
  const [corner] = header;
  if (corner?.label !== '' || sideHeadings(header).length === 0) return undefined;
  return layoutOf(
    header.map(({ text }) => text),
    { ...context, given: () => new Map([[0, 'panel']]) },
  );
}

/**
 * A column that is known; or two and more that count, beside a name. Of `Bonnet;118` and `1` under a comma the
 * one number is the decimals of a reading.
 */
const isNamed = (
  header: readonly HeaderCell<GaugeRole>[],
  readings: readonly ReadingColumn[],
): boolean =>
  header.some(({ role }) => role !== undefined) ||
  (readings.length > 1 && header.some(({ label }) => hasLetter(label)));

function withGivenRoles(
  header: readonly HeaderCell<GaugeRole>[],
  given: ReadonlyMap<number, GaugeRole> | undefined,
): readonly HeaderCell<GaugeRole>[] {
  if (given === undefined) return header;
  const named = new Set(given.values());
  return header.map((cell, column) => {
    const role = given.get(column);
    if (role !== undefined) return { ...cell, role };
    // What the user names is no longer looked for among the others.
    return cell.role === undefined || !named.has(cell.role) ? cell : withoutRole(cell);
  });
}
