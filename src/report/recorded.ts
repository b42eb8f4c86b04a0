/** Numbers as records carry them. */
import { roundTo } from '../base/rounding.ts';

/** Records carry six decimals: far below what any gauge can tell. */
const RECORD_DIGITS = 6;

export const recorded = (value: number): number => {
  const rounded = roundTo(value, RECORD_DIGITS);
  return rounded === 0 ? 0 : rounded;
};

/** The same for numbers of the model, of which some (Preston's coefficient) lie far below a millionth. */
export const recordedFigure = (value: number): number =>
  Math.abs(value) < 1e-3 ? value : recorded(value);

export const recordedOrNull = (value: number | null | undefined): number | null =>
  value === null || value === undefined ? null : recorded(value);

/** Degrees of freedom: null where nothing limits them, as JSON knows no infinity. */
export const recordedDof = (dof: number): number | null =>
  Number.isFinite(dof) ? recorded(dof) : null;
