/**
 * The unit of the readings, from a column's header, from the cells themselves or from an option.
 *
 * µm is written with U+00B5, U+03BC or U+339B, as `um`, as `µ` or `my` alone or as a word of some
 * language; 1 mil is one thou. Millimetres, inches, centimetres and nanometres are read where the numbers prove them
 * (`coarse-units.ts`). A unit with a factor (`1/100 mm`) is known for what it is and refused. A micro sign that a code
 * page has lost leaves `?m`: it is known as lost, and is no unit until the user names one.
 */
import { once } from '../../base/kept.ts';
import { isAsciiOnly, withoutMarks } from '../../base/letters.ts';
import {
  MICROMETRES_PER_MIL,
  type Micrometres,
  micrometres,
  milToMicrometres,
} from '../../base/units.ts';

export type ReadingUnit = 'um' | 'mil';
/** What the readings of a table may be written in. */
export type TableUnit = ReadingUnit | 'mm' | 'inch' | 'cm' | 'nm';
/** `other`: a unit of length, and not one of film thickness as gauges show it. */
export type NamedUnit = TableUnit | 'other';

/** 1 inch = 25.4 mm exactly (1959; ISO 80000-3). */
export const micrometresPer = {
  um: 1,
  mil: MICROMETRES_PER_MIL,
  mm: 1000,
  inch: 1000 * MICROMETRES_PER_MIL,
  cm: 10_000,
  nm: 0.001,
} as const;
export const unitSign = {
  ...{ um: 'µm', mil: 'mil', mm: 'mm', inch: 'inch' },
  ...{ cm: 'cm', nm: 'nm' },
} as const;

/** Digits that a reading can have: what a factor of 1000 adds behind them is no digit of it. */
const digitsKept = 12;

/** A number of a table in µm. */
export function inMicrometres(value: number, unit: TableUnit): Micrometres {
  if (unit === 'um' || unit === 'mil')
    return unit === 'mil' ? milToMicrometres(value) : micrometres(value);
  return micrometres(Number((value * micrometresPer[unit]).toPrecision(digitsKept)));
}

/** The largest number that can be a reading, in the unit of the column or in another that a cell names. */
export type Largest = (own?: TableUnit) => number;

/** More than `largest` no gauge for vehicle paint shows; such a value is a slip of unit or key. */
export const largestIn =
  (unit: TableUnit, largest: Micrometres): Largest =>
  (own = unit) =>
    largest / micrometresPer[own];

const spellings: Readonly<Record<NamedUnit, string>> = {
  um: `µm µ um ums my mym mic mics micron microns micra micrometre micrometres micrometer micrometers mikron
    mikrons mikrometer mikrometern micromètre micromètres micrómetro micrómetros micrometro micrometri
    micras mikrometr mkm мкм микрон микрона
    микронов микрометр микрометров 微米 マイクロメートル マイクロメーター ミクロン µ-meter micron(s)
    micro-m µmeter µmetre 10^-6m 10⁻⁶m 10-6m 1e-6m ×10^-6m x10^-6m ×10⁻⁶m x10⁻⁶m 마이크로미터 마이크론
    1/1000mm 1/1000-mm 0.001mm 0,001mm mm/1000 1e-3mm 10^-3mm 10⁻³mm 10-3mm ×10^-3mm x10^-3mm ×10⁻³mm x10⁻³mm
    mm×10^-3 mmx10^-3 mm×10⁻³ mmx10⁻³ mm×0.001 mmx0.001 ×0.001mm x0.001mm tausendstel-mm
    mikrometre mikrometri mikrometriä mikrony mikronů mikronów mikrometry mikrometrů mikrometrów microni micrometru
    micrômetro micrômetros μικρά μικρόμετρο μικρόμετρα ميكرون ميكرومتر مايكرون ميكرومتر مايكرومتر מיקרון מיקרונים מיקרומטר`,
  mil: `mil mils mil(s) thou thous 密耳 ミル мил 1/1000in 1/1000inch 1/1000" 1/1000″ 1/1000-inch 0.001in 0.001inch 0.001"
    0.001″ 0,001" in/1000 inch/1000 1e-3in 10^-3in 10⁻³in 10^-3inch ×10^-3in x10^-3in ×10⁻³in x10⁻³in 1/1000-zoll 1/1000zoll`,
  mm: `mm millimetre millimetres millimeter millimeters millimètre millimètres milímetro milímetros
    millimetro millimetri мм 毫米 ミリ ミリメートル ㎜`,
  inch: 'inch inches in ″ zoll pouce pouces pulgada pulgadas pollice pollici duim 英寸 インチ',
  cm: 'cm centimetre centimetres centimeter centimeters centimètre centimètres centímetro centímetros см 厘米 ㎝',
  nm: 'nm nanometre nanometres nanometer nanometers nanomètre nanomètres nanómetro nanómetros нм 纳米 ㎚',
  other: 'µin microinch microinches',
};

