/** The unit of each table of a file, and what is said where one is missing. */
import type { Diagnostic, Outcome } from '../../base/diagnostics.ts';
import { tellLostMicro } from '../bytes/lost-micro.ts';
import type { TableUnit } from '../cells/unit.ts';
import type { Findings } from '../findings.ts';
import type { IntakeOptions } from '../intake-options.ts';
import type { Parts } from '../parts/section-state.ts';
import type { ShapedTable } from '../tables/shape-table.ts';
import type { Table } from '../tables/table.ts';
import { decideUnit } from './reading-unit.ts';
import { fitsOtherUnit, sizesOf } from './size-in-units.ts';
import type { UnitDecision } from './units-in-cells.ts';

/**
 * The unit of each table; one that says nothing has that of the tables that do, if they agree: but
 * not a unit that a line names below it, which may be where the unit changed.
 */
export function decideUnits(
  shaped: readonly ShapedTable[],
  { units: above }: Parts,
  options: IntakeOptions,
  findings: Findings,
): readonly UnitDecision[] | undefined {
  const decide = (given: TableUnit | undefined) =>
    shaped.map(({ table, unitsRow, texts, claims }, k) =>
      decideUnit(table, {
        ...{ above, unitsRow, texts, claims, given },
        since: shaped[k - 1]?.table.rows.at(-1)?.line ?? 0,
        largest: options.plausible.largestReading,
        film: { least: options.plausible.doubtfulUnder, most: options.plausible.doubtfulOver },
      }),
    );
  const said = decide(options.unit);
  // What a shop’s gauge usually shows says nothing of a file that names a unit.
  const usual =
    options.unit === undefined && options.usualUnit !== undefined && said.every(isMissing)
      ? decide(options.usualUnit)
      : [];
  const outcomes = usual.some(({ value }) => value !== undefined) ? usual : said;
  const known = outcomes.flatMap(({ value }) => value ?? []);
  const [first] = known;
  const agree = known.every(({ unit }) => unit === first?.unit);
  const table = shaped[0]?.table;
  const isUnknown = outcomes.some(({ value }) => value === undefined);
  const sizes = isUnknown
    ? sizesOf(
        shaped.flatMap(({ texts }, k) =>
          outcomes[k]?.value === undefined ? [] : [...texts.keys()],
        ),
      )
    : undefined;
  const decisions = outcomes.map(({ value, diagnostics }, k) => {
    const missing = diagnostics.every(({ code }) => code === 'unit-missing');
    const isLike = (unit: TableUnit): boolean =>
      sizes === undefined ||
      ![...(shaped[k]?.texts.keys() ?? [])].some((text) => fitsOtherUnit(text, unit, sizes));
    if (value === undefined && missing && agree && above.length === 0 && first !== undefined) {
      if (isLike(first.unit)) return first;
    }
    // Of nothing but statistics no unit is asked: none of their numbers is read.
    if (missing && shaped[k]?.table.rows.length === 0) return value ?? first ?? ofNoReadings;
    findings.addAll(diagnostics.map((diagnostic) => lostOr(diagnostic, table)));
    return value;
  });
  const all = decisions.flatMap((decision) => decision ?? []);
  if (all.length < decisions.length) return undefined;
  const lost = table === undefined ? undefined : lostMicro(table, true);
  if (lost !== undefined) findings.addAll([lost]);
  return all;
}

const ofNoReadings: UnitDecision = {
  ...{ unit: 'um', evidence: '', byRow: false, cellsNameUnits: false },
};

const isMissing = ({ value, diagnostics }: Outcome<UnitDecision>): boolean =>
  value === undefined &&
  diagnostics.every(({ code }) => code === 'unit-missing' || code === 'unit-unknown');

/** A unit that is missing because its µ was lost on the way is told as such. */
function lostOr(diagnostic: Diagnostic, table: Table | undefined): Diagnostic {
  const { code } = diagnostic;
  if (table === undefined || (code !== 'unit-missing' && code !== 'unit-unknown'))
    return diagnostic;
  return lostMicro(table, false) ?? diagnostic;
}

const lostMicro = ({ source }: Table, unitKnown: boolean): Diagnostic | undefined =>
  source.text.includes('?m') || source.text.includes('\ufffd')
    ? tellLostMicro(source, unitKnown)
    : undefined;
