/**
 * Columns of readings that are called after a side of the car, or of a panel: `Left [µm]`, `Right [µm]`; `izq 1`, `izq 2`,
 * `der 1`; `Left front`, `Left mid`. Beside a whole panel, a bonnet, they are places on it; beside the name of two,
 * a front door, side and name together are the panel.
 */
import { foldedText } from '../cells/doubting-words.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import type { GaugeRole } from './gauge-vocabulary.ts';
import type { HeaderCell } from './header.ts';
import type { ReadingColumn } from './layout-shape.ts';
import { isPlaceName } from './place-columns.ts';
import { sideOfWord } from './side-words.ts';

/** The columns of either side, in their order; none where a column in a unit is called otherwise. */
export function sideHeadings(header: readonly HeaderCell<GaugeRole>[]): readonly ReadingColumn[] {
  const own = [...header.entries()].flatMap(([column, { role, label }]) => {
    const said = role === undefined ? sideIn(label) : undefined;
    return said === undefined ? [] : [{ column, label, ...said }];
  });
  const sides = new Set(own.map(({ side }) => side));
  const names = new Set(own.map(({ label }) => foldedText(label)));
  if (sides.size < 2 || names.size < own.length) return [];
  const others = header.some(
    ({ role, label, unit }, k) =>
      role === undefined &&
      (unit !== undefined || isPlaceName(foldedText(label))) &&
      !namesStatistic(label) &&
      !own.some(({ column }) => column === k),
  );
  if (others) return [];
  return own.map(({ column, label, sideText, rest }, k) => {
    const side = { text: sideText, rest };
    return { column, panel: null, number: k + 1, place: label, side };
  });
}

function sideIn(label: string) {
  const words = label.split(/[\s_/.-]+/u).filter((word) => word !== '');
  const at = words.findIndex((word) => sideOfWord(foldedText(word)) !== undefined);
  const side = sideOfWord(foldedText(words[at] ?? ''));
  const rest = words.toSpliced(at, at === -1 ? 0 : 1).join(' ');
  const isRest = rest === '' || /^\p{L}?\d{1,2}$/u.test(rest) || isPlaceName(foldedText(rest));
  return side === undefined || !isRest ? undefined : { side, sideText: words[at] ?? '', rest };
}
