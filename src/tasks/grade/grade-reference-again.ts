/** The reference found once more among the files of trainees: it is told, and graded as nobody’s. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { saidFile } from '../../base/file-name.ts';
import type { Reading } from '../../film/reading.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Expert } from './grade-base.ts';
import { foldedName, type HandedIn } from './grade-readings.ts';

/** Byte by byte, whatever it is called. */
export const isSameFile = (file: LoadedFile, reference: LoadedFile | undefined): boolean =>
  reference !== undefined &&
  file.bytes.length === reference.bytes.length &&
  file.bytes.every((byte, i) => byte === reference.bytes[i]);

/** Written anew, or among the surveys of a file: by the same hand, the same readings. */
export function isExpertsOwn(handedIn: HandedIn, expert: Expert | null): boolean {
  if (expert === null || expert.assessor === null) return false;
  return (
    foldedName(expert.assessor) === foldedName(handedIn.name) &&
    readingsKey(handedIn.readings.readings) === readingsKey(expert.readings.readings)
  );
}

const readingsKey = (readings: readonly Reading[]): string =>
  readings
    .map(({ panel, point, thickness }) => JSON.stringify([panel, point, thickness]))
    .sort()
    .join();

export const referenceAgain = (file: string): Diagnostic =>
  warning(
    'grade-reference-again',
    `${saidFile(file)} holds the readings of the reference itself: nobody is graded by it`,
    {
      at: { file },
      hint: 'keep the reference out of the folder of the trainees’ files; a trainee who handed it in has handed in a copy',
    },
  );
