/**
 * Readings in millimetres, inches, centimetres or nanometres: units that no gauge for paint shows first, and that a
 * slip of the header names easily. They are read only where the numbers themselves leave no doubt.
 *
 * The middle reading must be paint in that unit (0.05 to 0.6 mm, 0.002 to 0.02 inch): in any other unit of
 * the list it would be none. And some reading must show a µm or so (0.001 mm, 0.0001 inch): a film
 * rounded to 0.01 mm is not one that anybody can plan by.
 */
import { type NumberShape, numberOf, numberShape } from './numbers.ts';
import { sentinelOf } from './sentinels.ts';
import {
  type Largest,
  type NamedUnit,
  otherUnitHint,
  type ReadingUnit,
  type TableUnit,
} from './unit.ts';

export type CoarseUnit = Exclude<TableUnit, ReadingUnit>;

export const isCoarse = (unit: NamedUnit): unit is CoarseUnit => unit in paint;

const paint = {
  mm: { least: 0.05, most: 0.6, decimals: 3, factor: '1000' },
  inch: { least: 0.002, most: 0.02, decimals: 4, factor: '25400' },
  cm: { least: 0.005, most: 0.06, decimals: 4, factor: '10000' },
  nm: { least: 50_000, most: 600_000, decimals: 0, factor: '0.001' },
} as const;

/** Why the numbers are not surely in the unit; undefined where they are. */
export function whyNotCoarse(
  texts: ReadonlyMap<string, number>,
  unit: CoarseUnit,
  largest: Largest,
): { readonly message: string; readonly hint: string } | undefined {
  const { least, most, decimals } = paint[unit];
  const shapes = [...texts].flatMap(([text, count]) => {
    const shape = numberShape(text);
    if (shape === undefined || numberOf(shape) <= 0) return [];
    return sentinelOf(numberOf(shape), largest(unit)) === undefined ? [{ shape, count }] : [];
  });
  const sorted = shapes
    .flatMap(({ shape, count }) => Array.from({ length: Math.min(count, 1000) }, () => shape))
    .map(numberOf)
    .sort((a, b) => a - b);
  const middle = sorted[sorted.length >> 1];
  const hint = otherUnitHint(unit);
  if (middle === undefined || middle < least || middle > most) {
    const message = `readings in ${unit} are read where the middle one is ${least} to ${most}${middle === undefined ? '' : `, and here it is ${middle}`}`;
    return { message, hint };
  }
  const finest = shapes.reduce((fine, { shape }) => Math.max(fine, shape.fraction.length), 0);
  if (finest >= decimals) return undefined;
  const message = `readings in ${unit} need ${decimals} decimals, and here they have ${finest}`;
  return { message, hint: 'export them in µm: rounded so, a film is not known well enough' };
}

/** Whether a number has the decimals that a film in the unit needs to be known to a µm or so. */
export const isFine = ({ fraction }: NumberShape, unit: CoarseUnit): boolean =>
  fraction.length >= paint[unit].decimals;

/** How the numbers become µm, for the decision. */
export const factorSentence = (unit: TableUnit): string =>
  isCoarse(unit) ? `, and each is taken times ${paint[unit].factor} as µm` : '';
