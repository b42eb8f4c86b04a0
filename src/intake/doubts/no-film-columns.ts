/**
 * Columns among the readings whose numbers are no films: one number on all panels, as a setting or a serial number is;
 * numbers that count the rows; in columns without names, numbers far from those beside them on every panel, as a
 * temperature is. Readings hardly ever stand so: how seldom, decides whether the file is refused or doubted aloud.
 */
import type { Findings } from '../findings.ts';
import type { Grid, GridCell } from '../readings/number-grid.ts';
import { type Predictable, predictable } from '../statistics/predictable-column.ts';
import { placeOf } from '../tables/table.ts';
import { FAR_THINNER } from './far-readings.ts';

const REFUSED = 1e-3;
const DOUBTED = 0.02;
const fewestRows = 3;
/** Repeats of one panel differ less, wherever its points lie. */
const FAR = 2;
/** Nor does one place differ so from all others in the same sense on panel after panel: about eight times their spread. */
const APART = 1.25;
/** Bare metal alone is `FAR_THINNER`, and that seldom in one column on row after row (an assumption). */
const fewestThin = 2;

type Column = readonly (GridCell | undefined)[];

export function tellNoFilmColumns(grids: readonly Grid[], findings: Findings): void {
  for (const grid of grids) {
    const columns = grid.kind === 'wide' ? [] : columnsOf(grid);
    if (columns.length < 2) continue;
    const each = columns.map((column, k) => ({ column, others: columns.toSpliced(k, 1) }));
    const patterns = each.flatMap(({ column, others }) => followsFrom(column, others) ?? []);
    // Of two columns that are far from each other one says it.
    const far =
      patterns.length > 0
        ? []
        : each.flatMap(({ column, others }) => farFrom(column, others) ?? []).slice(-1);
    for (const told of [...patterns, ...far]) tell(told, findings);
  }
}

function columnsOf({ rows }: Grid): readonly Column[] {
  const width = rows.reduce((most, { length }) => Math.max(most, length), 0);
  return Array.from({ length: width }, (_, k) => rows.map((row) => row[k]));
}

const panelsOf = (column: Column): readonly string[] => column.map((cell) => cell?.panel ?? '');
const filled = (column: Column): readonly GridCell[] => column.flatMap((cell) => cell ?? []);

function followsFrom(column: Column, others: readonly Column[]): Told | undefined {
  const [first, ...more] = filled(column);
  const told = predictable(column, others, panelsOf(column));
  if (first === undefined || told === undefined) return undefined;
  const chance = told.chance * (others.length + 1);
  const counts = told.pattern !== 'constant';
  if (chance >= DOUBTED || (!counts && more.length + 1 < fewestRows)) return undefined;
  const isSure = chance < REFUSED;
  return { first, isSure, why: whyPredictable(told, first) };
}

const isNameless = ({ table: { layout }, column }: GridCell): boolean =>
  (layout.header[column]?.text ?? '') === '';

function whyPredictable({ pattern }: Predictable, { table, row, column }: GridCell): string {
  const text = row.cells[column]?.trim() ?? '';
  if (pattern === 'constant') return `has ${text} in every row`;
  const what = pattern === 'counts' ? 'counts up or down' : 'has the same numbers on every panel';
  return `${what}, from ${text} on${table.header === undefined ? '' : ', under a name of readings'}`;
}

/** On every panel further from all others than readings of one panel are. */
function farFrom(column: Column, others: readonly Column[]): Told | undefined {
  const [first] = filled(column);
  const [own = [], beside = []] = [column, others.flat()].map((cells) =>
    filled(cells).map(({ value }) => value),
  );
  const panels = new Set(panelsOf(column)).size;
  if (first === undefined || beside.length === 0) return undefined;
  const [least, most] = [Math.min(...own), Math.max(...own)];
  const [leastBeside, mostBeside] = [Math.min(...beside), Math.max(...beside)];
  const areSome = own.length >= fewestThin;
  const isThin = areSome && most * FAR_THINNER < leastBeside;
  const isProof = own.length >= (panels < fewestRows ? 2 : 1) * fewestRows && panels > 1;
  const isFar = most * FAR < leastBeside || least > mostBeside * FAR;
  // Of one row of three numbers or more, one far from the others is filler as often as not.
  const isDoubted =
    isNameless(first) && (areSome ? isApart(column, others) : isFar && others.length === 1);
  if (!isDoubted && !(isFar && areSome)) return undefined;
  const [span, spanBeside] = [spanText(least, most), spanText(leastBeside, mostBeside)];
  const why = `has ${span} beside ${spanBeside}${areSome ? ' on every panel' : ''}`;
  return { first, isSure: areSome && isFar && (isThin || isProof) && isNameless(first), why };
}

const spanText = (least: number, most: number): string =>
  least === most ? String(least) : `${least} to ${most}`;

/** In every row less than all others, or in every row more. */
function isApart(column: Column, others: readonly Column[]): boolean {
  const shares = column.flatMap((cell, k) =>
    cell === undefined
      ? []
      : others.flatMap((other) => (other[k]?.value ?? Number.NaN) / cell.value),
  );
  const known = shares.filter((share) => !Number.isNaN(share));
  if (known.length < fewestThin) return false;
  return known.every((share) => share > APART) || known.every((share) => share * APART < 1);
}

type Told = { readonly first: GridCell; readonly isSure: boolean; readonly why: string };

function tell({ first, isSure, why }: Told, findings: Findings): void {
  const name = first.table.layout.header[first.column]?.text ?? '';
  const column = name === '' ? `column ${first.column + 1}` : `column "${name}"`;
  const at = () => placeOf(first.table, first.row, first.column);
  if (isSure) {
    findings.add('error', 'column-unnamed', () => ({
      message: `${column} ${why}: these are hardly readings, and nothing says what they are`,
      at: at(),
      hint: 'take the column out, or put a line of names above the columns that says what each is',
    }));
    return;
  }
  findings.add('warning', 'reading-doubted', () => ({
    message: `${column} ${why}, and is read as readings`,
    at: at(),
    hint: 'if it holds something else, name it so or take it out',
  }));
}
