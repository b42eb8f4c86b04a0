/** Diagnostics in the order of the files they speak of, from the top; what speaks of no place comes last. */
import type { Diagnostic } from './diagnostics.ts';

export function inPlaceOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const files = [...new Set(diagnostics.map(({ at }) => at?.file))];
  const fileAt = ({ at }: Diagnostic): number =>
    at === undefined ? files.length : files.indexOf(at.file);
  return diagnostics.toSorted(
    (one, other) =>
      fileAt(one) - fileAt(other) ||
      (one.at?.line ?? 0) - (other.at?.line ?? 0) ||
      (one.at?.column ?? 0) - (other.at?.column ?? 0),
  );
}
