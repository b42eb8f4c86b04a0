/**
 * Numbers that the file itself says are no readings: `8888 = invalid`, `Ungültiger Wert wird als 8888
 * geschrieben`.
 *
 * Such a line names one number and says in words that it is none. It is believed where the number is no
 * usual reading of the file: 0 and less, beyond what a gauge shows, or one digit three times and more, far
 * from the others. `Invalid: 12` counts readings, and `over 888 is invalid` is a limit: neither is taken.
 */

import { once } from '../../base/kept.ts';
import { foldedText, wholeWords } from './doubting-words.ts';
import { middleNumber } from './middle-number.ts';
import { numberOf, numberShape, shapeOf } from './numbers.ts';
import { quoted } from './quoted.ts';

/** The line that says it, by the number it says it of. */
export type DeclaredNumbers = ReadonlyMap<number, string>;

/** One digit three times and more is no reading by chance only so many times the middle one. */
const FAR = 4;

/** `lines` are those outside the tables, looked at only where some number may be meant. */
export function declaredNumbers(
  counts: ReadonlyMap<string, number>,
  largest: number,
  lines: () => readonly string[],
): DeclaredNumbers {
  const odd = oddNumbers(counts, largest);
  const declared = new Map<number, string>();
  if (odd.size === 0) return declared;
  for (const line of lines()) {
    const number = numberDeclaredBy(line);
    if (number !== undefined && odd.has(number)) declared.set(number, line);
  }
  return declared;
}

function oddNumbers(counts: ReadonlyMap<string, number>, largest: number): ReadonlySet<number> {
  const numbers = [...counts].flatMap(([text, count]): readonly (readonly [number, number])[] => {
    const shape = shapeOf(text);
    return shape === undefined ? [] : [[numberOf(shape), count]];
  });
  const middle = once(() => middleNumber(numbers));
  const least = numbers.reduce((before, [number]) => Math.min(before, number), largest);
  const isFar = (number: number): boolean =>
    // Told first, for nearly no number is: the middle is at least the least.
    number >= FAR * least &&
    /^(\d)\1\1+$/u.test(String(number).replace('.', '')) &&
    number >= FAR * middle();
  const odd = new Set<number>();
  for (const [number] of numbers) {
    if (number <= 0 || number > largest || isFar(number)) odd.add(number);
  }
  return odd;
}

const none = wholeWords(
  `invalid|invalid (?:reading|value|measurement)s?|no (?:reading|value|measurement|data|contact|signal)|not (?:valid|measured|a reading|read)|
  missing|error|failed|fault|void|bad reading|sentinel|placeholder|ungultige?[rsnm]?|kein(?:e|en)? (?:wert|messwert|messung|kontakt|signal|angabe)|
  nicht gemessen|fehler|fehlmessung|fehlwert|platzhalter|fehlt|invalide?s?|non valides?|pas de (?:mesure|valeur|lecture|signal|contact)|non mesuree?|
  manquante?|erreur|invalid[oa]s?|no valid[oa]s?|sin (?:medida|lectura|dato|datos|valor|contacto|senal)|no medid[oa]|falta|
  non valid[oaie]|nessun[oa]? (?:misura|lettura|valore|contatto|segnale)|non misurat[oa]|errore|mancante|ongeldige?|geen (?:meting|waarde|contact|signaal)|
  niet gemeten|fout|ontbreekt|sem (?:medicao|leitura|valor|contacto|contato)|nao medid[oa]|erro|niewazn[yae]|brak (?:pomiaru|odczytu|danych)|
  nie zmierzono|blad|ogiltig[ta]?|inget varde|ej matt|fel|ugyldige?|ingen (?:maling|verdi|vaerdi)|ikke malt|fejl|feil|virheellinen|ei mitattu|virhe|
  neplatn[yae]|nemereno|chyba|ervenytelen|nincs (?:adat|meres)|hiba|gecersiz|olculmedi|hata|invalida|nemasurata?|eroare|недействительн\\p{L}*|нет (?:данных|измерения)|
  не измерено|ошибка`,
);
const noneInEast = /無効|无效|無測定|未測定|未测|测量失败|エラー|错误|錯誤|欠測/u;
const limits = wholeWords(
  `over|above|more than|greater than|under|below|less than|from|up to|at least|at most|limit|max|maximum|min|minimum|range|count|number of|total|
  uber|ueber|unter|mehr als|weniger als|ab|bis|grenze|anzahl|bereich|plus de|moins de|au-dessus|superieure?s?|inferieure?s?|nombre|mas de|menos de|superior(?:es)?|
  inferior(?:es)?|numero|piu di|meno di|oltre|sopra|sotto|superiori?|inferiori?|meer dan|minder dan|boven|onder|aantal|acima|abaixo|powyzej|ponizej|liczba|antal|выше|ниже|больше|меньше|более|менее`,
);
/** A sign or a word that makes the one stand for the other. */
const stands = wholeWords(
  `is|are|means?|stands? for|marks?|denotes?|as|bedeutet|heisst|steht fur|als|ist|wird|werden|signifie|est|sont|comme|par|significa|es|son|como|
  e|sono|come|indica|indicates?|betekent|wordt|staat voor|sao|oznacza|jako|jest|betyder|som|ar|er|tarkoittaa|on|znamena|je|jelent|demektir|inseamna|означает|значит|как`,
);
const equals = /[=:;,\t|→≙≡]|->|とは|は|表示|表示为|为/u;

/** The one number of a line that says it is no reading. */
export function numberDeclaredBy(line: string): number | undefined {
  const found =
    line.match(
      /(?<![\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}\d]|\d[.,])[-−–]?\d+(?:[.,]\d+)?(?![\d.,]*\d)/gu,
    ) ?? [];
  const [only] = new Set(found);
  if (only === undefined || new Set(found).size > 1 || line.length > 200) return undefined;
  if (/[<>≤≥≧≦%]/u.test(line.replace('->', ''))) return undefined;
  const folded = foldedText(line);
  if (!none.test(folded) && !noneInEast.test(line)) return undefined;
  if (limits.test(folded) || !(stands.test(folded) || equals.test(line))) return undefined;
  const shape = numberShape(only);
  return shape === undefined ? undefined : numberOf(shape);
}

export const declaredReason = (text: string, line: string): string =>
  `${quoted(text)} is no reading, as the file says: ${quoted(line)}`;
