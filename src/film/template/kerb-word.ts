/** A panel named by its side to the kerb, which is left in one country and right in another. */
import { readLabel } from './panel-names.ts';
import type { KerbWord } from './panel-sense.ts';

export const kerbWordIn = (label: string): KerbWord | undefined =>
  readLabel(label).meanings.find(({ part, kerb }) => part !== undefined && kerb !== undefined)
    ?.kerb;
