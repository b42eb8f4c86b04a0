import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { ReadingCell } from '../../../src/intake/cells/cell-verdict.ts';
import { decideDecimal } from '../../../src/intake/cells/decimal.ts';
import { markerLegend } from '../../../src/intake/cells/markers.ts';
import { readReadingCell } from '../../../src/intake/cells/reading-cell.ts';
import { largestIn, type ReadingUnit } from '../../../src/intake/cells/unit.ts';

/** A cell among others, as a column decides it: its value in µm, its class, or the code of refusal. */
function told(text: string, others: readonly string[], unit: ReadingUnit = 'um'): number | string {
  return brief(readReadingCell(text, rulesOf([text, ...others], unit)));
}
function rulesOf(texts: readonly string[], unit: ReadingUnit) {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  const largest = micrometres(5000);
  return { unit, largest, decimal: decideDecimal(counts, largestIn(unit, largest), undefined) };
}
function brief(cell: ReadingCell): number | string {
  if (cell.kind === 'reading') return Number(cell.thickness);
  return cell.kind === 'excluded' ? cell.class : cell.complaint.code;
}

const wholes = ['101', '98', '104', '97', '112'];
const points = ['101.5', '98.2', '104', '97.1', '112.3'];
const commas = ['101,5', '98,2', '104', '97,1', '112,3'];

