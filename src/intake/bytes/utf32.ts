/** UTF-32: four bytes to a character, the least or the greatest of them first. The platform has no decoder for it. */
export type ByteOrder = 'little' | 'big';

const lastCharacter = 0x10ffff;
/** Halves of the pairs of UTF-16 are no characters. */
const isSurrogate = (code: number): boolean => code >= 0xd800 && code <= 0xdfff;

/** The text, or undefined where four bytes are no character or some are left over. */
export function fromUtf32(bytes: Uint8Array, order: ByteOrder): string | undefined {
  if (bytes.length % 4 !== 0) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 4) {
    const code = view.getUint32(at, order === 'little');
    if (code > lastCharacter || isSurrogate(code)) return undefined;
    parts.push(String.fromCodePoint(code));
  }
  return parts.join('');
}
