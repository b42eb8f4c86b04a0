/**
 * Whole panels that two surveys hold figure for figure, repeats and all, in the same order; else within a step of the display.
 *
 * Two who read one place honestly show the same figure no more often than one of them shows it twice: Σ pq is at most
 * √(Σp²·Σq²). How often that is, q, their own repeats tell, on a display of any step, or what they have in common on the
 * other panels, where that is more. A survey without repeats is held to the step and a steady hand, as in
 * src/training/copied-surveys.ts, on a display that is finer than that hand; on a coarser one nobody knows. A figure that
 * stands several times at a point counts once there, as a display that is coarse for the hand shows it again by itself.
 * A panel with m such figures agrees as a whole with a chance of qᵐ, and so do all that were found with ∏ qᵐ. Of n panels
 * any may be among them: the mean of ∏ q⁻ᵐ over those that agree is at most 2ⁿ, so that the chance of any as unlikely is
 * at most 2ⁿ·∏ qᵐ (Markov).
 *
 * Within a step, q is how often repeats, the other panels and values of different points come so near, figures of one point
 * that lie within two steps count once, and surveys without repeats prove nothing. That repeats bound two hands is no law
 * there, and was simulated: of 148,800 honest pairs none was told (steps of .1 to 1 µm, hands of .15 to 1.5 µm, 100,800
 * of them where both are three or ten times steadier on the same panels).
 */
import { at } from '../base/at.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { Panel } from '../film/template/template.ts';
import { honestShare } from './copied-surveys.ts';
import { type GradedSurvey, readPanels, stepOf } from './graded-survey.ts';
import { chanceAlike, pointsInCommon } from './points-in-common.ts';
import { leastPointSd } from './steady-hand.ts';
import type { TrainingModel } from './training-model.ts';

export type CopiedPanels = {
  /** Places of the two surveys in the class. */
  readonly surveys: readonly [number, number];
  readonly panels: readonly Panel[];
  /** How many there are on these panels. */
  readonly readings: number;
  /** How far figures lie apart at the most; 0 where they are the same. */
  readonly within: Micrometres;
};

export function copiedPanels(
  surveys: readonly GradedSurvey[],
  model: TrainingModel,
): readonly CopiedPanels[] {
  const { slips, copies } = model;
  const pairs = surveys.flatMap((one, i) =>
    surveys.slice(i + 1).map((other, k) => ({ one, other, surveys: [i, i + 1 + k] as const })),
  );
  return pairs.flatMap(({ one, other, surveys: places }) => {
    const step = Math.max(stepOf(one), stepOf(other), slips.finestStep);
    const found = [0, step].map((within) => wholeWithin({ one, other, within }, model));
    const proved = found.find(
      ({ readings, chance }, k) =>
        readings >= copies.samePoints && chance < slips.falseAlarm / pairs.length / (k + 1),
    );
    if (proved === undefined) return [];
    const { panels, readings, within } = proved;
    return [{ surveys: places, panels, readings, within: micrometres(within) }];
  });
}

type Pair = {
  readonly one: GradedSurvey;
  readonly other: GradedSurvey;
  /** Figures no farther apart count as the same. */
  readonly within: number;
};

function wholeWithin(pair: Pair, model: TrainingModel) {
  const common = panelsInCommon(pair);
  const whole = common.filter(({ isWhole }) => isWhole);
  const share = Math.max(
    chanceOfSame(pair, whole, model),
    sameElsewhere(common.filter(({ isWhole }) => !isWhole)),
  );
  return {
    within: pair.within,
    panels: whole.map(({ panel }) => panel),
    readings: sum(whole.map((panel) => panel.readings)),
    chance: 2 ** common.length * share ** sum(whole.map(({ figures }) => figures)),
  };
}

/** By as much more as two figures of a display lose in a sum. */
const isWithin = (one: number, other: number, within: number): boolean =>
  within === 0 ? one === other : Math.abs(one - other) < 1.01 * within;

type CommonPanel = {
  readonly panel: Panel;
  readonly isWhole: boolean;
  readonly readings: number;
  /** Of them, those that are the same. */
  readonly same: number;
  /** At each point those that differ from each other. */
  readonly figures: number;
};

