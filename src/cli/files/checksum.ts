/**
 * SHA-256 of bytes, in hex. Few runs are asked for one, and `node:crypto`, which loads the streams too,
 * takes 3 ms: so it is loaded with the first.
 */
import { createRequire } from 'node:module';
import { join } from 'node:path';

export function sha256Of(bytes: Uint8Array): string {
  const load = createRequire(join(import.meta.dirname, 'checksum.js'));
  const { createHash } = load('node:crypto') as typeof import('node:crypto');
  return createHash('sha256').update(bytes).digest('hex');
}
