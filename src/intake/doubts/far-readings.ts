/**
 * A reading far from the others of its panel: `1055` among 104 and 107 may be filler, or 105.5 without its
 * mark; `21` a spot rubbed through, or 121 without its first digit. It is read as it stands, and told.
 */
import { groupBy } from '../../base/group-by.ts';
import { median } from '../../base/stats/summary.ts';
import type { Micrometres } from '../../base/units.ts';
import type { Reading } from '../../film/reading.ts';
import type { Findings } from '../findings.ts';
import { readingPlace } from '../readings/reading-place.ts';
import type { Source } from '../rows/source.ts';

/** Times the middle of its panel: most fillers are thinner (an assumption). */
const FAR = 5;
/** That part of it: most rubbed spots are thicker, and a temperature among films is not (an assumption). */
export const FAR_THINNER = 4;
/** With one other reading nobody can say which of the two is the odd one. */
const fewest = 3;

/** `leastFilm`: a thinner reading is doubted whatever the others are (`thin-readings.ts`). */
export function tellFarReadings(
  readings: readonly Reading[],
  leastFilm: Micrometres,
  source: Source,
  findings: Findings,
): void {
  const panels = groupBy(readings, ({ panel }) => panel);
  const far = [...panels.values()].filter(areFarApart).flatMap((all) => {
    const own = groupBy(all, ({ vehicle, layer }) => `${vehicle ?? ''}\0${layer}`);
    return [...own.values()].flatMap(farFromMiddle);
  });
  const film = far.filter(({ thickness }) => thickness >= leastFilm);
  for (const reading of film.sort((a, b) => a.origin.line - b.origin.line)) {
    findings.add('warning', 'reading-implausible', () => ({
      message: `a reading of ${Number(reading.thickness.toFixed(3))} µm is far from the others of "${reading.panel}"`,
      at: readingPlace(source, reading),
      hint: 'filler or a spot rubbed through reads so; else a digit or the decimal mark is wrong',
    }));
  }
}

/** Those below 0 are told where they are read, and are no measure of the others. */
function farFromMiddle(all: readonly Reading[]): readonly Reading[] {
  const readings = all.filter(({ thickness }) => thickness > 0);
  if (readings.length < fewest || !areFarApart(readings)) return [];
  const middle = median(readings.map(({ thickness }) => thickness));
  return readings.filter(
    ({ thickness }) => thickness >= FAR * middle || thickness * FAR_THINNER <= middle,
  );
}

/** Told first, for few panels have such readings and many have many. */
function areFarApart(readings: readonly Reading[]): boolean {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const { thickness } of readings) {
    if (thickness < least) least = thickness;
    if (thickness > most) most = thickness;
  }
  return most >= FAR_THINNER * least;
}
