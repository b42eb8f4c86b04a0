/** One trial on a test spot: what was worked, what the gauge showed at its marks, what the eye saw. */
import { normalQuantile } from '../../base/stats/normal.ts';
import { studentTQuantile } from '../../base/stats/student-t.ts';
import { mean, sampleVariance } from '../../base/stats/summary.ts';
import { rectangular } from '../../base/uncertainty.ts';
import { type DegreesCelsius, type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../../film/film-model.ts';
import { type Defect, medianDepth } from '../defects.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import type { TrialObservation } from './trial-observation.ts';

export type SpotMark = {
  readonly name: string;
  readonly before: Micrometres;
  readonly after: Micrometres;
};

export type SpotTrial = {
  readonly spot: string;
  readonly panel: string;
  /** Where on the panel, as its file calls it; absent where it does not. */
  readonly place?: string;
  /** As foretold on paint of usual hardness. */
  readonly combination: Combination;
  /** Worked on the same place one after another. */
  readonly sets: number;
  /** None where it was judged by eye alone. */
  readonly marks: readonly SpotMark[];
  /** Marks that read more after than before, which no work does: their film does not count. */
  readonly gained: readonly SpotMark[];
  readonly defect: Defect;
  /** Share of the defect that went, by eye. */
  readonly cleared: number | null;
  /** 0 mirror … 4 heavy. */
  readonly haze: number | null;
  readonly colourOnPad: boolean | null;
  readonly temperature: DegreesCelsius | null;
  readonly notes: readonly string[];
};

/** What a trial took, by its marks. */
export type RemovedFilm = {
  readonly mean: Micrometres;
  readonly standardError: Micrometres;
  /** 95 % interval; `low` may lie under 0. */
  readonly low: Micrometres;
  readonly high: Micrometres;
  /** A removal of this size passes for one half of the time, … */
  readonly resolvable: Micrometres;
  /** … and of this size with 95 % chance. */
  readonly sure: Micrometres;
  readonly marks: number;
};

const CONFIDENCE = 0.95;

/** Whether all that was read of it rose: nobody knows then what was read. */
export const onlyGained = ({ marks, gained }: Pick<SpotTrial, 'marks' | 'gained'>): boolean =>
  marks.length === 0 && gained.length > 0;

export type Gauge = Pick<FilmModel['measurement'], 'repeatability' | 'proportional'>;

/**
 * Mean of before − after over the marks; null without marks.
 *
 * The variance of one difference is 2·s² of the gauge's repeatability with so many degrees of freedom,
 * pooled with the scatter of the marks' own differences: (d₀·2s² + Σ(Δ − Δ̄)²)/(d₀ + n − 1). The gauge's
 * fixed error cancels; its proportional one acts on the difference alone (JCGM 100, F.1.2.3).
 */
export function removedFilm(
  marks: readonly SpotMark[],
  gauge: Gauge,
  scatterDof: number,
): RemovedFilm | null {
  if (marks.length === 0) return null;
  const differences = marks.map(({ before, after }) => before - after);
  const removed = mean(differences);
  const own = differences.length - 1;
  const scatter = own === 0 ? 0 : own * sampleVariance(differences);
  const variance = (scatterDof * 2 * gauge.repeatability ** 2 + scatter) / (scatterDof + own);
  const ofMarks = Math.sqrt(variance / marks.length);
  const ofScale = rectangular(gauge.proportional * Math.abs(removed));
  const standardError = Math.hypot(ofMarks, ofScale);
  const reach = studentTQuantile((1 + CONFIDENCE) / 2, scatterDof + own) * standardError;
  return {
    mean: micrometres(removed),
    standardError: micrometres(standardError),
    low: micrometres(removed - reach),
    high: micrometres(removed + reach),
    resolvable: micrometres(HALF_SEEN * ofMarks),
    sure: micrometres(NEARLY_SEEN * ofMarks),
    marks: marks.length,
  };
}

/** Decision limit of a difference: a true one of this many standard errors is seen half of the time. */
const HALF_SEEN = normalQuantile((1 + CONFIDENCE) / 2);
/** And of this many with 95 % chance: 1.96 + 1.645. */
const NEARLY_SEEN = HALF_SEEN + normalQuantile(CONFIDENCE);

/** Whether its film surely rose: nobody knows then what was read, nor what the eye saw of it. */
export const hasRisen = (
  trial: Pick<SpotTrial, 'marks' | 'gained'>,
  removed: RemovedFilm | null,
): boolean => onlyGained(trial) || (removed !== null && removed.mean < -removed.resolvable);

/** What the learning makes of a trial; nothing of a defect that has no depth. */
export function observationOf(trial: SpotTrial, removed: RemovedFilm | null): TrialObservation {
  const depth = medianDepth(trial.defect);
  return {
    combination: trial.combination.id,
    foretold: trial.combination.perSet * trial.sets,
    removed:
      removed === null ? null : { value: removed.mean, standardError: removed.standardError },
    cleared: trial.cleared === null || depth === 0 ? null : { share: trial.cleared, depth },
    haze: trial.haze,
  };
}

/** The eye saw haze, whatever became of the readings. */
const hazeAlone = (trial: SpotTrial): readonly TrialObservation[] =>
  trial.haze === null ? [] : [observationOf({ ...trial, cleared: null }, null)];

/** All trials of one paint as the learning takes them; one whose film rose teaches nothing but the haze that it left. */
export const observationsOf = (
  trials: readonly SpotTrial[],
  gauge: Gauge,
  { spot }: Pick<CorrectionModel, 'spot'>,
): readonly TrialObservation[] =>
  trials.flatMap((trial) => {
    const removed = removedFilm(trial.marks, gauge, spot.scatterDof);
    return hasRisen(trial, removed) ? hazeAlone(trial) : [observationOf(trial, removed)];
  });