test.each<[string, number | string]>([
  // Numbers
  ['102', 102],
  ['0123', 123],
  ['+102', 102],
  ['102+', 'reading-ambiguous'],
  ['-3', 'not-film'],
  ['−3', 'not-film'],
  ['–3', 'not-film'],
  ['3-', 'not-film'],
  ['3−', 'not-film'],
  ['0', 'not-film'],
  ['0.0', 'not-film'],
  ['-0', 'not-film'],
  ['1.05E+02', 105],
  ['1.05e2', 105],
  ["'102", 102],
  ['="102"', 102],
  ['\u200b102', 102],
  ['１０２', 102],
  ['١٠٢', 102],
  ['۱۰۲', 102],
  ['१०२', 102],
  ['১০২', 102],
  ['๑๐๒', 102],
  ['١٠٢٫٥', 102.5],
  ['1٬234', 1234],
  ["1'234", 1234],
  ['1’234', 1234],
  ['1\u00a0234', 1234],
  ['1\u202f234', 1234],
  ['1\u2009234', 1234],
  ['1 234', 1234],
  ['1.234', 1234],
  ['1,234', 1234],
  ['1,234.5', 1234.5],
  ['1.234,5', 1234.5],
  ['101.234', 101.234],
  ['102 µm', 102],
  ['102µm', 102],
  ['102 μm', 102],
  ['102 ㎛', 102],
  ['102um', 102],
  ['102 microns', 102],
  ['102 Mikrometer', 102],
  ['102 мкм', 102],
  ['102微米', 102],
  ['102 ?m', 102],
  ['102\u00a0µm', 102],
  ['１０２　µm', 102],
  // No numbers
  ['0x10', 'reading-not-a-number'],
  ['1e', 'reading-not-a-number'],
  ['102²', 'reading-not-a-number'],
  ['1_000', 'reading-not-a-number'],
  ['101 102', 'reading-ambiguous'],
  ['101 98', 'reading-not-a-number'],
  ['101/98', 'reading-not-a-number'],
  ['101;98', 'reading-not-a-number'],
  ['~102', 'reading-not-a-number'],
  ['102±3', 'reading-not-a-number'],
  ['102 abc', 'reading-not-a-number'],
  ['102 %', 'reading-not-a-number'],
  ['(102)', 'reading-not-a-number'],
  ['abc', 'reading-not-a-number'],
  ['ok', 'reading-not-a-number'],
  ['1O2', 'reading-not-a-number'],
  ['l02', 'reading-not-a-number'],
  ['102.', 'reading-not-a-number'],
  ['5001', 'reading-implausible'],
  ['10150', 'reading-implausible'],
  ['45413', 'reading-implausible'],
  ['1.234.567', 'reading-implausible'],
  ['12.345', 'reading-ambiguous'],
  ['65.535', 'reading-ambiguous'],
  ['32,767', 'reading-ambiguous'],
  // Other units
  ['4.2 mil', 'unit-conflict'],
  ['4 mils', 'unit-conflict'],
  ['0.102 mm', 'unit-unknown'],
  ['102000 nm', 'unit-unknown'],
  ['0.004 in', 'unit-unknown'],
  // Missing
  ['', 'missing'],
  ['   ', 'missing'],
  ['\u00a0', 'missing'],
  ['-', 'missing'],
  ['--', 'missing'],
  ['-----', 'missing'],
  ['–', 'missing'],
  ['—', 'missing'],
  ['.', 'missing'],
  ['...', 'missing'],
  ['…', 'missing'],
  ['--.-', 'missing'],
  ['?', 'missing'],
  ['/', 'missing'],
  ['\\N', 'missing'],
  ['n/a', 'missing'],
  ['N/A', 'missing'],
  ['n.a.', 'missing'],
  ['NULL', 'missing'],
  ['none', 'missing'],
  ['k.A.', 'missing'],
  ['k. A.', 'missing'],
  ['nicht gemessen', 'missing'],
  ['non mesuré', 'missing'],
  ['no medido', 'missing'],
  ['non misurato', 'missing'],
  ['niet gemeten', 'missing'],
  ['нет данных', 'missing'],
  ['未测量', 'missing'],
  ['なし', 'missing'],
  ['-9999', 'missing'],
  ['−9999', 'missing'],
  ['9999', 'missing'],
  ['-999', 'missing'],
  ['99999', 'missing'],
  ['-32768', 'missing'],
  ['9.91E37', 'missing'],
  ['9999.0', 'missing'],
  ['-9,999', 'not-film'],
  // Over-range and under-range
  ['OL', 'over-range'],
  ['O.L.', 'over-range'],
  ['o.l', 'over-range'],
  ['>2000', 'over-range'],
  ['> 1500 µm', 'over-range'],
  ['>= 2.000', 'over-range'],
  ['≥1500', 'over-range'],
  ['＞2000', 'over-range'],
  ['>>>', 'over-range'],
  ['Inf', 'over-range'],
  ['+Inf', 'over-range'],
  ['Infinity', 'over-range'],
  ['∞', 'over-range'],
  ['++++', 'over-range'],
  ['overflow', 'over-range'],
  ['Over range', 'over-range'],
  ['out of range', 'over-range'],
  ['Überlauf', 'over-range'],
  ['Messbereich überschritten', 'over-range'],
  ['hors gamme', 'over-range'],
  ['dépassement', 'over-range'],
  ['fuera de rango', 'over-range'],
  ['fuori scala', 'over-range'],
  ['buiten bereik', 'over-range'],
  ['範囲外', 'over-range'],
  ['9.9E37', 'over-range'],
  ['9.90000000E+37', 'over-range'],
  ['65535', 'over-range'],
  ['65535.0', 'over-range'],
  ['32767', 'over-range'],
  ['4294967295', 'over-range'],
  ['3.402823E+38', 'over-range'],
  ['OL µm', 'over-range'],
  ['0.L', 'over-range'],
  ['--- µm', 'missing'],
  ['<5', 'not-film'],
  ['< 10 µm', 'not-film'],
  ['-Inf', 'not-film'],
  ['under range', 'not-film'],
  ['zu dünn', 'not-film'],
  // Errors
  ['Err', 'error'],
  ['ERROR', 'error'],
  ['E-04', 'error'],
  ['E04', 'error'],
  ['Err 5', 'error'],
  ['Error 12', 'error'],
  ['Fehler', 'error'],
  ['Fehler 7', 'error'],
  ['erreur', 'error'],
  ['errore', 'error'],
  ['errore sonda', 'error'],
  ['Sondenfehler', 'error'],
  ['erreur de mesure', 'error'],
  ['erreur sonde', 'error'],
  ['error de la sonda', 'error'],
  ['erro de medição', 'error'],
  ['fout sensor', 'error'],
  ['błąd sondy', 'error'],
  ['probe error', 'error'],
  ['fout', 'error'],
  ['ungültig', 'error'],
  ['inválido', 'error'],
  ['エラー', 'error'],
  ['#N/A', 'error'],
  ['#NV', 'error'],
  ['#REF!', 'error'],
  ['#BEZUG!', 'error'],
  ['#DIV/0!', 'error'],
  ['#VALUE!', 'error'],
  ['#WERT!', 'error'],
  ['#VALEUR!', 'error'],
  ['#NUM!', 'error'],
  ['#NAME?', 'error'],
  ['########', 'error'],
  ['****', 'error'],
  ['NaN', 'error'],
  // Deleted
  ['deleted', 'deleted'],
  ['gelöscht', 'deleted'],
  ['gelo\u0308scht', 'deleted'],
  ['supprimé', 'deleted'],
  ['borrado', 'deleted'],
  ['eliminato', 'deleted'],
  ['verwijderd', 'deleted'],
  ['x', 'deleted'],
  ['X', 'deleted'],
  ['✗', 'deleted'],
  ['102 (deleted)', 'deleted'],
  ['102 (gelöscht)', 'deleted'],
  ['102 µm (deleted)', 'deleted'],
  ['102 [del]', 'deleted'],
  ['102 deleted', 'deleted'],
  ['102D', 'deleted'],
  ['102 x', 'deleted'],
  ['~~102~~', 'deleted'],
  ['<s>102</s>', 'deleted'],
  ['1\u03360\u03362\u0336', 'deleted'],
  ['102 (OL)', 'over-range'],
  ['102 err', 'error'],
  // Marks that nothing explains
  ['102 *', 'reading-ambiguous'],
  ['102*', 'reading-ambiguous'],
  ['102 µm *', 'reading-ambiguous'],
  ['102!', 'reading-ambiguous'],
  ['102 ?', 'reading-ambiguous'],
  ['102 (see note)', 'reading-not-a-number'],
  ['102 fail', 'reading-not-a-number'],
  ['102 (high)', 'reading-not-a-number'],
  ['102 H', 'reading-not-a-number'],
  // A verdict that leaves the reading standing
  ['102 (ok)', 102],
  ['102 pass', 102],
  // Numbers turned into dates
  ['01-May', 'reading-became-date'],
  ['1. Mai', 'reading-became-date'],
  ['1-mai', 'reading-became-date'],
  ['01-mag-24', 'reading-became-date'],
  ['1 de mayo', 'reading-became-date'],
  ['Jan 04', 'reading-became-date'],
  ['May-01', 'reading-became-date'],
  ['12.03.2024', 'reading-became-date'],
  ['12.03.', 'reading-became-date'],
  ['12/03/24', 'reading-became-date'],
  ['2024-03-12', 'reading-became-date'],
  ['2024-03-12 00:00:00', 'reading-became-date'],
  ['1-5', 'reading-became-date'],
  ['98-102', 'reading-not-a-number'],
  ['45/60', 'reading-not-a-number'],
  ['5月1日', 'reading-became-date'],
  ['10:15', 'reading-became-date'],
  ['01:02:00', 'reading-became-date'],
  ['10:15 AM', 'reading-became-date'],
])('among whole readings about 100 µm "%s" is %s', (text, expected) => {
  expect(told(text, wholes)).toBe(expected);
});

