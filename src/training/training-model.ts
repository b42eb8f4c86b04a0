import type { Micrometres } from '../base/units.ts';

/** Every number that grading needs and does not own; the built-in ones carry their basis as data. */
export type TrainingModel = {
  readonly scores: {
    /** Standard deviation for the assessment of proficiency (ISO 13528). */
    readonly sigmaPt: Micrometres;
    /** A score beyond this is questionable, one at the other or beyond it unsatisfactory. */
    readonly questionable: number;
    readonly unsatisfactory: number;
    /** A plain z takes a reference that is known to this share of sigmaPt or better. */
    readonly plainUpTo: number;
  };
  readonly marks: {
    readonly passPct: number;
    readonly accuracy: number;
    readonly coverage: number;
    readonly lowPoints: number;
    readonly repairs: number;
    readonly repeatability: number;
  };
  readonly class: {
    /** Surveys of a panel from which the class says something of it. */
    readonly leastSurveys: number;
  };
  readonly slips: {
    /** How near to a factor (25.4, 10) a reading must come, as a factor either way. */
    readonly likeness: number;
    /** Chance that a check for made-up values speaks of an honest survey. */
    readonly falseAlarm: number;
  };
};

/** What a survey is marked by: shares that sum to 1, and the share of the marks that passes. */
export type Marking = {
  readonly passMark: number;
  readonly weights: Readonly<Record<Criterion, number>>;
};

export const criteria = ['accuracy', 'coverage', 'lowPoints', 'repairs', 'repeatability'] as const;
export type Criterion = (typeof criteria)[number];