const units = ((): ReadonlyMap<string, NamedUnit> => {
  const made = new Map<string, NamedUnit>();
  for (const unit of Object.keys(spellings) as NamedUnit[]) {
    for (const word of alike(spellings[unit]).split(/\s+/u)) made.set(word, unit);
  }
  return made;
})();

/** One spelling for what looks alike: both micro signs, squared signs, wide letters, case, accents. */
function alike(text: string): string {
  const plain = isAsciiOnly(text) ? text : withoutMarks(text.normalize('NFKD'));
  return plain.toLowerCase();
}

const plainWord = (word: string): string => alike(word).replace(/\s+/gu, '').replace(/\.$/u, '');

/** The unit a word names, or undefined for a word that names none. */
export const unitNamed = (word: string): NamedUnit | undefined =>
  word === '' || word.length > 24 ? undefined : units.get(plainWord(word));

/**
 * A micro sign and its m after the sign was lost: `?m` where a program that knows no µ wrote the
 * file, U+FFFD where its bytes were read in a code page that has none there, a letter where that
 * page has another one in its place.
 */
export const isLostMicro = (text: string): boolean =>
  /^[([]?(?:\?{1,2}|\ufffd{1,3}|[æÆｵÊжВ¦])m[)\]]?$/u.test(text.trim());

const otherUnitHints: ReadonlyMap<string, string> = new Map([
  ['mm', '0.102 mm are 102 µm: multiply the readings by 1000 and name the unit µm'],
  ['nm', '102000 nm are 102 µm: divide the readings by 1000 and name the unit µm'],
  ['cm', '0.0102 cm are 102 µm: multiply the readings by 10000 and name the unit µm'],
  ['in', '0.004 inch are 4 mil: multiply the readings by 1000 and name the unit mil'],
]);

/** What to do about a length that is not one of film thickness. */
export function otherUnitHint(text: string): string {
  if (scaledUnit(text) !== undefined) {
    return 'a unit with a factor: turn the readings into µm or mil in the export';
  }
  // `µm, offset 12`: what else the line says may change the numbers.
  const [, first = '', rest = ''] = /^\s*(\S+?)[,;]?\s+(\S.*)$/u.exec(text) ?? [];
  const unit = unitNamed(first);
  if (unit === 'um' || unit === 'mil') {
    return `"${rest}" beside the unit is not understood: write it in a line of its own, if it changes no reading`;
  }
  const word = plainWord(text);
  const size = /^(?:mm|milli|mili|мм|毫米|ミリ)/u.test(word)
    ? 'mm'
    : /^(?:nm|nano|нм|纳)/u.test(word)
      ? 'nm'
      : /^(?:cm|centi|см|厘)/u.test(word)
        ? 'cm'
        : /^(?:in|zoll|pou|pul|pol|duim|英寸|″|イ)/u.test(word)
          ? 'in'
          : '';
  return otherUnitHints.get(size) ?? 'readings are taken in µm or mil';
}

const named = '(?:[µμu]m|micron|mm|mils?|nm|in(?:ch)?)(?![\\p{L}])';
const scaled = once((): readonly RegExp[] => [
  new RegExp(`[x×*]\\s*(?:\\d[\\d.,/^]*)\\s*${named}`, 'iu'),
  new RegExp(`(?<![\\p{L}])${named}\\s*[x×*/]\\s*10`, 'iu'),
  new RegExp(`1\\s*/\\s*10+\\s*${named}`, 'iu'),
  new RegExp(`[([]\\s*(?:0[.,]0*1|10+)\\s*${named}\\s*[)\\]]`, 'iu'),
  /(?<![\p{L}])(?:[µμu]|micro-?)in(?:ch|ches)?(?![\p{L}])/iu,
]);

/** What stands before a unit with a factor that is µm or mil all the same: a thousandth of a mm or an inch. */
const exactBehind = /^(.*?)(?:^|[\s([_,:;]+)((?:[x×*]\s*)?(?:\d|mm|in)[^()[\]]*)[)\]]?$/isu;

/** `Dicke (1/1000 mm)`, `Thickness, 0.001"`: exactly µm, and exactly mil. */
function exactUnit(text: string): LabelledUnit | undefined {
  const [, label = '', unitText = ''] = exactBehind.exec(text) ?? [];
  const unit = unitNamed(unitText);
  return unit === 'um' || unit === 'mil' ? labelled(label, unit, unitText) : undefined;
}

