/**
 * Rows that something in them speaks against: a note or a cell that is not read (`do not use`, `E07`), a sign or a word at the panel
 * (`// bonnet`, `bonnet?`, `bonnet old`), a point named by a word where the others have numbers (`prev.`).
 * They may be readings all the same, so they are read, and told.
 */

import { once } from '../../base/kept.ts';
import { hasNumber } from '../../base/letters.ts';
import { foldedText, speaksAgainst, wholeWords } from '../cells/doubting-words.ts';
import { meansNoReading } from '../cells/words.ts';
import type { Findings } from '../findings.ts';
import { columnTexts } from '../rows/column-texts.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { known } from '../statistics/word-test.ts';
import { placeOf, type Table } from '../tables/table.ts';

export function tellDoubtedRows(table: Table, findings: Findings): void {
  tellNotes(table, findings);
  tellMarkedPanels(table, findings);
  tellOddPoints(table, findings);
  tellOddTimes(table, findings);
}

function tellNotes(table: Table, findings: Findings): void {
  const { header, unknown } = table.layout;
  const isAgainst = known(speaksAgainst);
  for (const [column, { role, text: heading }] of header.entries()) {
    const isNote = role === 'note';
    if (!isNote && !unknown.includes(column)) continue;
    for (const row of table.rows) {
      const text = cellText(row, column);
      // A lone mark in a column that is not read may mean anything.
      if (isNote ? text === '' : !telling().test(text)) continue;
      if (!isAgainst(text)) continue;
      findings.add('warning', 'reading-doubted', () => ({
        message: `the reading is kept, and its ${isNote ? 'note' : `"${heading}"`} may say otherwise: "${text}"`,
        at: placeOf(table, row, column),
        hint: 'if it does not count, take the row out',
      }));
    }
  }
}

