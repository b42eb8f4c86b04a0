/** The two drawings of a page: values on a common axis, and the points of a panel to be filled in. */
import type { BoxPlace, StripAxis, StripCell } from '../report/model.ts';
import { element, escaped } from './html-text.ts';

const STRIP = { width: 224, height: 16, radius: 2.5 };

const across = (value: number, { from, to }: StripAxis): number =>
  round(Math.min(1, Math.max(0, (value - from) / (to - from))) * STRIP.width);

const round = (value: number): number => Math.round(10 * value) / 10;

/** A dot a value, the marked one as an arrowhead, the line dashed; what is off the axis as a ring. */
export function stripDrawing({ values, marked }: StripCell, axis: StripAxis): string {
  const middle = STRIP.height / 2;
  const dots = values.map((value) => {
    const off = value < axis.from || value > axis.to;
    const fill = off ? 'none' : 'currentColor';
    const at = { cx: across(value, axis), cy: middle, r: STRIP.radius };
    return element('circle', { ...at, fill, stroke: 'currentColor', 'fill-opacity': 0.6 });
  });
  const { line } = axis;
  const floor =
    line === null
      ? ''
      : element('path', {
          d: `M${across(line, axis)} 0V${STRIP.height}`,
          stroke: 'currentColor',
          'stroke-dasharray': '3 2',
        });
  const arrow =
    marked === null
      ? ''
      : element('path', {
          d: `M${across(marked, axis) + 5} ${middle - 4}l-5 4 5 4`,
          fill: 'none',
          stroke: 'currentColor',
          'stroke-width': 1.5,
        });
  const said = [
    values.length === 0 ? 'no values' : `values ${values.join(', ')}`,
    ...(marked === null ? [] : [`marked ${marked}`]),
    ...(line === null ? [] : [`line at ${line}`]),
  ];
  return element(
    'svg',
    {
      class: 'strip',
      viewBox: `-4 0 ${STRIP.width + 8} ${STRIP.height}`,
      role: 'img',
      'aria-label': said.join('; '),
    },
    floor,
    ...dots,
    arrow,
  );
}

const PANEL = { width: 300, height: 170 };
const BOX = { width: 70, height: 36 };

/** A plain rectangle with a box at the place of each point, and the point's name in its corner. */
export function boxesDrawing(label: string, places: readonly BoxPlace[]): string {
  const frame = element('rect', {
    x: 0.5,
    y: 0.5,
    width: PANEL.width - 1,
    height: PANEL.height - 1,
    fill: 'none',
    stroke: 'currentColor',
  });
  const names = places.map(({ name }) => name).join(', ');
  return element(
    'svg',
    {
      class: 'points',
      viewBox: `0 0 ${PANEL.width} ${PANEL.height}`,
      role: 'img',
      'aria-label': `${label}: a box for each of the points ${names}`,
    },
    frame,
    ...places.map(pointBox),
  );
}

/** Kept inside the panel's rectangle also where a point lies at its edge. */
function pointBox({ name, u, v }: BoxPlace): string {
  const x = within(u * PANEL.width - BOX.width / 2, PANEL.width - BOX.width - 2);
  const y = within(v * PANEL.height - BOX.height / 2, PANEL.height - BOX.height - 2);
  const box = { x, y, width: BOX.width, height: BOX.height };
  return [
    element('rect', { ...box, fill: 'none', stroke: 'currentColor', 'stroke-opacity': 0.5 }),
    element('text', { x: x + 4, y: y + 12, 'font-size': 11, fill: 'currentColor' }, escaped(name)),
  ].join('');
}

const within = (value: number, most: number): number => round(Math.min(most, Math.max(2, value)));
