/**
 * A point that is called `edge` where no column says the place of a point: whoever notes by hand writes so. It is
 * read as a point of the face, which makes its panel thinner, and that is said of every such cell.
 */
import { foldedText } from '../cells/doubting-words.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

const placeOfWord: ReadonlyMap<string, 'edge' | 'shut'> = new Map([
  ...['edge', 'edges', 'at edge', 'seam', 'fold', 'kante', 'rand', 'bord', 'borde', 'bordo'].map(
    (word) => [word, 'edge'] as const,
  ),
  ...['shut', 'shuts', 'shut line', 'door shut', 'jamb', 'falz'].map(
    (word) => [word, 'shut'] as const,
  ),
]);

export function tellPlacePoints(table: Table, findings: Findings): void {
  const { columns } = table.layout;
  const pointAt = columns.get('point');
  if (pointAt === undefined || columns.has('place')) return;
  const meant = new Map(
    [...columnTexts(table.rows, pointAt).keys()].flatMap((text) => {
      const place = placeOfWord.get(foldedText(text));
      return place === undefined ? [] : [[text, place] as const];
    }),
  );
  if (meant.size === 0) return;
  for (const row of table.rows) {
    const text = cellText(row, pointAt);
    const place = meant.get(text);
    if (place === undefined) continue;
    findings.add('warning', 'reading-doubted', () => ({
      message: `"${text}" is read as the name of a point on the face of its panel`,
      at: placeOf(table, row, pointAt),
      hint: `if the point lies at such a place, add a column place with ${place} in this row; that of points on the face stays empty`,
    }));
  }
}
