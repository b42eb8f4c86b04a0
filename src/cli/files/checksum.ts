/**
 * SHA-256 of bytes, in hex. Few runs are asked for one, and `node:crypto`, which loads the streams too,
 * takes 3 ms: so it is loaded with the first.
 */
export function sha256Of(bytes: Uint8Array): string {
  const { createHash } = process.getBuiltinModule('node:crypto');
  return createHash('sha256').update(bytes).digest('hex');
}
