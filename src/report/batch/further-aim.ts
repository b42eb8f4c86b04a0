/** Of the record of a quote: whether a further aim costs less than the one that was asked for. */
import type { DataCell, MachineRecord } from '../model.ts';
import { at, list, textAt } from './record-paths.ts';

/** In the words of the quote: of an aim alone its own note, of several the note of the one after it. Null where none does. */
export function furtherAimCostsLess(result: MachineRecord): DataCell {
  const options = list(result, 'options');
  const asked = options.findIndex((option) => at(option, 'aim') === at(result, 'aim'));
  if (asked < 0) return null;
  return (
    noteOf(options[asked], 'further-aim-costs-less') ?? noteOf(options[asked + 1], 'aim-costs-less')
  );
}

const noteOf = (option: unknown, code: string): string | null =>
  textAt(
    list(option, 'notes').find((note) => at(note, 'code') === code),
    'text',
  );

/** What is saved, without the reasons: they name panels, and film in the unit of a record. */
export const savedBy = (text: string): string => text.split(': ').slice(0, 1).join('');
