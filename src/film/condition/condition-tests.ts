/** What a panel is tested for, in lines that its figures are held against: the uncertain side of `condition.ts`. */
import { add, exactly, multiply, type Uncertain } from '../../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import type { GaugeScatter } from '../help/panel-uncertainty.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Spread } from '../spread.ts';
import type { Panel } from '../template/template.ts';
import type { ThinnestCredible } from '../thinnest-credible.ts';
import {
  boundUncertainty,
  differenceUncertainty,
  lineOfSds,
  medianUncertainty,
  pointUncertainty,
} from './compared-figures.ts';
import { type Condition, repaintReach } from './condition.ts';
import {
  type ComparedFigure,
  chanceBeyond,
  compareWithLine,
  type LineComparison,
} from './line-comparison.ts';
import { type ZoneCut, zoneLines } from './zones.ts';

/** The points of a panel, and what is known as taken: put back where it is asked what the panel was painted with. */
export type JudgedPoints = {
  readonly points: readonly PanelPoint[];
  /** Those off the face, which tell of filler alone. */
  readonly otherPoints: readonly PanelPoint[];
  readonly gone: Uncertain<'µm'>;
};

/** A panel as it was judged. */
export type JudgedPanel = JudgedPoints & {
  readonly film: PanelFilm;
  readonly uncertainty: Uncertain<'µm'>;
  /** What tells whether it is repaint: all of it, but for points on filler where others are there. */
  readonly besideFiller: BesideFiller;
};

export type BesideFiller = Pick<JudgedPanel, 'points' | 'uncertainty'> & {
  readonly median: Micrometres;
};

/** A panel, where its points might be cut in two, and what its least film is. */
type JudgedFilm = Pick<JudgedPanel, 'points' | 'film' | 'uncertainty'> & {
  /** Null where they may not. */
  readonly cut: ZoneCut | null;
  /** Null where no bound was drawn. */
  readonly thinnest: ThinnestCredible | null;
  readonly totalFloor: Micrometres;
};

/** What it was judged against. */
export type JudgedAgainst = {
  /** Null where no other panel speaks of the car. */
  readonly baseline: Uncertain<'µm'> | null;
  /** What it is held to besides; absent where that is nothing. */
  readonly beside?: HeldBeside | null;
  /** What the factory painted if the usual film of the car is repaint, and the chance of that; null where it is not asked. */
  readonly ifPaintedOver: IfPaintedOver | null;
  readonly scatter: GaugeScatter;
  /** Of film over the other panels, as zones are told by it. */
  readonly zoneSpread: Spread;
};

/** The usual film of the car as something else has it, and the chance that this counts. */
export type HeldBeside = {
  readonly film: Uncertain<'µm'>;
  /** By which film is cut back, where that is more: zinc makes no thick film a factory's, but thin film lack more. */
  readonly overZinc?: Uncertain<'µm'>;
  readonly chance: number;
};

export type IfPaintedOver = {
  readonly film: Uncertain<'µm'>;
  readonly chance: number;
  /** The panel that shows it. */
  readonly shownBy: { readonly panel: Panel };
};

/** What every panel of a car is judged against alike. */
export type JudgedAlike = Pick<JudgedAgainst, 'scatter' | 'zoneSpread'>;

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

/**
 * Held to one line: that of the baseline, unless the one for any car lies lower. Besides to that of the factory's film
 * if the usual film of the car is repaint, where it carries that.
 */
function repaintLines(
  { points, median, uncertainty }: BesideFiller,
  gone: Uncertain<'µm'>,
  { baseline, beside = null, ifPaintedOver }: JudgedAgainst,
  { conditions }: FilmModel,
): readonly LineComparison[] {
  const held = {
    compared: 'median',
    condition: 'refinished',
    side: 'over',
    figure: add(medianUncertainty(median, points.length, uncertainty), gone),
    putBack: gone.value,
  } as const;
  const by = (film: Uncertain<'µm'> | null): LineComparison =>
    compareWithLine({ ...held, ...lowerRepaintLine(film, conditions) });
  const own = likelier(by(baseline), beside, by);
  if (ifPaintedOver === null || own.isBeyond || isUnderOthers(held.figure, baseline, conditions)) {
    return [own];
  }
  const { film, chance, shownBy } = ifPaintedOver;
  const then = compareWithLine({
    ...held,
    line: repaintLine(film, conditions),
    baseline: film.value,
  });
  // Of all that carry the usual film as likely, or the less one read the more it might give.
  return [own, { ...then, isBeyond: false, otherSide: chance, shownBy: shownBy.panel.name }];
}

/** That of the film, unless the one for any car lies lower. */
function lowerRepaintLine(
  film: Uncertain<'µm'> | null,
  conditions: FilmModel['conditions'],
): Pick<LineComparison, 'baseline'> & { readonly line: Uncertain<'µm'> } {
  const ofAnyCar = { line: exactly(conditions.refinished), baseline: null };
  if (film === null) return ofAnyCar;
  const line = repaintLine(film, conditions);
  return line.value < ofAnyCar.line.value ? { line, baseline: film.value } : ofAnyCar;
}

/** Of what gives a panel its word, and what it is held to besides, the one by which it is likelier beyond its line. */
function likelier(
  own: LineComparison,
  beside: Pick<HeldBeside, 'film' | 'chance'> | null,
  by: (film: Uncertain<'µm'>) => LineComparison,
): LineComparison {
  if (beside === null || own.isBeyond || beside.chance <= own.otherSide) return own;
  const other = by(beside.film);
  const otherSide = beside.chance * chanceBeyond(other);
  if (otherSide <= own.otherSide) return own;
  const word = { ...other, isBeyond: false, otherSide };
  return beside.chance < 1 ? { ...word, ifHeld: beside.chance } : word;
}

/** Film that lies under the line of film cut back is not the usual film of the car. */
const isUnderOthers = (
  figure: Uncertain<'µm'>,
  baseline: Uncertain<'µm'> | null,
  { cutBack }: FilmModel['conditions'],
): boolean => baseline !== null && figure.value < baseline.value - cutBack;

/** Over the baseline by a fixed step or by a share of it, whichever is more. */
function repaintLine(baseline: Uncertain<'µm'>, model: FilmModel['conditions']): Uncertain<'µm'> {
  const reach = micrometres(repaintReach(baseline.value, model));
  return reach > model.refinishedAbove
    ? multiply(baseline, 1 + model.refinishedAboveShare)
    : add(baseline, exactly(reach));
}

/** A panel that reads far less was not cut back where the usual film of the car is repaint and this shows the factory's. */
function cutBackLines(
  { uncertainty, gone }: JudgedPanel,
  { baseline, beside = null, ifPaintedOver }: JudgedAgainst,
  { conditions }: FilmModel,
): readonly LineComparison[] {
  if (baseline === null) return [];
  const by = (film: Uncertain<'µm'>): LineComparison =>
    compareWithLine({
      compared: 'mean',
      condition: 'cut-back',
      side: 'under',
      figure: add(uncertainty, gone),
      putBack: gone.value,
      line: add(film, exactly(micrometres(-conditions.cutBack))),
      baseline: film.value,
    });
  const lacking = beside === null ? null : { ...beside, film: beside.overZinc ?? beside.film };
  const own = likelier(by(baseline), lacking, by);
  if (ifPaintedOver === null || !own.isBeyond) return [own];
  const { chance, shownBy } = ifPaintedOver;
  // What is out of the question for the others is for this one.
  if (chance <= Math.max(conditions.nearRisk, own.otherSide)) return [own];
  return [{ ...own, otherSide: chance, shownBy: shownBy.panel.name }];
}

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
