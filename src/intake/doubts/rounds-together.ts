/**
 * Parts of a file that read the same panels anew on no day of their own: under names of columns that stand again, or
 * under another text in a column that is not read. They may be a second round, which agrees with the first and is
 * told; where they differ they are of another visit or vehicle, and refused.
 */
import { error, warning } from '../../base/diagnostics.ts';
import { shown } from '../../base/rounding.ts';
import { visitsHint } from '../cells/visit-words.ts';
import type { Findings } from '../findings.ts';
import { cellText } from '../rows/row.ts';
import type { Row } from '../rows/tokens.ts';
import { placeOf, type Table } from '../tables/table.ts';
import { type How, type ReadAgain, readingParts } from './read-again.ts';
import { type Part, what } from './several-days.ts';

type TablePart = Part & {
  /** Whether it stands beside the one before it, which is told elsewhere. */
  readonly beside?: boolean;
};

/** `parts` are the tables of a file, each with its readings. */
export function doubtRounds(parts: readonly TablePart[], how: How, findings: Findings): void {
  const found = firstAgain(parts, how, (again) => !again.goesOn || again.shared > 1);
  if (found === undefined) return;
  const { at, again, beside } = found;
  if (again.agree && beside === true) return;
  if (again.agree) {
    const message = `the ${what(how)} below stand above already, and agree with what was read there: they are taken as a second round`;
    findings.addAll([warning('reading-doubted', message, { at, hint: ofVisits })]);
    return;
  }
  const message = `below, the same ${what(how)} as above read ${otherwise(again)}: another visit, or another vehicle`;
  findings.addAll([error('visits-together', message, { at, hint: `${ofVisits}; ${ofRounds}` })]);
}

const ofVisits = `if they are of two visits, ${visitsHint}`;
const ofRounds =
  'if of two vehicles, add a column "vehicle"; if it is a second round, number it in a column "repeat"';

/** A column that is not read, by which the rows fall into parts that read the same panels. */
export function doubtUnreadColumns(
  { table, readings }: { readonly table: Table; readonly readings: Part['readings'] },
  how: How,
  findings: Findings,
): void {
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
    return;
  }
}

function firstAgain(parts: readonly TablePart[], how: How, counts: (again: ReadAgain) => boolean) {
  const next = readingParts(how);
  for (const { readings, at, beside } of parts) {
    const again = next(readings);
    if (again !== undefined && counts(again)) return { at, again, beside };
  }
  return undefined;
}

const otherwise = ({ difference }: ReadAgain): string =>
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
