import type { Micrometres } from '../base/units.ts';

/** Every number that grading needs and does not own; the built-in ones carry their basis as data. */
export type TrainingModel = {
  readonly scores: {
    /** Standard deviation for the assessment of proficiency (ISO 13528). */
    readonly sigmaPt: Micrometres;
    /** Film up to which it holds what gauges are off by that nobody named. */
    readonly sigmaPtFilm: Micrometres;
    /** A score beyond this is questionable, one at the other or beyond it unsatisfactory. */
    readonly questionable: number;
    readonly unsatisfactory: number;
    /** A plain z takes a reference that is known to this share of sigmaPt or better. */
    readonly plainUpTo: number;
    /** What a questionable panel, or one numbered from the other end, counts as, of a satisfactory one. */
    readonly questionableShare: number;
    /** What a panel with a slip in its readings counts as. */
    readonly slippedShare: number;
    /** Marks of one name that two readings of a panel must share to be compared mark by mark. */
    readonly sharedMarks: number;
    /** Scored panels from which something is said of the whole car. */
    readonly carPanels: number;
  };
  readonly verdict: {
    /** On fewer panels than this nobody fails. */
    readonly panelsAtFault: number;
    /** Share of the panels up to which a survey read is questionable, and under which the class leaves it out. */
    readonly readShare: number;
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
    /** The same, from which on made-up values count as not read. */
    readonly provedAlarm: number;
    /** Share of the readings from which a slip is one of the whole survey. */
    readonly wholeSurvey: number;
    /** Chance under which a panel counts as one that reads too even. */
    readonly evenPanel: number;
    /** Chance from which the panels that are none of these look honest together. */
    readonly honestRest: number;
    /** Made-up values scatter by this share of the film: where they would not be seen, nobody can tell. */
    readonly madeUpSpread: number;
    /** The finest step that a display has: exact equality of finer figures is no more telling. */
    readonly finestStep: Micrometres;
  };
  readonly copies: {
    /** Points that two surveys must share for the same values, or for values that lie near, to prove anything. */
    readonly samePoints: number;
    readonly nearPoints: number;
    /** Two honest readings of a place show the same figure at most that often. */
    readonly mostAlike: number;
    /** Others of the class that both of two near surveys must share points with. */
    readonly others: number;
    /** How many times better than usual a steady hand on a good gauge repeats. */
    readonly steadyHand: number;
    /** Two hands at one mark differ by this many times their repeats (SD), as nobody sets down at just the same place. */
    readonly setDownBeside: number;
    /** Degrees of freedom from which a trainee’s own repeats tell the hand. */
    readonly ownRepeats: number;
  };
  readonly patterns: {
    /** Marks from which a drift is looked for. */
    readonly driftMarks: number;
    /** Chance under which levels of their own fit the panels better than a drift does. */
    readonly levelsChance: number;
    /** What an honest hand reads panels apart by (SD). */
    readonly levelSd: Micrometres;
    /** Panels read at the same marks, and marks on each, from which marks that read off are looked for. */
    readonly offPanels: number;
    readonly offMarks: number;
    /** Share of the variance at a mark that is of its panel, in all of its marks. */
    readonly panelShare: number;
    /** Chance under which pairs of places show that values follow the film after all. */
    readonly followedChance: number;
    /** Chance from which the panels before count as followed, where a survey stops following the film. */
    readonly followedUsual: number;
    /** Chance that an honest survey’s panels are told not to follow the car. */
    readonly panelsAlarm: number;
  };
  /** As of two visits that are compared: the log of the likelihoods' ratio from which points are held to be turned. */
  readonly farBetter: number;
};

/** What a survey is marked by: shares that sum to 1, and the share of the marks that passes. */
export type Marking = {
  readonly passMark: number;
  readonly weights: Readonly<Record<Criterion, number>>;
};

export const criteria = ['accuracy', 'coverage', 'lowPoints', 'repairs', 'repeatability'] as const;
export type Criterion = (typeof criteria)[number];
