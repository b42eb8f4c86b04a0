/**
 * Words in a column of states that say neither that a reading counts nor that it does not.
 *
 * Where most rows say `OK` and a few say another word, those few may be no readings: the file is refused until
 * somebody says which. A word for the film (`repainted`, `filler`) is none such, nor is one that judges a film
 * (`FAIL`, `NG`, `high`) beyond all that passed: they are told, and the readings stand. So it is with codes, 0 on most
 * rows and 3 on a few. Where no word says that most rows count, the column may say anything, and that is told.
 */

import { foldedText, wholeWords } from '../cells/doubting-words.ts';
import { numberOf, numberShape } from '../cells/numbers.ts';
import { saysThatItCounts, stateMeaning } from '../cells/words.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** What the column says is lost on the reader: that is told, with the first such word. */
export function tellUnknownStates(tables: readonly Table[], findings: Findings): void {
  for (const table of tables) {
    const column = table.layout.columns.get('status');
    if (column === undefined) continue;
    const unknown = table.rows.filter((row) => {
      const text = cellText(row, column);
      return text !== '' && stateMeaning(text) === undefined;
    });
    const [first] = unknown;
    if (first === undefined) continue;
    const heading = table.layout.header[column]?.text ?? '';
    const coded = rareCode(table, column);
    const worded = mostCount(table, column)
      ? unknown.find((row) => mayNotCount(table, row, column))
      : undefined;
    const doubted = coded ?? worded;
    if (doubted !== undefined) {
      const word = cellText(doubted, column);
      findings.add('error', 'reading-ambiguous', () => ({
        message: `"${word}" under "${heading}", where most rows say ${coded === undefined ? 'that they count' : 'another number'}, may take the reading back`,
        at: placeOf(table, doubted, column),
        hint: 'if such readings do not count, take their rows out; if they do, write "OK" in each row',
      }));
      continue;
    }
    const word = cellText(first, column);
    findings.add('warning', 'column-unknown', () => ({
      message: `column "${heading}" is not read: "${word}" says nothing of whether a reading counts`,
      at: placeOf(table, first, column),
      hint: 'if it parts the readings, before and after a polish say, give each part a file',
    }));
  }
}

const countsAt = (row: Row, column: number): boolean => saysThatItCounts(cellText(row, column));

const mostCount = ({ rows }: Table, column: number): boolean =>
  rows.filter((row) => countsAt(row, column)).length * 2 > rows.length;

/** A column of numbers, one of them on most rows: 0 and 3 may be no error and the third one. */
function rareCode({ rows }: Table, column: number): Row | undefined {
  const texts = [...columnTexts(rows, column)].filter(([text]) => text !== '');
  if (texts.length < 2 || !texts.every(([text]) => /^\d{1,4}$/u.test(text))) return undefined;
  const usual = texts.find(([, { count }]) => count * 2 > rows.length);
  return usual === undefined ? undefined : texts.find((one) => one !== usual)?.[1].row;
}

/** What is on the panel: a reading of it is a reading. */
const ofFilm = wholeWords(
  `repaint|repainted|respray|resprayed|refinish|refinished|original|factory|oem|filler|bondo|putty|primer|repair|repaired|
  polished|nachlackiert|lackiert|gespachtelt|spachtel|werkslack|grundierung|repariert|poliert|repeint|repeinte|mastic|origine|
  appret|repintado|masilla|imprimacion|reparado|riverniciato|stucco|originale|fondo|riparato|overgespoten|plamuur|origineel|
  gerepareerd|szpachla|lakierowany|oryginal|omlackerad|spackel|перекрашен|шпаклевка|оригинал`,
);
/** What is said of a film that is beyond its limits, and of a reading that failed as well. */
const verdicts = wholeWords(
  `fail|failed|ng|nok|nio|n.i.o|n.i.o.|not ok|not pass|nicht bestanden|high|hi|low|lo|over|under|above|below|thick|thin|
  warn|warning|alarm|out of tolerance|out of spec|out of limits|bad|poor|zu hoch|zu niedrig|zu dick|zu dunn|dick|dunn|hoch|niedrig|
  trop epais|trop fin|epais|hors tolerance|fuera de tolerancia|fuori tolleranza|buiten tolerantie`,
);

function mayNotCount(table: Table, row: Row, column: number): boolean {
  const folded = foldedText(cellText(row, column));
  if (ofFilm.test(folded)) return false;
  return !(verdicts.test(folded) && isBeyond(table, row, column));
}

/** Whether every number of the row is thicker, or thinner, than all of those that passed. */
function isBeyond(table: Table, row: Row, column: number): boolean {
  const passed = table.rows.filter((own) => countsAt(own, column));
  const films = passed.flatMap((own) => numbersOf(table, own));
  const [least, most] = [Math.min(...films), Math.max(...films)];
  return numbersOf(table, row).every((film) => film < least || film > most);
}

const numbersOf = ({ layout }: Table, row: Row): readonly number[] =>
  layout.readings.flatMap(({ column }) => {
    const shape = numberShape(cellText(row, column));
    return shape === undefined ? [] : [numberOf(shape)];
  });
