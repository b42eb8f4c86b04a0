/** Several names of one file that are read as one panel: said, since two panels may be meant. */

import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { inWords } from '../../base/in-words.ts';
import { lettersOf } from '../../base/letters.ts';
import type { Reading } from '../../film/reading.ts';

/** Case, blanks and signs between words make no other name. */
const plain = (label: string): string => lettersOf(label.normalize('NFC').toLowerCase());

/** `written` maps each reading under its panel's id to the same as the file names it. */
export function namesTogether(
  written: ReadonlyMap<Reading, Reading>,
  { nameOf, placeOf }: { nameOf: (panel: string) => string; placeOf: (reading: Reading) => Place },
): readonly Diagnostic[] {
  const panels = groupBy(written.keys(), ({ origin, panel }) => `${origin.file}\0${panel}`);
  return [...panels.values()].flatMap((own) => {
    const labelOf = (reading: Reading): string => (written.get(reading) ?? reading).panel;
    const labels = new Map(own.toReversed().map((reading) => [labelOf(reading), reading]));
    // Few labels stand for many readings.
    const firsts = [...groupBy([...labels].reverse(), ([label]) => plain(label)).values()].flatMap(
      ([first]) => (first === undefined ? [] : [first]),
    );
    const [, second] = firsts;
    if (second === undefined) return [];
    const told = firsts.map(([label]) => `"${label}"`);
    const message = `${inWords(told)} are read as one panel, the ${nameOf(second[1].panel)}`;
    const hint = 'if they are different panels, name each as leastcut template show does';
    return [warning('panel-names-together', message, { at: placeOf(second[1]), hint })];
  });
}