/** A word, or a code of an error as gauges show it. */
const telling = once(() => /\p{L}{4}|^e(?:rr?)?[\s.:#_-]*\d{1,4}$/iu);

/** A sign before, behind or around a name, as people put a row out. */
const signed = once(
  () =>
    /^[^\p{L}\p{N}\s"'([{<]+\s*(?=\p{L})|^\(.*\)$|^\[.*\]$|^\{.*\}$|^<.*>$|(?<=\p{L}\s*)[!?*~✗✘☒×†‡§]+$/u,
);
const stateOfPanel = wholeWords(
  `not|no longer|ex|old|former|previous|prev|before|after|wrong|deleted|void|invalid|ignore|skip|skipped|rem|
  repeat|repeated|again|copy|duplicate|test|x|cancelled|struck|nicht|kein|keine|alt|alte|alter|falsch|
  geloscht|ungultig|vorher|nachher|wiederholung|kopie|ancien|ancienne|vieux|faux|supprime|viejo|vieja|
  antiguo|borrado|vecchio|vecchia|cancellato|oud|oude|verwijderd|ref|reference|referenz|limit|target|
  nominal|spec|other car|another car|anderes auto`,
);
/** Nothing that `signed` looks for: it takes long to be compiled. */
const isUnsigned = /^[A-Za-z0-9](?:.*[A-Za-z0-9])?$/su;
const isSigned = (name: string): boolean => !isUnsigned.test(name) && signed().test(name);

/** Every letter of a name was lost, so that two panels may have it. */
const lostName = /^[?\ufffd\s]+$/u;

/** Where every panel has such a mark it is how they are called. */
function tellMarkedPanels(table: Table, findings: Findings): void {
  const names = panelNames(table);
  for (const [name, { row, column }] of names) {
    if (!lostName.test(name)) continue;
    findings.add('error', 'character-lost', () => ({
      message: `"${name}" was a panel’s name: its letters were lost before the file came here`,
      at: placeOf(table, row, column),
      hint: 'export the file again as UTF-8, or write the name anew',
    }));
  }
  // Of all at once first: a pattern that is asked a second time is compiled anew.
  const maySay = stateOfPanel.test(foldedText([...names.keys()].join('\n')));
  const isMarked = (name: string): boolean =>
    isSigned(name) || (maySay && stateOfPanel.test(foldedText(name)));
  const marked = [...names].filter(([name]) => !lostName.test(name) && isMarked(name));
  if (marked.length === names.size) return;
  for (const [name, { row, column }] of marked) {
    findings.add('warning', 'reading-doubted', () => ({
      message: `"${name}" is read as it stands: a sign or word at the panel may mean that it does not count`,
      at: placeOf(table, row, column),
      hint: 'if so, take its rows out; else call the panel as the others are called',
    }));
  }
}

type Cell = { readonly row: Row; readonly column: number };

/** Each name of a panel where it stands first: in the rows, or above the columns. */
function panelNames({ layout, header, rows }: Table): ReadonlyMap<string, Cell> {
  const names = new Map<string, Cell>();
  for (const { column, panel } of layout.readings) {
    if (header !== undefined && panel !== null) names.set(panel, { row: header, column });
  }
  const panelAt = layout.columns.get('panel');
  if (panelAt === undefined) return names;
  for (const [text, row] of firstRows(rows, panelAt)) {
    if (!names.has(text)) names.set(text, { row, column: panelAt });
  }
  return names;
}

/** Each text of a column, and the row where it stands first. */
function firstRows(rows: readonly Row[], column: number): ReadonlyMap<string, Row> {
  const firsts = new Map<string, Row>();
  for (const [text, { row }] of columnTexts(rows, column)) if (text !== '') firsts.set(text, row);
  return firsts;
}

/** Words for a place on a panel, which may well stand among numbers. */
const places = wholeWords(
  `edge|edges|centre|center|middle|mid|left|right|front|rear|back|top|bottom|upper|lower|inner|outer|
  inside|outside|corner|seam|shuts?|jamb|face|fold|lip|arch|sill|handle|mitte|kante|rand|ecke|links|rechts|vorn|
  vorne|hinten|oben|unten|innen|aussen|falz|milieu|bord|coin|gauche|droite|avant|arriere|haut|bas|
  centro|borde|esquina|izquierda|derecha|delante|detras|arriba|abajo|bordo|angolo|sinistra|destra|
  davanti|dietro|alto|basso|midden|hoek|voor|achter|boven|onder|srodek|brzeg|lewa|prawa|przod|tyl`,
);
const stateOfPoint = wholeWords(
  `old|prev|previous|before|last|ref|reference|referenz|norm|test|trial|deleted|wrong|void|x|vorher|alt|
  letzte|probe|falsch|geloscht|zinc|zink|primer|copy`,
);

/**
 * A name without a digit among numbers; among other words, one that says what it is. Where a column is called that of
 * the points, a lone word may be a place (an assumption); on several panels, as a state, or where no line of names says
 * that it is a point, it is a figure more often.
 */
function tellOddPoints(table: Table, findings: Findings): void {
  for (const column of pointColumns(table)) tellOddPointsIn(table, column, findings);
}

function tellOddPointsIn(table: Table, pointAt: number, findings: Findings): void {
  const firsts = firstRows(table.rows, pointAt);
  const areNumbers = [...firsts.keys()].some((text) => /^\d+$/u.test(text));
  const words = [...firsts].filter(
    ([text]) => !hasNumber(text) || (areNumbers && countedWord().test(text)),
  );
  const isBare = table.header === undefined;
  const numbers = firsts.size - words.length;
  for (const [text, row] of words) {
    const folded = foldedText(text);
    const isState = stateOfPoint.test(folded);
    const isPlace = places.test(folded);
    const isOnSeveral = !isPlace && numbers > 0 && panelsWith(table, text, pointAt) > 1;
    const amongNumbers = numbers > 0;
    if (!isState && (!amongNumbers || isPlace)) continue;
    if (amongNumbers && (isBare || isState || isOnSeveral)) {
      findings.add('error', 'panel-missing', () => ({
        message: `"${text}" stands among points that have numbers, and nothing says that it is one`,
        at: placeOf(table, row, pointAt),
        hint: 'take its rows out; or number the point as the others are, if it is one',
      }));
      continue;
    }
    findings.add('warning', 'reading-doubted', () => ({
      message: `"${text}" is read as a point of the panel, and may name something else`,
      at: placeOf(table, row, pointAt),
      hint: 'if it is no point of the vehicle, take its rows out',
    }));
  }
}

/** Beside columns of panels the first column numbers the points, by whatever name or none. */
function pointColumns({ layout }: Table): readonly number[] {
  const { columns, kind, header, readings } = layout;
  const named = columns.get('point') ?? columns.get('repeat');
  const isFree =
    kind === 'wide' &&
    layout.series !== 'point' &&
    header[0]?.role === undefined &&
    readings.every(({ column }) => column !== 0);
  return [...(named === undefined ? [] : [named]), ...(isFree ? [0] : [])];
}

/** `Value 2` among 1, 2, 3: no number of a point, however it ends. */
const countedWord = once(() => /^\p{L}{4,}[\s_-]?\d+$/u);

/** Where no line names the columns, a word among times of the day is the name of a figure. */
function tellOddTimes(table: Table, findings: Findings): void {
  const timeAt = table.layout.columns.get('time');
  if (timeAt === undefined || table.header !== undefined) return;
  for (const [text, row] of firstRows(table.rows, timeAt)) {
    if (hasNumber(text) || meansNoReading(text)) continue;
    findings.add('error', 'panel-missing', () => ({
      message: `"${text}" stands where the other rows have a time, and nothing says that its number is a reading`,
      at: placeOf(table, row, timeAt),
      hint: 'take its rows out; or leave that cell empty, if it is one',
    }));
  }
}

/** How many panels have a number at a point of this name. */
function panelsWith({ layout, rows }: Table, point: string, pointAt: number): number {
  const panelAt = layout.columns.get('panel') ?? -1;
  const own = rows.filter((row) => cellText(row, pointAt) === point);
  const panels = own.flatMap((row) =>
    layout.readings.flatMap(({ column, panel }) =>
      cellText(row, column) === '' ? [] : [panel ?? cellText(row, panelAt)],
    ),
  );
  return new Set(panels).size;
}
