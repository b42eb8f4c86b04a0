/** What the panels of a car say of one another: the baseline, and how much film varies over a panel. */
import { mean, median } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { type Finding, filmFindings, isFactoryFilm } from './condition.ts';
import type { FilmModel } from './film-model.ts';
import { type GatheredPanel, isRead, thicknesses } from './gathered-panel.ts';
import { outlyingPoints } from './outlying-points.ts';
import { displayStep, pooledRepeatability } from './panel-points.ts';
import { leastPointVariance, ownSpread, type SpreadPrior, spreadPrior } from './spread.ts';

export type CarContext = {
  readonly baseline: Micrometres | null;
  readonly leastVariance: number;
  readonly pool: ReadonlyMap<string, readonly Micrometres[]>;
  readonly prior: SpreadPrior;
};

/** Repeats worth pooling before they replace the assumed repeatability. */
const LEAST_REPEATABILITY_DOF = 5;

export function carContext(gathered: readonly GatheredPanel[], model: FilmModel): CarContext {
  const baseline = baselineOf(gathered, model);
  const points = gathered.flatMap((panel) => panel.points);
  const pooled = pooledRepeatability(points);
  const repeatability =
    pooled !== undefined && pooled.dof >= LEAST_REPEATABILITY_DOF
      ? pooled.sd
      : model.measurement.repeatability;
  const readings = points.flatMap(({ repeats }) => repeats);
  const repeatsPerPoint = points.length === 0 ? 1 : readings.length / points.length;
  const leastVariance = leastPointVariance(repeatability, repeatsPerPoint, displayStep(readings));
  const pool = new Map(
    gathered
      .filter((panel) => isRead(panel) && hasFactoryTotal(panel, baseline, model))
      .map((panel) => [panel.panel.id, thicknesses(panel.points)]),
  );
  return {
    baseline,
    leastVariance,
    pool,
    prior: poolPrior(pool, leastVariance, model),
  };
}

function poolPrior(pool: CarContext['pool'], leastVariance: number, model: FilmModel): SpreadPrior {
  const panels = [...pool.values()];
  return spreadPrior(
    panels.map((values) => ownSpread(values, leastVariance)),
    panels.map(mean),
    model.spread,
  );
}

function baselineOf(gathered: readonly GatheredPanel[], model: FilmModel): Micrometres | null {
  const medians = gathered
    .filter(isRead)
    .flatMap(({ statistics }) => (statistics === null ? [] : [statistics.median]))
    .filter((value) => value <= model.conditions.refinished);
  return medians.length === 0 ? null : micrometres(median(medians));
}

/** Conditions that the total film alone decides. */
export function totalFindings(
  { panel, facts, statistics }: GatheredPanel,
  baseline: Micrometres | null,
  model: FilmModel,
): readonly Finding[] {
  if (statistics === null) return [];
  const { min, max } = statistics;
  return filmFindings(
    { panel, facts, ...statistics, smallest: min, largest: max, baseline },
    model.conditions,
  );
}

const hasFactoryTotal = (
  panel: GatheredPanel,
  baseline: Micrometres | null,
  model: FilmModel,
): boolean =>
  totalFindings(panel, baseline, model).every(({ condition }) => isFactoryFilm(condition));

/** Flags rest on the other panels' spread; with too few of them there are none. */
export function standingOut(
  { panel, points }: GatheredPanel,
  { pool, leastVariance }: CarContext,
  model: FilmModel,
): ReturnType<typeof outlyingPoints> {
  const others = new Map([...pool].filter(([id]) => id !== panel.id));
  const prior = poolPrior(others, leastVariance, model);
  return Number.isFinite(prior.dofCeiling) ? outlyingPoints(points, prior) : { low: [], high: [] };
}
