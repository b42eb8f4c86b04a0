/**
 * What trainees are compared with: the survey of an expert, or the consensus of the class.
 *
 * The consensus of a panel is the robust mean x* of the trainees' means (the median of few, Algorithm A of ISO 13528
 * of eight or more), with the standard uncertainty (1.25/√p)·s* of p of them. It has no points and no low spots, and
 * a panel is repaired where more than half of the trainees read it so.
 */

import { groupBy, type OneOrMore } from '../base/group-by.ts';
import { pooledVarianceOf, type VarianceOf } from '../base/stats/pooled-variance.ts';
import { robustSummary } from '../base/stats/robust-summary.ts';
import { median } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { Condition } from '../film/condition/condition.ts';
import { restsOnOverRange } from '../film/condition/over-range.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import type { Spread } from '../film/spread.ts';
import type { Panel } from '../film/template/template.ts';
import {
  betweenPoints,
  conditionWord,
  type GradedSurvey,
  isEven,
  isRepaired,
  lowZonePoints,
  markedPoints,
  type ReadPanel,
  readPanels,
} from './graded-survey.ts';
import type { TrainingModel } from './training-model.ts';
import { isInOrder, mayBeInOrder } from './values-in-order.ts';

export type LowSpot = { readonly point: string; readonly thickness: Micrometres };

export type ReferencePanel = {
  readonly panel: Panel;
  readonly mean: Micrometres;
  readonly median: Micrometres;
  /** Standard uncertainty of the mean, the gauge’s calibration left out. */
  readonly uncertainty: number;
  readonly calibration: Micrometres;
  /** How much film varies over the panel. */
  readonly spread: Spread;
  /** The same as it was read, by its own points alone: of a consensus the middle of its surveys, on the degrees of one. */
  readonly own: VarianceOf;
  /** Surveys whose values of it only rise or only fall; those of an expert as near as repeats tell. */
  readonly inOrder: { readonly count: number; readonly of: number };
  /** Points there are to read. */
  readonly count: number;
  readonly condition: Condition;
  readonly repaired: boolean;
  /** Factory film that nothing stands out of. */
  readonly even: boolean;
  readonly lowSpot: LowSpot | null;
  /** None of a consensus. */
  readonly points: readonly PanelPoint[];
  readonly marked: ReadonlySet<string>;
};

export type Reference = {
  readonly kind: 'expert' | 'consensus';
  /** How many it is made of. */
  readonly surveys: number;
  /** Null of a consensus. */
  readonly expert: GradedSurvey | null;
  readonly panels: ReadonlyMap<string, ReferencePanel>;
  /** How much factory film varies over a panel of this car. */
  readonly film: { readonly variance: number; readonly dof: number };
  /** SD of a reading set down again, of the expert. */
  readonly repeatability: Micrometres;
};

/** Over the panels of even film: a low spot or a repair is no spread of the film. Without such panels as the surveys take it. */
function filmSpread(surveys: readonly GradedSurvey[]): Reference['film'] {
  const even = surveys
    .flatMap(readPanels)
    .filter(isEven)
    .map(({ points }) => points.map(({ thickness }) => thickness));
  const pooled = pooledVarianceOf(even);
  return pooled !== undefined && pooled.variance > 0
    ? pooled
    : {
        variance: median(surveys.map(({ survey }) => survey.spreadPrior.variance)),
        dof: median(surveys.map(({ survey }) => survey.spreadPrior.dof)),
      };
}

export function expertReference(expert: GradedSurvey): Reference {
  return {
    kind: 'expert',
    surveys: 1,
    expert,
    panels: byPanel(readPanels(expert).map((panel) => expertPanel(panel, expert))),
    film: filmSpread([expert]),
    repeatability: expert.repeatability,
  };
}

