/**
 * How far a trainee’s mean of a panel is from the reference, and what that says.
 *
 * At points of one’s own the two means differ by the film between the points as well:
 * z′ = d/√(σ_pt² + s̃²·(1/n + 1/n_ref) + u²), s̃ the spread of the film, u the calibration of both gauges where
 * they are not one. At the same marked points the film is the same; there d is the mean of the differences
 * point by point, and what is left in the reference is u_ref² = Σ(s_r²/k)/n², s_r the repeatability and k the
 * readings at a point. Up to u_ref = 0.3·σ_pt a plain z is taken (ISO 13528, 9.2), else z′ = d/√(σ_pt² + u_ref²).
 * A consensus has u_ref = (1.25/√p)·s* in place of s̃²/n_ref. Where σ_pt is taken from the class it holds the
 * trainees’ own points already, and s̃²/n is left out.
 *
 * Gauges that nobody named may be one or several. σ_pt holds what they are off by up to the film t₀ that it is meant at;
 * over it each may be off by its share a₁ of the rest, however large the difference is: u² has (a₁·(t − t₀))²/3 of each
 * side besides, t the reference’s film.
 */
import { mean } from '../base/stats/summary.ts';
import { rectangular } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { Panel } from '../film/template/template.ts';
import { betweenPoints, type GradedSurvey, markedPoints, type ReadPanel } from './graded-survey.ts';
import type { Reference, ReferencePanel } from './reference.ts';
import { enNumber, type ScoreVerdict, scoreVerdict, zetaScore, zScore } from './scores.ts';
import type { TrainingModel } from './training-model.ts';

/** The standard deviation that scores are measured by, and where it is from. */
export type SigmaPt = { readonly value: Micrometres; readonly from: 'stated' | 'class' };

/** Coverage factor of an expanded uncertainty of about 95 %. */
const COVERAGE_FACTOR = 2;

/** What is known of the gauges of both sides. */
export type Gauges = {
  /** One gauge took both: its calibration cancels in the difference. */
  readonly same: boolean;
  /** A gauge file states what each is uncertain by. */
  readonly stated: boolean;
  /** The trainee’s was checked, and that of the reference never: that one widens nothing. */
  readonly onlyOwn?: boolean;
  /** What the trainee’s is proved to have moved by between two checks; undefined where it is not. */
  readonly moved?: Micrometres | undefined;
  /** The share of a reading that a gauge may be off by, where nobody named any: they may be one, or one each. */
  readonly unnamed?: number | undefined;
};

/** Standard uncertainties by the calibration of the trainee’s gauge, and of the reference’s. */
export function calibrationsOf(
  { film }: Pick<ReadPanel, 'film'>,
  { calibration, mean: theirs, points }: Pick<ReferencePanel, 'calibration' | 'mean' | 'points'>,
  { same, onlyOwn = false, unnamed = 0 }: Gauges,
  { sigmaPtFilm }: Pick<TrainingModel['scores'], 'sigmaPtFilm'>,
): readonly [own: number, ofReference: number] {
  if (!same) return [film.calibration, onlyOwn ? 0 : calibration];
  // By the reference’s film on both sides: who reads too much is allowed no more for it.
  const over = rectangular(unnamed * Math.max(0, theirs - sigmaPtFilm));
  // What the gauges of a class are off by is in the spread that its consensus is uncertain by.
  return [over, points.length === 0 ? 0 : over];
}

/**
 * The calibration as far as it widens a score: a difference that it cannot explain, with all else that is uncertain (within
 * 2·√(u_cal² + u²)), is scored as if there were no doubt about the gauge. Where nobody named any, a larger tolerance of thick
 * film is all that it is, and has no such end.
 */
export const calibrationIn = (
  difference: number,
  calibration: number,
  besides: number,
  { same }: Pick<Gauges, 'same'>,
): number =>
  same || Math.abs(difference) <= COVERAGE_FACTOR * Math.hypot(calibration, besides)
    ? calibration
    : 0;

export type PanelScore = {
  readonly panel: Panel;
  readonly count: number;
  readonly mean: Micrometres;
  readonly reference: ReferencePanel;
  readonly difference: Micrometres;
  /** Points that both read at one mark; 0 where each read points of their own. */
  readonly shared: number;
  readonly kind: 'z' | 'z-prime';
  /** Of the gauges, as far as it widens the score. */
  readonly calibration: number;
  readonly z: number;
  readonly zeta: number | null;
  readonly en: number | null;
  readonly verdict: ScoreVerdict;
};

/** Its means are of other points than it is scored by: they lie otherwise apart than a page with tenths shows. */
export const isByMarksAlone = ({ shared, mean: own, reference, difference }: PanelScore): boolean =>
  shared > 0 && Math.abs(own - reference.mean - difference) > 0.1;

export type Comparison = {
  readonly difference: number;
  readonly shared: number;
  /** Variances: of the reference, of the trainee’s sampling of the film (none at shared marks), of the trainee’s own noise. */
  readonly ofReference: number;
  readonly ofSampling: number;
  readonly ofOwn: number;
};

