/** The words that cells other than readings may hold. */
import { remembered } from '../../base/kept.ts';
import type { PointPlace } from '../../film/reading.ts';
import { namesDeletion, namesUnmeasured, notReading } from './not-readings.ts';
import { wordKey, wordKeys } from './word-key.ts';

/** A mark that says there is no value: empty, a dash, `n/a`, `k. A.` … */
export const meansNoReading = (text: string): boolean =>
  text.toLowerCase() === 'nan' || notReading(text)?.class === 'missing';

const yes = wordKeys(
  'yes, y, true, t, 1, ja, j, wahr, oui, vrai, sí, verdadero, sì, vero, waar, sim, да, はい, 是',
  'tak, ano, áno, igen, evet, kyllä, jah, так, ναι, 예, 네, prawda, doğru',
);
const no = wordKeys(
  'no, n, false, f, 0, nein, falsch, non, faux, falso, nee, onwaar, não, нет, いいえ, 否',
  'nie, nej, nei, nem, hayır, hayir, ei, ні, όχι, 아니오, 아니요, 不是, fałsz, yanlış',
);
const counts = wordKeys(
  'valid, ok, okay, kept, keep, active, used, included, none, good, gültig, aktiv, valide, válido',
  'valido, válida, valida, actif, activo, attivo, geldig, actief, not deleted, nicht gelöscht',
);

/** These are said of a reading, and never of the film. */
const invalid = wordKeys(
  'invalid, not valid, ungültig, nicht gültig, invalide, non valide, inválido, inválida, no válido',
  'non valido, non valida, ongeldig, niet geldig, nieważny, neplatné, neplatný, ogiltig, ugyldig',
  'érvénytelen, geçersiz, недействительно, недействителен, 無効, 无效, 無效',
);

/** What a column of deletions says of its row; undefined for a word that is neither yes nor no. */
export function meansDeleted(text: string): boolean | undefined {
  return yes.has(wordKey(text)) || ticked.test(text) ? true : stateMeansDeleted(text);
}

/** The same of a column of states, where a yes or a tick may say that all is well. */
export function stateMeansDeleted(text: string): boolean | undefined {
  const key = wordKey(text);
  if (key === 'd' || namesDeletion(text) || invalid.has(key)) return true;
  const nothing = notReading(text)?.class === 'missing' && !namesUnmeasured(text);
  const kept = no.has(key) || counts.has(key) || nothing;
  return kept || text === '☐' ? false : undefined;
}

/** What a word in a column of states says of the reading beside it. */
export type StateMeaning = 'counts' | 'deleted' | 'error';

/** These may judge the film as well, or say that the gauge wants a battery. */
const doubtfulErrors = wordKeys(
  'fail, failed, failure, fault, bad, lost, broken, cassé, cassée, kaputt, defekt, rotto, roto, low battery',
);

/** Undefined for a word that says nothing of it. A gauge that says `ERR 12` has not read, whatever number stands there. */
export const stateMeaning: (text: string) => StateMeaning | undefined = remembered((text) => {
  const deleted = stateMeansDeleted(text);
  if (deleted !== undefined) return deleted ? 'deleted' : 'counts';
  const failed = notReading(text)?.class === 'error' && !doubtfulErrors.has(wordKey(text));
  return failed || saysThatItCounts(text) ? (failed ? 'error' : 'counts') : undefined;
});

/** Whether a word says outright that a reading counts: a dash does not, nor `good`, which may be said of the paint. */
export const saysThatItCounts = (text: string): boolean => passed.has(wordKey(text));
const passed = wordKeys(
  'ok, okay, oké, o.k., valid, accepted, pass, passed, i.O., io, in Ordnung, bestanden, gültig, valide, conforme',
  'válido, válida, valido, valida, correcto, corretto, geldig, ważny, w porządku, platné, giltig, gyldig, годен, норма',
  '合格, 正常, 有效, 有効',
);
/** A ring is the tick of Japan and China. */
const ticked = /^[✓✔☑*○◯〇●]$/u;

/**
 * What a column of valid rows says of its row: there `ja` keeps it, and an `x` is a tick. An empty
 * cell or a dash beside ticks may be a row that does not count, or one nobody judged: it says nothing.
 */
export function meansInvalid(text: string): boolean | undefined {
  const key = wordKey(text);
  if (yes.has(key) || counts.has(key) || key === 'x' || ticked.test(text)) return false;
  const taken = no.has(key) || key === 'd' || namesDeletion(text);
  return taken || notReading(text)?.class === 'error' || text === '☐' ? true : undefined;
}

const places: ReadonlyMap<string, PointPlace> = new Map([
  ['', 'face'],
  ['face', 'face'],
  ['edge', 'edge'],
  ['shut', 'shut'],
]);
export const placeNames = ['face', 'edge', 'shut'] as const;
export const placeNamed = (text: string): PointPlace | undefined => places.get(text.toLowerCase());

const flags: ReadonlyMap<string, boolean> = new Map([
  ['', false],
  ...['yes', 'y', 'true', '1', 'x', '✓', '✔', '☑'].map((word) => [word, true] as const),
  ...['no', 'n', 'false', '0', 'ne', '✗', '✘', '☐'].map((word) => [word, false] as const),
]);
export const flagNames = ['yes', 'no', 'true', 'false'] as const;
/** `yes`, `ja`, `oui`, a tick; undefined for a word that is neither yes nor no. */
export function flagNamed(text: string): boolean | undefined {
  const own = flags.get(text.toLowerCase());
  if (own !== undefined) return own;
  const key = wordKey(text);
  return yes.has(key) ? true : no.has(key) ? false : undefined;
}

/** `1`, `2`, `3` …: the number of a repeat. */
export const ordinal = (text: string): number | undefined =>
  /^0*[1-9]\d{0,8}$/.test(text) ? Number(text) : undefined;

const wholeFilm = new Set(['', 'total', 'all', 'film']);
export const layerNamed = (text: string): string => {
  const layer = text.toLowerCase();
  return wholeFilm.has(layer) ? '' : layer;
};

/** "The same as above". */
export const ditto = /^(?:〃|"|''|ditto|dto\.?|do\.|idem)$/i;
