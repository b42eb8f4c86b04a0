/**
 * What there is to say about a header: why none was found, which columns are doubled or unknown.
 */
import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import type { Source } from '../rows/source.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { type GaugeRole, gaugeVocabulary } from './gauge-vocabulary.ts';
import { type HeaderCell, misspelling, type Vocabulary } from './header.ts';
import { readGaugeHeader } from './layout.ts';
import { isOrdinal } from './ordinals.ts';
import { placeOf, type Table } from './table.ts';

/** Doubled columns are refused; unknown ones named, and in a wide table of numbers taken as panels. */
export function adoptColumns(table: Table, findings: Findings): Table {
  const { layout, header } = table;
  if (header === undefined) return table;
  const at = (column: number) => placeOf(table, header, column);
  for (const column of layout.repeated) tellRepeated(table, column, at, findings);
  tellUnnamed(table, at, findings);
  const panels = layout.unknown.filter(
    (k) =>
      layout.kind === 'wide' &&
      // Beside points under the names of their panels every column of a panel has its name above it.
      layout.series !== 'point' &&
      !noPanel(layout.header[k]?.label ?? '') &&
      holdsNumbers(table.rows, k) &&
      !isConstant(table.rows, k),
  );
  tellUnknown(table, panels, at, findings);
  if (panels.length === 0) return table;
  const readings = [
    ...layout.readings,
    ...panels.map((column) => ({
      column,
      panel: layout.header[column]?.label ?? '',
      number: null,
    })),
  ].sort((a, b) => a.column - b.column);
  return { ...table, layout: { ...layout, readings } };
}

type At = (column: number) => Place;

function tellRepeated({ layout }: Table, column: number, at: At, findings: Findings): void {
  const cell = layout.header[column];
  const role = cell?.role ?? 'reading';
  const first = layout.header.findIndex((other) => other.role === role);
  findings.add('error', 'column-repeated', () => ({
    message: `"${cell?.text}" and "${layout.header[first]?.text}" both name the ${role}`,
    at: at(column),
    hint: 'rename or remove one of them',
  }));
}

function tellUnnamed(table: Table, at: At, findings: Findings): void {
  const { layout, rows } = table;
  const read = new Set(layout.readings.map(({ column }) => column));
  for (const [column, { text, unit, role }] of layout.header.entries()) {
    if (text !== '' || unit !== undefined || role !== undefined || read.has(column)) continue;
    if (!holdsNumbers(rows, column) || (column === 0 && isIndex(rows))) continue;
    if (countsBeside(table, column)) {
      findings.add('warning', 'column-unknown', () => ({
        message: `column ${column + 1} has no name and is not read: its numbers are too small beside the readings to be any`,
        at: at(column),
      }));
      continue;
    }
    findings.add('error', 'column-unnamed', () => ({
      message: `column ${column + 1} has numbers and no name`,
      at: at(column),
      hint: 'name it, or delete it',
    }));
  }
}

function tellUnknown(
  { layout }: Table,
  panels: readonly number[],
  at: At,
  findings: Findings,
): void {
  const names = Object.keys(gaugeVocabulary);
  for (const column of layout.unknown) {
    const cell = layout.header[column];
    if (panels.includes(column) || cell === undefined) continue;
    if (namesStatistic(cell.label)) {
      const message = `a statistics column: ${cell.text} is no ${layout.kind === 'wide' ? 'panel' : 'reading'}`;
      findings.add('warning', 'statistics-left-out', () => ({ message, at: at(column) }));
      continue;
    }
    findings.add('warning', 'column-unknown', () => {
      // One letter is near to any other.
      const hint = cell.label.length > 1 ? suggest(cell.label, names) : undefined;
      const message = `column "${cell.text}" is not read`;
      return { message, at: at(column), ...(hint === undefined ? {} : { hint }) };
    });
  }
}

/** Numbers that stand beside readings and belong to no panel. */
export const besideReadings =
  /^(?:index|idx|s\/?n|id|serial(?: no| number)?|temp(?:erature)?|humidity|battery|row|page|batch|limits?|target|nominal|spec(?:ification)?|tolerance|lower|upper|threshold|zero|(?:reference|calibration|test) (?:plate|foil|shim|block)|foil|shim|grenzwert|soll|limite|norm)\b/iu;
const noPanel = (label: string): boolean => namesStatistic(label) || besideReadings.test(label);

