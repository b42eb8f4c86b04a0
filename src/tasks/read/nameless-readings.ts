/**
 * Readings whose panel nobody names: a bare list of numbers. They can be looked at, and nothing can be concluded from
 * them until somebody says which panel they are of.
 */
import { type Diagnostic, error, type Place, warning } from '../../base/diagnostics.ts';
import type { Reading } from '../../film/reading.ts';

/** `keep`: whether such readings are shown as they are, and told. */
export function tellNameless(
  readings: readonly Reading[],
  keep: boolean,
  placeOf: (reading: Reading) => Place,
): readonly Diagnostic[] {
  const nameless = readings.filter(({ panel }) => panel === '');
  const [first] = nameless;
  if (first === undefined) return [];
  const severity = keep ? warning : error;
  const own = nameless.length === 1 ? 'the reading' : `the ${nameless.length} readings`;
  const kept = keep ? ': they are shown as one group, and may be of several panels' : '';
  return [
    severity('panel-missing', `nothing names the panel of ${own}${kept}`, {
      at: placeOf(first),
      hint: 'if all are of one panel: --panel-names "=bonnet"; else write the name of each above its readings',
    }),
  ];
}
