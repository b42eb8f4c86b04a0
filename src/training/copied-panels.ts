/**
 * Whole panels that two surveys hold figure for figure, repeats and all, in the same order.
 *
 * Two who read one place honestly show the same figure no more often than one of them shows it twice: Σ pq is at most
 * √(Σp²·Σq²). How often that is, q, their own repeats tell, on a display of any step, or what they have in common on the
 * other panels, where that is more. A survey without repeats is held to the step and a steady hand, as in
 * src/training/copied-surveys.ts, on a display that is finer than that hand; on a coarser one nobody knows. A figure that
 * stands several times at a point counts once there, as a display that is coarse for the hand shows it again by itself.
 * A panel with m such figures agrees as a whole with a chance of qᵐ, and so do all that were found with ∏ qᵐ. Of n panels
 * any may be among them: the mean of ∏ q⁻ᵐ over those that agree is at most 2ⁿ, so that the chance of any as unlikely is
 * at most 2ⁿ·∏ qᵐ (Markov).
 */
import { sum } from '../base/sum.ts';
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
    const common = panelsInCommon(one, other);
    const whole = common.filter(({ isWhole }) => isWhole);
    const readings = sum(whole.map((panel) => panel.readings));
    if (readings < copies.samePoints) return [];
    const figures = sum(whole.map((panel) => panel.figures));
    const share = Math.max(
      chanceOfSame(one, other, model),
      sameElsewhere(common.filter(({ isWhole }) => !isWhole)),
    );
    const chance = 2 ** common.length * share ** figures;
    if (chance >= slips.falseAlarm / pairs.length) return [];
    return [{ surveys: places, panels: whole.map(({ panel }) => panel), readings }];
  });
}

type CommonPanel = {
  readonly panel: Panel;
  readonly isWhole: boolean;
  readonly readings: number;
  /** Of them, those that are the same. */
  readonly same: number;
  /** At each point those that differ from each other. */
  readonly figures: number;
};

function panelsInCommon(one: GradedSurvey, other: GradedSurvey): readonly CommonPanel[] {
  const theirs = new Map(readPanels(other).map(({ panel, points }) => [panel.id, points]));
  return readPanels(one).flatMap(({ panel, points }) => {
    const their = theirs.get(panel.id);
    return their === undefined ? [] : [{ panel, ...sameOnPanel(points, their) }];
  });
}

/** As many readings of a point as both have of it. */
function sameOnPanel(points: readonly PanelPoint[], theirs: readonly PanelPoint[]) {
  const pairs = points.flatMap(({ point, repeats }) => {
    const their = theirs.find((one) => one.point === point)?.repeats ?? [];
    const both = Math.min(repeats.length, their.length);
    return both === 0 ? [] : [{ own: repeats.slice(0, both), their }];
  });
  const readings = sum(pairs.map(({ own }) => own.length));
  const same = sum(
    pairs.map(({ own, their }) => own.filter((value, k) => value === their[k]).length),
  );
  return {
    isWhole: pairs.length === Math.min(points.length, theirs.length) && same === readings,
    ...{ readings, same },
    figures: sum(pairs.map(({ own }) => new Set(own).size)),
  };
}

/** Two who agree all over the car are steadier than their repeats tell; one reading more is counted. */
function sameElsewhere(rest: readonly CommonPanel[]): number {
  const readings = sum(rest.map((panel) => panel.readings));
  return readings === 0 ? 0 : (sum(rest.map(({ same }) => same)) + 1) / (readings + 1);
}

function chanceOfSame(one: GradedSurvey, other: GradedSurvey, model: TrainingModel): number {
  const [own, theirs] = [one, other].map((survey) => repeatsSame(survey, model.copies.ownRepeats));
  const known = [own, theirs].flatMap((share) => share ?? []);
  const ofHands = known.length < 2 ? [ofSteadyHands(one, other, model)] : [];
  return Math.max(...known, ...ofHands, chanceAlike(pointsInCommon(one, other)));
}

function ofSteadyHands(one: GradedSurvey, other: GradedSurvey, model: TrainingModel): number {
  const { slips, copies } = model;
  const isCoarse = [one, other].some(
    (survey) => Math.max(stepOf(survey), slips.finestStep) >= leastPointSd(survey, copies),
  );
  return isCoarse ? 1 : honestShare(one, other, model);
}

/** Share of the pairs of readings of one point that are the same figure, one more counted; undefined of too few. */
function repeatsSame(survey: GradedSurvey, least: number): number | undefined {
  const points = readPanels(survey).flatMap((panel) => panel.points);
  const pairs = sum(points.map(({ repeats }) => (repeats.length * (repeats.length - 1)) / 2));
  if (pairs < least) return undefined;
  const same = sum(
    points.map(({ repeats }) =>
      sum(repeats.map((value, k) => repeats.slice(k + 1).filter((next) => next === value).length)),
    ),
  );
  return Math.min(1, (same + 1) / pairs);
}
