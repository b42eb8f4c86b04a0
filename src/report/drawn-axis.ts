/** Values as they are drawn, and the axes they are drawn on. */
import { roundTo } from '../base/rounding.ts';
import { inLengthUnit, type LengthUnit } from '../base/units.ts';
import type { StripAxis } from './model.ts';

/** In the unit that is shown, without the dust of binary fractions. */
export const inUnit = (value: number, unit: LengthUnit): number =>
  roundTo(inLengthUnit(value, unit), 4);

/** Film thicker than this (µm) is drawn as being off the axis: it is no factory paint, and would press the rest together. */
export const LARGEST_DRAWN = 200;

/** From nothing to the largest value. */
export function axisFromNothing(values: readonly number[], unit: LengthUnit): StripAxis {
  const step = unit === 'um' ? 1 : 0.05;
  const most = Math.max(step, ...values.map((value) => inUnit(value, unit)));
  return { from: 0, to: stepsOf(Math.ceil(stepsIn(most, step)), step), line: null };
}

/** From the least to the largest value of film, out to whole steps of ten micrometres or half a mil. */
export function axisAround(values: readonly number[], unit: LengthUnit): StripAxis {
  const step = unit === 'um' ? 10 : 0.5;
  const usual = values.filter((value) => value <= LARGEST_DRAWN);
  const drawn = (usual.length === 0 ? values : usual).map((value) =>
    stepsIn(inUnit(value, unit), step),
  );
  const from = Math.floor(Math.min(...drawn));
  const to = Math.max(from + 1, Math.ceil(Math.max(...drawn)));
  return { from: stepsOf(from, step), to: stepsOf(to, step), line: null };
}

const stepsIn = (value: number, step: number): number => roundTo(value / step, 6);
const stepsOf = (count: number, step: number): number => roundTo(count * step, 4);