function expertPanel(read: ReadPanel, expert: GradedSurvey): ReferencePanel {
  const spread = betweenPoints(read);
  const { panel, statistics, points } = read;
  return {
    panel,
    mean: statistics.mean,
    median: statistics.median,
    uncertainty: spread.sd / Math.sqrt(points.length),
    calibration: read.film.calibration,
    spread,
    own: ownVariance(read),
    inOrder: { count: mayBeInOrder(points, expert.repeatability) ? 1 : 0, of: 1 },
    count: points.length,
    condition: conditionWord(read),
    // A lifted probe shows the same: nobody is blamed for a repair that the expert did not read again.
    repaired: isRepaired(read) && !restsOnOverRange(read),
    even: isEven(read),
    lowSpot: lowSpotOf(read),
    points,
    marked: markedPoints(expert, panel.id),
  };
}

const ownVariance = ({ points }: ReadPanel): VarianceOf =>
  pooledVarianceOf([points.map(({ thickness }) => thickness)]) ?? { variance: 0, dof: 0 };

/**
 * The lowest of the points that stand out low, read under the floor of the total or make a thinner zone of their own; on
 * a repaired panel film varies as it may, and low says nothing.
 */
function lowSpotOf(read: ReadPanel): LowSpot | null {
  const { points, lowPoints, totalFloor } = read;
  if (isRepaired(read)) return null;
  const ofZone = lowZonePoints(read);
  const low = points.filter(
    ({ point, thickness }) =>
      lowPoints.includes(point) || ofZone.includes(point) || thickness < totalFloor,
  );
  const [first, ...rest] = low;
  if (first === undefined) return null;
  const { point, thickness } = rest.reduce((a, b) => (b.thickness < a.thickness ? b : a), first);
  return { point, thickness };
}

/** Panels that too few surveys read have no consensus. */
export function consensusReference(
  surveys: readonly GradedSurvey[],
  { leastSurveys }: TrainingModel['class'],
): Reference {
  const groups = groupBy(surveys.flatMap(readPanels), ({ panel }) => panel.id);
  const shared = [...groups.values()]
    .filter((reads) => reads.length >= Math.max(2, leastSurveys))
    .map(consensusPanel);
  return {
    kind: 'consensus',
    surveys: surveys.length,
    expert: null,
    panels: byPanel(shared),
    film: filmSpread(surveys),
    repeatability: micrometres(median(surveys.map(({ repeatability }) => repeatability))),
  };
}

function consensusPanel(reads: OneOrMore<ReadPanel>): ReferencePanel {
  const [first] = reads;
  const { mean, sd } = robustSummary(reads.map(({ statistics }) => statistics.mean));
  const most = (of: (read: ReadPanel) => boolean): boolean =>
    reads.filter(of).length > reads.length / 2;
  return {
    panel: first.panel,
    mean: micrometres(mean),
    median: micrometres(mean),
    uncertainty: (1.25 * sd) / Math.sqrt(reads.length),
    calibration: micrometres(0),
    spread: {
      sd: micrometres(median(reads.map((read) => betweenPoints(read).sd))),
      dof: median(reads.map((read) => betweenPoints(read).dof)),
    },
    own: {
      variance: median(reads.map((read) => ownVariance(read).variance)),
      dof: median(reads.map((read) => ownVariance(read).dof)),
    },
    inOrder: { count: reads.filter(({ points }) => isInOrder(points)).length, of: reads.length },
    count: Math.round(median(reads.map(({ points }) => points.length))),
    condition: mostCommon(reads.map(conditionWord)),
    repaired: most(isRepaired),
    even: most(isEven),
    lowSpot: null,
    points: [],
    marked: new Set(),
  };
}

/** The one that most say; of as many, the one that was said first. */
function mostCommon(conditions: readonly Condition[]): Condition {
  const counted = (one: Condition): number => conditions.filter((other) => other === one).length;
  return conditions.reduce((best, one) => (counted(one) > counted(best) ? one : best));
}

const byPanel = (panels: readonly ReferencePanel[]): Reference['panels'] =>
  new Map(panels.map((panel) => [panel.panel.id, panel]));
