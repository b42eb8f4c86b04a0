/**
 * Words by which people take a reading back, or doubt it: `wrong`, `do not use`, `falsch, gelöscht`.
 *
 * None of them deletes anything by itself, for `not wrong` and `wrong colour` have them as well: where
 * one stands the reading is kept, and the user is told. Words that speak of the film as often as of the
 * reading (`suspect`, `removed`, `old`) are not among them.
 */
import { once } from '../../base/kept.ts';
import { isAsciiOnly, withoutMarks } from '../../base/letters.ts';
import { namesDeletion } from './not-readings.ts';

/** Lower case, without accents, as the lists below are written. */
export const foldedText = (text: string): string =>
  isAsciiOnly(text) ? text.toLowerCase() : foldedLetters(text);

const foldedLetters = (text: string): string =>
  withoutMarks(text.toLowerCase().normalize('NFKD'))
    .replace(/ß/gu, 'ss')
    .replace(/ł/gu, 'l')
    .replace(/’/gu, "'");

/**
 * Whole words only, in a text that `foldedText` has been through. Each list takes long to be compiled, and
 * few files have a text that is held against it; what bounds a word in ASCII takes a third of the time.
 */
export function wholeWords(...lists: readonly string[]): Pick<RegExp, 'test'> {
  const inAscii = once(() => patternOf(lists, '[A-Za-z\\d]'));
  const inAny = once(() => patternOf(lists, '[\\p{L}\\p{N}]'));
  return { test: (text) => (isAsciiOnly(text) ? inAscii() : inAny()).test(text) };
}

const patternOf = (lists: readonly string[], ofWord: string): RegExp => {
  const words = lists
    .join('|')
    .replace(/\s*\|\s*/gu, '|')
    .replace(/\s+/gu, '[\\s-]+');
  return new RegExp(`(?<!${ofWord})(?:${words})(?!${ofWord})`, 'u');
};

const against = wholeWords(
  `wrong|wrongly|incorrect|erroneous|error|mistake|mistaken|mistakenly|mis ?read|misreading|typo|
  mistyped|ignore|ignored|disregard|discard|discarded|do not use|don't use|dont use|do not count|
  don't count|not valid|invalid|unreliable|not reliable|deleted|delete|exclude|excluded|omit|omitted|
  void|voided|cancelled|canceled|rejected|struck out|doubtful|dubious|estimated|guessed|slipped|
  re ?read|re ?measured|should be|should read|must be|not counted|bad reading|faulty reading|lifted|tilted|
  on tape|on masking tape|on dirt|on wax|not on car|outlier|outliers|actually|in fact|swapped|mixed up|belongs to|
  wrong panel|other panel|other unit|wrong unit|instead of|meant`,
  `falsch|falsche|falscher|falsches|geloscht|loschen|ungultig|fehlmessung|messfehler|fehler|fehlerhaft|
  ignorieren|ignoriert|nicht verwenden|nicht verwendet|nicht benutzen|nicht werten|nicht gewertet|
  nicht zahlen|nicht berucksichtigen|verworfen|verwerfen|irrtum|irrtumlich|versehen|versehentlich|
  abgerutscht|abgehoben|verkantet|verrutscht|vertippt|zweifelhaft|unbrauchbar|nachgemessen|geschatzt|muss heissen|
  ausreisser|eigentlich|in wirklichkeit|vertauscht|verwechselt|gehort zu|gehort zum|gemeint|stattdessen`,
  `faux|fausse|erreur|errone|erronee|incorrecte|ignorer|ne pas utiliser|ne pas tenir compte|
  ne pas compter|valeur aberrante|aberrante|en fait|en realite|inverse|inversee|supprime|supprimee|annule|annulee|invalide|douteux|douteuse|a refaire`,
  `erroneo|erronea|equivocado|equivocada|incorrecto|incorrecta|ignorar|no usar|no utilizar|no contar|
  valor atipico|atipico|atipica|en realidad|intercambiado|descartar|descartado|descartada|borrado|borrada|anulado|anulada|invalido|invalida|dudoso|dudosa`,
  `sbagliato|sbagliata|errato|errata|errore|ignorare|non usare|non utilizzare|non contare|scartare|
  valore anomalo|anomalo|in realta|scambiato|scambiata|uitschieter|eigenlijk|verwisseld|scartato|scartata|annullato|annullata|dubbio|dubbia|fout|foutief|verkeerd|negeren|niet gebruiken|
  niet meetellen|ongeldig|twijfelachtig|errado|errada|nao usar|nao contar|apagado|apagada`,
  `bledny|bledna|bledne|blad|pominac|nie uzywac|nie liczyc|usuniety|usuniete|skreslony|skreslone|
  ошибка|ошибочно|ошибочное|неверно|неверное|не использовать|не учитывать|удалено|игнорировать`,
);
/** Written without blanks between words. */
const signs =
  /異常値|外れ値|异常值|離群值|离群值|実際は|其实|其實|誤り|誤測|無視|無効|削除|除外|无效|無效|错误|錯誤|忽略|作废|作廢|删除|刪除|排除/u;
/** `Errors: 0`, `no errors`, `Deleted: none`: nothing is taken back. */
const nothing = once(
  () =>
    /^(?:no|without|keine?|ohne|aucune?|sans|sin|ningun\p{L}*|nessun\p{L}*|senza|geen)\s+\p{L}+\.?$|[:=;,\t ]\s*(?:0|no|none|nil|keine?|nein|aucune?|non|ningun\p{L}*|nessun\p{L}*|geen|nee|-+)\s*$/u,
);

/** Whether a text of a person speaks against a reading. */
export function speaksAgainst(text: string): boolean {
  if (text === '' || /^[\d.,]+$/u.test(text)) return false;
  const folded = foldedText(text);
  if (nothing().test(folded)) return false;
  if (/^e(?:rr?)?[\s.:#_-]*\d{1,4}$/u.test(folded)) return true;
  return against.test(folded) || signs.test(text) || namesDeletion(text);
}
