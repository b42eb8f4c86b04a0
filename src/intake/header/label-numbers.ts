/** The number in a panel’s name: behind it, of a point (`Bonnet 2`), or before it, of a place in a list (`1. Bonnet`). */

import { once } from '../../base/kept.ts';

const behind = once(
  () =>
    /^(.*?\p{L}[)\].]?)(?:[\s_\-/#,]+(?:p|pt|pos|no|nr|point|punkt|punto|ponto|punt|m|messung|mesure|reading)[\s.]*|[\s_\-/#,]*)[[(]?0*(\d{1,3})[\])]?$/iu,
);
/** Nothing without a digit at its end: the form takes long to be compiled. */
const numberBehind = (label: string): RegExpExecArray | null =>
  /\d[\])]?$/u.test(label) ? behind().exec(label) : null;
const before = /^(\d{1,3})(?:\s*[.):-]\s*|\s+)(\D.*)$/u;

/** The name without its number, or as it is. */
export const stemOfLabel = (label: string): string =>
  (before.exec(label)?.[2] ?? numberBehind(label)?.[1] ?? label).replaceAll('_', ' ').trim();

/** The number behind a name, undefined where there is none. */
export function numberOfLabel(label: string): number | undefined {
  const digits = numberBehind(label)?.[2];
  return digits === undefined ? undefined : Number(digits);
}

/** The number before a name, as it is written. */
export const placeInList = (label: string): string | undefined => before.exec(label)?.[1];