/** A number by a sign of multiplication or a bracket, or an inch: the forms take long to be compiled. */
const mayBeScaled = (text: string): boolean =>
  (/\d/u.test(text) && /[x×*/([]/iu.test(text)) || /(?:[µμu]|micro-?)in/iu.test(text);

/** `x0.1 µm`, `1/100 mm`, `µm x 10`, `µin`: a unit with a factor, in which no reading is taken. */
function scaledUnit(text: string): LabelledUnit | undefined {
  const at = scaled()
    .map((form) => text.search(form))
    .filter((index) => index !== -1);
  if (at.length === 0) return undefined;
  const from = Math.min(...at);
  const label = text.slice(0, from).replace(/[\s([,;:]+$/u, '');
  return { label, unit: 'other', unitText: text.slice(from).replace(/[)\]]+$/u, '') };
}

export type LabelledUnit = {
  readonly label: string;
  readonly unit?: NamedUnit;
  readonly unitText?: string;
};

/** `Thickness (µm)`, `reading_um`, `Dicke in µm`, `bonnet [mil]`, `µm 1`, `µm` → the name without its unit, and the unit. */
export function splitUnit(header: string): LabelledUnit {
  const text = header.trim();
  const factor = mayBeScaled(text) ? (exactUnit(text) ?? scaledUnit(text)) : undefined;
  if (factor !== undefined) return factor;
  const alone = unitInText(text);
  if (alone !== undefined) return { label: '', unit: alone, unitText: text };
  const bracketed = /^([^([（【]*)[([（【]([^)\]）】]*)[)\]）】]$/u.exec(text);
  const inBrackets = bracketed === null ? undefined : unitNamed(bracketed[2] ?? '');
  if (bracketed !== null && inBrackets !== undefined) {
    return labelled(bracketed[1] ?? '', inBrackets, bracketed[2] ?? '');
  }
  const ofAll = bracketed === null ? undefined : unitOfAll(bracketed[2] ?? '');
  if (ofAll !== undefined) return labelled(bracketed?.[1] ?? '', ofAll.unit, ofAll.text);
  // The micro sign is part of no word: `厚さμm`, `Dickeµm`.
  const glued = /(?:[^\0-\x7f][Mm]|㎛)$/u.test(text)
    ? /^(.*[^\s([_\-/,:;])([µμ]m|㎛)$/iu.exec(text)
    : null;
  if (glued !== null) return labelled(glued[1] ?? '', 'um', glued[2] ?? '');
  const last = /[_\s\-/,:;]([^_\s\-/,:;]+)$/u.exec(text);
  const trailing = last === null ? undefined : unitInText(last[1] ?? '');
  if (last !== null && trailing !== undefined) {
    return labelled(text.slice(0, last.index), trailing, last[1] ?? '');
  }
  const [, first = '', number = ''] = mayEndInPoint.test(text)
    ? (pointBehind(isAsciiOnly(text) ? '[A-Z]' : '\\p{Lu}').exec(text) ??
      /^([µμu]m|mil)(\d{1,2})$/iu.exec(text) ??
      [])
    : [];
  const leading = unitInText(first);
  return leading === undefined ? { label: text } : labelled(number, leading, first);
}

const pointBehind = (capital: string): RegExp =>
  new RegExp(`^([^\\s_]+)[\\s_]+[#(]?((?:n\\s?[°º.o]\\s?)?\\d+|${capital})\\)?$`, 'u');

/** A number or a capital letter at the end: few headers have one, and the forms take long to be compiled. */
const mayEndInPoint = /(?:[\dA-Z]|[^\0-\x7f])\)?$/u;

/** Words that say of which numbers a unit is, in brackets behind the last name or the first. */
const wordsOfAll = new Set(
  `all each both in en columns values readings points alle allen jeweils je spalten werte messwerte tout tous
  toutes les valeurs mesures colonnes todo todos todas las los valores medidas tutti tutte le i valori misure
  wszystkie w alla i все в значения unit units unite unites unidad unidades unidade unita einheit eenheid enhet
  jednostka unité unités unità единица 単位 单位 單位 단위`.split(/\s+/u),
);

const wordEnd = /[\s,:：]+/u;

export const saysAll = (text: string): boolean =>
  text.split(wordEnd).every((word) => wordsOfAll.has(word.toLowerCase()));

/** `T4 (all µm)`, `P3 (alle Werte in µm)`, `T2 [µm each]`, `Panel (unit: µm)`: one unit among such words. */
function unitOfAll(text: string): { readonly unit: NamedUnit; readonly text: string } | undefined {
  if (text.length > 60) return undefined;
  const words = text.trim().split(wordEnd);
  const at = words.findIndex((word) => !wordsOfAll.has(word.toLowerCase()));
  const unit = unitNamed(words[at] ?? '');
  const others = words.toSpliced(at, 1).join(' ');
  if (unit === undefined || words.length < 2 || !saysAll(others)) return undefined;
  return { unit, text: words[at] ?? '' };
}

/** Words that outside brackets are seldom units. */
const everydayWords = new Set(['my', 'in']);
const unitInText = (text: string): NamedUnit | undefined =>
  everydayWords.has(text.trim().toLowerCase()) ? undefined : unitNamed(text);

const labelled = (label: string, unit: NamedUnit, unitText: string): LabelledUnit => ({
  label: label.replace(/(?:\s+[EeIi][Nn]\s*|[_\s\-/,:;]+)$/u, '').trim(),
  unit,
  unitText: unitText.trim(),
});
