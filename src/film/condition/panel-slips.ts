/**
 * Whole panels that read ten times the others or a tenth of them, or were keyed in mil among micrometres or the other
 * way round. All of their points are alike but for the factor: no paint, cut or filled, lies so.
 */
import { median } from '../../base/stats/summary.ts';
import { type GatheredFilm, type GatheredPanel, isRead, thicknesses } from '../gathered-panel.ts';
import { isNear, type KeyingSlip, keyingSlips, SLIP_TOLERANCE } from './keying-slips.ts';

const FACTORS = [10, 0.1, 25.4, 1 / 25.4] as const;
/** Panels that make one of them stand alone. */
const LEAST_OTHERS = 3;
const LEAST_POINTS = 2;

/** By panel, each that slipped; none where so many seem to that nobody knows which. */
export function panelSlips(panels: readonly GatheredPanel[]): ReadonlyMap<string, KeyingSlip> {
  const read = panels.filter(isRead).filter(({ facts }) => !facts.covered);
  const medians = read.map(({ statistics }) => statistics.median);
  if (medians.length <= LEAST_OTHERS || areNear(medians)) return new Map();
  const slips = read.flatMap((panel, i): readonly (readonly [string, KeyingSlip])[] => {
    const slip = slipOf(panel, median(medians.filter((_, k) => k !== i)));
    return slip === null ? [] : [[panel.panel.id, slip]];
  });
  return new Map(2 * slips.length < read.length ? slips : []);
}

function slipOf({ points, statistics }: GatheredFilm, usual: number): KeyingSlip | null {
  const films = thicknesses(points);
  const isEven = Math.max(...films) <= SLIP_TOLERANCE * Math.min(...films);
  if (points.length < LEAST_POINTS || !isEven) return null;
  const factor = FACTORS.find((one) => films.every((film) => isNear(film / usual / one)));
  const point = points.map((one) => one.point).join(', ');
  return factor === undefined
    ? null
    : { point, thickness: statistics.median, factor, ofPanel: points.length };
}

/** Nearly every car: no panel is as far from another as a slip must be from the others. */
const areNear = (medians: readonly number[]): boolean => {
  const least = Math.min(...medians);
  return least > 0 && Math.max(...medians) <= (10 / SLIP_TOLERANCE) * least;
};

/** Those of each panel: of all of it, or of one of its points. */
export function slipsOfCar(
  panels: readonly GatheredPanel[],
): ReadonlyMap<string, readonly KeyingSlip[]> {
  const whole = panelSlips(panels);
  return new Map(
    panels.map(({ panel, points }) => {
      const slip = whole.get(panel.id);
      return [panel.id, slip === undefined ? keyingSlips(points) : [slip]];
    }),
  );
}
