/**
 * Lines that are a unit of film thickness and nothing else: `µm`, `(mil)`; and those of a gauge whose unit was set, from
 * which on its readings are in that one: `Unit set to mil`, `10:12 Einheit auf mil umgestellt`.
 */

import { foldedText, wholeWords } from '../cells/doubting-words.ts';
import { unitNamed } from '../cells/unit.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';

export const isThickness = (word: string | undefined): word is string => {
  const unit = word === undefined ? undefined : unitNamed(word);
  return unit === 'um' || unit === 'mil';
};

export const bareUnit = (row: Row): string => cellText(row, 0).replace(/^[([]\s*|\s*[)\]]$/gu, '');

const unitWords = wholeWords(
  `units?|einheit|messeinheit|anzeigeeinheit|unite|unidad|unita|unidade|eenheid|jednostka|enhet|enhed|jednotka|единица`,
);
const setWords = wholeWords(
  `set|changed|switched|now|gesetzt|umgestellt|gewechselt|gestellt|geandert|jetzt|reglee?|changee?|passee?|cambiad[ao]|
  ajustad[ao]|cambiat[ao]|impostat[ao]|alterada|gewijzigd|ingesteld|omgezet|zmienion[ao]|ustawion[ao]|andrad|installd|
  aendret|zmenena|изменена`,
);
const fromHere = wholeWords(
  `switched to|changed to|umgestellt auf|gewechselt auf|from here|from now on|ab hier|ab jetzt|a partir d'ici|desde aqui|
  da qui|vanaf hier`,
);
const longestEvent = 80;

/** The unit that a gauge was set to, in a line of its own; undefined for any other line. */
export function unitSetBy(row: Row): string | undefined {
  const filled = row.cells.filter((cell) => cell.trim() !== '');
  const [text = ''] = filled;
  if (filled.length !== 1 || text.length > longestEvent) return undefined;
  // `Unit changed from µm to mil`: the last of them holds.
  const unit = text.split(/[\s:=>()[\]"']+/u).findLast(isThickness);
  if (unit === undefined) return undefined;
  const folded = foldedText(text);
  const isSet = (unitWords.test(folded) && setWords.test(folded)) || fromHere.test(folded);
  return isSet ? unit : undefined;
}

/** A spreadsheet pads such a line with empty cells. */
export const isUnitAlone = (row: Row): boolean =>
  isThickness(bareUnit(row)) && row.cells.every((cell, k) => k === 0 || cell.trim() === '');
