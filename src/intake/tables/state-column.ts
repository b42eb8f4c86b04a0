/**
 * A column of states by another name than one: `Quality`, `Result`, `Check`. Most rows of it say outright that the
 * reading counts (`OK`, `valid`), and the others say a word; under a name that is none of these some word must be an
 * error of the gauge. Or a column of error codes, empty or 0 on most rows.
 *
 * It is obeyed as a column called `Status` is: an error takes its reading out, a word that may mean either is asked about.
 */
import { saysThatItCounts, stateMeaning } from '../cells/words.ts';
import { plainNames, plainWords } from '../header/header.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Table } from './table.ts';

export type StateColumn = { readonly table: Table; readonly evidence: string };

export function adoptStateColumn(table: Table): StateColumn | undefined {
  const { layout, rows } = table;
  if (
    ['status', 'deleted', 'valid'].some((role) => layout.header.some((cell) => cell.role === role))
  )
    return undefined;
  const column = layout.unknown.find((k) => holdsStates(rows, k, layout.header[k]?.label ?? ''));
  if (column !== undefined) return withStates(table, column, rows);
  const errorAt = layout.unknown.find((k) => holdsErrorCodes(table, k));
  if (errorAt === undefined) return undefined;
  const coded = rows.map((row) => {
    const text = cellText(row, errorAt);
    return isErrorNumber(text)
      ? { ...row, cells: row.cells.with(errorAt, `error ${text}`), quoted: true }
      : row;
  });
  return withStates(table, errorAt, coded);
}

function withStates(
  { layout, ...table }: Table,
  column: number,
  rows: Table['rows'],
): StateColumn | undefined {
  const cell = layout.header[column];
  if (cell === undefined) return undefined;
  const columns = new Map(layout.columns).set('status', column);
  const header = layout.header.with(column, { ...cell, role: 'status' });
  const unknown = layout.unknown.filter((k) => k !== column);
  return {
    table: { ...table, rows, layout: { ...layout, header, columns, unknown } },
    evidence: `"${cell.text}" says of each reading whether it counts`,
  };
}

const ofErrors = plainNames(
  `error|errors|err|error code|error no|err code|fehler|fehlercode|fehler nr|erreur|code erreur|errore|codice errore|
  código de error|código error|fout|foutcode|kod błędu|błąd|felkod|fejlkode|feilkode|chyba|kód chyby|ошибка|код ошибки|
  エラー|エラーコード|错误|错误代码`,
);
const isErrorNumber = (text: string): boolean => /^[1-9]\d{0,3}$/u.test(text);
const isClean = (text: string): boolean =>
  text === '' || /^0+$/u.test(text) || stateMeaning(text) === 'counts';

/** `Error;0`, `Error;12`: none on most rows, and a code or a word of an error on the others. */
function holdsErrorCodes({ layout, rows }: Table, column: number): boolean {
  const { label = '', unit } = layout.header[column] ?? {};
  if (unit !== undefined || !ofErrors.has(plainWords(label))) return false;
  const texts = [...columnTexts(rows, column)];
  const clean = texts.filter(([text]) => isClean(text));
  const count = clean.reduce((sum, [, own]) => sum + own.count, 0);
  const others = texts.filter(([text]) => !isClean(text));
  return (
    count * 2 > rows.length &&
    others.length > 0 &&
    others.every(([text]) => isErrorNumber(text) || stateMeaning(text) === 'error')
  );
}

const names = plainNames(
  `result|quality|check|qc|judgement|judgment|validity|reading status|reading state|measurement status|measuring status|
  ergebnis|resultat|qualität|prüfung|gültigkeit|messstatus|messergebnis|résultat|qualité|validité|contrôle|resultado|calidad|
  validez|risultato|qualità|esito|validità|resultaat|kwaliteit|controle|wynik|jakość|výsledek|результат|качество|結果|结果|判定`,
);

function holdsStates(rows: Table['rows'], column: number, label: string): boolean {
  const texts = [...columnTexts(rows, column)];
  const saying = texts.filter(([text]) => saysThatItCounts(text));
  const count = saying.reduce((sum, [, own]) => sum + own.count, 0);
  const others = texts.filter(([text]) => text !== '' && !saysThatItCounts(text));
  if (count * 2 <= rows.length || others.length === 0) return false;
  return names.has(plainWords(label)) || others.some(([text]) => stateMeaning(text) === 'error');
}
