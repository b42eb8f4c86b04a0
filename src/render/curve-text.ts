/** A curve drawn with signs: `·` the curve, a letter or digit the points that are spoken of. */
import type { Curve, CurveAxis, CurvePoint } from '../report/model.ts';
import { displayWidth, printable } from './printable.ts';

const ROWS = 7;
/** Wider than this a curve says no more. */
const MOST_COLUMNS = 66;

type Style = { readonly width: number };

export function curveLines(
  { across, up, line, marks }: Curve,
  { width }: Style,
): readonly string[] {
  const scale = Math.max(...[up.from, up.to].map((end) => displayWidth(endText(end))));
  const columns = Math.max(10, Math.min(MOST_COLUMNS, width - scale - 2));
  const rows = Array.from({ length: ROWS }, () => new Array<string>(columns).fill(' '));
  const rowOf = ({ y }: CurvePoint): string[] => rows[ROWS - 1 - cellOf(y, up, ROWS)] ?? [];
  for (const point of between(line, across, columns)) {
    rowOf(point)[cellOf(point.x, across, columns)] = '·';
  }
  for (const mark of marks) putMark(rowOf(mark), cellOf(mark.x, across, columns), mark.sign);
  const drawn = rows.map((row, i) => {
    const end = i === 0 ? endText(up.to) : i === ROWS - 1 ? endText(up.from) : '';
    return `${end.padStart(scale)} │${row.join('')}`;
  });
  const left = endText(across.from);
  const right = endText(across.to);
  const said = printable(`${across.title} (${across.unit})`);
  const axis = middle(left, said, right, columns);
  return [
    `${printable(up.title)} (${printable(up.unit)})`,
    ...drawn,
    `${' '.repeat(scale)} └${'─'.repeat(columns)}`,
    `${' '.repeat(scale + 2)}${axis}`,
  ];
}

const endText = (end: number): string => String(end);

const cellOf = (value: number, { from, to }: CurveAxis, cells: number): number =>
  Math.min(cells - 1, Math.max(0, Math.round(((value - from) / (to - from)) * (cells - 1))));

/** Signs of one place stand side by side. */
function putMark(row: string[], column: number, sign: string): void {
  const free = row.findIndex((drawn, i) => i >= column && (drawn === ' ' || drawn === '·'));
  row[free === -1 ? column : free] = sign;
}

/** A point for each column from the first to the last, straight between those that are given. */
function between(
  line: readonly CurvePoint[],
  { from, to }: CurveAxis,
  columns: number,
): readonly CurvePoint[] {
  return line.flatMap((start, i) => {
    const end = line[i + 1];
    if (end === undefined) return [start];
    const steps = Math.max(1, Math.round(((end.x - start.x) / (to - from)) * columns));
    return Array.from({ length: steps }, (_, step) => ({
      x: start.x + ((end.x - start.x) * step) / steps,
      y: start.y + ((end.y - start.y) * step) / steps,
    }));
  });
}

/** The ends of the axis, and what it shows between them. */
function middle(left: string, said: string, right: string, width: number): string {
  const free = width - left.length - right.length - displayWidth(said);
  const before = Math.max(1, Math.floor(free / 2));
  return `${left}${' '.repeat(before)}${said}${' '.repeat(Math.max(1, free - before))}${right}`;
}
