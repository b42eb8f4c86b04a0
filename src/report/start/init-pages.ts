/** What init wrote, for people and for machines. */
import type { StartFile } from '../../tasks/start/start-files.ts';
import { emptyRecord } from '../envelope.ts';
import { joined } from '../facts.ts';
import { type Block, list, type MachineRecord, paragraph } from '../model.ts';

/** A file with the path it was written to. */
export type WrittenFile = StartFile & { readonly path: string };

export function initBlocks(written: readonly WrittenFile[], next: string): readonly Block[] {
  return [
    list(
      'Written',
      written.map(({ path, purpose }) => `${path}: ${purpose}`),
    ),
    paragraph(
      null,
      joined(
        [
          'They hold the built-in values, so no figure changes until you edit them.',
          'But what they state stands no longer under Assumed: keep what you know of the car and the shop, and take the rest out.',
          'The notes in them say what may stand where.',
          'The prices are made up, and marked so: no quote takes them until you put in yours.',
        ],
        ' ',
      ),
    ),
    paragraph('Next', next),
  ];
}

export const initRecord = (
  written: readonly WrittenFile[],
  next: string,
  version: string,
): MachineRecord => ({
  ...emptyRecord('init', { version, diagnostics: [] }),
  written: written.map(({ path }) => path),
  next,
});
