/** Where a byte that cannot be decoded stands, as a person's editor shows the place. */
import type { Place } from '../../base/diagnostics.ts';
import { createSource } from '../rows/source.ts';

/** The text around is shown as UTF-8, with U+FFFD for each byte that is none. */
export function bytePlace(name: string, bytes: Uint8Array, offset: number): Place {
  const lenient = new TextDecoder('utf-8', { ignoreBOM: true });
  const text = (part: Uint8Array): string => lenient.decode(part).replace(/\r\n?/gu, '\n');
  const before = text(bytes.subarray(0, offset));
  const rest = text(bytes.subarray(offset, offset + 400));
  return createSource(name, before + rest).placeAt(before.length, 1);
}