/** Whether the first cells count the rows, or the points of each panel, from 0 or 1. */
function isIndex(rows: readonly Row[]): boolean {
  let before = 0;
  return rows.every(({ cells }) => {
    const text = (cells[0] ?? '').trim();
    if (text === '' || numberShape(text) === undefined) return true;
    const number = Number(text);
    const counts = number === before + 1 || number === before || number === 0 || number === 1;
    before = number;
    return counts;
  });
}

/**
 * Whole numbers of two digits, each less than a fifth of any reading: a count, and no film like the others.
 * Behind a reading they may be its decimals.
 */
function countsBeside({ layout, rows }: Table, column: number): boolean {
  if (layout.readings.some(({ column: own }) => own < column)) return false;
  const [largest, least] = rows.reduce(
    ([most, few], { cells }) => {
      const text = (cells[column] ?? '').trim();
      const counted = text === '' || /^\d{1,2}$/u.test(text) ? Number(text) : Number.NaN;
      const readings = layout.readings.flatMap(({ column: own }) => {
        const shape = numberShape((cells[own] ?? '').trim());
        return shape === undefined ? [] : [numberOf(shape)];
      });
      return [Math.max(most, counted), Math.min(few, ...readings)];
    },
    [0, Number.POSITIVE_INFINITY],
  );
  return largest * 5 < least && Number.isFinite(least);
}

/** One number in every row is a setting; no film is so even. */
const isConstant = (rows: readonly Row[], column: number): boolean =>
  rows.length > 2 && new Set(rows.map(({ cells }) => (cells[column] ?? '').trim())).size === 1;

const holdsNumbers = (rows: readonly Row[], column: number): boolean =>
  rows.some(({ cells }) => numberShape((cells[column] ?? '').trim()) !== undefined);

export const explainGaugeHeader = (
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
): readonly Diagnostic[] =>
  explainHeader(source, rows, delimiter, {
    vocabulary: gaugeVocabulary,
    read: readGaugeHeader,
    needed: ['panel', 'reading'],
    otherwise: 'the columns need names: a panel and a reading, or one column per panel',
    further: wayOut,
  });

/** What to do where no name of a column is near: say which it is, unless there are but means. */
function wayOut(role: GaugeRole, header: readonly HeaderCell<GaugeRole>[]): string {
  if (role === 'reading' && header.some(({ label }) => namesStatistic(label))) {
    return '; means and extremes are no readings: export the single ones';
  }
  return `; if one of them holds the ${role}s, say which: --columns ${role}=NAME`;
}

type Wanted<Role extends string> = {
  readonly vocabulary: Vocabulary<Role>;
  readonly read: (cells: readonly string[]) => readonly HeaderCell<Role>[];
  readonly needed: readonly Role[];
  readonly otherwise: string;
  readonly further?: (role: Role, header: readonly HeaderCell<Role>[]) => string;
};

/** The row nearest to a header decides what is said: a column missing, or no header at all. */
export function explainHeader<Role extends string>(
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
  { vocabulary, read, needed, otherwise, further }: Wanted<Role>,
): readonly Diagnostic[] {
  const nearest = rows.find((row) => {
    const header = read(row.cells);
    const near = needed.some((role) => misspelling(vocabulary, role, header) !== undefined);
    return header.length > 1 && (near || header.some(({ role }) => role !== undefined));
  });
  if (nearest === undefined) {
    const [first] = rows;
    const at =
      first === undefined
        ? source.placeAt(Math.max(0, source.text.search(/\S/u)), 1)
        : placeOf({ source, delimiter }, first, 0);
    return [
      error('header-missing', 'no line of the file names the columns', { at, hint: otherwise }),
    ];
  }
  const header = read(nearest.cells);
  const columns = header
    .map(({ text }) => text)
    .filter((text) => text !== '')
    .join(', ');
  return needed
    .filter((role) => header.every((cell) => cell.role !== role))
    .map((role) => {
      const slip = misspelling(
        vocabulary,
        role,
        header.map((cell) => (isOrdinal(cell.label) ? { text: '', label: '' } : cell)),
      );
      const meant =
        slip === undefined ? '' : `did you mean "${slip.name}" by "${header[slip.column]?.text}"? `;
      return error('column-missing', `there is no column "${role}"`, {
        at: placeOf({ source, delimiter }, nearest, slip?.column ?? 0),
        hint: `${meant}columns found: ${columns}${slip === undefined ? (further?.(role, header) ?? '') : ''}`,
      });
    });
}
