/**
 * Columns that judge: `outlier`, `ok`; and those by a name that is not read: `Void?`, `Keep`, `Deleted at`. A mark there may take the reading back, or say of the film that it is
 * thick or out of tolerance, and then it is the very spot one must know of. Where a row is marked so the
 * file is refused until somebody says which; where none is, nothing hangs on it.
 */

import { meansDeleted, meansInvalid, meansNoReading } from '../cells/words.ts';
import type { Findings } from '../findings.ts';
import { plainNames, plainWords } from '../header/header.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import { placeOf, type Table } from '../tables/table.ts';

const against = plainNames(
  'outlier|outliers|is outlier|ausreisser|ausreißer|valeur aberrante|aberrant|valor atípico|atípico|anomalo|uitschieter|odstající|外れ値|离群值',
);
const inFavour = plainNames(
  'ok|okay|o k|i o|i.o.|io|in ordnung|pass|passed|bestanden|good|gut|conforme|goed|合格|良否|判定',
);
/** Columns that say which rows count: any mark, or none where others have one, may take its row back. */
const takes = plainNames(
  'void?|deleted?|ignore|ignore?|omit|omit?|skip|skip?|drop|discard|strike|deleted at|deleted on|deleted by|deletion date|removed at|removed by|rejected by|ignorieren|auslassen|löschdatum|gelöscht am|gelöscht von|loschdatum|supprimé le|supprimé par|ignorer|ignorar|ignorare|negeren|borrado el|eliminado por|eliminato il|無視|忽略',
);
const keeps = plainNames(
  'use|used|use?|include|include?|keep|keep?|count|counts|take|verwenden|benutzen|behalten|werten|zählt|nutzen|garder|utiliser|usar|incluir|usare|tenere|gebruiken|meetellen|採用|使用',
);

export function doubtJudgements(table: Table, findings: Findings): void {
  for (const column of table.layout.unknown) {
    const label = table.layout.header[column]?.label ?? '';
    const name = plainWords(label);
    const taking = against.has(name) || takes.has(name);
    const role = taking ? 'deleted' : inFavour.has(name) || keeps.has(name) ? 'valid' : undefined;
    if (role === undefined) {
      tellMarks(table, column, findings);
      continue;
    }
    const isMarked = (text: string): boolean =>
      taking
        ? meansDeleted(text) !== false
        : (meansInvalid(text) ?? (keeps.has(name) && !/^\d+$/u.test(text)));
    const row = table.rows.find((row) => isMarked(cellText(row, column)));
    if (row === undefined) continue;
    const text = cellText(row, column);
    const counts = takes.has(name) || keeps.has(name);
    const means = role === 'deleted' ? meansDeleted : meansInvalid;
    findings.add('error', 'reading-ambiguous', () => ({
      message: `${text === '' ? 'an empty cell' : `"${text}"`} under "${label}" may take the reading back${counts ? '' : ', or judge the film'}`,
      at: placeOf(table, row, column),
      hint:
        means(text) === undefined
          ? 'if such readings do not count, take their rows out; then delete the column'
          : `if such readings do not count, read with --columns ${role}=${/[\s?]/u.test(label) ? `"${label}"` : label}; else delete the column`,
    }));
  }
}

/** A tick, a cross, a short yes: what people put beside a row to pick it out. */
const isMark = (text: string): boolean =>
  !/\d/u.test(text) &&
  text.length <= 4 &&
  (meansDeleted(text) === true || /^[+!#×•■]$/u.test(text));

/** At most one row in so many: marks on more of them say something of the film. */
const rowsPerMark = 3;

/** `x` on a few rows under a name that nobody knows: those may be struck out. */
function tellMarks(table: Table, column: number, findings: Findings): void {
  const { rows, layout } = table;
  const texts = [...columnTexts(rows, column)].filter(([text]) => !meansNoReading(text));
  const [first] = texts;
  const marked = texts.reduce((sum, [, { count }]) => sum + count, 0);
  if (first === undefined || !texts.every(([text]) => isMark(text))) return;
  if (marked * rowsPerMark > rows.length) return;
  const label = layout.header[column]?.label ?? '';
  const [text, { row }] = first;
  const which = marked === 1 ? 'one row: it' : `${marked} rows: they`;
  findings.add('warning', 'reading-doubted', () => ({
    message: `"${label}" is not read and has "${text}" on ${which} may be struck out`,
    at: placeOf(table, row, column),
    hint: `if such readings do not count, read with --columns deleted=${/[\s?]/u.test(label) ? `"${label}"` : label}`,
  }));
}
