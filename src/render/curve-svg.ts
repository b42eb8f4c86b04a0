/** A curve as a drawing, with the points that are spoken of as ringed signs; in words for who cannot see it. */
import { figure, toDigits } from '../base/rounding.ts';
import type { Curve, CurveAxis, CurveMark, CurvePoint } from '../report/model.ts';
import { element } from './html-text.ts';
import { drawing, drawnText, tenth } from './svg.ts';

const SIZE = { width: 620, height: 258 };
const MARGIN = { left: 44, right: 24, top: 30, bottom: 48 };
const RADIUS = 10;

export function curveDrawing(label: string, { across, up, line, marks }: Curve): string {
  const x = (value: number): number =>
    placed(value, across, MARGIN.left, SIZE.width - MARGIN.right);
  const y = (value: number): number => placed(value, up, SIZE.height - MARGIN.bottom, MARGIN.top);
  const said = marks.map(
    (mark) =>
      `${mark.sign} ${mark.name}: ${figure(mark.y)} ${up.unit} for ${figure(mark.x)} ${across.unit}`,
  );
  const foot = SIZE.height - MARGIN.bottom;
  return drawing(
    { look: 'curve', box: [0, 0, SIZE.width, SIZE.height], title: label, said: said.join('; ') },
    ...ticks(up).flatMap((value) => [
      levelLine(y(value), 'grid'),
      drawnText({ x: MARGIN.left - 8, y: y(value) + 4, anchor: 'end' }, figure(value)),
    ]),
    levelLine(foot, 'foot'),
    ...ticks(across).map((value) =>
      drawnText({ x: x(value), y: foot + 19, anchor: 'middle' }, figure(value)),
    ),
    drawnText({ x: 0, y: 14, anchor: 'start' }, axisTitle(up)),
    drawnText(
      { x: SIZE.width - MARGIN.right, y: SIZE.height - 6, anchor: 'end' },
      axisTitle(across),
    ),
    element('path', {
      class: 'line',
      d: pathOf(line.map((point) => ({ x: x(point.x), y: y(point.y) }))),
    }),
    ...together(marks).map((mark) => ringed(x(mark.x), y(mark.y), mark.sign)),
  );
}

const axisTitle = ({ title, unit }: CurveAxis): string => `${title} (${unit})`;

const placed = (value: number, { from, to }: CurveAxis, start: number, end: number): number =>
  tenth(start + ((value - from) / (to - from)) * (end - start));

const ROUND_STEPS = [1, 2, 2.5, 5, 10];
const MOST_STEPS = 6;

/** Round values between the ends of an axis: steps of 1, 2, 2.5, 5 and their tens. */
function ticks({ from, to }: CurveAxis): readonly number[] {
  const least = (to - from) / MOST_STEPS;
  const power = 10 ** Math.floor(Math.log10(least));
  const step = power * (ROUND_STEPS.find((one) => one * power >= least) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, i) => toDigits((first + i) * step, 6));
}

const pathOf = (points: readonly CurvePoint[]): string =>
  points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');

const levelLine = (y: number, look: 'grid' | 'foot'): string =>
  element('path', { class: look, d: `M${MARGIN.left} ${y}H${SIZE.width - MARGIN.right}` });

/** Marks of one place share a ring. */
function together(marks: readonly CurveMark[]): readonly CurveMark[] {
  const places = [...new Set(marks.map(({ x, y }) => `${x} ${y}`))];
  return places.flatMap((place) => {
    const here = marks.filter(({ x, y }) => `${x} ${y}` === place);
    const [first] = here;
    return first === undefined ? [] : [{ ...first, sign: here.map(({ sign }) => sign).join('') }];
  });
}

const ringed = (x: number, y: number, sign: string): string =>
  element('ellipse', {
    class: 'ring',
    cx: x,
    cy: y,
    rx: RADIUS + 4 * (sign.length - 1),
    ry: RADIUS,
  }) + drawnText({ x, y: y + 4.5, anchor: 'middle', look: 'letter' }, sign);
