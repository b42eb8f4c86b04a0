/**
 * Parts of a file that read the same panels anew on no day of their own: under names of columns that stand again, under
 * another text in a column that is not read or in a line between rows, or by the readings alone. They may be a second
 * round, which agrees with the first and is told; where they differ they are of another visit or vehicle, and refused.
 */
import { error, warning } from '../../base/diagnostics.ts';
import { shown } from '../../base/rounding.ts';
import type { Reading } from '../../film/reading.ts';
import { linesOutside } from '../beside/lines-outside.ts';
import { visitsHint } from '../cells/visit-words.ts';
import type { Findings } from '../findings.ts';
import { readingPlace } from '../readings/reading-place.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import { type LaterRound, laterRound } from './later-rounds.ts';
import { type How, type ReadAgain, readingParts } from './read-again.ts';
import { type Part, what } from './several-days.ts';

type TablePart = Part & {
  /** Whether it stands beside the one before it, which is told elsewhere. */
  readonly beside?: boolean;
};

/** `parts` are the tables of a file, or what stands under lines, each with its readings. Says if it found any. */
export function doubtRounds(parts: readonly TablePart[], how: How, findings: Findings): boolean {
  const found = firstAgain(parts, how, (again) => !again.goesOn || again.shared > 1);
  if (found === undefined) return false;
  const { at, again, beside } = found;
  if (again.agree && beside === true) return true;
  if (again.agree) {
    const message = `the ${what(how)} below stand above already, and agree with what was read there: they are taken as a second round`;
    findings.addAll([warning('reading-doubted', message, { at, hint: ofVisits })]);
    return true;
  }
  const message = `below, the same ${what(how)} as above read ${otherwise(again)}: another visit, or another vehicle`;
  findings.addAll([error('visits-together', message, { at, hint: `${ofVisits}; ${ofRounds}` })]);
  return true;
}

const ofVisits = `if they are of two visits, ${visitsHint}`;
const ofRounds =
  'if of two vehicles, add a column "vehicle"; if of two people, a column "operator"; if it is a second round, number it in a column "repeat"';

/** A column that is not read, by which the rows fall into parts that read the same panels. */
export function doubtUnreadColumns(
  { table, readings }: { readonly table: Table; readonly readings: Part['readings'] },
  how: How,
  findings: Findings,
): boolean {
  for (const column of table.layout.unknown) {
    const runs = runsOf(table, column);
    if (runs === undefined) continue;
    const parts = partsOf(runs, readings, table, column);
    const found = firstAgain(parts, how, ({ agree, shared }) => !agree && shared > 1);
    if (found === undefined) continue;
    const name = table.layout.header[column]?.text ?? '';
    const message = `the column "${name}" is not read, and from here on the same ${what(how)} as above read ${otherwise(found.again)}`;
    const hint = `if it names the vehicle: --columns "vehicle=${name}"; ${ofVisits}`;
    findings.addAll([error('visits-together', message, { at: found.at, hint })]);
    return true;
  }
  return false;
}

/** By the readings alone. Where a column numbers the repeats, a round that differs is told and read. */
export function doubtLaterRounds(
  readings: readonly Reading[],
  tables: readonly Table[],
  how: How,
  findings: Findings,
): void {
  const round = laterRound(readings, how);
  const [first] = round?.own ?? [];
  const [table] = tables;
  if (round === undefined || first === undefined || table === undefined) return;
  if (round.agrees && how.repeatsAreNumbered) return;
  const at = readingPlace(table.source, first);
  const shift = `${otherwise(round)} of ${round.count} ${how.pointsAreNamed ? 'points' : 'readings'}`;
  if (how.repeatsAreNumbered) {
    const message = `the repeats from here on read ${shift}: more than chance`;
    findings.addAll([warning('reading-doubted', message, { at, hint: ofVisits })]);
    return;
  }
  const setApart = setApartBy(round, first, tables);
  const from = setApart === undefined ? 'from here on' : `from here on, ${setApart},`;
  const on = round.panel === undefined ? '' : ` of "${round.panel}"`;
  const same = `the same ${what(how)}${on} as above`;
  findings.addAll([
    round.agrees
      ? warning(
          'reading-doubted',
          `${from} ${same} are read again, and agree on the whole: they are taken as a second round`,
          { at, hint: ofVisits },
        )
      : error(
          'visits-together',
          `${from} ${same} read ${shift}: another visit, another vehicle or another person`,
          { at, hint: `${ofVisits}; ${ofRounds}` },
        ),
  ]);
}

/** The line above a later round that is no row, or a column whose texts are others from there on. */
function setApartBy(
  { before, own }: LaterRound,
  first: Reading,
  tables: readonly Table[],
): string | undefined {
  const last = before.findLast(({ origin }) => origin.line < first.origin.line);
  const line = linesOutside(tables).findLast(({ source, offset }) => {
    const at = source.placeAt(offset, 1).line ?? 0;
    return at > (last?.origin.line ?? 0) && at < first.origin.line;
  });
  if (line !== undefined) return `below "${line.text.slice(0, LONGEST)}"`;
  for (const role of ['time', 'note', 'substrate'] as const) {
    const above = new Set(before.map((reading) => reading[role]));
    const text = first[role];
    if (text === undefined || own.some((reading) => above.has(reading[role]))) continue;
    const { layout } = tables[0] ?? {};
    const name = layout?.header[layout.columns.get(role) ?? -1]?.text ?? role;
    return `where "${name}" says "${text.slice(0, LONGEST)}"`;
  }
  return undefined;
}
const LONGEST = 60;

function firstAgain(parts: readonly TablePart[], how: How, counts: (again: ReadAgain) => boolean) {
  const next = readingParts(how, Math.max(1, parts.length - 1));
  for (const { readings, at, beside } of parts) {
    const again = next(readings);
    if (again !== undefined && counts(again)) return { at, again, beside };
  }
  return undefined;
}

const otherwise = ({ difference }: Pick<ReadAgain, 'difference'>): string =>
  Math.abs(difference) < LEAST_TOLD
    ? 'otherwise'
    : `${shown(Math.abs(difference), 1)} µm ${difference < 0 ? 'less' : 'more'} on the mean`;
const LEAST_TOLD = 0.1;

type Run = { readonly line: number; readonly row: Row };

/** Where each text of a column begins, if the rows of each stand together and there are several. */
function runsOf({ rows }: Table, column: number): readonly Run[] | undefined {
  const seen = new Set<string>();
  const runs: Run[] = [];
  let above: string | undefined;
  for (const row of rows) {
    const text = cellText(row, column);
    if (text === above) continue;
    if (text === '' || seen.has(text)) return undefined;
    seen.add(text);
    above = text;
    runs.push({ line: row.line, row });
  }
  return runs.length < 2 || runs.length * LEAST_ROWS > rows.length ? undefined : runs;
}
const LEAST_ROWS = 2;

/** Readings stand in the order of their rows. */
function partsOf(
  runs: readonly Run[],
  readings: Part['readings'],
  table: Table,
  column: number,
): readonly Part[] {
  let from = 0;
  return runs.map(({ row }, k) => {
    const end = runs[k + 1]?.line ?? Number.POSITIVE_INFINITY;
    const start = from;
    while ((readings[from]?.origin.line ?? end) < end) from += 1;
    return { readings: readings.slice(start, from), at: placeOf(table, row, column) };
  });
}
