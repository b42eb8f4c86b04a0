/**
 * Surveys that follow each other more closely than the class follows itself: values taken over and changed a
 * little, so that few of them are the same.
 *
 * The differences of two surveys at points of one name have a robust variance V (Algorithm A, which leaves out
 * what one hand reads more everywhere). In a class V is the sum of what each of the two brings: v of one survey
 * is the middle of ½·(V_k + V_l − V_kl) over all others k and l, at least what a steady hand repeats to. What is
 * usual for two is v_i + v_j, and no more than the middle V of either to the others: one survey with its sides
 * swapped would make the rest look alike. What lies along a line over the points is a gauge that drifts, and no
 * difference of two hands: it is taken out first. Where V is so far under it that the chance (F on half as many degrees
 * of freedom as there are points, for film near a point is alike) is under the false alarm over all pairs, both
 * are told. At marks the film cancels: there only a copy nearer than two readings of a place can be seen, and no
 * more is usual than twice (SD) what the repeats of both say, as nobody sets down at just the same place, however far
 * off the rest of the class reads.
 */
import { algorithmA } from '../base/stats/algorithm-a.ts';
import { fUpperTail } from '../base/stats/incomplete-beta.ts';
import { median } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { type GradedSurvey, readPanel, stepOf } from './graded-survey.ts';
import { pointsInCommon } from './points-in-common.ts';
import { leastPointSd, repeatedPointSd } from './steady-hand.ts';
import type { TrainingModel } from './training-model.ts';

export type FollowedPair = {
  readonly surveys: readonly [GradedSurvey, GradedSurvey];
  readonly of: number;
  /** Values that are the same. */
  readonly same: number;
  /** SD of their differences, and what the class lets expect of it. */
  readonly apart: Micrometres;
  readonly usual: Micrometres;
  /** What the first reads more than the other, all over. */
  readonly offset: Micrometres;
};

type Between = {
  readonly surveys: readonly [GradedSurvey, GradedSurvey];
  /** Of both in the class. */
  readonly places: readonly [number, number];
  readonly variance: number;
  readonly offset: number;
  readonly of: number;
  readonly same: number;
  /** Half of the points or more are marks of both: their film is one. */
  readonly atMarks: boolean;
};

/** A panel keyed wrongly, or left out by one, makes all other pairs look apart: on their own panels both must stand out as well. */
export function followedSurveys(
  surveys: readonly GradedSurvey[],
  model: TrainingModel,
): readonly FollowedPair[] {
  const all = differencesIn(surveys, model);
  const rule = { alarm: model.slips.falseAlarm / all.length, copies: model.copies };
  return all
    .flatMap((one) => followed(one, all, rule))
    .filter((pair) => {
      const own = differencesIn(
        surveys.map((survey) => onPanelsOf(pair.surveys, survey)),
        model,
      );
      const [one, other] = pair.surveys.map((survey) => surveys.indexOf(survey));
      return own
        .filter(({ places }) => places[0] === one && places[1] === other)
        .some((difference) => followed(difference, own, rule).length > 0);
    });
}

/** The survey by the panels that both of a pair read. */
const onPanelsOf = (pair: FollowedPair['surveys'], survey: GradedSurvey): GradedSurvey => ({
  ...survey,
  survey: {
    ...survey.survey,
    panels: survey.survey.panels.filter(({ panel }) =>
      pair.every((one) => readPanel(one, panel.id) !== undefined),
    ),
  },
});

type Copies = TrainingModel['copies'];