test.each<[string, readonly string[], number | string]>([
  ['1.234', commas, 1234],
  ['1,234', points, 1234],
  ['1.234', points, 'reading-ambiguous'],
  ['1,234', commas, 'reading-ambiguous'],
  ['1.234', [], 'reading-ambiguous'],
  ['1.234', ['1.198', '2.005'], 'reading-ambiguous'],
  ['1.234', ['101.234', '99.876'], 1.234],
  ['1.234', ['1,234', ...wholes], 'reading-ambiguous'],
  ['1.234', ['1234', ...wholes], 'reading-ambiguous'],
  ['1.234', ['2.5', '3.1', '4'], 'reading-ambiguous'],
  ['1 234', ['2 118', '3 104'], 'reading-ambiguous'],
  ['1 234', ['1234', ...wholes], 'reading-ambiguous'],
  ['1 234,5', commas, 1234.5],
  ['1 234.5', commas, 'reading-ambiguous'],
  ["1'234", ['1 234', "2'345", ...wholes], 1234],
  ['1\u00a0234', ["1'234", "2'345", ...wholes], 'reading-ambiguous'],
  ['102,4', points, 102.4],
  ['102.4', commas, 102.4],
  ['102,45', points, 'reading-ambiguous'],
  ['102.45', commas, 'reading-ambiguous'],
  ['12.345', points, 12.345],
  ['12,345', commas, 12.345],
  ['12.345', ['8.123', '9.456'], 12.345],
  ['99.999', points, 99.999],
  ['9.9E37', commas, 'over-range'],
  ['102+', ['101+', '98+', '3-'], 102],
  ['١٠٢٫٥', commas, 102.5],
])('"%s" among %j is %s', (text, others, expected) => {
  expect(told(text, others)).toBe(expected);
});

