/** How what came off scatters from point to point of a panel, as the panels of a car say it together. */
import { median } from '../../base/stats/summary.ts';
import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { displayStep } from '../panel-points.ts';
import { type OwnSpread, ownSpread, type SpreadPrior, spreadPrior } from '../spread.ts';
import { differencesOf, gaugeVariance, type PointPair } from './compare-points.ts';
import { type StandingOut, spreadWithout, standingOut } from './standing-out.ts';

export type PairedPoints = { readonly id: string; readonly pairs: readonly PointPair[] };

export type ScatterRules = {
  readonly model: FilmModel;
  /** What the gauge's repeatability counts for against the scatter of a few differences. */
  readonly scatterDof: number;
};

/** What the panels say together of how differences scatter, and the variance that a display makes at least. */
export type DifferenceScatter = {
  readonly prior: SpreadPrior;
  readonly least: number;
  /** By the id of each panel with points that stand out: they say nothing of it. */
  readonly apart: ReadonlyMap<string, StandingOut>;
};

/**
 * How differences scatter over a panel: the panels say it together where enough of them tell it, as they
 * do of the film itself; else the gauge's repeatability does, with a weight of its own. Of points that stand
 * out nothing is learned of the others.
 */
export function scatterOfDifferences(
  panels: readonly PairedPoints[],
  rules: ScatterRules,
): DifferenceScatter {
  const { spread, compare } = rules.model;
  const pairs = panels.flatMap((panel) => panel.pairs);
  const step = displayStep(pairs.flatMap((pair) => [pair.before, pair.after]));
  const least = gaugeVariance(pairs, micrometres(0), step);
  const assumed = gaugeVariance(pairs, rules.model.measurement.repeatability, step);
  const priorBy = (by: typeof spread) => (own: readonly OwnSpread[]) =>
    tellTogether(own, rules)
      ? spreadPrior(own, [], by)
      : { variance: assumed, dof: rules.scatterDof, dofCeiling: Number.POSITIVE_INFINITY };
  const told = panels.map((panel) => {
    const values = differencesOf(panel.pairs);
    const work = values.length === 0 ? 0 : compare.unevenWork * median(values);
    return { id: panel.id, values, least: Math.max(least, work ** 2) };
  });
  const apart = standingOut(told, {
    // Panels are taken for as alike as they are: all of what they say is needed to tell one point.
    priorOf: priorBy({ ...spread, priorDofCap: Number.POSITIVE_INFINITY }),
    falseAlarm: compare.pointFalseAlarm,
  });
  const own = told.map(({ id, values }) => spreadWithout({ values, least }, apart.get(id)));
  return { prior: priorBy(spread)(own), least, apart };
}

function tellTogether(own: readonly OwnSpread[], { model }: ScatterRules): boolean {
  const telling = own.filter(({ dof }) => dof > 0);
  const evidence = telling.reduce((sum, { dof }) => sum + dof, 0);
  return (
    telling.length >= model.spread.leastPanels &&
    evidence >= model.measurement.repeatabilityLeastDof
  );
}

export const scatterOf = (pairs: readonly PointPair[], least: number): OwnSpread =>
  ownSpread(differencesOf(pairs).map(micrometres), least);
