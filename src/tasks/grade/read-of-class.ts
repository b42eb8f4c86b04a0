/**
 * A file of a class, read by the unit that is asked for where it says none itself. Several people hand in several gauges: what
 * one of them says of its own readings goes before what is said of all, aloud.
 */
import type { Diagnostic, Outcome } from '../../base/diagnostics.ts';
import type { ReadRequest, ReadVehicles } from '../read/read-request.ts';
import { readVehicles } from '../read/read-vehicles.ts';

export function readOfClass(asked: ReadRequest): Outcome<ReadVehicles> {
  const request = { ...asked, intake: { ...asked.intake, ownUnitTold: true } };
  const read = readVehicles(request);
  const conflicts = read.diagnostics.filter(({ code }) => code === 'unit-conflict');
  if (conflicts.length === 0) return read;
  const own = readVehicles(withoutUnit(request));
  return own.value === undefined
    ? read
    : { value: own.value, diagnostics: [...conflicts.map(asTold), ...own.diagnostics] };
}

function withoutUnit({ intake, typed = {}, ...request }: ReadRequest): ReadRequest {
  const { unit: _, ...usual } = intake;
  const { unit: __, ...said } = typed;
  return { ...request, intake: usual, typed: said };
}

const asTold = (conflict: Diagnostic): Diagnostic => ({
  ...conflict,
  severity: 'warning',
  hint: 'this file is read in the unit that it says; the one asked for holds for files that say none',
});
