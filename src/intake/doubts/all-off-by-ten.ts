/**
 * A doubt about the decimal mark of a whole file: on no panel a reading that a car's paint would have. Filler is on a
 * panel or two, and a panel rubbed through is one; where every reading of several panels is over 400 µm, or under
 * 40 µm, a mark was lost or set on the way (`1124` for 112.4). They are read as they stand, and told.
 */
import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';

const fewest = { readings: 3, panels: 2 } as const;
/** A factory's paint reads 70 to 180 µm: ten times as much, or a tenth, lies beyond these. */
const [thin, thick] = [40, 400];

export function doubtAllOffByTen(
  readings: readonly Reading[],
  at: () => Place,
): readonly Diagnostic[] {
  let [least, most, count] = [Number.POSITIVE_INFINITY, 0, 0];
  for (const { layer, thickness } of readings) {
    if (layer !== '') continue;
    least = Math.min(least, thickness);
    most = Math.max(most, thickness);
    count += 1;
    // Nearly every file ends here.
    if (least <= thick && most >= thin) return [];
  }
  const panels = new Set(readings.map(({ panel }) => panel)).size;
  if (count < fewest.readings || panels < fewest.panels) return [];
  const message =
    least > thick
      ? `every reading is over ${thick} µm, on ${panels} panels: was a decimal mark lost?`
      : `every reading is under ${thin} µm, on ${panels} panels: is a digit or the decimal mark wrong?`;
  const hint = 'compare a reading with the display of the gauge; if it is right, nothing is to do';
  return [warning('unit-doubtful', message, { at: at(), hint })];
}
