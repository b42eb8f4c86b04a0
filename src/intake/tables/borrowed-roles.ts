/**
 * Columns that are called something else than what they hold, and can be known by the company they keep.
 *
 * `Ch` and `Ist` stand for the panel and the reading where no other column does: beside a nominal value
 * the actual one is the reading, and a channel is a panel if its cells name panels. `Panel` above the
 * counter of the rows, in the corner of a table whose other columns are panels, names those columns.
 */
import type { GaugeRole } from './gauge-vocabulary.ts';
import { type HeaderCell, plainWords } from './header.ts';
import { countedColumn } from './numbered-columns.ts';

const words = (text: string): ReadonlySet<string> =>
  new Set(text.split('|').map((word) => plainWords(word)));
const borrowed = {
  panel: words('ch|channel|kanal|canal|canale|kanaal'),
  reading:
    words(`ist|istwert|ist wert|actual|actual value|actual reading|effettivo|valore effettivo|
    réel|valeur réelle|valor real|werkelijk|werkelijke waarde|faktisk|rzeczywista|skutečnost|факт|
    实测|实测值|実測|実測値`),
} as const satisfies Partial<Record<GaugeRole, ReadonlySet<string>>>;

type Header = readonly HeaderCell<GaugeRole>[];

/**
 * The header with those roles that no column has by its own name, if that makes it one of panels and
 * readings: a table with a column for each panel, or with numbered readings, borrows none.
 */
export function withBorrowedRoles(header: Header): Header {
  const panelled = withRole(header, 'panel');
  const numbered = header.some(({ label }) => countedColumn(label) !== undefined);
  const all = numbered ? panelled : withRole(panelled, 'reading');
  const has = (role: GaugeRole): boolean => all.some((cell) => cell.role === role);
  return has('panel') && (numbered || has('reading')) ? all : header;
}

function withRole(header: Header, role: keyof typeof borrowed): Header {
  if (header.some((cell) => cell.role === role)) return header;
  const column = header.findIndex(
    (cell) => cell.role === undefined && borrowed[role].has(plainWords(cell.label)),
  );
  const cell = header[column];
  return cell === undefined ? header : header.with(column, { ...cell, role });
}

/** The header of a table with a panel in each column, whose first one is called after them or their unit. */
export const withoutCorner = (header: Header): Header =>
  header.map((cell, k) =>
    k === 0 && (cell.role === 'panel' || cell.label === '') ? { ...cell, role: 'point' } : cell,
  );

/** Whether a column stands for the panel though its name is another. */
export const isBorrowedPanel = (label: string): boolean => borrowed.panel.has(plainWords(label));
