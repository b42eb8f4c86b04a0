/** Where the points of a panel lie as whoever stands before it sees them: for drawings, and in a word or two. */
import type { PanelPoint } from '../film/panel-points.ts';
import { panelView, seenPlace } from '../film/template/panel-view.ts';
import type { Panel } from '../film/template/template.ts';
import { towardsText } from './model.ts';

type Place = { readonly u: number; readonly v: number };
type Named = Pick<PanelPoint, 'point'>;

/** More than this many do not fit in rows as the template has them. */
const MOST_AT_PLACES = 9;
const MOST_IN_ROW = 5;

export type Placed = { readonly places: readonly Place[]; readonly arrow: string };

/** Where the template has points of these names; else in rows, in the order they were read. */
export function placesOf(panel: Panel, points: readonly Named[]): Placed {
  const found = points.flatMap(({ point }) => panel.points.filter((one) => one.point === point));
  if (found.length !== points.length || points.length > MOST_AT_PLACES) {
    return { places: inRows(points.length), arrow: '' };
  }
  const view = panelView(panel);
  const arrow = view.towards === null ? '' : towardsText(view.towards);
  return { places: found.map((place) => seenPlace(place, view)), arrow };
}

function inRows(count: number): readonly Place[] {
  const columns = Math.min(MOST_IN_ROW, Math.max(1, Math.ceil(Math.sqrt(1.5 * count))));
  const rows = Math.ceil(count / columns);
  return Array.from({ length: count }, (_, i) => ({
    u: ((i % columns) + 0.5) / columns,
    v: (Math.floor(i / columns) + 0.5) / rows,
  }));
}

/** `1 (front, top), 2 (rear, top), 5 (middle)`; bare names where the template does not know them all. */
export function pointsWithPlaces(panel: Panel, points: readonly Named[]): string {
  const known = points.every(({ point }) => panel.points.some((one) => one.point === point));
  return points
    .map(({ point }) => {
      const place = known ? panel.points.find((one) => one.point === point) : undefined;
      const words = place === undefined ? '' : placeWords(place, panel);
      return words === '' ? point : `${point}\u00a0(${words})`;
    })
    .join(', ');
}

/** Nearer than this to the middle of a side, a place is of neither end. */
const MIDDLE = { from: 0.4, to: 0.6 };

const end = (share: number, [low, high]: readonly [string, string]): readonly string[] => {
  if (share < MIDDLE.from) return [low];
  return share > MIDDLE.to ? [high] : [];
};

/** By what the two sides of the panel lead to: front and rear, top and foot, left and right as in its vehicle. */
function placeWords({ u, v }: Place, panel: Panel): string {
  const { towards } = panelView(panel);
  const isFlat = panel.facing === 'horizontal';
  const along: readonly [string, string] =
    isFlat || towards?.word === 'left' ? ['left', 'right'] : ['front', 'rear'];
  const down: readonly [string, string] = isFlat ? ['front', 'rear'] : ['top', 'foot'];
  const words = [...(isFlat || towards !== null ? end(u, along) : []), ...end(v, down)];
  const isMiddle = words.length === 0 && (isFlat || towards !== null);
  return isMiddle ? 'middle' : words.join('\u00a0');
}
