/**
 * Columns of readings that no list of names knows, and that are told by their unit and by each other: `First (µm)`,
 * `Second (µm)`; `x µm`, `y µm`, `z µm`; `Ort 1 (µm)`, `Ort 2 (µm)`.
 *
 * All columns in a unit of film thickness are such a series, or none is: their names are one and the same but for
 * a number that counts up from 1, a letter that goes on in the alphabet, or words for first, second, third. So no
 * limit, no mean, no `Before` and `After` is one of them; nor are columns that count what is no reading (`Car 1`,
 * `Layer 1`, `SD 1`). What a word counts that nobody knows is told.
 */
import { once } from '../../base/kept.ts';
import { plainDigits } from '../cells/digits.ts';
import { foldedText } from '../cells/doubting-words.ts';
import { isLostMicro } from '../cells/unit.ts';
import { namesVisit } from '../cells/visit-words.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import { besideReadings } from './beside-readings.ts';
import { type GaugeRole, gaugeVocabulary } from './gauge-vocabulary.ts';
import { type HeaderCell, roleReader } from './header.ts';
import { countedColumn, countUp } from './numbered-columns.ts';
import { areOrdinals } from './ordinals.ts';

type Cell = HeaderCell<GaugeRole>;

/** The columns in their order; none where they are no series. */
export function seriesColumns(header: readonly Cell[]): readonly number[] {
  const inUnit = [...header.keys()].filter((k) => isInUnit(header[k]));
  const names = inUnit.map((k) => foldedText(plainDigits(nameOf(header[k]))));
  const others = [...header.keys()].filter((k) => !inUnit.includes(k));
  if (inUnit.length < 2 || names.some((name) => besideReadings.test(name))) return [];
  if (others.some((k) => header[k]?.role === 'reading')) return [];
  // `A (µm)` and `B (µm)` may be the whole and a part of it.
  if (names.join() === 'a,b') return [];
  if (areOrdinals(names)) return inUnit;
  const stem = stemOf(names);
  return stem === undefined || countsOther(stem) ? [] : inUnit;
}

/** Two letters may as well be two gauges or two layers, and a word nobody knows anything: they are read, and told. */
export function isDoubtfulSeries(labels: readonly string[]): boolean {
  const names = labels.map((label) => foldedText(plainDigits(label)));
  if (areOrdinals(names)) return false;
  const stem = stemOf(names);
  return stem !== undefined && ((names.length === 2 && areLetters(names)) || !countsReadings(stem));
}

const roleOf = roleReader(gaugeVocabulary);
const readingRoles: ReadonlySet<GaugeRole> = new Set(['reading', 'point', 'repeat']);

/** What each of the names begins or ends with; undefined where they are no series. */
function stemOf(names: readonly string[]): string | undefined {
  const parts = [number, letter()].map((form) => names.map((name) => partsOf(name, form)));
  const [counted = [], lettered = []] = parts;
  const [part] = areCounted(counted) ? counted : areLettered(lettered) ? lettered : [];
  return part?.stem.replace('\0', ' ').trim();
}

/** A car, a person, a day, a layer, a figure of the readings. */
function countsOther(stem: string): boolean {
  if (/^[a-z]?$/u.test(stem)) return false;
  const role = roleOf(stem);
  if (role !== undefined) return !readingRoles.has(role);
  return namesStatistic(stem) || noReadings.test(stem) || namesVisit(`${stem} 1`);
}
const noReadings =
  /^(?:clear ?(?:coat)?|klarlack|base ?(?:coat)?|basislack|primer|fuller|filler|old|alt|tol|ref(?:erence|erenz)?|offset|sd|master|day|tag|week|woche|month|year)$/u;

/** Nothing but the unit, a letter, or a word for readings and places; of another script none is told. */
const countsReadings = (stem: string): boolean =>
  countedColumn(`${stem} 1`) !== undefined || /^(?:\p{L}?|ort|ist|\P{Script=Latin}+)$/u.test(stem);

function isInUnit(cell: Cell | undefined): boolean {
  if (cell === undefined || namesStatistic(cell.label)) return false;
  if (cell.role !== undefined && cell.role !== 'layer' && cell.role !== 'u' && cell.role !== 'v')
    return false;
  return lostUnit(cell.text) !== undefined || (cell.unit !== undefined && cell.unit !== 'other');
}

/** `Reading A (?m)`: the unit whose µ was lost on the way. */
const lostUnit = (text: string): RegExpExecArray | undefined => {
  const match = /^(.*?)[\s_]*[([]?(\S{2,4}?)[)\]]?$/u.exec(text);
  return match !== null && isLostMicro(match[2] ?? '') ? match : undefined;
};

const nameOf = (cell: Cell | undefined): string =>
  (lostUnit(cell?.text ?? '')?.[1] ?? cell?.label ?? '').trim();

type Counted = { readonly stem: string; readonly count: string };

function partsOf(name: string, form: RegExp): Counted | undefined {
  const [, before = '', count = '', behind = ''] = form.exec(name) ?? [];
  return count === '' ? undefined : { stem: `${before.trim()}\0${behind.trim()}`, count };
}

const number = /^(\D*?)[\s_.#°º()-]*0*(\d{1,3})[\s.)]*(\D*)$/u;
const letter = once(
  () =>
    /^((?:.*[\s_.(-])?|[\p{Script=Han}\p{Script=Katakana}]*)([a-z])[.)]?([\p{Script=Han}\p{Script=Katakana}]*)$/u,
);

const areCounted = (parts: readonly (Counted | undefined)[]): boolean =>
  areOfOne(parts) && countUp(parts.map((part) => Number(part?.count)));

const areLetters = (names: readonly string[]): boolean =>
  areLettered(names.map((name) => partsOf(name, letter())));

function areLettered(parts: readonly (Counted | undefined)[]): boolean {
  const codes = parts.map((part) => part?.count.charCodeAt(0) ?? 0);
  return areOfOne(parts) && codes.every((code, k) => code === (codes[0] ?? 0) + k);
}

const areOfOne = (parts: readonly (Counted | undefined)[]): boolean =>
  parts.every((part) => part !== undefined && part.stem === parts[0]?.stem);
