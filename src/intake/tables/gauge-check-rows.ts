/**
 * Rows among those of the panels in which somebody checked the gauge: `Zero plate;0.2`, `Shim 125;125.4`. Their numbers
 * are no film of the vehicle: they are left out aloud.
 */
import { once } from '../../base/kept.ts';
import { numberIn } from '../cells/numbers.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { type ExcludedCell, placeOf, type Table } from './table.ts';

const check = once(
  () =>
    /^(?:(?:bare|clean) (?:metal|steel|aluminium|aluminum)|cal(?:ibration)? check|blankes (?:blech|metall)|cale (?:étalon|d[’']étalonnage)|zero (?:plate|check|point)|null(?:punkt|platte)|(?:(?:calibration|reference|test|check) )?(?:foil|shim|folie)|(?:calibration|reference|test|zero) (?:plate|block))(?:\s*[:#]?\s*\d+(?:[.,]\d+)?\s*(?:µm|μm|um|mils?)?)?$/u,
);

/** Each has one of these: asked first, as the forms take long to be compiled. */
const mayBeCheck = /zero|null|foil|shim|folie|plate|block|bare|blank|clean|cal/i;

export function leaveOutGaugeChecks(
  table: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): { readonly table: Table; readonly excluded: readonly ExcludedCell[] } {
  const panelAt = table.layout.columns.get('panel');
  if (panelAt === undefined) return { table, excluded: [] };
  const labels = [...columnTexts(table.rows, panelAt).keys()];
  if (!mayBeCheck.test(labels.join('\n'))) return { table, excluded: [] };
  const checks = new Set(
    labels.filter((label) => check().test(label.toLowerCase()) && !isPanel(label)),
  );
  if (headsAnother(table, checks, panelAt)) return { table, excluded: [] };
  if (checks.size === 0 || checks.size === labels.length) return { table, excluded: [] };
  const isCheck = (row: Table['rows'][number]): boolean => checks.has(cellText(row, panelAt));
  const excluded = table.rows.filter(isCheck).flatMap((row) => {
    const label = cellText(row, panelAt);
    const reason = `"${label}" is a check of the gauge, and no panel`;
    findings.add('warning', 'line-left-out', () => ({
      message: `${reason}: the row is left out`,
      at: placeOf(table, row, panelAt),
      hint: 'leastcut gauge judges checks on shims, in a file of their own',
    }));
    return table.layout.readings.map(({ column }): ExcludedCell => {
      const { file, line = row.line, column: at = 1 } = placeOf(table, row, column);
      const whose = { vehicle: null, panel: label, point: null };
      const text = cellText(row, column);
      return { file, line, column: at, text, class: 'not-film', reason, ...whose };
    });
  });
  return { table: { ...table, rows: table.rows.filter((row) => !isCheck(row)) }, excluded };
}

/** `shim;number;gloss`: the head of another table, of which nobody knows what stands below it. */
const headsAnother = (
  { layout, rows }: Table,
  checks: ReadonlySet<string>,
  panelAt: number,
): boolean =>
  checks.size > 0 &&
  rows.some(
    (row) =>
      checks.has(cellText(row, panelAt)) &&
      layout.readings.some(({ column }) => numberIn(cellText(row, column)) === undefined),
  );