/**
 * A trainee’s panel beside one of the reference, which need not be the same panel. Fewer marks in common than `least`
 * are no basis where either side read more: then all points count.
 */
export function compared(
  read: ReadPanel,
  panel: ReferencePanel,
  { trainee, reference }: Pick<Scoring, 'trainee' | 'reference'>,
  least: number,
): Comparison {
  const pairs = sharedPoints(read, panel, trainee);
  const wanted = Math.min(least, panel.count, read.points.length);
  if (pairs.length > 0 && pairs.length >= wanted) {
    const noise = (points: readonly PanelPoint[], repeatability: Micrometres): number =>
      points.reduce((sum, { repeats }) => sum + repeatability ** 2 / repeats.length, 0) /
      points.length ** 2;
    return {
      difference: mean(pairs.map(({ own, theirs }) => own.thickness - theirs.thickness)),
      shared: pairs.length,
      ofReference: noise(
        pairs.map(({ theirs }) => theirs),
        reference.repeatability,
      ),
      ofSampling: 0,
      ofOwn: noise(
        pairs.map(({ own }) => own),
        trainee.repeatability,
      ),
    };
  }
  return {
    difference: read.statistics.mean - panel.mean,
    shared: 0,
    ofReference: panel.uncertainty ** 2,
    ofSampling: panel.spread.sd ** 2 / read.points.length,
    ofOwn: betweenPoints(read).sd ** 2 / read.points.length,
  };
}

function sharedPoints(read: ReadPanel, panel: ReferencePanel, trainee: GradedSurvey) {
  const marked = markedPoints(trainee, read.panel.id);
  return read.points.flatMap((own) => {
    const theirs = panel.points.find(({ point }) => point === own.point);
    return theirs !== undefined && marked.has(own.point) && panel.marked.has(own.point)
      ? [{ own, theirs }]
      : [];
  });
}

/** What the difference is uncertain by, besides what σ_pt allows a trainee. */
export function beyondSigma(
  { ofReference, ofSampling }: Comparison,
  calibration: number,
  sigmaPt: SigmaPt,
): number {
  const sampling = sigmaPt.from === 'class' ? 0 : ofSampling;
  return Math.sqrt(ofReference + sampling + calibration ** 2);
}

export function scorePanel(
  read: ReadPanel,
  panel: ReferencePanel,
  { trainee, reference, sigmaPt, gauges, keyed = NOTHING_KEYED }: KeyedScoring,
  model: TrainingModel['scores'],
): PanelScore {
  const comparison = compared(read, panel, { trainee, reference }, model.sharedMarks);
  const { difference, shared, ofReference } = comparison;
  const ofOwn = shared === 0 && keyed.size > 0 ? ofOwnAlone(read) : comparison.ofOwn;
  const [ofOwnGauge, ofReferenceGauge] = calibrationsOf(read, panel, gauges, model);
  const calibration = calibrationIn(
    difference,
    Math.hypot(ofOwnGauge, ofReferenceGauge),
    beyondSigma(comparison, 0, sigmaPt),
    gauges,
  );
  const uncertainty = beyondSigma(comparison, calibration, sigmaPt);
  const plain = shared > 0 && uncertainty <= model.plainUpTo * sigmaPt.value;
  const z = zScore(difference, sigmaPt.value, plain ? 0 : uncertainty);
  const [ownU, referenceU] = [
    Math.hypot(Math.sqrt(ofOwn), ofOwnGauge),
    Math.hypot(Math.sqrt(ofReference), ofReferenceGauge),
  ];
  // What a wrong figure is uncertain by says nothing of the reading that it stands for.
  const known = ownU + referenceU > 0 && !keyed.has(read.panel.id);
  return {
    panel: read.panel,
    count: read.points.length,
    mean: read.statistics.mean,
    reference: panel,
    difference: micrometres(difference),
    shared,
    kind: plain ? 'z' : 'z-prime',
    calibration,
    z,
    zeta: known ? zetaScore(difference, ownU, referenceU) : null,
    en:
      known && gauges.stated
        ? enNumber(difference, COVERAGE_FACTOR * ownU, COVERAGE_FACTOR * referenceU)
        : null,
    verdict: scoreVerdict(z, model),
  };
}

/** By the panel’s own points: a reading that is keyed wrongly elsewhere on the car is in all that is learned from the car. */
const ofOwnAlone = (read: ReadPanel): number =>
  (read.moderation?.own.variance ?? betweenPoints(read).sd ** 2) / read.points.length;

export const NOTHING_KEYED: ReadonlySet<string> = new Set();

/** With the ids of the panels that have a reading keyed wrongly. */
export type KeyedScoring = Scoring & { readonly keyed?: ReadonlySet<string> };

export type Scoring = {
  readonly trainee: GradedSurvey;
  readonly reference: Reference;
  readonly sigmaPt: SigmaPt;
  readonly gauges: Gauges;
};
