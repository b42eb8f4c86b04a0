/** A value of a drawing as a number: as fine as it can be seen there, all of one axis alike. */
import { shown } from '../base/rounding.ts';

type Ends = { readonly from: number; readonly to: number };

/** To some thousandths of the axis; an axis without length shows two decimals. */
export const axisFigure = (value: number, { from, to }: Ends): string =>
  shown(value, to > from ? Math.max(0, 2 - Math.floor(Math.log10(to - from))) : 2);

/** One of many values on an axis, with as many decimals as its largest needs to show four figures. */
export const stripFigure = (value: number, { to }: Ends): string =>
  shown(value, to > 0 ? Math.max(0, 3 - Math.floor(Math.log10(to))) : 1);
