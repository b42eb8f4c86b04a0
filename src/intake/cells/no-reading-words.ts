/**
 * The words for "no reading" that devices, desktop programs and people write, in the languages of
 * exports seen: English, German, French, Spanish, Italian, Dutch; a few of Portuguese, Polish,
 * Russian, Japanese and Chinese. Spelling, accents and points do not matter (`wordKey`).
 */
import { wordKeys } from './word-key.ts';

export const missingWords = wordKeys(
  'n/a, na, null, nil, none, nothing, blank, empty, missing, no reading, no value, no data, nd, nm',
  'not measured, not read, not available, not applicable, unread, unknown, tbd, skipped, skip',
  'k.A., keine Angabe, kein Wert, keine Messung, keine Daten, nicht gemessen, fehlt, leer, n.v.',
  'undefined, nicht gem., n. gemessen, n. messbar, nicht ermittelt, nicht erfasst, not taken, no measurement',
  'unmeasured, pas mesuré, pas mesurée, sin medición, sin lectura, non rilevato, non rilevata, niet gem.',
  'n. gem., entfällt, non mesuré, pas de mesure, manquant, manquante, vide, sans objet, s.o., n.c.',
  'aucune, aucun, sin dato, sin datos, sin medir, no medido, no medida, vacío, falta, s/d, ninguno',
  'non misurato, non misurata, mancante, assente, vuoto, nessuno, n.m., non disponibile, n.d.',
  'niet gemeten, geen, geen waarde, geen meting, geen data, leeg, ontbreekt, n.v.t., onbekend',
  'neměřeno, nezměřeno, žádná hodnota, nemerané, nem mért, nincs, ej mätt, inget värde, ikke målt, ingen verdi',
  'ei mitattu, puuttuu, ölçülmedi, boş, yok, nu s-a măsurat, nije mjereno, ni izmerjeno, не виміряно, немає',
  'не е измерено, няма, 미측정, 없음, 측정 안 함, 未测, 未測, 没有测量, 無測量, 空, δεν μετρήθηκε, mõõtmata, nematuota',
  'não medido, vazio, nie zmierzono, brak, нет, нет данных, не измерено, 無し, なし, 未測定, 无, 未测量, 缺失',
  '无读数, 無讀數, 没有读数, 无数据, 無數據, 无数值, 无测量值, 未读取, 未检测, 無値, 値なし, データなし, 測定なし',
  '計測なし, 読取なし, 読み取りなし, 数値なし, 값 없음, 데이터 없음, 측정값 없음, 판독 없음, нет показаний',
  'нет значения, нет измерения, без показаний, kein Messwert, keine Anzeige, keine Ablesung, ohne Messwert',
  'ohne Wert, aucune lecture, pas de lecture, sans lecture, aucune mesure, sans mesure, aucune valeur',
  'pas de valeur, sans valeur, aucune donnée, ninguna lectura, no hay lectura, sin valor, nessuna lettura',
  'senza lettura, nessun valore, nessuna misura, nessun dato, sem leitura, sem medição, sem valor, sem dados',
  'não lido, geen aflezing, geen uitlezing, brak odczytu, brak pomiaru, brak danych, brak wartości',
  'ingen avläsning, ingen mätning, saknas, ingen måling, ingen aflæsning, ingen avlesning, mangler',
  'bez hodnoty, chybí, bez měření, nincs adat, nincs mérés, ölçüm yok, okuma yok, değer yok, veri yok',
  'ei lukemaa, ei mittausta, ei arvoa, fără citire, fără valoare, немає показань, немає даних',
  'entf., entfallen, ausgelassen, übersprungen, n.b., nicht bestimmt, nicht bestimmbar, nicht vorhanden, n. vorh.',
  'nicht geprüft, ohne Angabe, o.A., keine Anz., nicht relevant, non dispo, non disponible, n.r., non renseigné',
  'non relevé, néant, omis, omise, sauté, non mes., non applicable, no disponible, no aplica, no aplicable',
  'sin med., s/m, sin registro, omitido, omitida, non ril., non mis., non applicabile, omesso, saltato, n.p.',
  'niet van toepassing, niet beschikbaar, overgeslagen, vervalt, nie dotyczy, b.d., n.z., pominięto, niezmierzone',
  'ej uppmätt, utgår, saknar värde, ej tillgänglig, ikke tilgængelig, udgår, ikke tilgjengelig, ikke relevant',
  'nedostupné, vynecháno, neaplikovatelné, nem elérhető, kihagyva, não aplicável, não disponível, sem medida',
  'не изм., пропуск, пропущено, н/п, atlandı, ei saatavilla, ei mit., ohitettu, indisponibil, nu se aplică',
);
export const overRangeWords = wordKeys(
  'OL, O.L., ovrng, 0L, 0OL, O/L, ovl, overload, over, over range, overrange, over-range, overflow, ovf, ovr, ofl',
  'out of range, above range, beyond range, too thick, range, inf, infinity, infinite, high, hi, ∞',
  'Überlauf, Ueberlauf, Messbereich überschritten, Bereich überschritten, Bereichsüberschreitung',
  'über Bereich, über Messbereich, außerhalb, außer Bereich, außerhalb Messbereich, zu dick',
  'hors gamme, hors plage, hors limite, hors limites, hors échelle, dépassement, surcharge, trop épais',
  'dépassement de gamme, fuera de rango, fuera de escala, sobrerrango, sobrecarga, desbordamiento',
  'demasiado grueso, infinito, infini, unendlich, oneindig, fuori scala, fuori campo, fuori portata',
  'sovraccarico, oltre portata, oltre scala, troppo spesso, buiten bereik, overbereik, te dik',
  'bereik overschreden, overbelasting, überschritten, 範囲外, オーバー, 超量程, 超出范围, перегрузка',
  'вне диапазона, mimo rozsah, mimo rozsahu, poza zakresem, tartományon kívül, utanför område, uden for område',
  'utenfor område, alueen ulkopuolella, aralık dışı, kapsam dışı, în afara domeniului, izvan raspona, izven območja',
  'поза діапазоном, извън обхвата, 범위 초과, 範囲超過, 測定範囲外, 超限, 溢出, εκτός ορίων, přetečení, taşma',
);
export const underRangeWords = wordKeys(
  'under, under range, underrange, under-range, underflow, unf, below range, too thin, low, lo',
  'Unterlauf, unter Bereich, Messbereich unterschritten, Bereich unterschritten, zu dünn',
  'sous gamme, trop fin, bajo rango, demasiado fino, sotto scala, sotto portata, te dun, onder bereik',
);
/** A place that no gauge for metal measures on, or that the probe does not reach. */
export const unmeasuredWords = wordKeys(
  'plastic, no metal, not metal, non metal, non-metallic, non-fe?, no substrate, grp, cfrp, carbon, glass',
  'Kunststoff, Plastik, kein Metall, GFK, CFK, Glas, plastique, pas de métal, plástico, sin metal',
  'plastica, nessun metallo, kunststof, geen metaal, tworzywo, пластик, 塑料, 樹脂',
  'not accessible, no access, covered, nicht messbar, nicht zugänglich, verdeckt, abgedeckt',
  'unzugänglich, inaccessible, pas accessible, inaccesible, no accesible, non accessibile',
  'niet bereikbaar, not measurable, cannot be measured, non mesurable, pas mesurable, no medible, non misurabile',
  'niet meetbaar, niemierzalne, não mensurável, ej mätbar, ikke målelig, neměřitelné, nem mérhető, не измеряется',
);

