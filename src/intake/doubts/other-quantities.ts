/**
 * Rows among those of readings that are of something else: the temperature, a target, a foil of the gauge.
 * What stands where the panel or the point should is known for none, and its number is no film of the
 * vehicle.
 */

import { once } from '../../base/kept.ts';
import { roleOfKey } from '../beside/sayings.ts';
import type { Findings } from '../findings.ts';
import { type ColumnTexts, columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

const words = once(
  () =>
    /^(?:(?:ambient |room |air )?temp(?:erature|eratur|érature)?|hum(?:idity|\.)?|luftfeuchte|dew ?point|taupunkt|batt(?:ery|erie|\.)?|carried (?:over|forward)|brought forward|übertrag|(?:whole|entire) (?:car|vehicle)|all panels|target|nominal|soll(?:wert)?|limits?|limite|lsl|usl|grenzwert|tolerance|toleranz|spec(?:ification)?|(?:calibration|reference|test) (?:foil|shim|plate|block)|foil|shim|cal(?:ibration)?|kalibrierung|delta|δ|diff(?:erence|erenz)?|folie|zero|zero (?:plate|check|point)|nullpunkt|nullplatte|signed|signature|unterschrift|page|serial(?: no| number)?|ref(?:\.|erence|erenz)?(?: value|wert)?|probe|sonde|(?:min|max)(?:\.|imum)? (?:allowed|permitted|zulässig))(?:\s*[:#\d].*)?$/iu,
);

export const isOtherQuantity = (label: string): boolean => words().test(label);

export function tellOtherQuantities(
  written: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): void {
  tellRowsBelowHeading(written, isPanel, findings);
  const { layout, ...table } = written;
  for (const role of ['panel', 'point'] as const) {
    const column = layout.columns.get(role);
    if (column === undefined) continue;
    const { rows } = table;
    const texts = columnTexts(rows, column);
    const isOther = (label: string): boolean =>
      !/^\d/u.test(label) &&
      !isPanel(label) &&
      (isOtherQuantity(label) ||
        (role === 'panel' && (isHeading(label, texts) || returning.has(label))));
    const returning =
      role === 'panel'
        ? returningAmong(
            rows.map((row) => cellText(row, column)),
            isPanel,
          )
        : new Set();
    const others = new Set([...texts.keys()].filter(isOther));
    if (others.size === 0) continue;
    let above = '';
    for (const row of rows) {
      const label = cellText(row, column);
      if (label === above) continue;
      above = label;
      if (!others.has(label)) continue;
      findings.add('error', 'panel-missing', () => ({
        message: `"${label}" is no ${role}, and its number no reading of one`,
        at: placeOf(table, row, column),
        hint: returning.has(label)
          ? 'take its rows out; if it is a panel, write its name in full, with its side'
          : `take the row out; or call the ${role} something else, if it is one`,
      }));
    }
  }
}

/**
 * `Panel;1;3` among the rows: the head of another table; `Date;1;124.5`: said of the file. Where every row is called
 * so it is a name.
 */
const isHeading = (label: string, all: ColumnTexts): boolean => {
  const role = all.size > 1 ? roleOfKey(label) : undefined;
  return role === 'panel' || role === 'time' || role === 'operator';
};

/** `Hours;;` and below it `Wash;1;45`: a line that heads rows of which none is of a panel, below those that are. */
function tellRowsBelowHeading(
  table: Table,
  isPanel: (label: string) => boolean,
  findings: Findings,
): void {
  const { layout, rows } = table;
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined) return;
  const known = rows.findLastIndex((row) => isPanel(cellText(row, panelAt)));
  const heading = rows.slice(known + 1).find(({ cells }) => isAlone(cells, panelAt));
  if (known === -1 || heading === undefined || heading === rows.at(-1)) return;
  const text = cellText(heading, panelAt);
  findings.add('error', 'panel-missing', () => ({
    message: `"${text}" heads rows of which none names a panel that is known: their numbers are hardly readings`,
    at: placeOf(table, heading, panelAt),
    hint: 'take these lines out; or give the panels names that a template has',
  }));
}

const isAlone = (cells: readonly string[], at: number): boolean =>
  cells.length > 1 && cells.every((cell, k) => (cell.trim() !== '') === (k === at));

const fewestKnown = 2;

/** Names that come back after one panel and another, where no panel that is known does: they are said of each. */
function returningAmong(
  labels: readonly string[],
  isPanel: (label: string) => boolean,
): ReadonlySet<string> {
  const starts = labels.filter((label, k) => label !== '' && label !== labels[k - 1]);
  const seen = new Set<string>();
  const again = new Set<string>();
  for (const label of starts) {
    if (seen.has(label)) again.add(label);
    seen.add(label);
  }
  const isOfCar = [...seen].filter(isPanel).length >= fewestKnown;
  return !isOfCar || [...again].some(isPanel) || again.size * 2 > seen.size ? new Set() : again;
}
