/** Words and figures of the trade that settings files are filled in with, and what to write instead. */
import { shown } from '../base/rounding.ts';
import { MICROMETRES_PER_MIL } from '../base/units.ts';
import type { Advice } from './json/advised.ts';

const plain = (value: unknown): string =>
  typeof value === 'string' ? value.toLowerCase().replaceAll(/[^\p{L}\d]+/gu, '') : '';

const CLEAR = 'paint with a clear coat over the colour is "clear-over-base"';
const WHICH_SINGLE_STAGE =
  'one coat of colour without a clear is "single-stage-solid", or "single-stage-metallic" with flake';
const SOLID =
  'a solid colour says nothing of the clear: "clear-over-base" with one, "single-stage-solid" without';
const METALLIC =
  'a metallic colour says nothing of the clear: "clear-over-base" with one, "single-stage-metallic" without';
const MATTE = 'paint without gloss is "matte": it is never polished';
const UNKNOWN = 'where nobody knows, write "unknown"';

const finishWords: ReadonlyMap<string, string> = new Map([
  ...[
    '2k 2stage twostage 2coat twocoat doublestage basecoat baseclear basecoatclearcoat bcc cob',
    'clear clearcoat clearcoated coc clearoverbasecoat pearl tristage 3stage threestage factory',
  ].flatMap((words) => words.split(' ').map((word) => [word, CLEAR] as const)),
  ...'singlestage single 1k 1stage onestage direct directgloss ss enamel gelcoat'
    .split(' ')
    .map((word) => [word, WHICH_SINGLE_STAGE] as const),
  ...'solid solidcolour solidcolor uni flat'.split(' ').map((word) => [word, SOLID] as const),
  ...'metallic metalic flake mica'.split(' ').map((word) => [word, METALLIC] as const),
  ...'matt mat satin frozen'.split(' ').map((word) => [word, MATTE] as const),
  ...'nitro cellulose nitrocellulose laquer acryliclacquer'
    .split(' ')
    .map((word) => [word, 'a lacquer finish is "lacquer"'] as const),
  ...'na none dontknow notknown unsure'.split(' ').map((word) => [word, UNKNOWN] as const),
]);

/** `2k`, `basecoat`, `single stage`, `solid` …: the finish as it is called here. */
export const finishAdvice: Advice = (value) => finishWords.get(plain(value));

const yes = new Set(['yes', 'y', 'true', 'on', 'x', '1']);
const no = new Set(['no', 'n', 'false', 'off', '0']);

export const yesOrNoAdvice: Advice = (value) => {
  const word = typeof value === 'number' ? String(value) : plain(value);
  if (yes.has(word)) return 'write true, without quotes';
  if (no.has(word)) return 'write false, without quotes';
  return word === 'unknown' ? 'leave the key out when nothing is known' : undefined;
};

const DATE = /^\s*(\d{4}[-/.]\d{1,2}([-/.]\d{1,2})?|\d{1,2}[-/.]\d{1,2}[-/.]\d{2,4})\s*$/;

/** A date where days are counted: no clock is read, so the file says how many. */
export const daysAdvice: Advice = (value) =>
  typeof value === 'string' && DATE.test(value)
    ? 'a date is not read here: write how many days before the readings it was painted, such as 30'
    : undefined;

/** `31.3.2026`: a day that is one wherever it is read. With slashes it may be two different days. */
const DOTTED = /^\s*(\d{1,2})\.\s*(\d{1,2})\.\s*(\d{4})\s*$/;

export const dateAdvice: Advice = (value) => {
  if (typeof value !== 'string' || !DATE.test(value)) return undefined;
  const [, day = '', month = '', year = ''] = DOTTED.exec(value) ?? [];
  return year === ''
    ? 'write the year first, then month and day in two digits each'
    : `write "${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}"`;
};

const MEASURED = /^\s*(\d+(?:[.,]\d+)?)\s*(µm|μm|um|micron|microns|mil|mils|thou)\s*$/i;

/** Text with a unit where a number of micrometres is asked for: `45 µm`, `1.8 mil`. */
export const micrometreAdvice: Advice = (value) => {
  const [, digits = '', unit = ''] = typeof value === 'string' ? (MEASURED.exec(value) ?? []) : [];
  if (digits === '') return undefined;
  const number = Number(digits.replace(',', '.'));
  return /^(mil|thou)/i.test(unit)
    ? `write it in µm: ${shown(number * MICROMETRES_PER_MIL, 1)}`
    : `write the number alone: ${number}`;
};

const never = new Set(['none', 'never', 'nothing', 'no', 'original']);

/** Film taken before: nothing is 0, not known is "unknown". */
export const takenAdvice: Advice = (value) =>
  never.has(plain(value))
    ? 'write 0 where nothing was ever taken, "unknown" where nobody knows'
    : micrometreAdvice(value);

/** The most that a layer is by any practice; beyond it a total or a slipped point is likelier. */
const TOTAL_RATHER = 200;

export const layerAdvice: Advice = (value) =>
  typeof value === 'number' && value > TOTAL_RATHER
    ? `${value} µm is more than one layer of paint: the whole film, or ${value / 10} with the point slipped?`
    : micrometreAdvice(value);
