/** Which readings of a file are written with a last decimal of 0: a number no longer shows it. */
import type { Reading } from '../../film/reading.ts';
import { decode } from '../../intake/bytes/decode.ts';
import type { LoadedFile, ReadInput } from '../read/read-request.ts';

export function withWrittenZeros(
  readings: readonly Reading[],
  file: LoadedFile,
  { decisions }: ReadInput,
): readonly Reading[] {
  if (decisions === null) return readings;
  const { encoding, decimal } = decisions;
  const decoded = decode(file, { encoding }).value;
  if (decoded === undefined) return readings;
  const lines = decoded.source.text.split('\n');
  const lastZero = decimal === ',' ? /^\D*\d+,\d*0(?!\d)/u : /^\D*\d+\.\d*0(?!\d)/u;
  return readings.map((reading) => {
    const { line, column } = reading.origin;
    const cell = (lines[line - 1] ?? '').slice(column - 1);
    return lastZero.test(cell) ? { ...reading, zeroWritten: true } : reading;
  });
}
