/**
 * Two rows of names, panels merged over the numbers of their points: `µm;Bonnet;;;Roof;;` over `Pass;1;2;3;1;2;3`.
 * Each column is one point of one panel, and several rows are repeats there. The corner may hold the unit,
 * and so may the first cell of each row below: `Thickness (µm);118;121;…`.
 */

import { groupBy } from '../../base/group-by.ts';
import { sayingOf } from '../beside/sayings.ts';
import { unitNamed } from '../cells/unit.ts';
import type { GaugeRole } from '../header/gauge-vocabulary.ts';
import { type HeaderCell, withoutRole } from '../header/header.ts';
import {
  type Layout,
  type LayoutContext,
  type ReadingColumn,
  readGaugeHeader,
} from '../header/layout.ts';
import { countedColumn, countUp } from '../header/numbered-columns.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { namesUnit } from './section-state.ts';

type Cell = HeaderCell<GaugeRole>;
const fewestPanels = 2;
/** Of each of these panels two points at least. */
const fewestColumns = 2 * fewestPanels;

/** Roles that a column beside those of the panels may have. */
const beside: ReadonlySet<GaugeRole> = new Set([
  ...(['point', 'repeat', 'vehicle', 'operator', 'time', 'note', 'unit'] as const),
]);

export function pointsUnderPanels(
  upper: Row,
  lower: Row,
  below: readonly Row[],
  { isPanel, mayBePanel, given, layout }: LayoutContext,
): Layout | undefined {
  if (given !== undefined || (layout !== undefined && layout !== 'wide')) return undefined;
  if (lower.line !== upper.line + 1 || lower.cells.length < fewestColumns) return undefined;
  const [above, own] = [upper, lower].map(({ cells }) => readGaugeHeader(cells));
  if (above === undefined || own === undefined) return undefined;
  const readings: ReadingColumn[] = [];
  const header: Cell[] = [];
  let over: Cell | undefined;
  for (const [column, cell] of own.entries()) {
    const named = above[column];
    if (named !== undefined && named.text !== '') {
      over = isPanel(named.text) || mayBePanel(named.label) ? named : undefined;
    }
    const number = countedColumn(cell.label)?.number;
    if (over === undefined || number === undefined) {
      if (over !== undefined && cell.text !== '') return undefined;
      header.push(cell.text === '' ? (named ?? cell) : cell);
      continue;
    }
    const unit = cell.unit === undefined ? over : cell;
    readings.push({ column, panel: over.label, number });
    header.push({ ...unit, text: `${over.text} ${cell.text}`, label: over.label });
  }
  if (!pointsCount(readings)) return undefined;
  // Panels beside the rows as well: the names above are not theirs, but say where on them, or of which side.
  if (readings[0]?.column !== 0 && below.some((row) => isPanel(cellText(row, 0)))) return undefined;
  const quantity = quantityOf(below);
  if (quantity !== undefined) header[0] = { text: '', label: '' };
  const corner = cornerUnit(upper, own) ?? quantity;
  const [first] = readings;
  const named = header[first?.column ?? -1];
  if (corner !== undefined && first !== undefined && named !== undefined) {
    header[first.column] = { ...named, ...corner };
  }
  return withCorner(header, readings, below);
}

/** Every panel has its points 1, 2, 3 …, and more than one of them several. */
function pointsCount(readings: readonly ReadingColumn[]): boolean {
  const panels = groupBy(readings, ({ panel }) => panel ?? '');
  const several = [...panels.values()].filter(({ length }) => length > 1);
  return (
    several.length >= fewestPanels &&
    [...panels.values()].every((points) =>
      countUp(
        points.map(({ number }) => number ?? 0),
        [1],
      ),
    )
  );
}

/** `µm` or `Unit: mil` in the corner, in the upper row or in the lower. */
function cornerUnit(upper: Row, own: readonly Cell[]): Pick<Cell, 'unit' | 'unitText'> | undefined {
  const [text = ''] = upper.cells;
  const said = sayingOf({ ...upper, cells: [text] });
  const value = said !== undefined && namesUnit(said) ? said.value : text;
  const cells = [...readGaugeHeader([value]), ...own.slice(0, 1)];
  const cell = cells.find(({ unit, label, role }) => {
    const isCorner = label === '' || role === 'reading';
    return unit !== undefined && isCorner;
  });
  if (cell?.unit === undefined) return undefined;
  return { unit: cell.unit, unitText: cell.unitText ?? '' };
}

/** What every row below calls its numbers, where that is the readings in their unit and not the unit alone. */
function quantityOf(below: readonly Row[]): Pick<Cell, 'unit' | 'unitText'> | undefined {
  const texts = new Set(below.map((row) => cellText(row, 0)));
  const [text = ''] = texts;
  const [cell] = readGaugeHeader([text]);
  if (texts.size !== 1 || cell?.role !== 'reading' || cell.label === '') return undefined;
  return cell.unit === undefined ? undefined : { unit: cell.unit, unitText: cell.unitText ?? '' };
}

function withCorner(
  names: readonly Cell[],
  readings: readonly ReadingColumn[],
  below: readonly Row[],
): Layout | undefined {
  const taken = new Set(readings.map(({ column }) => column));
  const columns = new Map<GaugeRole, number>();
  const unknown: number[] = [];
  const header = names.map((cell, column): Cell => {
    if (taken.has(column)) return cell;
    if (holdsUnits(below, column)) return { ...cell, role: 'unit' };
    return cell.role === 'reading' || cell.role === 'panel' ? withoutRole(cell) : cell;
  });
  for (const [column, { role, text, unit }] of header.entries()) {
    if (taken.has(column)) continue;
    if (role !== undefined && (!beside.has(role) || columns.has(role))) return undefined;
    if (role !== undefined) columns.set(role, column);
    else if (text !== '' && unit === undefined) unknown.push(column);
  }
  return { kind: 'wide', header, columns, readings, series: 'point', unknown, repeated: [] };
}

const holdsUnits = (rows: readonly Row[], column: number): boolean =>
  rows.length > 0 && rows.every((row) => unitNamed(cellText(row, column)) !== undefined);
