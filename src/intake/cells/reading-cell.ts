/**
 * What one cell of a reading column says: a thickness, no reading and why, or what is wrong with it.
 *
 * In this order: a word or sign for no reading; a number, else a date or nothing that is known; what
 * stands behind the number; a number that devices write for no reading; what its marks mean; whether
 * it can be a film.
 */
import type { Micrometres } from '../../base/units.ts';
import { plainCell } from './cell-text.ts';
import { excluded, type ReadingCell, sentinel, wrong } from './cell-verdict.ts';
import type { DecimalDecision } from './decimal.ts';
import { type DeclaredNumbers, declaredReason } from './declared-numbers.ts';
import {
  bracketsOf,
  isSign,
  type MarkerLegend,
  markerMeaning,
  remarkIn,
  splitTail,
} from './markers.ts';
import { notReading } from './not-readings.ts';
import { longestNumber, type NumberShape, numberOf, numberShape, shapeOf } from './numbers.ts';
import { provesOwnUnit } from './own-unit.ts';
import { judged, unprovedSign } from './plausible-reading.ts';
import { quoted } from './quoted.ts';
import { sentinelOf } from './sentinels.ts';
import { settleNumber } from './settled-number.ts';
import { calendarKind } from './spreadsheet-dates.ts';
import { substrateWord } from './substrate-word.ts';
import {
  isLostMicro,
  largestIn,
  micrometresPer,
  otherUnitHint,
  type TableUnit,
  unitNamed,
  unitSign,
} from './unit.ts';

export type NumberRules = {
  /** The unit of the column, or of a number that names none. */
  readonly unit: TableUnit;
  readonly decimal: DecimalDecision;
  /** More than this no gauge for vehicle paint shows. */
  readonly largest: Micrometres;
  /** Whether a cell may name another unit than `unit`, where nothing but the cells names one. */
  readonly cellsNameUnits?: boolean;
  /** Whether a few cells name another unit among many of the column’s, and prove it. */
  readonly ownUnits?: boolean;
  /** Numbers below 0 are few among the readings, so that they speak of their own cells only. */
  readonly fewNegative?: boolean;
  /** Whether -1 is what a program wrote for no value. */
  readonly minusOneIsNone?: boolean;
  /** Numbers that the file itself says are no readings. */
  readonly declared?: DeclaredNumbers;
  /** What signs behind numbers mean, where the file explains them. */
  readonly legend?: MarkerLegend;
};

export function readReadingCell(text: string, rules: NumberRules): ReadingCell {
  const plain = plainCell(text);
  const none = notReading(plain);
  if (none !== undefined) return excluded(none.class, none.reason);
  const explained = rules.legend?.get(bracketsOf(plain));
  const inside = explained === undefined ? undefined : /^[([](.*)[)\]]$/u.exec(plain)?.[1];
  if (inside !== undefined && numberShape(inside) !== undefined) {
    return explained === 'kept'
      ? readReadingCell(inside, rules)
      : excluded(
          'deleted',
          `${quoted(text)} stands in brackets, which the file explains as deleted`,
        );
  }
  const shape = shapeOf(plain);
  if (shape === undefined) return notANumber(text, plain);
  const number = numberOf(shape);
  const { unitText, marker } = splitTail(shape.suffix);
  if (marker !== '') {
    const told = markedNumber(text, marker, rules);
    if (told !== undefined) return told;
  }
  const unit = unitText === '' ? rules.unit : unitOfCell(text, unitText, number, rules);
  if (typeof unit !== 'string') return unit;
  const largest = largestIn(unit, rules.largest);
  const declared = rules.declared?.get(number);
  if (declared !== undefined) return excluded('error', declaredReason(text, declared));
  const written = sentinelOf(number, largest());
  if (written !== undefined) return sentinel(text, written);
  if (rules.minusOneIsNone === true && number === -1) {
    return excluded(
      'missing',
      `${quoted(text)} again and again is what programs write for no value`,
    );
  }
  if (shape.negative && number < 0 && rules.fewNegative !== true) return unprovedSign(text);
  if (shape.plusBehind && !rules.decimal.signsBehind && endsRange(shape, unit)) {
    return excluded('over-range', `${quoted(text)} means that much and more`);
  }
  const settled = settleNumber(text, { ...shape, suffix: unitText }, largest, rules.decimal);
  if (settled.value === undefined) return wrong('reading-ambiguous', settled.message, settled.hint);
  const meant = sentinelOf(settled.value, largest());
  return meant === undefined
    ? noted(judged(text, settled, unit, rules.largest), remarkIn(marker))
    : sentinel(text, meant);
}