test.each<[string, number | string]>([
  ['4.331', 4.331 * 25.4],
  ['4.2 MILS', 4.2 * 25.4],
  ['4.2 thou', 4.2 * 25.4],
  ['101.5 µm', 'unit-conflict'],
  ['4.2 ?m', 'unit-conflict'],
  ['197', 'reading-implausible'],
  ['9999', 'missing'],
  ['65535', 'over-range'],
])('among readings in mil "%s" is %s', (text, expected) => {
  expect(told(text, ['4.1', '3.9', '4.6'], 'mil')).toBe(expected);
});

test.each([
  ['469', 'if the decimal mark was lost (4.69?)'],
  ['1190', 'if the decimal mark was lost (11.9?)'],
  ['3400', 'if the decimal mark was lost (3.4?)'],
])('among readings in mil "%s" is asked whether its decimal mark was lost', (text, hint) => {
  const cell = readReadingCell(text, rulesOf([text, '4.1', '3.9', '4.6'], 'mil'));
  expect(cell).toMatchObject({ kind: 'wrong' });
  expect(cell.complaint?.hint).toContain(hint);
  expect(cell.complaint?.hint).toContain('is the unit µm?');
});

test('cells that name their units themselves are converted one by one', () => {
  const rules = { ...rulesOf(['101.5 µm', '4.2 mil'], 'um'), cellsNameUnits: true };
  expect(brief(readReadingCell('101.5 µm', rules))).toBe(101.5);
  expect(brief(readReadingCell('4.2 mil', rules))).toBe(4.2 * 25.4);
  expect(brief(readReadingCell('4.331 mil', rules))).toBe(4.331 * 25.4);
  expect(brief(readReadingCell('0.109 mm', rules))).toBe(109);
  expect(brief(readReadingCell('109 mm', rules))).toBe('unit-unknown');
});

