/**
 * Lines beside a table that change what its numbers mean: `All values x 0.1`, `Offset: -12 µm` make other
 * numbers of them and stop the file, for nobody can tell whether the sum is done already. `Bonnet point 2
 * is wrong`, `not calibrated`, `includes 50 µm of protection film` speak against readings, which are read
 * as they stand, and the line is told.
 */
import { once } from '../../base/kept.ts';
import { hasLetter } from '../../base/letters.ts';
import type { OutsideLine } from '../beside/lines-outside.ts';
import { roleOfKey } from '../beside/sayings.ts';
import { isThickness } from '../beside/unit-lines.ts';
import { foldedText, speaksAgainst, wholeWords } from '../cells/doubting-words.ts';
import { markerLegend } from '../cells/markers.ts';
import { unitNamed } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import { namesStatistic } from '../statistics/statistic-words.ts';
import type { Table } from '../tables/table.ts';
import { explainsHash } from './hidden-rows.ts';

const number = /[+\-−]?\d+(?:[.,]\d+)?/u;

/** A name of a factor, and its number: 1 changes nothing. */
const factor = wholeWords(
  `scale|scaling|scale factor|scaling factor|multiplier|factor|divisor|divider|faktor|skalierung|
  massstab|korrekturfaktor|multiplikator|teiler|facteur|echelle|multiplicateur|diviseur|
  escala|multiplicador|fattore|scala|moltiplicatore|divisore|schaal|vermenigvuldiger|fator|
  wspolczynnik|mnoznik|множитель|коэффициент`,
);
/** A name of something added, and its number: 0 changes nothing. */
const shift = wholeWords(
  `offset|correction value|correction factor|korrekturwert|versatz|nullpunktverschiebung|decalage|
  desplazamiento|scostamento|correctie|przesuniecie|смещение`,
);
/** A verb that makes another number of each. */
const verb = wholeWords(
  `multiply|multiplied|divide|divided|subtract|subtracted|deduct|deducted|take off|
  multiplizieren|multipliziert|dividieren|dividiert|durch \\d+ teilen|geteilt durch|subtrahieren|subtrahiert|
  abziehen|abgezogen|addieren|addiert|hinzurechnen|dazurechnen|multiplier par|multiplie par|diviser|
  divise par|soustraire|soustrait|retrancher|multiplicar|multiplicado|dividir|dividido por|restar|restado|
  moltiplicare|moltiplicato|dividere|diviso per|sottrarre|sottratto|vermenigvuldigen|delen door|
  aftrekken|afgetrokken|pomnozyc|podzielic|odjac|вычесть|умножить|разделить`,
);
const amount = once(
  () =>
    /(?:\b(?:minus|plus|less|add|added|zuzuglich|abzuglich|moins|ajouter|mas|menos|sumar|meno|aggiungere)\b|^[+\-−])\s*\d+(?:[.,]\d+)?\s*(?:µm|μm|um|mil|mils|microns?|mikrom?\p{L}*|%)(?!\p{L})/u,
);
const times = once(
  () =>
    /(?:values?|readings?|numbers?|results?|all|alle|werte|messwerte|valeurs?|mesures?|valores|lecturas|valori|letture|waarden|wartosci|значения)\b.*(?:(?<!\p{L})x|[×*÷]|\/|\btimes|\bmal|\bfois|\bpor|\bper)\s*\d+(?:[.,]\d+)?\s*$/u,
);
const parts = once(
  () =>
    /(?:tenths?|hundredths?|zehnteln?|hundertsteln?|dixiemes?|centiemes?|decim[ao]s?|centesim[oi]|tienden?|десят\p{L}*)\b.*(?:mi[ck]rom?\p{L}*|µm|μm|um|mm|milli\p{L}*|mils?)(?!\p{L})/u,
);
/** What such numbers may belong to besides the readings. */
const ofSomethingElse = wholeWords(
  `resolution|auflosung|accuracy|precision|genauigkeit|messunsicherheit|uncertainty|tolerance|toleranz|
  time|utc|zeit|gmt|temperature|temperatur|temp|humidity|page|seite|form factor|zoom|display`,
);

function altersNumbers(folded: string): boolean {
  if (ofSomethingElse.test(folded)) return false;
  if (verb.test(folded) || amount().test(folded) || times().test(folded) || parts().test(folded))
    return true;
  const neutral = factor.test(folded) ? 1 : shift.test(folded) ? 0 : undefined;
  const value = number.exec(folded)?.[0].replace(',', '.').replace('−', '-');
  return neutral !== undefined && value !== undefined && Number(value) !== neutral;
}

