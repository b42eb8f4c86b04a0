/**
 * A cell as its reader meant it: what spreadsheets wrap around a value, and what nobody sees, taken
 * off; digits of other scripts written as ASCII.
 *
 * Spreadsheets keep a number as text by an apostrophe in front (`'101.5`) or as a formula
 * (`="101.5"`, `=101.5`); single quotes are those of another dialect. Zero-width and direction marks have no
 * part in a number. A power of ten as people write it (`1.055×10²`) is one as programs do, and a unit before
 * the number (`µm 120`) stands behind it. Only for cells of readings: a label keeps every character.
 */
import { isAsciiOnly } from '../../base/letters.ts';
import { plainDigits } from './digits.ts';
import { unitNamed } from './unit.ts';

const wrappers: readonly RegExp[] = [
  /^="([^"]*)"$/u,
  /^=([+-]?\d[\d.,]*)$/u,
  /^"([^"]*)"$/u,
  /^['’]([^'’]*)['’]$/u,
];

export function plainCell(text: string): string {
  if (/^\d[\d.,]*$/u.test(text)) return text;
  const seen = plainDigits(withoutInvisible(text).trim());
  for (const wrapper of wrappers) {
    const inside = wrapper.exec(seen)?.[1];
    if (inside !== undefined) return inside.trim();
  }
  return unitBehind(plainPower(seen.replace(/^['’](?=[-+.,\d])/u, '')));
}

const withoutInvisible = (text: string): string =>
  isAsciiOnly(text) ? text : text.replace(/\p{Cf}/gu, '');

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** `1.055×10²`, `1.055*10^2`, `1.055 x 10^2` → `1.055e2`. */
function plainPower(text: string): string {
  const [, number = '', power = '', high = ''] =
    /^([+-]?\d[\d.,]*) ?[×x*·] ?10(?:\^([+-]?\d{1,3})|([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3}))$/u.exec(text) ?? [];
  if (number === '') return text;
  const exponent = power === '' ? [...high].map((sign) => raised.indexOf(sign)).join('') : power;
  return `${number}e${exponent}`;
}

/** `µm 120,5` → `120,5 µm`; words that are everyday ones elsewhere are left. */
function unitBehind(text: string): string {
  const [, unit = '', number = ''] = /^(µm|μm|um|mils?)\s*(\d[\d.,]*)$/iu.exec(text) ?? [];
  return unitNamed(unit) === undefined ? text : `${number} ${unit}`;
}
