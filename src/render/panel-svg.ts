/** A panel as a plain rectangle: with boxes to write in, or with what was read at its points. */
import {
  type BoxPanel,
  type BoxPlace,
  type Face,
  type FacePoint,
  towardsText,
} from '../report/model.ts';
import { element } from './html-text.ts';
import { drawing, drawnText, tenth } from './svg.ts';

const WIDTH = 300;
const BOX = { width: 78, height: 32 };
/** Room of one row of boxes; and of a panel that has no other. */
const BOX_ROW = 38;
const ONE_ROW = 42;
const FACE_HEIGHT = 132;
/** Room of one row of points, of half a value, of half a digit of one that is bold, and of an arrowhead. */
const ROW = 38;
const HALF_VALUE = 28;
const HALF_DIGIT = 5;
const ARROW = 12;

/** As high as its rows of points need. */
export function boxesDrawing({ label, towards, places, boxes }: BoxPanel): string {
  const names = places.map(({ name }) => name).join(', ');
  const arrow = towards === null ? '' : towardsText(towards);
  const rows = new Set(places.map(({ v }) => v)).size;
  const height = Math.max(ONE_ROW, rows * boxes * BOX_ROW);
  return drawing(
    {
      look: 'points',
      box: [0, 0, WIDTH, height],
      title: label,
      said: `${arrow === '' ? '' : `${arrow}; `}${boxes === 1 ? 'a box' : `${boxes} boxes`} for each of the points ${names}`,
    },
    frame(height),
    ...places.map((place) => pointBoxes(place, boxes, height)),
  );
}

export function faceDrawing({ name, points }: Face): string {
  const rows = new Set(points.map(({ v }) => v)).size;
  const height = Math.max(FACE_HEIGHT, ROW * rows);
  const said = points.map((point) => `${point.name}: ${point.value}${signWord(point)}`).join(', ');
  return drawing(
    { look: 'points', box: [0, 0, WIDTH, height], title: name, said },
    frame(height),
    ...points.map((point) => facePoint(point, height)),
  );
}

const frame = (height: number): string =>
  element('rect', { class: 'frame', x: 1, y: 1, width: WIDTH - 2, height: height - 2 });

/** Kept inside the panel's rectangle also where a point lies at its edge. */
function pointBoxes({ name, u, v }: BoxPlace, boxes: number, height: number): string {
  const all = boxes * BOX.height;
  const x = within(u * WIDTH - BOX.width / 2, 4, WIDTH - BOX.width - 4);
  const y = within(v * height - all / 2, 4, height - all - 4);
  const rects = Array.from({ length: boxes }, (_, k) =>
    element('rect', { class: 'box', x, y: tenth(y + k * BOX.height), ...BOX }),
  );
  return rects.join('') + drawnText({ x: x + 4, y: y + 12, anchor: 'start', look: 'name' }, name);
}

const signWord = ({ sign }: FacePoint): string => (sign === 'none' ? '' : ` ${sign}`);

/** Its name over its value; what stands out has an arrowhead beside it, down for low and up for high. */
function facePoint({ name, u, v, value, sign }: FacePoint, height: number): string {
  const half = Math.max(HALF_VALUE, HALF_DIGIT * value.length + 1);
  const x = within(u * WIDTH, half, WIDTH - half - ARROW);
  const y = within(v * height, ROW / 2, height - ROW / 2);
  const stands = sign === 'none' ? 'value' : 'value stands-out';
  return [
    drawnText({ x, y: tenth(y - 6), anchor: 'middle', look: 'name' }, name),
    drawnText({ x, y: tenth(y + 12), anchor: 'middle', look: stands }, value),
    sign === 'none' ? '' : arrowhead(x + half - 1, y + 7, sign),
  ].join('');
}

const arrowhead = (x: number, y: number, sign: 'low' | 'high'): string => {
  const down = sign === 'low' ? 1 : -1;
  return element('path', {
    class: 'sign',
    d: `M${tenth(x)} ${tenth(y - 5 * down)}h${ARROW}l-${ARROW / 2} ${10 * down}z`,
  });
};

const within = (value: number, least: number, most: number): number =>
  tenth(Math.min(most, Math.max(least, value)));