const noted = (told: ReadingCell, note: string | undefined): ReadingCell =>
  told.kind === 'reading' && note !== undefined ? { ...told, note } : told;

/** `2000+`: a round number beyond usual paint, where a range ends. */
function endsRange({ whole, mark }: NumberShape, unit: TableUnit): boolean {
  const um = Number(whole) * micrometresPer[unit];
  return mark === '' && /0$/u.test(whole) && (unit !== 'um' || /00$/u.test(whole)) && um >= 500;
}

function notANumber(text: string, plain: string): ReadingCell {
  const calendar = calendarKind(plain);
  if (calendar !== undefined) {
    const number = calendar === 'date' ? '1.5' : '1:30';
    const message = `${quoted(text)} is a ${calendar}: a spreadsheet takes a number such as ${number} for one`;
    const hint = 'import the export anew with this column as text, or type the number of the gauge';
    return wrong('reading-became-date', message, hint);
  }
  const digits = /^[+-]?[\d.,]+$/u.test(plain) ? plain.replace(/\D/gu, '').length : 0;
  if (digits > longestNumber) {
    return wrong(
      'reading-not-a-number',
      `${quoted(text)} has ${digits} digits, more than any number that a gauge shows`,
      'write the number as the gauge shows it; are several of them in one?',
    );
  }
  const hint = namesMetal(plain)
    ? 'leave the number alone in its cell, and put the metal into a column "substrate"'
    : 'correct the cell, or leave it empty where there is no reading';
  return wrong('reading-not-a-number', `${quoted(text)} is not a number`, hint);
}

/** `NFe 112`, `Fe: 101` */
function namesMetal(text: string): boolean {
  const [, metal = '', number = ''] = /^(\p{L}[\p{L}-]{0,14})[\s:]+(\d.*)$/u.exec(text) ?? [];
  return substrateWord(metal) !== undefined && numberShape(number) !== undefined;
}

/** What a marker makes of its number; undefined if the number stands. */
function markedNumber(
  text: string,
  marker: string,
  { legend }: NumberRules,
): ReadingCell | undefined {
  const explained = legend?.get(marker);
  const meaning = explained ?? markerMeaning(marker);
  if (meaning === 'kept') return undefined;
  if (explained === 'deleted') {
    return excluded(
      'deleted',
      `${quoted(text)} is marked ${marker}, which the file explains as deleted`,
    );
  }
  if (meaning !== undefined) {
    const says = meaning === 'deleted' ? 'is marked as deleted' : `is marked as ${meaning}`;
    return excluded(meaning, `${quoted(text)} ${says}`);
  }
  if (!isSign(marker)) return notANumber(text, text);
  const message = `${quoted(text)} carries ${quoted(marker)}, and nothing says whether the reading counts`;
  return wrong(
    'reading-ambiguous',
    message,
    'remove the mark, or empty the cell if it was deleted',
  );
}

/** The unit that a cell names, or why it cannot stand. */
function unitOfCell(
  text: string,
  unitText: string,
  value: number,
  { unit, cellsNameUnits = false, ownUnits = false }: NumberRules,
): TableUnit | ReadingCell {
  if (isLostMicro(unitText) && unit === 'um') return unit;
  const named = unitNamed(unitText);
  if (named === unit) return unit;
  const mayProve = ownUnits || cellsNameUnits;
  if (named !== undefined && named !== 'other' && mayProve && provesOwnUnit(value, named, unit))
    return named;
  if (named !== undefined && named !== 'um' && named !== 'mil') {
    const message = `${quoted(text)} is in a unit that is not one of film thickness`;
    return wrong('unit-unknown', message, otherUnitHint(unitText));
  }
  if (named !== undefined && cellsNameUnits) return named;
  return wrong(
    'unit-conflict',
    `${quoted(text)} names another unit than ${unitSign[unit]}, the unit of its column`,
    'name the unit in one place, or in every cell alike',
  );
}