const doubtsAll = wholeWords(
  `not calibrated|uncalibrated|out of calibration|no calibration|calibration failed|calibration expired|
  calibration overdue|nicht kalibriert|unkalibriert|nicht justiert|non calibre|non etalonne|sin calibrar|
  no calibrado|non calibrato|niet gekalibreerd|ongekalibreerd|nieskalibrowany|не откалиброван`,
  `swapped|interchanged|mixed up|reversed|vertauscht|verwechselt|inverse|inverses|intervertis|invertidos|
  intercambiados|scambiati|invertiti|verwisseld|zamienione|перепутаны`,
  `another car|another vehicle|other car|other vehicle|different car|different vehicle|
  anderes auto|anderen auto|anderes fahrzeug|anderen fahrzeug|autre voiture|autre vehicule|otro coche|
  otro vehiculo|altra auto|altra macchina|altro veicolo|andere auto|ander voertuig`,
  `test only|test data|sample data|example data|demo|demo data|dummy|not real|testdaten|beispieldaten|
  corrected|korrigiert|corrige|corriges|corregido|corregidos|corretto|corretti|gecorrigeerd`,
);
const under = once(
  () =>
    /(?<!\p{L})(?:includ\p{L}*|incl|inkl|inklusive|einschliesslich|inclus\p{L}*|y compris|incluy\p{L}*|compres\p{L}*|under|over|through|unter|durch|uber|sous|sotto|bajo|onder)(?!\p{L})/u,
);
const coverings = wholeWords(
  `protection film|protective film|protecting film|film|ppf|wrap|vinyl|foil|shim|folie|schutzfolie|
  film de protection|pellicola|pelicula|lamina|folia|wax|ceramic|coating|magnet|paper|papier|tape`,
);

/** What a line says against the readings, the panels of the table being known. */
function doubtsReadings(text: string, folded: string, namesPanel: (folded: string) => boolean) {
  if (speaksAgainst(text) || doubtsAll.test(folded)) return true;
  if (under().test(folded) && coverings.test(folded)) return true;
  // `Bonnet 2: 105, not 188`: a line about one reading.
  return namesPanel(folded);
}

export function tellLinesAgainst(
  lines: readonly OutsideLine[],
  tables: readonly Table[],
  findings: Findings,
): void {
  if (lines.length === 0) return;
  const namesPanel = panelsOf(tables);
  const hasUnits = tables.some(({ layout }) => layout.columns.has('unit'));
  for (const line of lines) {
    const text = line.text.replace(/^[#/\s"']+|["'\s]+$/gu, '');
    const folded = foldedText(text.replace(/[;\t|"]+/gu, ' ').trim());
    if (!hasLetter(folded)) continue;
    const role = roleOfKey(/^[^:=;,\t|]*/u.exec(text)?.[0] ?? '');
    // Names of people, cars and panels may be any words; a table of statistics is held against the readings.
    if (role !== undefined && role !== 'note' && role !== 'reading') continue;
    if (markerLegend([line.text]).size > 0 || explainsHash(line.text)) continue;
    if (altersNumbers(folded)) tellAltered(line, text, findings);
    else if (
      !namesStatistic(text) &&
      doubtsReadings(text, folded, isProse(line) ? namesPanel : none)
    )
      tellDoubt(line, text, findings);
    else if (!hasUnits && namesTwoUnits(text)) tellTwoUnits(line, text, findings);
  }
}

/** `All readings in µm, bumpers in mil`; one behind a number is that of a limit, and `1 mil = 25.4 µm` says neither. */
function namesTwoUnits(text: string): boolean {
  if (/[=/]|(?:^|\D)25[.,]4(?!\d)/u.test(text)) return false;
  const words = text.split(/[\s,;:()|]+/u);
  const units = words.filter((word, k) => isThickness(word) && !/\d$/u.test(words[k - 1] ?? ''));
  return new Set(units.map(unitNamed)).size > 1;
}

/** A vehicle has some dozens of panels. */
const mostNames = 200;
const none = (): boolean => false;
/** A line of several cells is a row of another table, which is told as a whole. */
const isProse = ({ text }: OutsideLine): boolean => text.split(/[;\t|,]/u).length < 3;

/** Whether a line names a panel of the tables, beside other words and a number. */
function panelsOf(tables: readonly Table[]): (folded: string) => boolean {
  const names = new Set<string>();
  for (const { layout, rows } of tables) {
    const at = layout.columns.get('panel');
    if (at === undefined) continue;
    for (const { cells } of rows) {
      if (names.size < mostNames) names.add(cells[at] ?? '');
    }
  }
  const own = [...names].map((name) => foldedText(name.trim())).filter((name) => name.length > 2);
  return (folded) =>
    own.some((name) => {
      const rest = folded.replace(name, '');
      return rest !== folded && /\p{L}{2}/u.test(rest) && /\d/u.test(rest);
    });
}

const placeOfLine = ({ source, offset, text }: OutsideLine) => source.placeAt(offset, text.length);

function tellAltered(line: OutsideLine, text: string, findings: Findings): void {
  findings.add('error', 'readings-altered', () => ({
    message: `"${text}" may make other numbers of the readings, or say that it was done`,
    at: placeOfLine(line),
    hint: 'do the sum in the cells, or leave them if it is done, and delete the line',
  }));
}

function tellTwoUnits(line: OutsideLine, text: string, findings: Findings): void {
  findings.add('warning', 'reading-doubted', () => ({
    message: `"${text}" names µm and mil, and all readings are read in one of them`,
    at: placeOfLine(line),
    hint: 'if some are in the other, write the unit of each reading in a column "unit"',
  }));
}

function tellDoubt(line: OutsideLine, text: string, findings: Findings): void {
  findings.add('warning', 'reading-doubted', () => ({
    message: `"${text}" may speak against readings: all are read as they stand`,
    at: placeOfLine(line),
    hint: 'if a reading does not count, take its row out',
  }));
}
