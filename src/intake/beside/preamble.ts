/**
 * What stands above and between the rows of a file and says something of them: a unit, a vehicle, a panel, in a
 * line or a comment of its own.
 */

import { once } from '../../base/kept.ts';
import { numberShape } from '../cells/numbers.ts';
import { unitNamed } from '../cells/unit.ts';
import {
  namesUnit,
  needsPanel,
  plain,
  type Reader,
  type State,
  type TableStart,
} from '../parts/section-state.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf } from '../tables/table.ts';
import { tellRowAbove } from './lines-beside.ts';
import { filledCells, givenBy, loneText, panelSaid, type Saying, sayingOf } from './sayings.ts';
import { bareUnit, isThickness, isUnitAlone } from './unit-lines.ts';

/** `# unit: µm`: a comment above the table is no row, and may name its unit. */
export function hearComments({ header, line }: TableStart, state: State, { source }: Reader): void {
  const end = header?.start ?? mostAbove;
  let start = 0;
  for (const [at, text] of source.text.slice(0, end).split('\n').entries()) {
    const row: Row = { cells: [text.replace('#', ' ')], line: at + 1, start, quoted: false };
    start += text.length + 1;
    if (!text.startsWith('#') || row.line >= line) continue;
    const saying = sayingOf(row) ?? unitSaying(row);
    if (saying !== undefined && namesUnit(saying)) hear(row, saying, state);
  }
}

/** How far into a file without a header its comments are looked for. */
const mostAbove = 20_000;

export function readPreamble(row: Row, state: State, reader: Reader): void {
  const { isPanel } = reader.context;
  if (tellRowAbove(row, state.layout, reader)) return;
  const saying = sayingOf(row);
  if (saying !== undefined) hear(row, saying, state);
  const unit = saying !== undefined && namesUnit(saying) ? undefined : unitSaying(row);
  if (unit !== undefined) hear(row, unit, state);
  const said = saying === undefined ? undefined : panelSaid(saying, isPanel);
  if (said !== undefined) namePanel(said, row, state, reader);
  if (saying !== undefined || unit !== undefined) return;
  const text = loneText(row);
  if (text !== undefined) state.titles.add(plain(text));
  if (text !== undefined && isPanel(text)) namePanel(text, row, state, reader);
  else state.above.push(row);
}

/** Of two lines that name panels, with no reading between them, nobody knows which is meant. */
function namePanel(panel: string, row: Row, state: State, { findings, ...where }: Reader): void {
  const before = state.given.panel;
  if (before !== null && before !== panel && needsPanel(state.layout)) {
    findings.add('error', 'panel-ambiguous', () => ({
      message: `lines above the readings name two panels, "${before}" and "${panel}"`,
      at: placeOf(where, row, filledCells(row)[0] ?? 0),
      hint: 'write the panel of each reading in a column of its own',
    }));
  }
  state.given = { ...state.given, panel };
}

/**
 * `Unit µm`, `All readings in mil`, `Paint report [µm]`: a title that ends in the unit; a unit alone; or the unit
 * as one of several sayings of a line: `Serial: 42, Unit: µm`.
 */
function unitSaying(row: Row): Saying | undefined {
  const among = filledCells(row).flatMap((column) =>
    (row.cells[column] ?? '')
      .slice(0, 2000)
      .split(/[,;|*]/u)
      .map((part) => sayingOf({ ...row, cells: [part] }))
      .flatMap((saying) =>
        saying !== undefined && namesUnit(saying) ? [{ ...saying, column }] : [],
      ),
  );
  if (among[0] !== undefined) return { ...among[0], value: among[0].value.trim() };
  const said = unitInPart(row);
  if (said !== undefined) return said;
  const [column = 0, second] = filledCells(row);
  const text = cellText(row, column);
  // `paint check, microns` where the comma parts cells.
  const last = cellText(row, second ?? -1);
  if (filledCells(row).length === 2 && isThickness(last) && /^\D*\p{L}\D*$/u.test(text)) {
    return { key: 'unit', value: last, column: second ?? column };
  }
  const alone = filledCells(row).length === 1 ? unitNamed(text) : undefined;
  if (alone === 'um' || alone === 'mil') return { key: 'unit', value: text, column };
  const whole = inWords(row) ?? text;
  const value = [wordAtEnd(), partAtEnd()].map((form) => form.exec(whole)?.[1]).find(isThickness);
  return value === undefined || isDenied().test(whole) ? undefined : { key: 'unit', value, column };
}

