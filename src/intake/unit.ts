/**
 * The unit of the readings, from a column's header, from the cells themselves or from an option.
 *
 * µm is written with U+00B5, U+03BC or U+339B, as `um` or as a word; 1 mil is one thou. A length
 * of another size (mm, inch) is known for what it is and refused, never taken for a µm.
 */
import { MICROMETRES_PER_MIL } from '../base/units.ts';

export type ReadingUnit = 'um' | 'mil';
/** `other`: a unit of length, and not one of film thickness as gauges show it. */
export type NamedUnit = ReadingUnit | 'other';

export const micrometresPer = { um: 1, mil: MICROMETRES_PER_MIL } as const;
export const unitSign = { um: 'µm', mil: 'mil' } as const;

const words: ReadonlyMap<string, NamedUnit> = new Map<string, NamedUnit>([
  ...[
    'um',
    'ums',
    'micron',
    'microns',
    'micrometre',
    'micrometres',
    'micrometer',
    'micrometers',
  ].map((word) => [word, 'um'] as const),
  ...['mil', 'mils', 'thou', 'thous'].map((word) => [word, 'mil'] as const),
  ...['mm', 'nm', 'cm', 'inch', 'inches', 'millimetre', 'millimetres', 'millimeters'].map(
    (word) => [word, 'other'] as const,
  ),
]);

/** The unit a word names, or undefined for a word that names none. */
export const unitNamed = (word: string): NamedUnit | undefined =>
  words.get(word.trim().toLowerCase().replace('㎛', 'um').replace(/[µμ]/g, 'u'));

export type LabelledUnit = {
  readonly label: string;
  readonly unit?: NamedUnit;
  readonly unitText?: string;
};

/** `Thickness (µm)`, `reading_um`, `bonnet [mil]`, `µm` → the name without its unit, and the unit. */
export function splitUnit(header: string): LabelledUnit {
  const text = header.trim();
  const alone = unitNamed(text);
  if (alone !== undefined) return { label: '', unit: alone, unitText: text };
  const bracketed = /^([^([]*)[([]([^)\]]*)[)\]]$/u.exec(text);
  const inBrackets = bracketed === null ? undefined : unitInBrackets(bracketed[2] ?? '');
  if (bracketed !== null && inBrackets !== undefined) {
    return labelled(bracketed[1] ?? '', inBrackets, bracketed[2] ?? '');
  }
  const last = /[_\s\-/,]([^_\s\-/,]+)$/u.exec(text);
  const trailing = last === null ? undefined : unitNamed(last[1] ?? '');
  if (last !== null && trailing !== undefined) {
    return labelled(text.slice(0, last.index), trailing, last[1] ?? '');
  }
  return { label: text };
}

const unitInBrackets = (text: string): NamedUnit | undefined =>
  unitNamed(text) ?? (text.trim().toLowerCase() === 'in' ? 'other' : undefined);

const labelled = (label: string, unit: NamedUnit, unitText: string): LabelledUnit => ({
  label: label.replace(/[_\s\-/,]+$/u, '').trim(),
  unit,
  unitText: unitText.trim(),
});
