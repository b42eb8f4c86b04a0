/** What a panel is tested for, in lines that its figures are held against: the uncertain side of `condition.ts`. */
import { add, exactly, type Uncertain } from '../../base/uncertainty.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';
import { cutBackLines, repaintLines } from './baseline-lines.ts';
import {
  boundUncertainty,
  differenceUncertainty,
  lineOfSds,
  pointUncertainty,
} from './compared-figures.ts';
import type { Condition } from './condition.ts';
import type {
  JudgedAgainst,
  JudgedAlike,
  JudgedFilm,
  JudgedPanel,
  JudgedPoints,
} from './judged-panel.ts';
import { type ComparedFigure, compareWithLine, type LineComparison } from './line-comparison.ts';
import { type ZoneCut, zoneLines } from './zones.ts';

export type ConditionTest = {
  readonly condition: Condition;
  /** Whether one comparison beyond its line is enough, or all must be. */
  readonly needs: 'one' | 'all';
  readonly comparisons: readonly LineComparison[];
};

/** Those whose other side moves what may go. */
export type SideTests = {
  readonly filler: ConditionTest;
  readonly refinished: ConditionTest;
  readonly cutBack: ConditionTest;
};

export const sideTests = (
  panel: JudgedPanel,
  against: JudgedAgainst,
  model: FilmModel,
): SideTests => ({
  filler: fillerTest(panel, against, model),
  refinished: {
    condition: 'refinished',
    needs: 'one',
    comparisons: repaintLines(panel.besideFiller, panel.gone, against, model),
  },
  cutBack: {
    condition: 'cut-back',
    needs: 'one',
    comparisons: cutBackLines(panel, against, model),
  },
});

/** What the points alone decide, strongest first: all that speaks for a panel in two zones. */
export const pointTests = (
  points: JudgedPoints,
  cut: ZoneCut | null,
  against: JudgedAlike,
  model: FilmModel,
): readonly ConditionTest[] => [
  fillerTest(points, against, model),
  ...mixedTest(cut, against, model),
];

/** What a panel of one population of film is tested for, strongest first. */
export const filmTests = (
  { filler, refinished, cutBack }: SideTests,
  film: JudgedFilm,
  against: JudgedAlike,
  model: FilmModel,
): readonly ConditionTest[] => [
  filler,
  ...mixedTest(film.cut, against, model),
  refinished,
  { condition: 'thin', needs: 'one', comparisons: thinLines(film, against, model) },
  cutBack,
];

const fillerTest = (
  { points, otherPoints, gone }: JudgedPoints,
  against: JudgedAlike,
  model: FilmModel,
): ConditionTest => ({
  condition: 'filler',
  needs: 'one',
  comparisons: [fillerLine([...points, ...otherPoints], gone, against, model)],
});

const mixedTest = (
  cut: ZoneCut | null,
  against: JudgedAlike,
  model: FilmModel,
): readonly ConditionTest[] =>
  cut === null
    ? []
    : [{ condition: 'mixed', needs: 'all', comparisons: cutLines(cut, against, model) }];

const fillerLine = (
  points: readonly PanelPoint[],
  gone: Uncertain<'µm'>,
  { scatter }: Pick<JudgedAgainst, 'scatter'>,
  { conditions, measurement }: FilmModel,
): LineComparison =>
  compareWithLine({
    compared: 'largest-point',
    condition: 'filler',
    side: 'over',
    figure: add(pointUncertainty(extreme(points, 1), scatter, measurement), gone),
    putBack: gone.value,
    line: exactly(conditions.filler),
  });

function thinLines(
  { points, film, uncertainty, thinnest, totalFloor }: JudgedFilm,
  { scatter }: Pick<JudgedAgainst, 'scatter'>,
  { measurement }: FilmModel,
): readonly LineComparison[] {
  const line = exactly(totalFloor);
  const compare = (compared: ComparedFigure, figure: Uncertain<'µm'>): LineComparison =>
    compareWithLine({ compared, condition: 'thin', side: 'under', figure, line });
  const smallest = pointUncertainty(extreme(points, -1), scatter, measurement);
  const ofPoint = compare('smallest-point', smallest);
  return thinnest === null
    ? [ofPoint]
    : [ofPoint, compare('thinnest', boundUncertainty(thinnest, film.spread, uncertainty))];
}

function cutLines(
  { lower, upper, apart, gap }: ZoneCut,
  { zoneSpread }: Pick<JudgedAgainst, 'zoneSpread'>,
  { zones, measurement }: FilmModel,
): readonly LineComparison[] {
  const lines = zoneLines(zoneSpread.sd, zones);
  const inMeans = Math.sqrt(1 / lower.length + 1 / upper.length);
  return [
    compareWithLine({
      compared: 'halves-apart',
      condition: 'mixed',
      side: 'over',
      figure: differenceUncertainty(apart, inMeans, zoneSpread, measurement),
      line: lineOfSds(lines.apart, zones.meansApartSds, zoneSpread),
    }),
    compareWithLine({
      compared: 'halves-gap',
      condition: 'mixed',
      side: 'over',
      figure: differenceUncertainty(gap, Math.SQRT2, zoneSpread, measurement),
      line: lineOfSds(lines.gap, zones.gapSds, zoneSpread),
    }),
  ];
}

/** The point of most film (1) or of least (−1), of one at least. */
const extreme = (points: readonly PanelPoint[], sign: 1 | -1): PanelPoint =>
  points.reduce((far, one) => (sign * (one.thickness - far.thickness) > 0 ? one : far));
