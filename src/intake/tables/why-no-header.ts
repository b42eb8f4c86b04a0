/** Why no line of a file names the columns that are wanted: which one lacks, or that it is another table of ours. */

import { type Diagnostic, error, type Place } from '../../base/diagnostics.ts';
import { type OwnTable, ownTable, takenAs } from '../../base/own-files.ts';
import { filledCells, roleOfKey, sayingOf } from '../beside/sayings.ts';
import { substrateWord } from '../cells/substrate-word.ts';
import { dayIn, namesVisit, saysBeforeOrAfter, visitsHint } from '../cells/visit-words.ts';
import { layerNamed } from '../cells/words.ts';
import { english, type GaugeRole, gaugeVocabulary } from '../header/gauge-vocabulary.ts';
import { type HeaderCell, misspelling, type Vocabulary } from '../header/header.ts';
import { stemOfLabel } from '../header/label-numbers.ts';
import { readGaugeHeader } from '../header/layout.ts';
import { isOrdinal } from '../header/ordinals.ts';
import type { Source } from '../rows/source.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { tellDoubled } from './doubled-names.ts';
import { nearestHeader, tellNearest } from './nearest-header.ts';
import { placeOf } from './table.ts';
import { whyNameless } from './why-nameless.ts';

export const explainGaugeHeader = (
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
  isPanel: (label: string) => boolean,
): readonly Diagnostic[] =>
  explainHeader(source, rows, delimiter, {
    vocabulary: gaugeVocabulary,
    plain: english,
    read: readGaugeHeader,
    needed: ['panel', 'reading'],
    otherwise: 'the columns need names: a panel and a reading, or one column per panel',
    further: wayOut,
    doubled: tellDoubled,
    nameless: (isNear) => {
      const nearest = nearestHeader(rows);
      // Names over nothing but numbers may be panels, however near they are to names of columns.
      if (isNear && nearest?.words.length !== 0) return undefined;
      return nearest === undefined
        ? whyNameless({ source, delimiter, rows, isPanel })
        : tellNearest(nearest, { source, delimiter });
    },
  });

/** What to do where no name of a column is near: say which it is, unless there are but means. */
function wayOut(role: GaugeRole, header: readonly HeaderCell<GaugeRole>[]): string {
  const layers = header.filter(({ unit, label }) => isThickness(unit) && isLayer(label));
  if (role === 'reading' && layers.filter(({ label }) => layerNamed(label) !== '').length > 1) {
    const [names, said] = [
      layers.map(({ text }) => text),
      layers.map(({ label }) => layerIn(label)),
    ];
    return `; if ${names.join(', ')} are the layers of each point, give each a row of its own, its number in a column "reading", and in a column "layer" ${said.join(', ')}`;
  }
  const isOther = ({ unit, label }: HeaderCell<GaugeRole>): boolean =>
    isThickness(unit) && !namesStatistic(label);
  const hasStatistics = header.some(
    ({ role: own, label }) => own === undefined && namesStatistic(label),
  );
  if (role === 'reading' && hasStatistics && !header.some(isOther)) {
    return '; means and extremes are no readings: export the single ones';
  }
  const byMetal = header.filter(({ label }) => substrateWord(label) !== undefined);
  const areByMetal = header.filter(isOther).every((cell) => byMetal.includes(cell));
  if (role === 'reading' && byMetal.length > 1 && areByMetal) {
    const names = byMetal.map(({ text }) => text).join(', ');
    return `; if ${names} hold the readings of steel and of aluminium, put them in one column, and the metal beside it in a column "substrate"`;
  }
  const visits = header.filter(({ text }) => saysVisit(text)).map(({ text }) => `"${text}"`);
  if (role === 'reading' && visits.length > 1) {
    return `; ${visits.join(' and ')} may be two visits: ${visitsHint}`;
  }
  const one = header.find(({ label }) => isNumberedReading(label));
  const other = header.find(
    ({ label }) => /\d$/u.test(label) && stemOfLabel(label) !== stemOfLabel(one?.label ?? ''),
  );
  if (role === 'reading' && one !== undefined && other !== undefined) {
    return `; "${one.text}" and "${other.text}" may both be readings: call what is none by what it is, such as Temp 1 (°C)`;
  }
  const numbers = header.filter(({ text }) => /^\d+$/u.test(text));
  if (role === 'reading' && numbers.length > 1) {
    return '; if those called by numbers hold readings of one visit, number them 1, 2, 3 … without a gap';
  }
  return `; if one of them holds the ${role}s, say which: --columns ${role}=NAME`;
}

/** `Before (µm)`, `12.03.2026 (µm)`, `Visit 2`. */
const saysVisit = (text: string): boolean =>
  saysBeforeOrAfter(text) || namesVisit(text) || dayIn(text) !== undefined;

/** `Reading 1` */
const isNumberedReading = (label: string): boolean =>
  /\d$/u.test(label) && roleOfKey(stemOfLabel(label)) === 'reading';

const isThickness = (unit: HeaderCell<GaugeRole>['unit']): boolean =>
  unit === 'um' || unit === 'mil';
/** Of the words that a gauge for layers heads its columns with; the whole film is called total there. */
const isLayer = (label: string): boolean =>
  /^(?:total|film|clear(?: ?coat)?|base(?: ?coat)?|primer|filler|e-?coat|klarlack|basislack|füller|grundierung)$/iu.test(
    label.trim(),
  );
const layerIn = (label: string): string => layerNamed(label.trim()) || 'total';

