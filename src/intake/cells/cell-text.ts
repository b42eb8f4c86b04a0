/**
 * A cell as its reader meant it: what spreadsheets wrap around a value, and what nobody sees, taken
 * off; digits of other scripts written as ASCII.
 *
 * Spreadsheets keep a number as text by an apostrophe in front (`'101.5`) or as a formula
 * (`="101.5"`); single quotes are those of another dialect. Zero-width and direction marks have no
 * part in a number. Only for cells of readings: a label keeps every character.
 */
import { plainDigits } from './digits.ts';

const invisible = /\p{Cf}/gu;
const wrappers: readonly RegExp[] = [/^="([^"]*)"$/u, /^"([^"]*)"$/u, /^['’]([^'’]*)['’]$/u];

export function plainCell(text: string): string {
  if (/^\d[\d.,]*$/u.test(text)) return text;
  const seen = plainDigits(text.replace(invisible, '').trim());
  for (const wrapper of wrappers) {
    const inside = wrapper.exec(seen)?.[1];
    if (inside !== undefined) return inside.trim();
  }
  return seen.replace(/^['’](?=[-+.,\d])/u, '');
}
