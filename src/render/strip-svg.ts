/** Values of one row on the axis of their column, as a drawing. */
import { figure } from '../base/rounding.ts';
import type { StripAxis, StripBar, StripCell } from '../report/model.ts';
import { element } from './html-text.ts';
import { drawing, tenth } from './svg.ts';

const WIDTH = 224;
const HEIGHT = 18;
const MIDDLE = HEIGHT / 2;
const DOT = 2.6;
const RING = 3.2;
const BAR = 5;
/** Half the height of either end of a range. */
const END = 3.5;

const across = (value: number, { from, to }: StripAxis): number =>
  tenth(Math.min(1, Math.max(0, (value - from) / (to - from))) * WIDTH);

/**
 * A dot a value, an open one as a ring, the marked one as an arrowhead, the line dashed, a bar under
 * them, a range as a thin line with two ends; for what is off the axis a double arrowhead at its end.
 */
export function stripDrawing(cell: StripCell, axis: StripAxis, title: string): string {
  const { values, marked, open = [], bar, range } = cell;
  const { line } = axis;
  const isOn = (value: number): boolean => value >= axis.from && value <= axis.to;
  const all = [...values, ...open, ...(marked === null ? [] : [marked])];
  return drawing(
    { look: 'strip', box: [-8, 0, WIDTH + 16, HEIGHT], title, said: inWords(cell, axis) },
    element('path', { class: 'base', d: `M${baseStart(cell, axis)} ${MIDDLE}H${WIDTH}` }),
    line === null
      ? ''
      : element('path', { class: 'floor', d: `M${across(line, axis)} 0V${HEIGHT}` }),
    bar === undefined ? '' : barDrawing(bar, axis),
    range === undefined ? '' : rangeDrawing(range, axis),
    ...open.filter(isOn).map((value) => circle(value, axis, { class: 'open', r: RING })),
    ...values.filter(isOn).map((value) => circle(value, axis, { r: DOT })),
    marked !== null && isOn(marked) ? arrowhead(across(marked, axis)) : '',
    all.some((value) => value < axis.from) ? beyond(-1, -4) : '',
    all.some((value) => value > axis.to) ? beyond(WIDTH + 1, 4) : '',
  );
}

/** An extent lies where the axis would run. */
const baseStart = ({ bar }: StripCell, axis: StripAxis): number =>
  bar?.look === 'extent' ? across(bar.to, axis) : 0;

const circle = (
  value: number,
  axis: StripAxis,
  more: Readonly<Record<string, string | number>>,
): string => element('circle', { cx: across(value, axis), cy: MIDDLE, ...more });

const arrowhead = (x: number): string =>
  element('path', { class: 'mark', d: `M${tenth(x + 5)} ${MIDDLE - 5}l-5 5 5 5` });

/** Two arrowheads that point off the axis. */
function beyond(x: number, ahead: number): string {
  const head = (at: number): string => `M${at - ahead} ${MIDDLE - 4}l${ahead} 4 ${-ahead} 4`;
  return element('path', { class: 'beyond', d: head(x) + head(x + ahead) });
}

function barDrawing({ from, to, look }: StripBar, axis: StripAxis): string {
  const [left, right] = [across(Math.min(from, to), axis), across(Math.max(from, to), axis)];
  if (look === 'span') return element('path', { class: 'span', d: `M${left} ${MIDDLE}H${right}` });
  const area = { x: left, y: MIDDLE - BAR, width: tenth(right - left), height: 2 * BAR };
  return (
    element('rect', { class: 'extent', ...area }) +
    element('path', { class: 'stop', d: `M${right} 1V${HEIGHT - 1}` })
  );
}

function rangeDrawing({ from, to }: NonNullable<StripCell['range']>, axis: StripAxis): string {
  const [left, right] = [across(from, axis), across(to, axis)];
  const ends = [left, right].map((x) => `M${x} ${MIDDLE - END}v${2 * END}`).join('');
  return element('path', { class: 'range', d: `M${left} ${MIDDLE}H${right}${ends}` });
}

function inWords(
  { values, marked, open = [], bar, range }: StripCell,
  { line }: StripAxis,
): string {
  const list = (all: readonly number[]): string => all.map((value) => figure(value)).join(', ');
  const said = [
    ...(bar === undefined ? [] : [`from ${figure(bar.from)} to ${figure(bar.to)}`]),
    ...(open.length === 0 ? [] : [`open ${list(open)}`]),
    ...(values.length === 0 ? [] : [`values ${list(values)}`]),
    ...(marked === null ? [] : [`marked ${figure(marked)}`]),
    ...(range === undefined ? [] : [`range ${figure(range.from)} to ${figure(range.to)}`]),
  ];
  const drawn = said.length === 0 ? ['no values'] : said;
  return [...drawn, ...(line === null ? [] : [`line at ${figure(line)}`])].join('; ');
}
