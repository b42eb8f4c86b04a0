/**
 * A block of readings that no line names, below one that a line does: the names of the columns stand again,
 * and the points start anew. It is another panel whose name is missing, or the same panel read twice.
 * Points that go on are a page that ended; of readings without points nobody can tell, so they are told.
 */
import type { Findings } from '../findings.ts';
import { needsPanel } from '../parts/section-state.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { placeOf, type Table } from '../tables/table.ts';

export function doubtBlocksAnew(tables: readonly Table[], findings: Findings): void {
  for (const [k, table] of tables.entries()) {
    const before = tables[k - 1];
    // One and the same given: no line between the two said anything of the rows below it.
    if (before === undefined || before.given !== table.given) continue;
    const { header, given, layout } = table;
    if (header === undefined || given.panel === null || !needsPanel(layout)) continue;
    if (!layout.columns.has('point') && !before.layout.columns.has('point')) {
      findings.add('warning', 'reading-doubted', () => ({
        message: `the readings below are taken as further ones of "${given.panel}": no line between names a panel`,
        at: placeOf(table, header, 0),
        hint: 'if they are of another panel, name it in a line above',
      }));
      continue;
    }
    if (!startsAnew(before, table)) continue;
    findings.add('error', 'panel-missing', () => ({
      message: `the points start anew under these names and no panel is named since "${given.panel}"`,
      at: placeOf(table, header, 0),
      hint: 'name the panel in a line above, or number the points on',
    }));
  }
}

function startsAnew(before: Table, { layout, rows: [first] }: Table): boolean {
  const [pointBefore, pointAt] = [before.layout, layout].map(({ columns }) => columns.get('point'));
  if (pointBefore === undefined || pointAt === undefined || layout.columns.has('repeat'))
    return false;
  const point = (first?.cells[pointAt] ?? '').trim();
  return /^0*1$/u.test(point) && columnTexts(before.rows, pointBefore).has(point);
}
