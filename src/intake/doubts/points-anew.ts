/**
 * Rows that begin anew: points that count from 1 again under a panel's name that stands on the first row
 * only, where a name may be missing; and a list of panels that starts a second time, which may be another
 * car or another day.
 */

import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** In a table as it is written, before names are filled in below the first of each panel. */
export function doubtPointsAnew({ layout, ...table }: Table, findings: Findings): void {
  const { columns, kind } = layout;
  const [panelAt, pointAt] = [columns.get('panel'), columns.get('point')];
  if (kind !== 'long' || panelAt === undefined || pointAt === undefined || columns.has('repeat'))
    return;
  if (!columnTexts(table.rows, panelAt).has('')) return;
  let seen = new Set<string>();
  let before = '';
  for (const row of table.rows) {
    const [panel, point] = [panelAt, pointAt].map((at) => cellText(row, at));
    if (panel !== '') seen = new Set();
    const anew = point !== undefined && point !== before && seen.has(point);
    if (panel === '' && anew && /^0*1$/u.test(point)) {
      findings.add('error', 'panel-missing', () => ({
        message: `the points start anew and no panel is named: a name may be missing here`,
        at: placeOf({ ...table }, row, panelAt),
        hint: 'name the panel in this row, or number the points on',
      }));
      return;
    }
    before = point ?? '';
    seen.add(before);
  }
}

/** Panels without points that come again in the order they had: their readings are counted on. */
export function tellPanelsAnew({ layout, ...table }: Table, findings: Findings): void {
  const { columns } = layout;
  const panelAt = columns.get('panel');
  const partRows = ['point', 'repeat', 'vehicle', 'layer', 'operator'] as const;
  if (
    panelAt === undefined ||
    layout.header.length > 0 ||
    partRows.some((role) => columns.has(role))
  )
    return;
  const order: { readonly panel: string; readonly line: number }[] = [];
  for (const row of table.rows) {
    const panel = cellText(row, panelAt);
    if (order.at(-1)?.panel === panel) continue;
    const first = order.find((one) => one.panel === panel);
    if (first !== undefined && order.length > 1) {
      findings.add('warning', 'reading-doubted', () => ({
        message: `"${panel}" stood in line ${first.line} already: these are read as further points of it`,
        at: placeOf(table, row, panelAt),
        hint: 'if they are of another side, day or car, say so in the name or give them a file',
      }));
      return;
    }
    order.push({ panel, line: row.line });
  }
}
