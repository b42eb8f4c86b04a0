/**
 * Lines that say something of the whole: `Operator: Ann`, `Serial no = 0042`, `Unit;µm`,
 * `Panel: bonnet`, or a panel's name alone above its values.
 */

import { once } from '../../base/kept.ts';
import { hasLetter } from '../../base/letters.ts';
import { layerNamed } from '../cells/words.ts';
import { type GaugeRole, gaugeVocabulary } from '../header/gauge-vocabulary.ts';
import { roleReader } from '../header/header.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import type { Given } from '../tables/table.ts';

export type Saying = {
  readonly key: string;
  readonly value: string;
  /** The cell the value stands in, or begins in. */
  readonly column: number;
};

const roleOf = roleReader(gaugeVocabulary);
export const roleOfKey = (key: string): GaugeRole | undefined => roleOf(key);

const longestSaying = 2000;

/** `Bonnet (n=2)` is a name with a remark. */
const opensBracket = (key: string): boolean => key.includes('(') && !key.includes(')');

/** `Unit ..... um`: dots that lead from a name to its value, and `[Unit] um`. */
const leader = /^([^.]{1,60}?)\s*(?:\.{3,}|…+|(?:\. ){3,})\s*(\S.*)$/su;
const bracketed = /^\[([^\]]{1,60})\]\s+(\S.*)$/su;

/** `Unit | mil`, `Unit, µm`, `'Unit','µm'` where another sign parts the columns. */
const otherPair = /^'?([^,|']{1,40}?)'?\s*[,|]\s*'?([^,|']{1,24})'?$/su;

export const filledCells = ({ cells }: Row): readonly number[] =>
  [...cells.keys()].filter((k) => (cells[k] ?? '').trim() !== '');

/** A key and a value, in one cell or in two. */
export function sayingOf(row: Row): Saying | undefined {
  const filled = filledCells(row);
  const [first = 0, second] = filled;
  const text = cellText(row, first);
  if (text.length > longestSaying) return undefined;
  const joined = /^([^:：=;\t]{1,60}?)\s*[:：=;\t]\s*(.*)$/su.exec(text);
  if (joined !== null && hasLetter(joined[1] ?? '') && !opensBracket(joined[1] ?? '')) {
    const [, key = '', start = ''] = joined.map((part) => part.replace(/^'([^']*)'$/u, '$1'));
    if (filled.length === 1) return { key, value: start, column: first };
    const rest = filled.slice(1).map((k) => cellText(row, k));
    return { key, value: [start, ...rest].filter((part) => part !== '').join(', '), column: first };
  }
  const led = filled.length === 1 ? (leader.exec(text) ?? bracketed.exec(text)) : null;
  if (led !== null && hasLetter(led[1] ?? '')) {
    return { key: (led[1] ?? '').trim(), value: (led[2] ?? '').trim(), column: first };
  }
  const [, key = '', value = ''] = filled.length === 1 ? (otherPair.exec(text) ?? []) : [];
  if (roleOfKey(key) === 'unit') return { key, value: value.trim(), column: first };
  if (filled.length !== 2 || second === undefined || !hasLetter(text)) return undefined;
  return { key: text, value: cellText(row, second), column: second };
}

/** `1. Bonnet`, `Bonnet (3 readings)`, `Bonnet (n=3)`: a place in a list, and how many readings follow. */
const counted = once(
  () =>
    /^(?:\d{1,3}[.)]\s+)?(\p{L}.*?)(?:\s*[,([–-]\s*(?:n\s*=\s*\d{1,4}|\d{1,4}\s\p{L}{3,}\.?)\s*[)\]]?)?$/u,
);

/** A line of one cell, without the dashes and brackets that dress it up. */
export function loneText(row: Row): string | undefined {
  const [only, more] = filledCells(row);
  if (only === undefined || more !== undefined) return undefined;
  const bare = (row.cells[only] ?? '').replace(/^[\s\-=*_#>[(<]+|[\s\-=*_#<\])>:]+$/gu, '');
  if (!hasLetter(bare)) return undefined;
  const named = counted().exec(bare)?.[1] ?? bare;
  if (named !== bare) return named;
  // `Bonnet (repainted)`: the bracket that closes belongs to the name.
  return bare.includes('(') && !bare.includes(')') ? `${bare})` : bare;
}

/** What a preamble says in numbers: of the gauge, the job, the people. `Vorderwand` and `Mittelteil` only hold such letters. */
export const aboutFile =
  /(?:serial|version|firmware|gauge|device|probe|model|phone|mobile|postcode|address|customer|client|job|invoice|ticket|mileage|odometer|miles|temp|humidity|battery|limit|target|tolerance|foil|shim|calibration|kalibr|zero|readings|count|page|seite|serien|gerät|kunde|auftrag|telefon|messwerte|anzahl)|(?<![a-zà-ÿ])(?:tel|fax|zip|order|km|spec(?!ch))/iu;

/** What a saying settles for the rows below it, if it does. */
export function givenBy({ key, value }: Saying): Partial<Given> | undefined {
  if (value === '') return undefined;
  const role = roleOfKey(key);
  if (role === 'panel') return { panel: value, point: null };
  if (role === 'vehicle') return { vehicle: value };
  if (role === 'layer') return { layer: layerNamed(value) };
  return role === 'point' ? { point: value } : undefined;
}

/** `Batch: bonnet`: a panel under a key that says nothing else. */
export const panelSaid = (
  { key, value }: Saying,
  isPanel: (label: string) => boolean,
): string | undefined => (roleOf(key) === undefined && isPanel(value) ? value : undefined);
