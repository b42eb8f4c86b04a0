/**
 * Panels whose points a trainee numbered from the other end, by the likelihood ratio that tells it between two visits
 * (src/film/compare/swapped-points.ts), the reference’s values as those of before. Turned back, a survey is as if its points
 * had been numbered as the marks are: by it swapped panels are looked for, what is low is found, and the patterns of marks are.
 */
import { at } from '../base/at.ts';
import { mean, sampleVariance } from '../base/stats/summary.ts';
import { type PointPair, pairPoints } from '../film/compare/compare-points.ts';
import { byPointName, mirroredDifferences, swappedPoints } from '../film/compare/swapped-points.ts';
import type { CommonOrder } from './common-order.ts';
import {
  faceReadings,
  type GradedSurvey,
  markedPoints,
  type ReadPanel,
  readPanel,
  readPanels,
} from './graded-survey.ts';
import type { Scoring } from './panel-score.ts';
import { type Reason, reason, together } from './reasons.ts';
import type { Reference } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export type TurnedPoints = {
  readonly panels: readonly ReadPanel[];
  /** The survey with these points numbered as the marks are. */
  readonly turnedBack: GradedSurvey;
  /** Where they are numbered in another order than from the other end. */
  readonly orders?: readonly CommonOrder[];
};

type Compared = Pick<Scoring, 'trainee' | 'reference'> & { readonly model: TrainingModel };

/**
 * `leftOut` are ids of panels of which a slip of the readings is told already. Turned back, a panel must lie beside the
 * reference as two hands at one mark do: one that was read wrongly fits the other way round better by chance.
 */
export function turnedPoints(
  { trainee, reference, model }: Compared,
  leftOut: ReadonlySet<string>,
): TurnedPoints {
  const paired = readPanels(trainee)
    .filter(({ panel }) => !leftOut.has(panel.id))
    .map((read) => ({
      ...{ read, id: read.panel.id },
      pairs: pairsOf(read.panel.id, trainee, reference),
    }));
  const all = paired.flatMap(({ pairs }) => pairs);
  if (all.length === 0) return noneTurned({ trainee });
  const gauge = mean(
    all.map(
      ({ repeats }) =>
        reference.repeatability ** 2 / repeats.before + trainee.repeatability ** 2 / repeats.after,
    ),
  );
  const most = model.copies.setDownBeside ** 2 * gauge;
  const turned = swappedPoints(paired, gauge, model.farBetter).flatMap(({ kind, panels: [id] }) =>
    kind === 'mirrored'
      ? paired.filter(
          (one) => one.id === id && sampleVariance(mirroredDifferences(one.pairs)) <= most,
        )
      : [],
  );
  return {
    panels: turned.map(({ read }) => read),
    turnedBack: turned.reduce(turnBack, trainee),
  };
}

const noneTurned = ({ trainee }: Pick<Scoring, 'trainee'>): TurnedPoints => ({
  panels: [],
  turnedBack: trainee,
});

function pairsOf(id: string, trainee: GradedSurvey, { panels, expert }: Reference) {
  const [theirs, own] = [expert && readPanel(expert, id), readPanel(trainee, id)];
  if (theirs === null || theirs === undefined || own === undefined) return [];
  const marked = markedPoints(trainee, id);
  return pairPoints(theirs, own, {
    before: (_, point) => panels.get(id)?.marked.has(point) === true,
    after: (_, point) => marked.has(point),
  }).pairs;
}

type Paired = { readonly id: string; readonly pairs: readonly PointPair[] };

function turnBack(trainee: GradedSurvey, { id, pairs }: Paired): GradedSurvey {
  const names = pairs.map(({ point }) => point).sort(byPointName);
  return renumbered(
    trainee,
    id,
    new Map(names.map((name, i) => [name, at(names, names.length - 1 - i)])),
  );
}

/** As if the points of these panels had been numbered as the marks are. */
export const inOrder = (trainee: GradedSurvey, orders: readonly CommonOrder[]): TurnedPoints => ({
  panels: orders.flatMap(({ panels }) => panels),
  turnedBack: orders.reduce(
    (all, { panels, markOf }) =>
      panels.reduce((some, { panel }) => renumbered(some, panel.id, markOf), all),
    trainee,
  ),
  orders,
});

function renumbered(
  trainee: GradedSurvey,
  id: string,
  markOf: ReadonlyMap<string, string>,
): GradedSurvey {
  const back = <One extends { readonly point: string }>(one: One): One => ({
    ...one,
    point: markOf.get(one.point) ?? one.point,
  });
  const panels = trainee.survey.panels.map((one) =>
    one.panel.id === id ? { ...one, points: one.points.map(back) } : one,
  );
  return {
    ...trainee,
    survey: { ...trainee.survey, panels },
    readings: trainee.readings.map((one) => (one.panel === id ? back(one) : one)),
  };
}

export function turnedReasons(
  { panels, orders }: Pick<TurnedPoints, 'panels' | 'orders'>,
  trainee: GradedSurvey,
): readonly Reason[] {
  if (panels.length === 0) return [];
  if (orders !== undefined)
    return orders.map((one) =>
      turnedReason(
        one.panels,
        `are numbered in another order (${orderText(one)}): in the order of the marks the readings rise and fall as those of the reference`,
        trainee,
      ),
    );
  return [
    turnedReason(
      panels,
      'are numbered from the other end: counted the other way round the readings agree with the reference',
      trainee,
    ),
  ];
}

function turnedReason(panels: readonly ReadPanel[], how: string, trainee: GradedSurvey): Reason {
  const [first] = panels;
  const where =
    panels.length > 1 && panels.length === readPanels(trainee).length
      ? 'all panels'
      : together(panels.map(({ panel }) => panel.name));
  return reason(
    'points-turned',
    `points of ${where} ${how}; number points as the marks on the panel are`,
    {
      panels: panels.map(({ panel }) => panel.id),
      at: faceReadings(trainee, first?.panel.id)[0],
    },
  );
}

/** `your 1 is mark 2, your 2 is mark 1` */
const orderText = ({ markOf }: CommonOrder): string =>
  [...markOf]
    .filter(([own, mark]) => own !== mark)
    .map(([own, mark]) => `your ${own} is mark ${mark}`)
    .join(', ');
