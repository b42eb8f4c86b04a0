/**
 * A cell that names another unit than its column: `0.1055 mm` or `4.15 mil` among µm.
 *
 * It is read in its own unit only where its number can be nothing else: paint in that unit (30 to 650 µm),
 * and no film that is likely in the unit of the column (less than 15 µm, or more than 1300).
 */
import { numberOf, shapeOf } from './numbers.ts';
import { micrometresPer, type TableUnit, unitNamed } from './unit.ts';

const paint = { least: 30, most: 650 } as const;
/** So many numbers in the unit of the column stand beside each. */
const fewest = 4;
const unlikely = { below: 15, above: 1300 } as const;

export function provesOwnUnit(value: number, own: TableUnit, column: TableUnit): boolean {
  const [um, otherwise] = [own, column].map((unit) => value * micrometresPer[unit]);
  if (um === undefined || otherwise === undefined) return false;
  const isPaint = um >= paint.least && um <= paint.most;
  return isPaint && (otherwise < unlikely.below || otherwise > unlikely.above);
}

/** What is said of such cells, each of them shown; undefined where there is none, or not only a few. */
export function ownUnitSentence(
  counts: ReadonlyMap<string, number>,
  column: TableUnit,
): string | undefined {
  const own: string[] = [];
  let [numbers, named] = [0, 0];
  for (const [text, count] of counts) {
    const shape = shapeOf(text);
    if (shape === undefined) continue;
    numbers += count;
    const unit = unitNamed(shape.suffix);
    if (unit === undefined || unit === 'other' || unit === column) continue;
    named += count;
    if (provesOwnUnit(numberOf(shape), unit, column)) own.push(text);
  }
  if (own.length === 0 || named * fewest > numbers) return undefined;
  const shown = own.slice(0, 3).map((text) => `"${text}"`);
  const more = own.length > shown.length ? ` and ${own.length - shown.length} more` : '';
  return `read in the unit that the cell itself names: ${shown.join(', ')}${more}`;
}