function followed(
  between: Between,
  all: readonly Between[],
  { alarm, copies }: { readonly alarm: number; readonly copies: Copies },
): readonly FollowedPair[] {
  const { surveys, variance, offset, of, same } = between;
  const chanceWith = (usual: number): number => 1 - fUpperTail(variance / usual, of / 2, of / 2);
  const sides = surveys.map((survey) => ({ survey, others: toOthers(survey, surveys, all) }));
  if (sides.some(({ others }) => others.length < copies.others)) return [];
  const most = mostUsual(between, sides, copies);
  // Less can but raise the chance, and what all others say of each takes far longer: n² of them for each of n² pairs.
  if (chanceWith(most) >= alarm) return [];
  const usual = Math.min(most, usualVariance(sides, all, copies));
  if (chanceWith(usual) >= alarm) return [];
  const [apart, expected] = [micrometres(Math.sqrt(variance)), micrometres(Math.sqrt(usual))];
  return [{ surveys, of, same, apart, usual: expected, offset: micrometres(offset) }];
}

const differencesIn = (
  surveys: readonly GradedSurvey[],
  model: TrainingModel,
): readonly Between[] =>
  surveys.flatMap((one, i) =>
    surveys.slice(i + 1).flatMap((other, k) => differenceOf([one, other], [i, i + 1 + k], model)),
  );

function differenceOf(
  [one, other]: Between['surveys'],
  places: Between['places'],
  { slips, copies }: TrainingModel,
): readonly Between[] {
  const points = pointsInCommon(one, other);
  if (points.length < copies.nearPoints) return [];
  const differences = points.map((point) => point.one - point.other);
  const { sd } = algorithmA(withoutLine(differences));
  // Figures that are rounded differ by the rounding of both.
  const rounding =
    sum([one, other].map((each) => Math.max(stepOf(each), slips.finestStep) ** 2)) / 12;
  return [
    {
      surveys: [one, other],
      places,
      variance: Math.max(sd ** 2, rounding),
      offset: median(differences),
      of: points.length,
      same: points.filter((point) => point.one === point.other).length,
      atMarks: 2 * points.filter(({ marked }) => marked).length >= points.length,
    },
  ];
}

/** Less a resistant line through the medians of the outer thirds: few values that are wrong do not tilt it. */
function withoutLine(values: readonly number[]): readonly number[] {
  const third = Math.floor(values.length / 3);
  const rise = median(values.slice(-third)) - median(values.slice(0, third));
  const slope = rise / (values.length - third);
  return values.map((value, x) => value - slope * x);
}

type Side = { readonly survey: GradedSurvey; readonly others: readonly ToOther[] };

/** No more than the middle of either to the others; at marks no more than two who set down beside each other. */
function mostUsual({ surveys, atMarks }: Between, sides: readonly Side[], copies: Copies): number {
  const middle = median(sides.flatMap(({ others }) => others.map(({ variance }) => variance)));
  if (!atMarks) return middle;
  const repeated = sum(surveys.map((survey) => repeatedPointSd(survey, copies) ** 2));
  return Math.min(middle, copies.setDownBeside ** 2 * repeated);
}

/** The sum of what each of the two brings. */
const usualVariance = (sides: readonly Side[], all: readonly Between[], copies: Copies): number =>
  sum(
    sides.map(({ survey, others }) =>
      Math.max(leastPointSd(survey, copies) ** 2, ownVariance(others, all)),
    ),
  );

type ToOther = { readonly other: GradedSurvey; readonly variance: number };

/** Differences of one of a pair from surveys outside it. */
const toOthers = (
  survey: GradedSurvey,
  pair: Between['surveys'],
  all: readonly Between[],
): readonly ToOther[] =>
  all
    .filter(({ surveys }) => surveys.includes(survey))
    .flatMap(({ surveys, variance }) =>
      surveys.filter((one) => !pair.includes(one)).map((other) => ({ other, variance })),
    );

/** The middle of what every two others say of it; 0 where no two of them share points. */
function ownVariance(others: readonly ToOther[], all: readonly Between[]): number {
  const shares = all.flatMap(({ surveys, variance }) => {
    const ends = others.filter(({ other }) => surveys.includes(other));
    return ends.length < 2 ? [] : [(sum(ends.map((end) => end.variance)) - variance) / 2];
  });
  return shares.length === 0 ? 0 : median(shares);
}
