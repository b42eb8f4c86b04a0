/** Two surveys of one vehicle → what came off each panel, and what of them could not be compared. */
import { valueAt } from '../../base/at.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { displayStep } from '../panel-points.ts';
import type { PanelSurvey, Survey } from '../survey.ts';
import type { Panel } from '../template/template.ts';
import { type FilmChange, hasGained, meanChange } from './compare-change.ts';
import { gaugeVariance, pairPoints } from './compare-points.ts';
import { type PairedPoints, scatterOfDifferences } from './difference-scatter.ts';
import { paintAmong } from './paint-gain.ts';
import {
  type ComparisonRules,
  comparePanel,
  notCompared,
  type PanelComparison,
  type SwappedPanels,
  slipsOf,
} from './panel-comparison.ts';
import { swappedPoints } from './swapped-points.ts';

/** The car as it is compared with all points, and without those that stand out. */
export const withAllPoints = (car: SurveyComparison): SurveyComparison => versionOf(car, true);
export const withoutPointsApart = (car: SurveyComparison): SurveyComparison =>
  versionOf(car, false);

const versionOf = (car: SurveyComparison, counted: boolean): SurveyComparison => ({
  ...car,
  panels: car.panels.map((one) =>
    one.apart === null || one.apart.counted === counted ? one : one.apart.otherwise,
  ),
});

export type SurveyComparison = {
  /** Panels read at both times, in walking order. */
  readonly panels: readonly PanelComparison[];
  /** Panels read at one time only. */
  readonly onlyBefore: readonly Panel[];
  readonly onlyAfter: readonly Panel[];
  /** Mean over the panels compared, by their areas; null without any. */
  readonly car: FilmChange | null;
};

export function compareSurveys(
  before: Survey,
  after: Survey,
  given: ComparisonRules,
): SurveyComparison {
  const gauges = { ...given.gauges, betweenOperators: betweenOperators([before, after]) };
  const rules = { ...given, gauges };
  const later = new Map(after.panels.map((survey) => [survey.panel.id, survey]));
  const isRead = (survey: PanelSurvey | undefined): survey is PanelSurvey =>
    survey !== undefined && survey.points.length + survey.otherPoints.length > 0;
  const both = before.panels.flatMap((first) => {
    const second = later.get(first.panel.id);
    return isRead(first) && isRead(second) ? [{ first, second }] : [];
  });
  // A slip says nothing of how differences scatter, and the panel it stands on nothing of the others.
  const sound = both.filter(({ first, second }) => slipsOf(first, second).length === 0);
  const swaps = swapsAmong(sound, rules);
  const scatter = scatterOfDifferences(
    pairedPanels(
      sound.filter(({ first }) => !swaps.has(first.panel.id)),
      rules,
    ),
    rules,
  );
  const panels = both.map(({ first, second }) => {
    const swap = swaps.get(first.panel.id);
    const compared = comparePanel(first, second, scatter, rules);
    return swap === undefined ? compared : notCompared(compared, { swap });
  });
  const risk = rules.model.flagRisk / Math.max(1, panels.length);
  const car = changeOfCar(panels);
  // A gain of the car flags up to all of its panels at once: their chance, by their number; and at marked points
  // only, as other places than before may all lie in thicker film.
  const marked = panels.every(({ by }) => by !== 'means');
  const byCar = marked && car !== null && hasGained(car, risk / Math.max(1, panels.length));
  const gains = { risk, byCar, leastOfPaint: rules.model.compare.leastOfPaint };
  return {
    panels: panels.map((one) => withGain(one, gains)),
    onlyBefore: before.panels
      .filter((one) => isRead(one) && !isRead(later.get(one.panel.id)))
      .map(({ panel }) => panel),
    onlyAfter: after.panels
      .filter((one) => isRead(one) && !both.some(({ second }) => second === one))
      .map(({ panel }) => panel),
    car,
  };
}

/** Of the surveys that were read by people who read apart, the more of it. */
const betweenOperators = (surveys: readonly Survey[]): Micrometres =>
  micrometres(
    Math.max(
      0,
      ...surveys.flatMap(({ panels }) => panels.flatMap(({ film }) => film?.operators ?? [])),
    ),
  );

type Both = { readonly first: PanelSurvey; readonly second: PanelSurvey };

const pairedPanels = (
  both: readonly Both[],
  { marked }: Pick<ComparisonRules, 'marked'>,
): readonly PairedPoints[] =>
  both.map(({ first, second }) => ({
    id: first.panel.id,
    pairs: pairPoints(first, second, marked).pairs,
  }));

/** By the id of each panel that stands in one. */
function swapsAmong(
  both: readonly Both[],
  { marked, model }: ComparisonRules,
): ReadonlyMap<string, SwappedPanels> {
  const paired = pairedPanels(both, { marked });
  const all = paired.flatMap(({ pairs }) => pairs);
  const step = displayStep(all.flatMap((pair) => [pair.before, pair.after]));
  const gauge = gaugeVariance(all, model.measurement.repeatability, step);
  const panelOf = new Map(both.map(({ first }) => [first.panel.id, first.panel]));
  return new Map(
    swappedPoints(paired, gauge, model.compare.farBetter).flatMap(({ kind, panels }) => {
      const swap = { kind, panels: panels.map((id) => valueAt(panelOf, id)) };
      return panels.map((id) => [id, swap] as const);
    }),
  );
}

/** Where the panels read more film together, each that reads more does, though too little to tell by itself. */
type Gains = {
  readonly risk: number;
  readonly byCar: boolean;
  readonly leastOfPaint: Micrometres;
};

function withGain(one: PanelComparison, gains: Gains): PanelComparison {
  const { change } = one;
  const gained =
    change !== null && (hasGained(change, gains.risk) || (gains.byCar && change.removed.value < 0));
  const zones = one.zones.map((zone) => withGain(zone, gains));
  const paint = paintAmong([{ gained, change }, ...zones], gains.leastOfPaint);
  const apart = one.apart && {
    ...one.apart,
    otherwise: withGain(one.apart.otherwise, gains),
  };
  return { ...one, gained, paint, apart, zones };
}

/** Mean removal over the panels compared, weighted by area. */
function changeOfCar(panels: readonly PanelComparison[]): FilmChange | null {
  const known = panels.flatMap(({ panel, change }) => (change === null ? [] : [{ panel, change }]));
  const area = known.reduce((sum, { panel }) => sum + panel.area, 0);
  return area === 0
    ? null
    : meanChange(
        known.map(({ panel, change }) => ({ name: panel.id, weight: panel.area / area, change })),
      );
}
