/** What is wrong with a file of several vehicles, told by vehicle where each fault is one of a row of its own. */
import type { DiagnosticCode } from '../../base/catalogue.ts';
import type { Diagnostic } from '../../base/diagnostics.ts';
import { mostOfAKind } from '../../intake/findings.ts';
import type { RowsByVehicle } from '../../intake/rows-by-vehicle.ts';

export type Faults = {
  readonly byVehicle: ReadonlyMap<string, readonly Diagnostic[]>;
  /** The lines of all rows of these vehicles. */
  readonly lines: ReadonlySet<number>;
};

/**
 * Faults of a row whose vehicle is plain. A row that is too long may be two rows, of two vehicles; units,
 * decimal marks and statistics are of the file.
 */
const ofOneRow: ReadonlySet<DiagnosticCode> = new Set([
  'cell-invalid',
  'panel-missing',
  'panel-unknown',
  'panel-ambiguous',
  'reading-became-date',
  'reading-implausible',
  'reading-not-a-number',
  'row-too-short',
]);

/** Those known before and those told now; undefined where one of them is nobody's, or everybody's. */
export function faultsByVehicle(
  told: readonly Diagnostic[],
  rows: RowsByVehicle,
  before: Faults,
): Faults | undefined {
  if (rows.size < 2) return undefined;
  const left = [...rows.keys()].filter((vehicle) => !before.byVehicle.has(vehicle));
  const ownerOf = ownersIn(rows, left.length === 1 ? left[0] : undefined);
  const errors = told.filter(isError);
  const owners = errors.filter((one) => !isCount(one, errors)).map(ownerOf);
  if (!owners.every((owner) => owner !== undefined && left.includes(owner))) return undefined;
  const byVehicle = new Map(before.byVehicle);
  for (const owner of owners) {
    if (owner === undefined || byVehicle.has(owner)) continue;
    const own = told.filter((one) => ownerOf(one) === owner || isOfAll(one, ownerOf));
    byVehicle.set(owner, own);
  }
  const lines = [...byVehicle.keys()].flatMap((vehicle) => rows.get(vehicle) ?? []);
  return { byVehicle, lines: new Set(lines) };
}

type OwnerOf = (one: Diagnostic) => string | undefined;

/** `only` is the vehicle that is left, where one is: then whatever is wrong is wrong with it. */
function ownersIn(rows: RowsByVehicle, only: string | undefined): OwnerOf {
  const owners = new Map(
    [...rows].flatMap(([vehicle, own]) => own.map((line) => [line, vehicle] as const)),
  );
  return (one) => {
    if (one.vehicle !== undefined) return one.vehicle ?? undefined;
    const isRows = !isError(one) || ofOneRow.has(one.code);
    return (
      (isRows ? owners.get(one.at?.line ?? 0) : undefined) ?? (isError(one) ? only : undefined)
    );
  };
}

const isError = ({ severity }: Diagnostic): boolean => severity === 'error';

/** A remark on the file as a whole stands with each of its vehicles. */
const isOfAll = (one: Diagnostic, ownerOf: OwnerOf): boolean =>
  !isError(one) && one.vehicle === undefined && ownerOf(one) === undefined;

/** `and 12 more of this kind`: whose they are is seen when those that are told are out of the way. */
const isCount = ({ code, at }: Diagnostic, errors: readonly Diagnostic[]): boolean =>
  at?.line === undefined && errors.filter((one) => one.code === code).length > mostOfAKind;