function panelsInCommon({ one, other, within }: Pair): readonly CommonPanel[] {
  const theirs = new Map(readPanels(other).map(({ panel, points }) => [panel.id, points]));
  return readPanels(one).flatMap(({ panel, points }) => {
    const their = theirs.get(panel.id);
    return their === undefined ? [] : [{ panel, ...sameOnPanel(points, their, within) }];
  });
}

/** As many readings of a point as both have of it. */
function sameOnPanel(points: readonly PanelPoint[], theirs: readonly PanelPoint[], within: number) {
  const pairs = points.flatMap(({ point, repeats }) => {
    const their = theirs.find((one) => one.point === point)?.repeats ?? [];
    const both = Math.min(repeats.length, their.length);
    return both === 0 ? [] : [{ own: repeats.slice(0, both), their }];
  });
  const readings = sum(pairs.map(({ own }) => own.length));
  const same = sum(
    pairs.map(
      ({ own, their }) => own.filter((value, k) => isWithin(value, at(their, k), within)).length,
    ),
  );
  return {
    isWhole: pairs.length === Math.min(points.length, theirs.length) && same === readings,
    ...{ readings, same },
    figures: sum(pairs.map(({ own }) => figuresOf(own, within))),
  };
}

/** Those over twice as far from each other as counts as the same. */
function figuresOf(values: readonly number[], within: number): number {
  const rising = values.toSorted((a, b) => a - b);
  const kept: number[] = [];
  for (const value of rising) {
    if (value - (kept.at(-1) ?? Number.NEGATIVE_INFINITY) > 2.01 * within) kept.push(value);
  }
  return kept.length;
}

/** Two who agree all over the car are steadier than their repeats tell; one reading more is counted. */
function sameElsewhere(rest: readonly CommonPanel[]): number {
  const readings = sum(rest.map((panel) => panel.readings));
  return readings === 0 ? 0 : (sum(rest.map(({ same }) => same)) + 1) / (readings + 1);
}

/** By the repeats of the whole survey, and within a step by those of these panels: both hands may be steadier there. */
function chanceOfSame(
  { one, other, within }: Pair,
  whole: readonly CommonPanel[],
  model: TrainingModel,
): number {
  const ids = new Set(whole.map(({ panel }) => panel.id));
  const sharesOf = (isOf: (id: string) => boolean): readonly number[] =>
    [one, other].flatMap((survey) => {
      const points = readPanels(survey).flatMap((read) => (isOf(read.panel.id) ? read.points : []));
      return repeatsSame(points, model.copies.ownRepeats, within) ?? [];
    });
  const known = sharesOf(() => true);
  const there = within === 0 ? [] : sharesOf((id) => ids.has(id));
  if (within > 0 && there.length < 2) return 1;
  const ofHands = known.length < 2 ? [ofSteadyHands(one, other, model)] : [];
  const isAlike = (a: number, b: number): boolean => isWithin(a, b, within);
  const byChance = chanceAlike(pointsInCommon(one, other), isAlike);
  return Math.max(...known, ...there, ...ofHands, byChance);
}

function ofSteadyHands(one: GradedSurvey, other: GradedSurvey, model: TrainingModel): number {
  const { slips, copies } = model;
  const isCoarse = [one, other].some(
    (survey) => Math.max(stepOf(survey), slips.finestStep) >= leastPointSd(survey, copies),
  );
  return isCoarse ? 1 : honestShare(one, other, model);
}

/** Share of the pairs of readings of one point that are the same figure, one more counted; undefined of too few. */
function repeatsSame(
  points: readonly PanelPoint[],
  least: number,
  within: number,
): number | undefined {
  const pairs = sum(points.map(({ repeats }) => (repeats.length * (repeats.length - 1)) / 2));
  if (pairs < least) return undefined;
  const same = sum(
    points.map(({ repeats }) =>
      sum(
        repeats.map(
          (value, k) => repeats.slice(k + 1).filter((next) => isWithin(next, value, within)).length,
        ),
      ),
    ),
  );
  return Math.min(1, (same + 1) / pairs);
}
