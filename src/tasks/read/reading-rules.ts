/** How a file of readings is to be read: by flags, by a decisions file, by what is usual. */
import type { ReadingDecisions } from '../../formats/decisions.ts';
import type { IntakeOptions } from '../../intake/read-gauge-file.ts';

/** What may be settled of a file by hand. */
export type TypedReading = Omit<IntakeOptions, 'isPanel' | 'plausible' | 'limits' | 'usualUnit'>;

export type AsDecided = {
  /** The decisions file, as it was named. */
  readonly file: string;
  readonly decisions: ReadingDecisions;
};

export type ReadingRules = {
  /** What holds where neither flags nor decisions say anything. */
  readonly usual: IntakeOptions;
  readonly typed: TypedReading;
  readonly decided: AsDecided | undefined;
};
