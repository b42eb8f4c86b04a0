/**
 * Names that are one though they are written in two ways.
 *
 * é is one sign or two (Unicode normal forms C and D): both are the same name, and the spelling
 * that comes first in the file stays. Points `1`, `01` and `1.0` are one where all points are
 * numbers and no panel has two spellings of one number; otherwise they may be two, and stay apart. Digits of another
 * script are digits, `1.` and `2.` are numbers where all points are written so, and where every point is called `Point 1`, in whatever language, its number is its name.
 */

import { roleOfKey } from '../beside/sayings.ts';
import { plainDigits } from '../cells/digits.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';

/** Each name in the spelling that came first. */
export function createNames(): (text: string) => string {
  const firsts = new Map<string, string>();
  return (text) => {
    const same = firsts.get(text);
    if (same !== undefined) return same;
    const normal = text.normalize('NFC');
    const first = firsts.get(normal) ?? text;
    firsts.set(normal, first);
    firsts.set(text, first);
    return first;
  };
}

const pointNumber = /^0*(\d{1,15})(?:[.,]0+)?$/u;

/** How points are spelt: as the file does, or one spelling for each number. */
export function pointSpelling(
  tables: readonly Table[],
  findings: Findings,
): (text: string) => string {
  if (allAreNumbered(tables)) return (text) => numberedPoint(text)?.[2] ?? text;
  if (allAreOrdinals(pointsOf(tables))) return (text) => text.replace('.', '');
  const spell = spellingOfNumbers(tables, findings);
  return (text) => spell(isForeignNumber(text) ? plainDigits(text) : text);
}

/** `Точка 1`, `Punkt Nr. 2`. */
const numberedPoint = (text: string): RegExpExecArray | null =>
  text.length > 40 || /^\d/u.test(text)
    ? null
    : /^(\p{L}[\p{L}\s.°#№]*?)[\s.:#№-]*(\d{1,5})$/u.exec(text);

/** `1.`, `2.`, as lists are numbered. */
const ordinal = /^\d{1,5}\.$/u;

const allAreOrdinals = (texts: readonly string[]): boolean =>
  texts.length > 0 && texts.every((text) => ordinal.test(text));

const pointsOf = (tables: readonly Table[]): readonly string[] =>
  tables.flatMap(({ layout, rows }) => {
    const column = layout.columns.get('point');
    return column === undefined ? [] : [...columnTexts(rows, column).keys()];
  });

/** Whether every point of every table is a number behind a word that means a point. */
function allAreNumbered(tables: readonly Table[]): boolean {
  const texts = pointsOf(tables);
  return texts.length > 0 && texts.every((text) => isPointWord(numberedPoint(text)?.[1] ?? ''));
}
const isPointWord = (word: string): boolean =>
  word.length > 2 && roleOfKey(word.trim()) === 'point';

const isForeignNumber = (text: string): boolean =>
  !/^[\0-\x7f]*$/.test(text) && /^\p{Nd}+$/u.test(text);

function spellingOfNumbers(tables: readonly Table[], findings: Findings): (text: string) => string {
  const spellings = new Map<string, string>();
  const numbers = new Map<string, string>();
  let several: { row: Row; column: number; table: Table } | undefined;
  for (const table of tables) {
    const column = table.layout.columns.get('point');
    if (column === undefined) continue;
    for (const [text, { row }] of columnTexts(table.rows, column)) {
      if (text === '' || spellings.has(text)) continue;
      const number = pointNumber.exec(text)?.[1];
      if (number === undefined) return (point) => point;
      const first = numbers.get(number) ?? text;
      if (first !== text) several ??= { row, column, table };
      numbers.set(number, first);
      spellings.set(text, first);
    }
  }
  if (several === undefined) return (point) => point;
  const { row, column, table } = several;
  if (!collide(tables, spellings)) return (point) => spellings.get(point) ?? point;
  findings.add('warning', 'points-alike', () => {
    const text = cellText(row, column);
    const message = `"${text}" and "${spellings.get(text)}" are points of one panel, and are kept apart`;
    return {
      message,
      at: placeOf(table, row, column),
      hint: 'write them alike if they are one point',
    };
  });
  return (point) => point;
}

/** Whether some panel has a number in two spellings. */
function collide(tables: readonly Table[], spellings: ReadonlyMap<string, string>): boolean {
  const used = new Map<string, string>();
  return tables.some(({ layout, rows, given }) => {
    const [pointAt = -1, panelAt = -1, vehicleAt = -1] = (
      ['point', 'panel', 'vehicle'] as const
    ).map((role) => layout.columns.get(role));
    return rows.some(({ cells }) => {
      const text = (cells[pointAt] ?? '').trim();
      const [panel, vehicle] = [
        cells[panelAt] ?? given.panel ?? '',
        cells[vehicleAt] ?? given.vehicle ?? '',
      ];
      const key = `${vehicle.trim()}\0${panel.trim()}\0${spellings.get(text) ?? ''}`;
      const before = used.get(key) ?? text;
      used.set(key, before);
      return before !== text;
    });
  });
}
