/**
 * What there is to say about a header: why none was found, which columns are doubled or unknown.
 */
import { type Diagnostic, error } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import type { Findings } from './findings.ts';
import { gaugeVocabulary, type HeaderCell, misspelling, type Vocabulary } from './header.ts';
import { readGaugeHeader } from './layout.ts';
import { numberShape } from './numbers.ts';
import type { Source } from './source.ts';
import { namesStatistic } from './statistic-words.ts';
import type { Table } from './table.ts';
import { cellSpan, type Delimiter, type Row } from './tokens.ts';

/** Doubled columns are refused; unknown ones named, and in a wide table of numbers taken as panels. */
export function adoptColumns(table: Table, header: Row, findings: Findings): Table {
  const { source, delimiter, layout } = table;
  const at = (column: number) => placeOf(source, header, column, delimiter);
  for (const column of layout.repeated) {
    const cell = layout.header[column];
    const first = layout.header.findIndex(({ role }) => role === cell?.role);
    findings.add('error', 'column-repeated', () => ({
      message: `"${cell?.text}" and "${layout.header[first]?.text}" both name the ${cell?.role}`,
      at: at(column),
      hint: 'rename or remove one of them',
    }));
  }
  for (const [column, { text, unit }] of layout.header.entries()) {
    if (text !== '' || unit !== undefined || !holdsNumbers(table.rows, column)) continue;
    if (column === 0 && isIndex(table.rows)) continue;
    findings.add('error', 'column-unnamed', () => ({
      message: `column ${column + 1} has numbers and no name`,
      at: at(column),
      hint: 'name it, or delete it',
    }));
  }
  const panels = layout.unknown.filter(
    (k) =>
      layout.kind === 'wide' &&
      !noPanel(layout.header[k]?.label ?? '') &&
      holdsNumbers(table.rows, k),
  );
  const names = Object.keys(gaugeVocabulary);
  for (const column of layout.unknown) {
    const cell = layout.header[column];
    if (panels.includes(column) || cell === undefined) continue;
    if (layout.kind === 'wide' && namesStatistic(cell.label)) {
      const message = `a statistics column: ${cell.text} is no panel`;
      findings.add('warning', 'statistics-left-out', () => ({ message, at: at(column) }));
      continue;
    }
    findings.add('warning', 'column-unknown', () => {
      const hint = suggest(cell.label, names);
      const message = `column "${cell.text}" is not read`;
      return { message, at: at(column), ...(hint === undefined ? {} : { hint }) };
    });
  }
  if (panels.length === 0) return table;
  const readings = [
    ...layout.readings,
    ...panels.map((column) => ({ column, panel: layout.header[column]?.label ?? '' })),
  ].sort((a, b) => a.column - b.column);
  return { ...table, layout: { ...layout, readings } };
}

/** Numbers that stand beside readings and belong to no panel. */
const besideReadings =
  /^(?:index|idx|s\/?n|id|serial(?: no| number)?|temp(?:erature)?|humidity|battery|row|page|batch)\b/iu;
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

const holdsNumbers = (rows: readonly Row[], column: number): boolean =>
  rows.some(({ cells }) => numberShape((cells[column] ?? '').trim()) !== undefined);

const placeOf = (source: Source, row: Row, column: number, delimiter: Delimiter) => {
  const { offset, length } = cellSpan(source, row, column, delimiter);
  return source.placeAt(offset, length);
};

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
  });

type Wanted<Role extends string> = {
  readonly vocabulary: Vocabulary<Role>;
  readonly read: (cells: readonly string[]) => readonly HeaderCell<Role>[];
  readonly needed: readonly Role[];
  readonly otherwise: string;
};

/** The row nearest to a header decides what is said: a column missing, or no header at all. */
export function explainHeader<Role extends string>(
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
  { vocabulary, read, needed, otherwise }: Wanted<Role>,
): readonly Diagnostic[] {
  const nearest = rows.find((row) => {
    const header = read(row.cells);
    const near = needed.some((role) => misspelling(vocabulary, role, header) !== undefined);
    return header.length > 1 && (near || header.some(({ role }) => role !== undefined));
  });
  if (nearest === undefined) {
    const [first] = rows;
    const at = first === undefined ? { file: source.name } : placeOf(source, first, 0, delimiter);
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
      const slip = misspelling(vocabulary, role, header);
      const meant =
        slip === undefined ? '' : `did you mean "${slip.name}" by "${header[slip.column]?.text}"? `;
      return error('column-missing', `there is no column "${role}"`, {
        at: placeOf(source, nearest, slip?.column ?? 0, delimiter),
        hint: `${meant}columns found: ${columns}`,
      });
    });
}
