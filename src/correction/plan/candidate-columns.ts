/**
 * Candidates as columns of numbers. Of thousands a choice looks at few: only those are made into objects, the others
 * would live through two collections of garbage for nothing.
 */
import { at } from '../../base/at.ts';
import {
  type ForetoldRemoval,
  foretold,
  meanRemoval,
  type SummedRemoval,
  together,
} from '../removal/removal-knowledge.ts';
import { mostCare, type Step } from '../removal/step.ts';

/** A sequence that technique allows, with all that the choice looks at. */
export type Candidate = {
  readonly steps: readonly Step[];
  readonly removal: ForetoldRemoval;
  /** Expected removal, µm. */
  readonly mean: number;
  /** Its strongest step, by the order of care. */
  readonly strongest: number;
  /** Machine minutes per square metre. */
  readonly pace: number;
};

/** What all of them are looked at by; and one, by its place. */
export type Columns<One> = {
  readonly median: readonly number[];
  readonly mean: readonly number[];
  readonly strongest: readonly number[];
  readonly at: (place: number) => One;
};

export type CandidateColumns = Columns<Candidate> & {
  /** The ln-SD of each removal, and how it goes together with the depth scale. */
  readonly logSd: readonly number[];
  readonly withDepth: readonly number[];
};

/** Steps that others may follow, with what they come to together. */
export type Beginning = {
  readonly steps: readonly Step[];
  readonly removal: SummedRemoval;
  readonly pace: number;
};

/** The step that ends a candidate. */
export type LastStep = {
  readonly step: Step;
  readonly removal: SummedRemoval;
  readonly pace: number;
};

/** Columns to which one candidate after another is added. */
export function emptyColumns(stepLogSd: number) {
  const beginnings: Beginning[] = [];
  const ends: LastStep[] = [];
  const removalAt = (place: number): ForetoldRemoval =>
    foretold(together(at(beginnings, place).removal, at(ends, place).removal), stepLogSd);
  const strongestAt = (place: number): number =>
    Math.max(mostCare(at(beginnings, place).steps), at(ends, place).step.combination.care);
  const candidateAt = (place: number): Candidate => {
    const beginning = at(beginnings, place);
    const end = at(ends, place);
    const removal = removalAt(place);
    return {
      steps: [...beginning.steps, end.step],
      removal,
      mean: meanRemoval(removal),
      strongest: strongestAt(place),
      pace: beginning.pace + end.pace,
    };
  };
  const add = (beginning: Beginning, end: LastStep): void => {
    beginnings.push(beginning);
    ends.push(end);
  };
  const all = (): CandidateColumns => {
    const median: number[] = [];
    const logSd: number[] = [];
    const withDepth: number[] = [];
    const mean: number[] = [];
    for (let place = 0; place < ends.length; place += 1) {
      const removal = removalAt(place);
      median.push(removal.median);
      logSd.push(removal.logSd);
      withDepth.push(removal.withDepth);
      mean.push(meanRemoval(removal));
    }
    const strongest = ends.map((_, place) => strongestAt(place));
    return { median, logSd, withDepth, mean, strongest, at: candidateAt };
  };
  return { add, all };
}
