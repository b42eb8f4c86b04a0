/** Which bytes are well-formed UTF-8 (Unicode standard, table 3-7). */

/** Offset of the first byte at or after `from` that is not part of well-formed UTF-8; else the length. */
export function firstForeignByte(bytes: Uint8Array, from = 0): number {
  let at = from;
  while (at < bytes.length) {
    const step = sequenceLength(bytes, at);
    if (step === 0) return at;
    at += step;
  }
  return at;
}

/** Bytes of the character that starts at an offset, 0 if none does. */
export function sequenceLength(bytes: Uint8Array, at: number): number {
  const lead = bytes[at] ?? 0;
  if (lead < 0x80) return 1;
  const length = lengthAfter(lead);
  if (length === 0) return 0;
  const low = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  const high = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  const second = bytes[at + 1] ?? 0;
  if (second < low || second > high) return 0;
  for (let k = 2; k < length; k += 1) {
    if (((bytes[at + k] ?? 0) & 0xc0) !== 0x80) return 0;
  }
  return length;
}

const lengthAfter = (lead: number): number =>
  lead < 0xc2 ? 0 : lead < 0xe0 ? 2 : lead < 0xf0 ? 3 : lead < 0xf5 ? 4 : 0;

/** Bytes at the end that begin a character and do not finish it: 0 to 3. */
export function unfinishedTail(bytes: Uint8Array): number {
  for (let back = 1; back <= Math.min(3, bytes.length); back += 1) {
    const byte = bytes[bytes.length - back] ?? 0;
    if ((byte & 0xc0) === 0x80) continue;
    return lengthAfter(byte) > back ? back : 0;
  }
  return 0;
}
