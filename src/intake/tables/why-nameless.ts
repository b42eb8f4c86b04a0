/** What is said of a file that no line of names stands in: rows of panels that nobody knows, keys, no number at all. */

import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { hasLetter } from '../../base/letters.ts';
import { numberShape } from '../cells/numbers.ts';
import { quoted } from '../cells/quoted.ts';
import { splitUnit } from '../cells/unit.ts';
import { readGaugeHeader } from '../header/layout.ts';
import { understand } from '../headerless/understood-line.ts';
import { lineFrom } from '../rows/lines.ts';
import type { Source } from '../rows/source.ts';
import type { Delimiter, Row } from '../rows/tokens.ts';
import { shellWord } from './nearest-header.ts';
import { placeOf } from './table.ts';

export type Lines = {
  readonly source: Source;
  readonly delimiter: Delimiter;
  readonly rows: readonly Row[];
  readonly isPanel: (label: string) => boolean;
};

export const whyNameless = (lines: Lines): Diagnostic | undefined =>
  unitInCaption(lines) ??
  unknownKeys(lines) ??
  unknownPanels(lines) ??
  unreadNote(lines) ??
  noNumbers(lines);

/** `Bonnet µm` above `1;112`: a panel and a unit in one line, and nothing but numbers below it. */
function unitInCaption(lines: Lines): Diagnostic | undefined {
  const { rows, isPanel } = lines;
  const caption = rows.find(({ cells: [first = '', ...more] }, k) => {
    const { label, unit } = splitUnit(first);
    const isAlone = unit !== undefined && more.every((cell) => cell.trim() === '');
    return isAlone && isPanel(label) && holdsNumbers(rows[k + 1]);
  });
  const [text = ''] = caption?.cells ?? [];
  const { label, unitText } = splitUnit(text);
  if (caption === undefined || unitText === undefined) return undefined;
  return error(
    'header-missing',
    `no line names the columns, and ${quoted(text.trim())} names a panel and a unit in one`,
    {
      at: placeOf(lines, caption, 0),
      hint: `above the numbers write the panel alone, ${quoted(label)}, and once above them all "Unit: ${unitText}"`,
    },
  );
}

const holdsNumbers = (row: Row | undefined): boolean => {
  const texts = (row?.cells ?? []).map((cell) => cell.trim()).filter((text) => text !== '');
  return texts.length > 0 && texts.every((text) => numberShape(text) !== undefined);
};

const fewest = 2;

/** `Station: bonnet` and `Wand: 112 µm`, or objects of JSON: keys of which none is that of a reading, or of a panel. */
function unknownKeys({ source, rows }: Lines): Diagnostic | undefined {
  const lines = rows
    .map((row) => ({ row, text: lineFrom(source.text, row.start) }))
    .filter(({ text }) => text.trim() !== '');
  const keyed = lines.flatMap(({ row, text }) => keysIn(text).map((key) => ({ row, key })));
  const counts = new Map<string, number>();
  for (const { key } of keyed) counts.set(key, (counts.get(key) ?? 0) + 1);
  const again = keyed.filter(({ key }) => (counts.get(key) ?? 0) >= fewest);
  const own = new Set(again.map(({ row }) => row));
  const [first] = again;
  if (first === undefined || own.size * 2 < lines.length) return undefined;
  const keys = [...new Set(again.map(({ key }) => key))];
  const roles = readGaugeHeader(keys).map(({ role }) => role);
  const lacking = (['panel', 'reading'] as const).filter((role) => !roles.includes(role));
  const unknown = keys.filter((_, k) => roles[k] === undefined);
  const [key = first.key] = unknown;
  if (lacking.length === 0) return undefined;
  const message = `the lines are keys and values, and no key is known for the ${lacking.join(' and the ')}: ${keys.map(quoted).join(', ')}`;
  const { row } = again.find((one) => one.key === key) ?? first;
  const at = source.placeAt(row.start, lineFrom(source.text, row.start).trimEnd().length);
  return error('header-missing', message, {
    at,
    hint: `write ${lacking.join(' and ')} for the ${lacking.length > 1 ? 'keys that mean them' : 'key that means it'}`,
  });
}

