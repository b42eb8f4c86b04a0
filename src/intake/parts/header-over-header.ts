/**
 * Two rows of names, the upper one merged over several columns of the lower: `Left;;Right;` over
 * `Front door;Rear door;Front door;Rear door`, `Thickness (µm);;` over `1;2;3`.
 *
 * They are one header where what stands above a column and what stands in it make its name together. An upper name
 * that only says that readings stand below gives its unit.
 */
import { hasLetter } from '../../base/letters.ts';
import { readGaugeHeader } from '../header/layout.ts';
import type { Row } from '../rows/tokens.ts';

/** The names of the columns, or undefined where the two rows are no such header. */
export function joinedHeader(upper: Row, lower: Row): readonly string[] | undefined {
  const [above, below] = [upper, lower].map(({ cells }) => cells.map((cell) => cell.trim()));
  if (above === undefined || below === undefined || lower.line !== upper.line + 1) return undefined;
  const isMerged = above.some(
    (text, k) => k > 0 && text !== '' && (above[k + 1] ?? '') === '' && (below[k + 1] ?? '') !== '',
  );
  if (!isMerged || above.some(startsAsNumber) || !areNames(below)) return undefined;
  const width = Math.max(above.length, below.length);
  const names: string[] = [];
  let over = '';
  for (let k = 0; k < width; k += 1) {
    const own = above[k] ?? '';
    over = k === 1 || own !== '' ? own : over;
    names.push(nameOf(over, below[k] ?? '', k));
  }
  return names;
}

/**
 * `Panel;Point;Coating` over `name;no.;thickness µm`: names that go on in the line below. Every cell of both is in words,
 * and only together do they name the panel and the reading.
 */
export function continuedHeader(upper: Row, lower: Row): readonly string[] | undefined {
  const [above, below] = [upper, lower].map(({ cells }) => cells.map((cell) => cell.trim()));
  if (above === undefined || below === undefined || lower.line !== upper.line + 1) return undefined;
  const isInWords = (text: string): boolean =>
    text === '' || (!/\d/u.test(text) && hasLetter(text));
  if (above.length !== below.length || ![...above, ...below].every(isInWords)) return undefined;
  const names = above.map((text, k) => `${text} ${below[k] ?? ''}`.trim());
  const roles = (texts: readonly string[]) =>
    new Set(readGaugeHeader(texts).map(({ role }) => role));
  const isWhole = (own: ReadonlySet<unknown>): boolean => own.has('panel') && own.has('reading');
  const together = roles(names);
  if (!isWhole(together) || isWhole(roles(above)) || isWhole(roles(below))) return undefined;
  const perhaps = new Set([...roles(above), ...roles(below)]);
  return [...perhaps].every((role) => !decisive.has(role) || together.has(role))
    ? names
    : undefined;
}
/** Roles that change what a number is or where it belongs. */
const decisive: ReadonlySet<unknown> = new Set(
  'panel point reading unit vehicle layer place deleted valid status'.split(' '),
);

const startsAsNumber = (text: string): boolean => /^[+-]?\d/u.test(text);

/** Words, or numbers that count from 1. */
function areNames(texts: readonly string[]): boolean {
  const filled = texts.filter((text) => text !== '');
  const numbers = filled.filter(startsAsNumber);
  const counts = numbers.every((text, k) => {
    const before = numbers[k - 1];
    return text === '1' || (before !== undefined && Number(text) === Number(before) + 1);
  });
  return filled.length > 1 && counts;
}

function nameOf(over: string, own: string, column: number): string {
  const [upper] = readGaugeHeader([over]);
  const { role, unit, unitText = '' } = upper ?? {};
  // The corner says what all of the numbers are.
  if (own === '') return column === 0 && role === 'reading' && unit !== undefined ? unitText : over;
  if (over === '') return own;
  const [lower] = readGaugeHeader([own]);
  // `Unit;µm` above `Point;Bonnet;Roof` is said of the file, and takes no column its meaning.
  const [both] = readGaugeHeader([`${over} ${own}`]);
  const isSaid =
    role !== undefined &&
    role !== 'reading' &&
    lower?.role !== undefined &&
    both?.role === undefined;
  if (column === 0 && isSaid) return own;
  const inUnit = unit === undefined || lower?.unit !== undefined ? '' : ` (${unitText})`;
  return role === 'reading' ? `${own}${inUnit}` : `${over} ${own}`;
}
