/** Why no line of a file names the columns that are wanted: which one lacks, or that it is another table of ours. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { ownTable, takenAs } from '../../base/own-files.ts';
import { english, type GaugeRole, gaugeVocabulary } from '../header/gauge-vocabulary.ts';
import { type HeaderCell, misspelling, type Vocabulary } from '../header/header.ts';
import { readGaugeHeader } from '../header/layout.ts';
import { isOrdinal } from '../header/ordinals.ts';
import type { Source } from '../rows/source.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { placeOf } from './table.ts';

export const explainGaugeHeader = (
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
): readonly Diagnostic[] =>
  explainHeader(source, rows, delimiter, {
    vocabulary: gaugeVocabulary,
    plain: english,
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
  /** The English names of it, where it has others. */
  readonly plain?: Partial<Vocabulary<Role>>;
  readonly read: (cells: readonly string[]) => readonly HeaderCell<Role>[];
  readonly needed: readonly Role[];
  readonly otherwise: string;
  readonly further?: (role: Role, header: readonly HeaderCell<Role>[]) => string;
};

/**
 * The row nearest to a header decides what is said: that it is the head of another table of ours, which column is
 * missing, or that there is no header at all.
 */
export function explainHeader<Role extends string>(
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
  { vocabulary, plain, read, needed, otherwise, further }: Wanted<Role>,
): readonly Diagnostic[] {
  const nearest = rows.find((row) => {
    const header = read(row.cells);
    const near = needed.some((role) => misspelling(vocabulary, role, header, plain) !== undefined);
    // `Units: µm;;` is no row of names, however many cells a spreadsheet gives it.
    const named = header.filter(({ text }) => text !== '');
    return named.length > 1 && (near || header.some(({ role }) => role !== undefined));
  });
  const hasOf = (cells: readonly string[]): number => {
    const header = read(cells);
    return needed.filter((role) => header.some((cell) => cell.role === role)).length;
  };
  const other = otherTable(rows, { source, delimiter, hasOf });
  if (other !== undefined) return [other];
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
        plain,
      );
      const meant =
        slip === undefined ? '' : `did you mean "${slip.name}" by "${header[slip.column]?.text}"? `;
      return error('column-missing', `there is no column "${role}"`, {
        at: placeOf({ source, delimiter }, nearest, slip?.column ?? 0),
        hint: `${meant}columns found: ${columns}${slip === undefined ? (further?.(role, header) ?? '') : ''}`,
      });
    });
}

/** Lines among which a head stands, below a few that are no rows. */
const headLines = 6;

/**
 * Readings where defects are wanted, a list of jobs where readings are. A row that has more of what is wanted here is
 * the head of that, with a column missing: test spots name a defect as well.
 */
function otherTable(
  rows: readonly Row[],
  table: {
    readonly source: Source;
    readonly delimiter: Delimiter;
    readonly hasOf: (cells: readonly string[]) => number;
  },
): Diagnostic | undefined {
  for (const row of rows.slice(0, headLines)) {
    const other = ownTable(row.cells);
    if (other === undefined || table.hasOf(row.cells) >= other.columns.length) continue;
    const message = `by its columns (${other.columns.join(', ')}) this is ${other.called}`;
    const [first = ''] = other.columns;
    const column = row.cells.findIndex((cell) => cell.trim().toLowerCase() === first);
    return error('file-other-kind', message, {
      at: placeOf(table, row, column),
      hint: takenAs(other),
    });
  }
  return undefined;
}
