/**
 * Columns that are called something else than what they hold, and can be known by the company they keep.
 *
 * `Ch` and `Ist` stand for the panel and the reading where no other column does: beside a nominal value
 * the actual one is the reading, `Paint` and `Lack` are its thickness, and a channel is a panel if its cells
 * name panels; `Panel ID` and `Part no.` name them where nothing else does. `Panel` above the
 * counter of the rows, in the corner of a table whose other columns are panels, names those columns.
 */
import type { GaugeRole } from './gauge-vocabulary.ts';
import { type HeaderCell, type PlainNames, plainNames, plainWords } from './header.ts';
import { countedColumn } from './numbered-columns.ts';

const borrowed = {
  panel: plainNames('ch|channel|kanal|canal|canale|kanaal'),
  panelId:
    plainNames(`panel id|panel no|panel number|panel nr|panel code|panel ref|id panel|part no|part nr|part number|part id|
    component id|component no|bauteil nr|bauteil id|bauteilnummer|teil nr|teilenummer|blech nr|no panneau|
    numero panneau|n° panneau|piece n°|numero de panel|id pieza|numero pezzo|paneelnr|paneel nr|onderdeelnr|
    numer elementu|nr elementu|cislo dilu|номер панели|номер детали|パネル番号|部位番号|部件编号|部位编号`),
  reading:
    plainNames(`ist|istwert|ist wert|actual|actual value|actual reading|effettivo|valore effettivo|
    réel|valeur réelle|valor real|werkelijk|werkelijke waarde|faktisk|rzeczywista|skutečnost|факт|
    实测|实测值|実測|実測値|измерено|измеренное|измеренное значение|gemessen|gemessener wert|mesure|
    valeur mesuree|misurato|valore misurato|medido|valor medido|gemeten|zmierzone|uppmätt|målt|
    paint|paintwork|coating|coating µm|lack|lackierung|peinture|revetement|vernis|pintura|recubrimiento|
    vernice|rivestimento|tinta|revestimento|lak|coating dikte|lakier|powloka|lakka|boya|краска|лкп|покрытие|
    涂层|漆|塗装|塗膜|도막|도장`),
} as const satisfies Partial<Record<GaugeRole | 'panelId', PlainNames>>;

/** Numbers of a clock or a calendar, each in a column of its own: beside an hour, `Min` is a minute. */
const hours = plainNames('hour|hours|hr|hrs|hh|stunde|stunden|heures|horas|ore|uur|godziny|timme');
/** Names of the hour that may as well be those of a time of day: beside a day or a month they are hours. */
const hoursOfDay = plainNames('heure|hora|ora|godzina|uhrzeit|saat|hodina|ura|timma|час|时|時');
const days =
  plainNames(`day|month|year|tag|monat|jahr|jour|mois|annee|dia|mes|ano|año|giorno|mese|anno|dag|maand|jaar|dzien|miesiac|rok|
  manad|ar|måned|år|день|месяц|год|日|月|年`);
const minutes = plainNames('min|minute|minutes|minuten|minuto|minutos|minuti|minuut|minuta|minut');

type Header = readonly HeaderCell<GaugeRole>[];

/**
 * The header with those roles that no column has by its own name, if that makes it one of panels and
 * readings: a table with a column for each panel, or with numbered readings, borrows none.
 */
export function withBorrowedRoles(named: Header): Header {
  const header = withMinutes(named);
  const panelled = withRole(withRole(header, 'panel'), 'panelId');
  const numbered = header.some(({ label }) => countedColumn(label) !== undefined);
  const all = numbered ? panelled : withRole(panelled, 'reading');
  const has = (role: GaugeRole): boolean => all.some((cell) => cell.role === role);
  return has('panel') && (numbered || has('reading')) ? all : header;
}

function withMinutes(header: Header): Header {
  const columnOf = (names: PlainNames, own?: GaugeRole): number =>
    header.findIndex(
      ({ role, label }) => (role === undefined || role === own) && names.has(plainWords(label)),
    );
  const minute = columnOf(minutes);
  const ofDay = columnOf(days) === -1 ? -1 : columnOf(hoursOfDay, 'time');
  const hour = columnOf(hours) === -1 ? ofDay : columnOf(hours);
  const cell = header[minute];
  if (cell === undefined || hour === -1 || Math.abs(minute - hour) !== 1) return header;
  return header.with(minute, { ...cell, role: 'time' });
}

function withRole(header: Header, words: keyof typeof borrowed): Header {
  const role = words === 'panelId' ? 'panel' : words;
  if (header.some((cell) => cell.role === role)) return header;
  const column = header.findIndex(
    (cell) => cell.role === undefined && borrowed[words].has(plainWords(cell.label)),
  );
  const cell = header[column];
  return cell === undefined ? header : header.with(column, { ...cell, role });
}

/**
 * The header of a table with a panel in each column, whose first one is called after them, their unit, or what is
 * counted down: `Messung;LF;RF`.
 */
export const withoutCorner = (header: Header): Header =>
  header.map((cell, k) =>
    k === 0 && (cell.role === 'panel' || cell.role === 'reading' || cell.label === '')
      ? { ...cell, role: 'point' }
      : cell,
  );

/** Whether a column stands for the panel though its name is another. */
export const isBorrowedPanel = (label: string): boolean => borrowed.panel.has(plainWords(label));