type Wanted<Role extends string> = {
  readonly vocabulary: Vocabulary<Role>;
  /** The English names of it, where it has others. */
  readonly plain?: Partial<Vocabulary<Role>>;
  readonly read: (cells: readonly string[]) => readonly HeaderCell<Role>[];
  readonly needed: readonly Role[];
  readonly otherwise: string;
  readonly further?: (role: Role, header: readonly HeaderCell<Role>[]) => string;
  /** What is said where the last of those that are wanted lacks for two columns have one name. */
  readonly doubled?: (
    header: readonly HeaderCell<Role>[],
    placeOf: (column: number) => Place,
  ) => Diagnostic | undefined;
  /** What else is said where no row has a name that is known; `isNear`: but one that is near. */
  readonly nameless?: (isNear: boolean) => Diagnostic | undefined;
};

/**
 * The row nearest to a header decides what is said: that it is the head of another table of ours, which column is
 * missing, or that there is no header at all.
 */
export function explainHeader<Role extends string>(
  source: Source,
  rows: readonly Row[],
  delimiter: Delimiter,
  { vocabulary, plain, read, needed, otherwise, further, doubled, nameless }: Wanted<Role>,
): readonly Diagnostic[] {
  const nearest = rows.find((row) => {
    const header = read(row.cells);
    // A year among numbered columns is no reading beside `Panel`.
    const isNamed = header.some((cell) => cell.role === needed[0]);
    if (holdsReadings(row) && !isNamed) return false;
    const near = needed.some((role) => misspelling(vocabulary, role, header, plain) !== undefined);
    // `Units: µm;;` is no row of names, however many cells a spreadsheet gives it.
    const named = header.filter(({ text }) => text !== '');
    if (!isNamed && saysOfAll(row)) return false;
    return named.length > 1 && (near || header.some(({ role }) => role !== undefined));
  });
  const hasOf = (cells: readonly string[]): number => {
    const header = read(cells);
    return needed.filter((role) => header.some((cell) => cell.role === role)).length;
  };
  const other = otherTable(rows, { source, delimiter, hasOf });
  if (other !== undefined) return [other];
  const isKnown = nearest !== undefined && hasOf(nearest.cells) > 0;
  const told = isKnown ? undefined : nameless?.(nearest !== undefined);
  if (told !== undefined) return [told];
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
  const at = (column: number): Place => placeOf({ source, delimiter }, nearest, column);
  const lacking = needed.filter((role) => header.every((cell) => cell.role !== role));
  // Of a file in one line, whose ends of lines are not known, the rows are no names.
  const isAbove = lacking.join() === needed.at(-1) && rows.at(-1) !== nearest;
  const twice = isAbove ? doubled?.(header, at) : undefined;
  if (twice !== undefined) return [twice];
  const columns = header
    .map(({ text }) => text)
    .filter((text) => text !== '')
    .join(', ');
  return lacking.map((role) => {
    const slip = misspelling(
      vocabulary,
      role,
      header.map((cell) =>
        isOrdinal(cell.label) || isNumberedReading(cell.label) ? { text: '', label: '' } : cell,
      ),
      plain,
    );
    const meant =
      slip === undefined ? '' : `did you mean "${slip.name}" by "${header[slip.column]?.text}"? `;
    return error('column-missing', `there is no column "${role}"`, {
      at: at(slip?.column ?? 0),
      hint: `${meant}columns found: ${columns}${slip === undefined ? (further?.(role, header) ?? '') : ''}`,
    });
  });
}

/** `Unit;µm`, `Vehicle;FH-77`: a key and its value. */
const saysOfAll = (row: Row): boolean => {
  const { key, value } = sayingOf(row) ?? { key: '', value: '' };
  return (
    filledCells(row).length === 2 && roleOfKey(key) !== undefined && roleOfKey(value) === undefined
  );
};

/** Numbers among names of columns count them. */
function holdsReadings({ cells }: Row): boolean {
  const numbers = cells
    .map((cell) => cell.trim())
    .filter((text) => /^\d+(?:[.,]\d+)?$/u.test(text));
  const follows = (text: string, k: number): boolean => Number(text) === Number(numbers[k - 1]) + 1;
  return numbers.some((text, k) => (k === 0 ? Number(text) > 1 : !follows(text, k)));
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
    return tellOther(other, row.cells, (column) => placeOf(table, row, column));
  }
  return undefined;
}

function tellOther(
  other: OwnTable,
  cells: readonly string[],
  placeOf: (column: number) => Place,
): Diagnostic {
  const message = `by its columns (${other.columns.join(', ')}) this is ${other.called}`;
  const [first = ''] = other.columns;
  const column = cells.findIndex((cell) => cell.trim().toLowerCase() === first);
  return error('file-other-kind', message, { at: placeOf(column), hint: takenAs(other) });
}

/** A head that has all that is needed here may be that of a table with more of ours: test spots name a defect of a panel as well. */
export function otherWithMore(
  header: readonly HeaderCell<string>[],
  needed: readonly string[],
  placeOf: (column: number) => Place,
): Diagnostic | undefined {
  const cells = header.map(({ text }) => text);
  const other = ownTable(cells);
  if (other === undefined || other.columns.length <= needed.length) return undefined;
  const unread = header.filter(({ role }) => role === undefined);
  return unread.some(({ text }) => other.columns.includes(text.trim().toLowerCase()))
    ? tellOther(other, cells, placeOf)
    : undefined;
}
