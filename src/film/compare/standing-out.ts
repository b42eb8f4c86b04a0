/**
 * Points whose value stands out from their panel's: of marked points what came off, of others the film.
 *
 * As for low and high points: |x − median| > t(1 − α/2N; ν)·√(s²·(1 + 1.57/n)), N the points of the car, so that α is
 * the chance that any point of an honest car stands out. s² is moderated: what the panel's other points and those of
 * the other panels say together (Smyth 2004), and no less than `least` of the panel. Points that stand out say nothing
 * of s²: the first s² is the median of the panels’ variances, which slips on fewer than half of them cannot raise;
 * then points are told by the rest of the car until they stay the same. A panel half or more of whose points stand
 * out is uneven by itself: none of them is a slip, and the panel says nothing of the others.
 */
import { at } from '../../base/at.ts';
import { studentTQuantile } from '../../base/stats/student-t.ts';
import { median, sampleVariance } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { moderatedSpread, type OwnSpread, ownSpread, type SpreadPrior } from '../spread.ts';

/** A panel's values, and the variance that one of them has at least. */
export type PanelValues = {
  readonly id: string;
  readonly values: readonly number[];
  readonly least: number;
};

export type StandingOutRules = {
  /** What panels say together of how values scatter, and what is assumed where they are too few. */
  readonly priorOf: (own: readonly OwnSpread[]) => SpreadPrior;
  readonly falseAlarm: number;
};

/** Of a panel, the places of the values that stand out. */
export type StandingOut = {
  readonly apart: readonly number[];
  /** Half of them or more do: the panel is uneven. */
  readonly isUneven: boolean;
  /** How far from their middle they may honestly lie. */
  readonly reach: number;
};

/** Of two points neither stands out from the other. */
const LEAST_POINTS = 3;
/** Variance of a median of n normal values, in units of σ²/n, for large n: π/2. */
const MEDIAN_VARIANCE = 1.57;
/** Of two panels neither is the middle one. */
const FEW_PANELS = 3;
const MOST_ROUNDS = 5;
const NOTHING = ownSpread([], 0);

const NONE: StandingOut = { apart: [], isUneven: false, reach: Number.POSITIVE_INFINITY };

/** By the id of each panel that has any. */
export function standingOut(
  panels: readonly PanelValues[],
  rules: StandingOutRules,
): ReadonlyMap<string, StandingOut> {
  const told = panels.filter(({ values }) => values.length >= LEAST_POINTS);
  if (told.length === 0) return new Map();
  const level = rules.falseAlarm / (2 * told.reduce((sum, { values }) => sum + values.length, 0));
  const rough =
    told.length < FEW_PANELS ? moderatedSpread(NOTHING, rules.priorOf([])) : middleSpread(told);
  let found = told.map((panel) => apartIn(panel, rough, level));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const own = told.map((panel, i) => spreadWithout(panel, at(found, i)));
    const prior = rules.priorOf(own);
    const next = told.map((panel, i) => apartIn(panel, moderatedSpread(at(own, i), prior), level));
    const isSame = JSON.stringify(next) === JSON.stringify(found);
    found = next;
    if (isSame) break;
  }
  return new Map(
    told.flatMap(({ id }, i) => {
      const one = at(found, i);
      return one.apart.length > 0 || one.isUneven ? [[id, one] as const] : [];
    }),
  );
}

/** How the values of a panel scatter that do not stand out; nothing is said by an uneven one. */
export function spreadWithout(
  { values, least }: Pick<PanelValues, 'values' | 'least'>,
  { apart, isUneven }: StandingOut = NONE,
): OwnSpread {
  const rest = isUneven ? [] : values.filter((_, k) => !apart.includes(k));
  return ownSpread(rest.map(micrometres), least);
}

type Scale = { readonly sd: Micrometres; readonly dof: number };

/** By the middle panel: the median of χ² on ν degrees, over ν, is (1 − 2/9ν)³ (Wilson & Hilferty 1931). */
function middleSpread(panels: readonly PanelValues[]): Scale {
  const variances = panels.map(({ values }) => {
    const dof = values.length - 1;
    return sampleVariance(values) / (1 - 2 / (9 * dof)) ** 3;
  });
  const dof = panels.reduce((sum, { values }) => sum + values.length - 1, 0);
  return { sd: micrometres(Math.sqrt(median(variances))), dof };
}

function apartIn({ values, least }: PanelValues, { sd, dof }: Scale, level: number): StandingOut {
  const variance = Math.max(sd ** 2, least);
  const reach =
    studentTQuantile(1 - level, dof) * Math.sqrt(variance * (1 + MEDIAN_VARIANCE / values.length));
  const middle = median(values);
  const apart = values.flatMap((value, k) => (Math.abs(value - middle) > reach ? [k] : []));
  const isUneven = 2 * apart.length >= values.length;
  return { apart: isUneven ? [] : apart, isUneven, reach };
}
