/**
 * A column of sides, left and right, that could not be put together with the panels' names
 * (`side-column.ts`): the door of either side would be one panel; or a name says the other side.
 */

import { foldedText } from '../cells/doubting-words.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import { sideIn, sideNamed } from '../tables/side-column.ts';
import { placeOf, type Table } from '../tables/table.ts';

export function doubtSides(table: Table, findings: Findings): void {
  const { layout, rows } = table;
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined) return;
  tellSidesAbove(table, panelAt, findings);
  for (const column of layout.unknown) {
    const label = layout.header[column]?.label ?? '';
    const firsts = new Map<string, string>();
    for (const row of rows) {
      const [panel = '', text = ''] = [panelAt, column].map((at) => cellText(row, at));
      const side = sideIn(label, text);
      if (side === undefined) continue;
      const own = sideNamed(panel);
      const first = firsts.get(foldedText(panel)) ?? side;
      firsts.set(foldedText(panel), first);
      const contradicted = own !== undefined && own !== side;
      if (!contradicted && first === side) continue;
      findings.add('error', 'panel-ambiguous', () => ({
        message: contradicted
          ? `"${panel}" and "${text}" beside it name two sides`
          : `"${panel}" has rows of several sides, and its name does not say which`,
        at: placeOf(table, row, panelAt),
        hint: contradicted
          ? 'correct the one that is wrong'
          : `write the side into the name of the panel: "${text} ${panel}"`,
      }));
      break;
    }
  }
}

/** `LEFT SIDE;;` above `Front door;112;109`, and the same door under `RIGHT SIDE;;`: two panels by one name. */
function tellSidesAbove(table: Table, panelAt: number, findings: Findings): void {
  const { layout, rows } = table;
  const sides = new Map<string, string>();
  let heading = '';
  for (const row of rows) {
    const name = cellText(row, panelAt);
    const isHeading = layout.readings.every(({ column }) => cellText(row, column) === '');
    const side = sideNamed(name);
    if (isHeading) heading = side === undefined ? heading : name;
    if (isHeading || heading === '' || name === '' || side !== undefined) continue;
    const first = sides.get(foldedText(name)) ?? heading;
    sides.set(foldedText(name), first);
    if (sideNamed(first) === sideNamed(heading)) continue;
    findings.add('error', 'panel-ambiguous', () => ({
      message: `"${name}" stands under "${first}" and under "${heading}", and may be two panels`,
      at: placeOf(table, row, panelAt),
      hint: `write the side into the name of each panel: "${sideNamed(heading)} ${name}"`,
    }));
  }
}