/** `Values not in µm`. */
const isDenied = once(
  () => /(?<!\p{L})(?:not|never|nicht|keine?|pas|non|no|niet|nie|не)\s(?:\p{L}{1,3}\s)?\S+$/iu,
);

/**
 * `all um, gauge zeroed on plate`, `Tarn Wexel, 26/11/2026, um`: one part of a line says the unit of all readings, and
 * no other another. Behind a number it may be the unit of that, as of a tolerance.
 */
function unitInPart(row: Row): Saying | undefined {
  const said = filledCells(row).flatMap((column) => {
    const text = cellText(row, column).slice(0, 2000);
    const before = cellText(row, column - 1);
    return text.split(/[,;|]/u).flatMap((part, k, parts) => {
      const value = unitOfPart(part.trim(), (parts[k - 1] ?? before).trim());
      return value === undefined ? [] : [{ key: 'unit', value, column }];
    });
  });
  return new Set(said.map(({ value }) => unitNamed(value))).size === 1 ? said[0] : undefined;
}

function unitOfPart(part: string, before: string): string | undefined {
  if (isThickness(part))
    return numberShape(before) === undefined && before !== '' ? part : undefined;
  const value = ofReadings().test(part) ? wordAtEnd().exec(part)?.[1] : undefined;
  return isThickness(value) && !isDenied().test(part) ? value : undefined;
}

/** `here are the readings, all in microns:` where the comma parts cells: a sentence without a number. */
function inWords(row: Row): string | undefined {
  const cells = filledCells(row).map((k) => cellText(row, k));
  const isOne =
    cells.length > 1 &&
    cells.every((cell) => /^\D*\p{L}\D*$/u.test(cell)) &&
    cells.some((cell) => /\p{L}\s+\p{L}/u.test(cell));
  return isOne ? cells.join(', ') : undefined;
}

/** `Readings in µm:`, `Paint report [µm]`. */
const wordAtEnd = once(
  () =>
    /(?:(?:単位|单位|單位|단위)\s*|(?<!\p{L})(?:units?|einheit|unit[ée]s?|unidad(?:es)?|unidade|unità|eenheid|enhet|enhed|jednostka|единица|in|en|em|w|v|i|в|all|alles?|readings?|values?|messwerte|werte|valeurs|valores|valori|waarden)\s+|[([（]\s*)([^\s()[\]（）]+?)\s*[)\]）]?[\s:.]*$/iu,
);
/** `Coating, mil`, `paint check - microns`: words, and the unit as the last part of them. */
const partAtEnd = once(() => /^\D*\p{L}\D*[,;:|–-]\s*([^\s,;:|–-]+)[\s:.]*$/u);

/** `All values in µm`, `* thickness in microns` below the rows of the file. */
export function unitOfAll(row: Row): Saying | undefined {
  const text = loneText(row) ?? '';
  if (isUnitAlone(row)) return { key: 'unit', value: bareUnit(row), column: 0 };
  if (!ofReadings().test(text)) return undefined;
  const last = /\S+$/u.exec(text)?.[0];
  const own = unitSaying(row);
  return own === undefined && isThickness(last) && !isDenied().test(text)
    ? { key: 'unit', value: last, column: filledCells(row)[0] ?? 0 }
    : own;
}

const ofReadings = once(
  () =>
    /^(?:all|alles?|tout|todo|tutto|toutes|tous|todas|todos|tutte|tutti|units?|einheit(?:en)?|unités?|values?|readings?|thickness(?:es)?|measurements?|messwerte|werte|schichtdicken?|dicken?|lackdicken?|valeurs|épaisseurs?|mesures|valores|espesor(?:es)?|medidas|valori|spessor[ei]|misure|waarden|laagdiktes?|hodnoty|měření|tloušťky|merania|hrúbky|wartości|pomiary|grubości|värden|mätvärden|værdier|verdier|måleværdier|måleverdier|arvot|mittaukset|értékek|mérések|değerler|ölçümler|vrijednosti|vrednosti|valorile|medições|leituras|значения|показания|замеры|dry film thickness|film thickness|coating thickness|paint thickness|dft)\s/iu,
);

/** Keeps a saying, and lets it settle what it names for the rows below. */
export function hear(row: Row, saying: Saying, state: State): void {
  const { key, value } = saying;
  state.metadata.push({ key, value, line: row.line });
  if (namesUnit(saying)) state.units.push({ row, saying });
  const given = givenBy(saying);
  if (given === undefined) return;
  state.given = { ...state.given, ...given };
  if (given.vehicle !== undefined && !state.layout.columns.has('vehicle')) {
    state.evidence.push(`line ${row.line} says vehicle ${given.vehicle}`);
  }
}