test('a mark behind a number means what the file says of it, and nothing without that', () => {
  const rules = rulesOf(['102 *', ...wholes], 'um');
  const read = (...lines: string[]) =>
    brief(readReadingCell('102 *', { ...rules, legend: markerLegend(lines) }));
  expect(read('Serial 4711')).toBe('reading-ambiguous');
  expect(read('* = deleted')).toBe('deleted');
  expect(read('* gelöschter Wert, nicht gezählt')).toBe('deleted');
  expect(read('* means not included in the mean')).toBe('deleted');
  expect(read('"* = measured on an edge, not excluded"')).toBe('reading-ambiguous');
  expect(read('* measured twice')).toBe('reading-ambiguous');
  expect(read('* counted in the mean')).toBe(102);
  expect(read('† = deleted')).toBe('reading-ambiguous');
  expect(read('* = rejected by the operator, do not use')).toBe('deleted');
});

test('brackets around a number mean what the file says of them, and nothing without that', () => {
  const rules = rulesOf(['(102)', ...wholes], 'um');
  const read = (line: string) =>
    brief(readReadingCell('(102)', { ...rules, legend: markerLegend([line]) }));
  expect(read('Serial 4711')).toBe('reading-not-a-number');
  expect(read('values in brackets are discarded')).toBe('deleted');
  expect(read('Werte in Klammern = gestrichen')).toBe('deleted');
  expect(read('tra parentesi = scartati')).toBe('deleted');
  expect(read('(...) = counted as well')).toBe(102);
});

test.each([
  ...['bracket', 'brackets', 'parenthesis', 'Parentheses', 'Klammer', 'KLAMMERN', 'parenthèses'],
  ...['crochets', 'paréntesis', 'corchetes', 'parentesi', 'parentesi quadre', 'haakjes'],
  ...['nawiasach', 'скобках', '括弧', '括号', '( )', '[]', '(x)', '(1234)', '[…]'],
])('a line may speak of brackets as "%s"', (word) => {
  expect(markerLegend([`${word} = deleted`]).size).toBeGreaterThan(0);
  expect(markerLegend(['deleted', 'wing-front-left,1,110']).size).toBe(0);
});

test('every cell left out says why, in a sentence that quotes it', () => {
  for (const text of ['OL', '#N/A', 'deleted', '9.9E37', '-9999', '102 (deleted)', '<5']) {
    const cell = readReadingCell(text, rulesOf(wholes, 'um'));
    if (cell.kind !== 'excluded') throw new Error(`${text} was not left out`);
    expect(cell.reason).toContain(`"${text}" `);
    expect(cell.complaint).toMatchObject({ severity: 'warning' });
  }
});

test('a date says what the spreadsheet did and how to mend it', () => {
  const cell = readReadingCell('01-May', rulesOf(wholes, 'um'));
  expect(cell.kind === 'wrong' && cell.complaint).toEqual({
    severity: 'error',
    code: 'reading-became-date',
    message: '"01-May" is a date: a spreadsheet takes a number such as 1.5 for one',
    hint: 'import the export anew with this column as text, or type the number of the gauge',
  });
});

test.each([
  '无读数',
  '値なし',
  '값 없음',
  'нет показаний',
  'brak odczytu',
  'sem leitura',
  'aucune lecture',
])('"%s" is no reading', (text) => expect(told(text, wholes)).toBe('missing'));

test.each([
  ['102', wholes, 0],
  ['102.0', points, 1],
  ['102,50', commas, 2],
  ['102.50 µm', points, 2],
  ['1.0250e2', points, 2],
  ['1,020', ['1,102', ...points], 0],
])('"%s" is written with so many decimals as it has: a 0 at the end counts', (text, others, n) => {
  const cell = readReadingCell(text, rulesOf([text, ...others], 'um'));
  expect(cell).toMatchObject({ kind: 'reading', decimals: n });
});

test('a number of more digits than any gauge shows is told as that, with how many it has', () => {
  const cell = readReadingCell('1'.repeat(400), rulesOf(wholes, 'um'));
  expect(cell).toMatchObject({ kind: 'wrong', complaint: { code: 'reading-not-a-number' } });
  expect(cell.kind === 'wrong' && cell.complaint.message).toContain('has 400 digits');
});
