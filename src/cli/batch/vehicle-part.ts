/** The rows of one vehicle in a file of many, as plain data: it goes to a worker as it is. */
import type { GaugePiece } from '../../intake/bytes/decode.ts';
import { createSource, type Source } from '../../intake/rows/source.ts';

export type VehiclePart = Pick<Source, 'text' | 'quote' | 'limits' | 'omitted'> &
  Omit<GaugePiece, 'source'> & {
    /** Checksum of the whole file. */
    readonly sha256: string;
  };

export const toPart = (
  { text, quote, limits, omitted }: Source,
  about: Omit<VehiclePart, keyof Source>,
): VehiclePart => ({ text, quote, limits, omitted, ...about });

export const toPiece = (
  name: string,
  { text, quote, limits, omitted, encoding, evidence, decided }: VehiclePart,
): GaugePiece => ({
  source: createSource(name, text, { quote, limits, omitted }),
  encoding,
  evidence,
  decided,
});
