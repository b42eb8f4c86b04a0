/**
 * `Bonnet 1;Bonnet 2;Roof 1;Roof 2`: columns that are each one point of one panel, the number of the point behind its
 * name. Several rows are several vehicles, or repeats.
 *
 * The numbers of every panel count from 1, and most panels have more than one, or no heading is anything but such a
 * point (`Bonnet 1;Bonnet 2;Roof 1`): `Door 1;Door 2;Roof` may be two doors.
 */
import { groupBy } from '../../base/group-by.ts';
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';
import { numberOfLabel, stemOfLabel } from './label-numbers.ts';
import type { ReadingColumn } from './layout-shape.ts';
import { countUp } from './numbered-columns.ts';

const fewestPanels = 2;

/** Undefined where the headings are no such points. */
export function pointsInHeadings(
  header: readonly HeaderCell<GaugeRole>[],
  isPanel: (label: string) => boolean,
): readonly ReadingColumn[] | undefined {
  if (header.some(({ role }) => role === 'point' || role === 'repeat')) return undefined;
  const found = [...header.entries()].flatMap(([column, { role, label }]) => {
    const number = role === undefined ? numberOfLabel(label) : undefined;
    const panel = stemOfLabel(label);
    return number === undefined || !isPanel(panel) ? [] : [{ column, panel, number }];
  });
  const panels = [...groupBy(found, ({ panel }) => panel.toLowerCase()).values()];
  const several = panels.filter(({ length }) => length > 1);
  const count = panels.every((own) =>
    countUp(
      own.map(({ number }) => number),
      [1],
    ),
  );
  const named = header.filter(({ role, text }) => role === undefined && text !== '');
  const areMost = several.length * 2 > panels.length;
  const areAll = several.length > 0 && found.length === named.length;
  return count && panels.length >= fewestPanels && (areMost || areAll) ? found : undefined;
}
