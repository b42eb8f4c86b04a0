/**
 * A column of sides, left and right, beside panels that have none in their names: the door of either side
 * would be one panel. Which panel a side and a name make together is not put together here.
 */
import { foldedText } from '../cells/doubting-words.ts';
import type { Findings } from '../findings.ts';
import { plainWords } from '../tables/header.ts';
import { placeOf, type Table } from '../tables/table.ts';

const headings: ReadonlySet<string> = new Set(
  'side|sides|hand|l r|lh rh|seite|cote|lado|lato|zijde|kant|strona|sida|side l r|сторона'.split(
    '|',
  ),
);
const sides =
  /^(?:l|r|lh|rh|lhs|rhs|left|right|ns|os|n s|o s|nearside|offside|near side|off side|links|rechts|li|re|gauche|droite|g|d|izquierda|derecha|izq|der|i|sinistra|destra|sx|dx|linker|lewa|prawa|vanster|hoger|driver|passenger|front|rear)$/u;

export function doubtSides({ layout, ...table }: Table, findings: Findings): void {
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined) return;
  for (const column of layout.unknown) {
    if (!headings.has(plainWords(layout.header[column]?.label ?? ''))) continue;
    const firsts = new Map<string, string>();
    const row = table.rows.find(({ cells }) => {
      const [panel, side] = [panelAt, column].map((at) => foldedText((cells[at] ?? '').trim()));
      if (panel === undefined || side === undefined || !sides.test(side)) return false;
      const first = firsts.get(panel) ?? side;
      firsts.set(panel, first);
      return first !== side;
    });
    if (row === undefined) continue;
    const panel = (row.cells[panelAt] ?? '').trim();
    findings.add('error', 'panel-ambiguous', () => ({
      message: `"${panel}" has rows of several sides, and its name does not say which`,
      at: placeOf(table, row, panelAt),
      hint: `write the side into the name of the panel: "${(row.cells[column] ?? '').trim()} ${panel}"`,
    }));
  }
}
