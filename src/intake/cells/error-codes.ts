/**
 * Error codes with a word beside them: `E-12 sonda`, `Err 07: no probe`, `F03 (low battery)`.
 *
 * Letters that mean an error may have any word behind their number, but no unit: `E 102 mil` may be a
 * reading. Other letters need a word for what failed: `A2 bonnet` is no code.
 */
import { once } from '../../base/kept.ts';
import { unitNamed } from './unit.ts';
import { wordKey, wordKeys } from './word-key.ts';

const form = once(
  () => /^(\p{L}{1,7})[\s.:#_-]*\d{1,4}(?![\d.,])[\s:;,/–-]*[([]?(\p{L}[\p{L}\s.'’-]{2,})[)\]]?$/u,
);
const errors = wordKeys(
  'e, er, err, error, fehler, erreur, errore, fout, fallo, erro, fel, fejl, feil, virhe, chyba, hiba, hata, eroare, błąd, ошибка',
);
const failing =
  /prob|sensor|sond|sens|batter|bater|signal|senal|segnale|contac|contat|kontakt|calib|kalib|timeout|датчик|щуп|зонд|батаре|сигнал/u;

export function isErrorCode(text: string): boolean {
  const [, letters = '', words = ''] = form().exec(text) ?? [];
  if (letters === '' || unitNamed(words.trim()) !== undefined) return false;
  if (errors.has(wordKey(letters))) return true;
  return letters.length <= 3 && /^\p{Lu}+$/u.test(letters) && failing.test(wordKey(words));
}
