/** The risk of a removal not yet made, and the most that keeps a stated one: to the clear, and to a ceiling. */
import { at } from '../../base/at.ts';
import { keptWith } from '../../base/kept.ts';
import {
  fillNormal,
  type NormalTable,
  normalCdf,
  normalQuantile,
} from '../../base/stats/normal.ts';
import { normalRuleOf, type Rule } from '../../base/stats/quadrature.ts';
import { type Slope, solveIncreasing } from '../../base/stats/root.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { isNarrow, type RiskTotal, riskOverClear } from './risk-over-clear.ts';
import type { ThinClear } from './thin-clear.ts';

/** A removal not yet made: lognormal, by its median and the SD of its logarithm. */
export type ExpectedRemoval = { readonly median: Micrometres; readonly logSd: number };

/** Quantile of a lognormal removal. */
export const removalQuantile = ({ median, logSd }: ExpectedRemoval, p: number): Micrometres =>
  micrometres(median === 0 ? 0 : median * Math.exp(normalQuantile(p) * logSd));

/** Chance that the clear on the thinnest 5 % ends under `floor`: P(C₀₅ − R < floor), by quadrature. */
export function clearRisk(
  clear: ThinClear,
  floor: Micrometres,
  { median, logSd }: ExpectedRemoval,
): number {
  if (median === 0) return normalCdf((floor - clear.mean) / clear.sd);
  if (isNarrow(clear, floor, logSd)) {
    const total = nothingYet();
    riskOverClear(clear, floor, logSd)(median, 1, total);
    return total.value;
  }
  const { weights, factors, table } = removalNodes(turnWidth(clear, floor, logSd), logSd);
  const { z, below } = table;
  const { mean, sd } = clear;
  for (let k = 0; k < z.length; k += 1)
    z[k] = (floor + median * (factors[k] as number) - mean) / sd;
  fillNormal(table);
  let sum = 0;
  for (let k = 0; k < z.length; k += 1) sum += (weights[k] as number) * (below[k] as number);
  return sum;
}

/**
 * A rule over the removal, what its nodes are of the median, and columns to work in. They are read where they stand:
 * a function that hands on one of their numbers has V8 make an object of it.
 */
type RemovalNodes = {
  readonly weights: Float64Array;
  /** e^{σz} at its nodes. */
  readonly factors: Float64Array;
  readonly table: NormalTable;
};

/** Kept: the panels of a car share σ, and most of them the rule. */
function removalNodes(width: number, logSd: number): RemovalNodes {
  const rule = normalRuleOf(width);
  const known = nodesOfRule(rule);
  const before = known.get(logSd);
  if (before !== undefined) return before;
  if (known.size >= MOST_LOG_SDS) known.clear();
  const { nodes, weights } = rule;
  const column = (): Float64Array => new Float64Array(nodes.length);
  const made = {
    weights: new Float64Array(weights),
    factors: new Float64Array(nodes.map((z) => Math.exp(logSd * z))),
    table: { z: column(), density: column(), below: column() },
  };
  known.set(logSd, made);
  return made;
}

const nodesOfRule = keptWith((_: Rule) => new Map<number, RemovalNodes>());
/** A survey asks of two, a plan of each combination that was tried. */
const MOST_LOG_SDS = 16;

/** How far z has to move for the clear left to pass its floor: sd over the removal's slope an sd beyond. */
const turnWidth = ({ mean, sd }: ThinClear, floor: Micrometres, logSd: number): number =>
  sd / (Math.max(logSd, 1e-9) * (Math.max(mean - floor, 0) + sd));

/** A clear that a panel may have, with the chance of it. */
export type PossibleClear = { readonly clear: ThinClear; readonly chance: number };

type RiskTerms = { readonly risk: number; readonly logSd: number };

/** The largest median removal that keeps `clearRisk` at `risk` or under; 0 when none does. */
export const clearAllowance = (
  clear: ThinClear,
  floor: Micrometres,
  terms: RiskTerms,
): Micrometres => allowanceOver([{ clear, chance: 1 }], floor, terms);

/**
 * The same where the clear may be one of several, as likely as is said: the sum of `clearRisk` over all of them, each
 * by its chance, is kept at `risk` or under. Chances may add up to less than 1: what is left is no matter of the clear.
 */