/** Devices and spreadsheets that failed. */
export const errorWords = wordKeys(
  'err, error, fail, failed, failure, fault, invalid, bad, nan, no signal, lost, bad reading',
  'broken, cassé, cassée, kaputt, defekt, rotto, roto, low battery, no probe, no contact, Fehler, Fehlmessung, Messfehler, ungültig, kein Signal',
  'erreur, erreur de mesure, invalide, échec, pas de signal, fallo, inválido, inválida, error de medida',
  'sin señal, errore, non valido, non valida, errore di misura, nessun segnale, fout, foutmelding',
  'ongeldig, meetfout, geen signaal, erro, błąd, ошибка, エラー, 错误, 錯誤, 无效',
  'mätfel, fel, målefejl, fejl, målefeil, feil, mittausvirhe, virhe, chyba, chyba měření, hiba, mérési hiba',
  'probe error, probe fault, sensor error, sensor fault, measurement error, measuring error, reading error',
  'Sondenfehler, Fehler Sonde, Sensorfehler, Fehler Sensor, Messungsfehler, Fehler Messung, Lesefehler',
  'erreur sonde, erreur de sonde, erreur capteur, erreur de capteur, erreur mesure, erreur de lecture',
  'error sonda, error de sonda, error de la sonda, error sensor, error de sensor, error medida, error de medición',
  'error de lectura, errore sonda, errore della sonda, errore sensore, errore del sensore, errore misura',
  'errore misurazione, errore di misurazione, errore di lettura, erro sonda, erro de sonda, erro da sonda',
  'erro sensor, erro de sensor, erro do sensor, erro de medição, erro de medida, erro de leitura',
  'sondefout, fout sonde, sensorfout, fout sensor, fout meting, leesfout, błąd sondy, błąd czujnika',
  'błąd pomiaru, błąd odczytu, ошибка датчика, ошибка зонда, ошибка измерения, chyba sondy, chyba snímače',
  'hata, ölçüm hatası, eroare, greška, napaka, помилка, грешка, 오류, 에러, 測定不可, 測定エラー, 測定失敗, 测量失败',
);
export const deletedWords = wordKeys(
  'deleted, del, delete, removed, excluded, exclude, omitted, omit, rejected, reject, discarded',
  'discard, ignored, ignore, void, voided, struck, struck out, cancelled, canceled, crossed out, x',
  'gelöscht, geloescht, gestrichen, verworfen, ausgeschlossen, entfernt, ungezählt, storniert',
  'supprimé, supprimée, effacé, effacée, exclu, exclue, rejeté, rejetée, annulé, annulée, ignoré',
  'borrado, borrada, eliminado, eliminada, excluido, excluida, descartado, descartada, anulado',
  'eliminato, eliminata, cancellato, cancellata, escluso, esclusa, scartato, scartata, annullato',
  'verwijderd, gewist, uitgesloten, genegeerd, geschrapt, apagado, excluído, usunięto, удалено, исключено',
  'scartati, scartate, eliminati, cancellati, esclusi, descartados, borrados, anulados, excluidos, supprimés',
  'exclus, rejetés, écartés, annulés, verworfene, gestrichene, verwijderde, geschrapte',
  '削除, 除外, 删除, 已删除, 排除, ✗, ✘, ☒',
);