function keysIn(text: string): readonly string[] {
  if (/^\s*\{.*\}\s*,?\s*$/u.test(text)) {
    return [...text.matchAll(/"([^"]{1,40})"\s*:/gu)].map(([, key = '']) => key);
  }
  const [, key] = /^\s*(\p{L}[^:=\d{}"]{0,39}?)\s*[:=]\s*\S/u.exec(text) ?? [];
  return key === undefined ? [] : [key];
}

/** `apron;1;120`: rows of readings whose panels are not all known. */
function unknownPanels(lines: Lines): Diagnostic | undefined {
  const { rows, isPanel } = lines;
  const named = rows.flatMap((row) => {
    const texts = row.cells.map((cell) => cell.trim());
    const [name = '', ...others] = texts.filter((text) => hasLetter(text));
    const numbers = texts.filter((text) => numberShape(text) !== undefined);
    return others.length === 0 && name !== '' && numbers.length > 0 ? [{ row, name }] : [];
  });
  const names = [...new Set(named.map(({ name }) => name))];
  const unknown = names.filter((name) => !isPanel(name) && !isNote(name, isPanel));
  const stranger = named.find(({ name }) => name === unknown[0]);
  if (stranger === undefined || named.length * 2 < rows.length) return undefined;
  if (unknown.length === names.length && unknown.length > mostUnknown) return undefined;
  const column = stranger.row.cells.findIndex((cell) => cell.trim() === stranger.name);
  const message = `no line names the columns, and ${quoted(stranger.name)} is no panel that is known`;
  const option = `--panel-names ${shellWord(`${stranger.name}=PANEL`)}`;
  const also = unknown.length > 1 ? ', and so for the others' : '';
  return error('header-missing', message, {
    at: placeOf(lines, stranger.row, column),
    hint: `say which panel it is: ${option}${also}; or give the columns names: panel, reading_um`,
  });
}
/** `Bonnet: 112`: cut from a line of notes by a comma behind its first number. */
const isNote = (name: string, isPanel: Lines['isPanel']): boolean => {
  const [, panel = ''] = /^([^\d]*?)\s*[:=]\s*\d/u.exec(name) ?? [];
  return isPanel(panel);
};
/** A file whose panels are all unknown, and are more than a car has, is of something else. */
const mostUnknown = 40;

/** `bonnet 112 - 110`: a panel that is known and numbers behind it, and something else. */
function unreadNote({ source, rows, isPanel }: Lines): Diagnostic | undefined {
  const notes = rows.flatMap((row) => {
    const text = lineFrom(source.text, row.start).trimEnd();
    const [before = ''] = /^[^\d]*/u.exec(text) ?? [];
    const name = before.replace(/[\s:=~<>([{#@-]+$/u, '').trim();
    return before === text || name === '' || !isPanel(name) ? [] : [{ row, text, name }];
  });
  const more = notes.find((line) => understand(line, 'decimal', isPanel) === undefined);
  const told = more ?? notes[0];
  if (told === undefined) return undefined;
  return error(
    'header-missing',
    `no line names the columns, and ${quoted(told.text)} is more than a panel and its readings`,
    {
      at: source.placeAt(told.row.start, told.text.length),
      hint: hasOneNumber(told.text)
        ? `write a panel that heads its readings as ${quoted(told.name)}, one with its readings as ${shown(told.name)}; or give the columns names: panel, reading_um`
        : `write nothing but the readings behind the panel, ${shown(told.name)}, or give the columns names: panel, reading_um`,
    },
  );
}
/** `Bonnet (3)` */
const hasOneNumber = (text: string): boolean => /^[^\d]+\d{1,2}[^\d]*$/u.test(text);
const shown = (name: string): string => quoted(`${name} 112 109 µm`);

function noNumbers({ source, rows }: Lines): Diagnostic | undefined {
  const some = rows.some(({ cells }) => cells.some((cell) => /\p{Nd}/u.test(cell)));
  const [first] = rows;
  if (some || first === undefined) return undefined;
  const at = source.placeAt(first.start, lineFrom(source.text, first.start).trimEnd().length);
  return error('header-missing', 'no line of the file names the columns, and none holds a number', {
    at,
    hint: 'is it the file with the readings?',
  });
}
