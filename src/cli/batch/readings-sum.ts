/** A checksum of what was read, in whatever form and order a file gives it. */
import { createHash } from 'node:crypto';
import type { Reading } from '../../film/reading.ts';

/** The same panels, points, layers and values have the same. */
export function readingsSum(readings: readonly Reading[]): string {
  const said = readings.map(({ panel, point, layer, thickness }) =>
    JSON.stringify([panel, point, layer, thickness]),
  );
  return createHash('sha256').update(said.sort().join('\n')).digest('hex');
}