export function allowanceOver(
  possible: readonly PossibleClear[],
  floor: Micrometres,
  { risk, logSd }: RiskTerms,
): Micrometres {
  const untouched = possible.reduce(
    (sum, { clear, chance }) => sum + chance * normalCdf((floor - clear.mean) / clear.sd),
    0,
  );
  if (untouched > risk) return micrometres(0);
  const sums = possible.map((one) => riskSum(one, floor, logSd));
  // ln(risk/allowed) is near enough a parabola that one step leaves a thousandth, and the next a millionth of that.
  const excess = (median: number): Slope => {
    const total = nothingYet();
    for (const sum of sums) sum(median, total);
    const slope = total.slope / total.value;
    return {
      value: Math.log(total.value / risk),
      slope,
      curvature: total.curvature / total.value - slope * slope,
    };
  };
  const start = roughAllowance(at(possible, 0).clear, floor, { risk, logSd });
  const sharpest = Math.min(...possible.map(({ clear }) => clear.sd));
  const [relative, absolute] = [2e-3 * logSd, 2e-3 * sharpest];
  // Beyond nothing the risk goes on as smoothly, so that no step is cut off there, but of a narrow clear.
  const hasNarrow = possible.some(({ clear }) => isNarrow(clear, floor, logSd));
  const low = hasNarrow ? 0 : -Infinity;
  return micrometres(Math.max(0, solveIncreasing(excess, { start, low, relative, absolute })));
}

const nothingYet = (): RiskTotal => ({ value: 0, slope: 0, curvature: 0 });

/**
 * The smaller of `allowanceOver` and `most`. Where `most` looks as if it might go, one look at its risk proves it; the
 * search for the largest median looks twice.
 */
export function allowanceUpTo(
  most: Micrometres,
  possible: readonly PossibleClear[],
  floor: Micrometres,
  terms: RiskTerms,
): Micrometres {
  const looksKept = roughAllowance(at(possible, 0).clear, floor, terms) > most;
  if (looksKept && riskOver(possible, floor, most, terms.logSd) <= terms.risk) return most;
  return micrometres(Math.min(most, allowanceOver(possible, floor, terms)));
}

/** Σ chance · `clearRisk` of one removal. */
const riskOver = (
  possible: readonly PossibleClear[],
  floor: Micrometres,
  median: Micrometres,
  logSd: number,
): number =>
  possible.reduce(
    (sum, { clear, chance }) => sum + chance * clearRisk(clear, floor, { median, logSd }),
    0,
  );

/** Adds `clearRisk` of a median and its two derivatives in that, by the chance of the clear, to a total. */
function riskSum(
  { clear, chance }: PossibleClear,
  floor: Micrometres,
  logSd: number,
): (median: number, total: RiskTotal) => void {
  if (isNarrow(clear, floor, logSd)) {
    const add = riskOverClear(clear, floor, logSd);
    return (median, total) => add(median, chance, total);
  }
  const { sd } = clear;
  const room = (clear.mean - floor) / sd;
  const { weights, factors, table } = removalNodes(turnWidth(clear, floor, logSd), logSd);
  const { z, density, below } = table;
  return (median, total) => {
    for (let k = 0; k < z.length; k += 1) z[k] = median * ((factors[k] as number) / sd) - room;
    fillNormal(table);
    let { value, slope, curvature } = total;
    for (let k = 0; k < z.length; k += 1) {
      const weight = chance * (weights[k] as number);
      const per = (factors[k] as number) / sd;
      const rising = weight * (density[k] as number) * per;
      value += weight * (below[k] as number);
      slope += rising;
      curvature -= rising * per * (z[k] as number);
    }
    total.value = value;
    total.slope = slope;
    total.curvature = curvature;
  };
}

/** The same with the removal taken as normal of SD median · logSd: where the search starts. */
function roughAllowance(
  { mean, sd }: ThinClear,
  floor: Micrometres,
  { risk, logSd }: RiskTerms,
): number {
  const room = mean - floor;
  const z = normalQuantile(1 - risk);
  let median = Math.max(0, room - z * sd);
  for (let k = 0; k < 4; k += 1) median = Math.max(0, room - z * Math.hypot(sd, median * logSd));
  return Math.max(0.1, median);
}

/** The largest median with P(R > ceiling) ≤ risk. */
export const ceilingAllowance = (ceiling: number, { risk, logSd }: RiskTerms): Micrometres =>
  micrometres(Math.max(0, ceiling) * Math.exp(-normalQuantile(1 - risk) * logSd));
