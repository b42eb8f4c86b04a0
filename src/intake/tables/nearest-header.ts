/**
 * The line that comes nearest to names of columns where no word of it is known, and how to say what its columns are.
 *
 * It has two names and more and no number, and the rows below it have numbers under names of it. Under words as well
 * it is a table with a column of panels; where all is numbers, its names may be those of panels.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { hasLetter } from '../../base/letters.ts';
import { numberShape } from '../cells/numbers.ts';
import { quoted } from '../cells/quoted.ts';
import { splitUnit } from '../cells/unit.ts';
import type { Source } from '../rows/source.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import { countsUp } from './counting-column.ts';
import { placeOf } from './table.ts';

type Name = { readonly column: number; readonly text: string };
export type NearestHeader = {
  readonly row: Row;
  /** Those over words, and those over numbers. */
  readonly words: readonly Name[];
  readonly numbers: readonly Name[];
  readonly below: readonly Row[];
};

/** Lines among which a header is looked for, and rows below it that show what it is. */
const mostLines = 60;
const mostBelow = 30;

export function nearestHeader(rows: readonly Row[]): NearestHeader | undefined {
  for (const [k, row] of rows.slice(0, mostLines).entries()) {
    const names = namesIn(row);
    if (names.length < 2 || names.some(({ text }) => !isName(text))) continue;
    const below = rows.slice(k + 1, k + 1 + mostBelow);
    const numbers = names.filter(({ column }) => mostlyNumbers(below, column));
    const words = names.filter(({ column }) => !numbers.some((own) => own.column === column));
    if (numbers.length > 0) return { row, words, numbers, below };
  }
  return undefined;
}

const namesIn = ({ cells }: Row): readonly Name[] =>
  cells.flatMap((cell, column) => {
    const text = cell.trim();
    return text === '' ? [] : [{ column, text }];
  });

const longestName = 40;
const isName = (text: string): boolean =>
  hasLetter(text) && text.length <= longestName && numberShape(text) === undefined;

function mostlyNumbers(rows: readonly Row[], column: number): boolean {
  const texts = rows.map(({ cells }) => (cells[column] ?? '').trim()).filter((text) => text !== '');
  const numbers = texts.filter((text) => numberShape(text) !== undefined);
  return numbers.length > 0 && numbers.length * 2 > texts.length;
}

export function tellNearest(
  nearest: NearestHeader,
  table: { readonly source: Source; readonly delimiter: Delimiter },
): Diagnostic {
  const { row, words, numbers } = nearest;
  const names = [...words, ...numbers].toSorted((a, b) => a.column - b.column);
  const [first] = names;
  const said = names.slice(0, mostShown).map(({ text }) => quoted(text));
  const more = names.length > mostShown ? ' …' : '';
  const message = `line ${row.line} comes nearest to names of columns, and none of them is known for a panel or a reading: ${said.join(', ')}${more}`;
  const at = placeOf(table, row, first?.column ?? 0);
  const hint = words.length === 0 ? ofPanels(nearest) : ofColumns(nearest);
  return error('header-missing', message, { at, hint });
}
const mostShown = 6;

/** A column for each panel, under names that nobody knows. */
function ofPanels({ numbers, below }: NearestHeader): string {
  const names = numbers.filter(({ column }) => !counts(below, column));
  const [one = ''] = names.map(({ text }) => `--panel-names ${shellWord(`${text}=PANEL`)}`);
  const more = names.length > 1 ? ', and so for the others' : '';
  return `if they are panels, say which each is: ${one}${more}`;
}

function ofColumns(nearest: NearestHeader): string {
  const { words } = nearest;
  const [panel] = words;
  const [reading, another] = readingsAmong(nearest);
  if (another !== undefined) {
    return 'write panel over the names of the panels, and reading 1, reading 2 … over the readings';
  }
  const said = [
    words.length === 1 ? columnOption('panel', panel) : '--columns panel=NAME',
    columnOption('reading', reading),
  ];
  return `say which of them is the panel and which the reading: ${said.join(' ')}`;
}

/** The one in a unit of film thickness, or all that do not count their rows. */
function readingsAmong({ numbers, below }: NearestHeader): readonly Name[] {
  const inUnit = numbers.filter(({ text }) => splitUnit(text).unit !== undefined);
  if (inUnit.length > 0) return inUnit;
  return numbers.filter(({ column }) => !counts(below, column));
}

/** `1 2 1 2`: no reading is as small, on one panel after the other. */
function counts(rows: readonly Row[], column: number): boolean {
  const own = rows.filter(({ cells }) => numberShape((cells[column] ?? '').trim()) !== undefined);
  const small = own.every(({ cells }) => /^\s*[0-2]?\d\s*$/u.test(cells[column] ?? ''));
  return small || countsUp(own, column, []);
}

/** A name that cannot be typed in one piece is told by its number. */
export function columnOption(role: string, name: Name | undefined): string {
  if (name === undefined) return `--columns ${role}=NAME`;
  const typed = /[,="]/u.test(name.text) ? String(name.column + 1) : name.text;
  return `--columns ${shellWord(`${role}=${typed}`)}`;
}

/** As it is typed: in quotes where it is more than plain letters. */
export const shellWord = (text: string): string =>
  /^[\p{L}\p{N}_.=-]+$/u.test(text) ? text : `"${text.replaceAll('"', '\\"')}"`;
