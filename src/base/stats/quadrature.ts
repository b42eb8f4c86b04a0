/**
 * Numerical integration by Gauss–Legendre rules, and expectations over the standard normal.
 *
 * Deterministic; the rules are computed once per order and kept. For a smooth function on a panel the
 * error falls faster than any power of the number of nodes; at a kink it falls only with the square of
 * the panel's width, so place ends of panels on kinks.
 */
import { at } from '../at.ts';
import { once } from '../kept.ts';
import { normalDensity } from './normal.ts';

export type Rule = { readonly nodes: readonly number[]; readonly weights: readonly number[] };

/** Value and derivative of the Legendre polynomial of the given degree, by its three-term recurrence. */
const legendre = (degree: number, x: number): { value: number; slope: number } => {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= degree; k += 1) {
    const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
    previous = value;
    value = next;
  }
  return { value, slope: (degree * (x * value - previous)) / (x * x - 1) };
};

/** By Newton's steps: each doubles the digits, of which the guess has two. */
const legendreRoot = (degree: number, index: number): number => {
  let x = Math.cos((Math.PI * (index + 0.75)) / (degree + 0.5));
  for (let step = 0; step < 4; step += 1) {
    const { value, slope } = legendre(degree, x);
    x -= value / slope;
  }
  return x;
};

const computeRule = (count: number): Rule => {
  const roots = Array.from({ length: Math.floor(count / 2) }, (_, index) =>
    legendreRoot(count, index),
  );
  const middle = count % 2 === 1 ? [0] : [];
  const nodes = [...roots.map((root) => -root), ...middle, ...roots.toReversed()];
  const weights = nodes.map((x) => {
    const { slope } = legendre(count, x);
    return 2 / ((1 - x * x) * slope * slope);
  });
  return { nodes, weights };
};

const rules = new Map<number, Rule>();

/** Nodes and weights of the `count`-point Gauss–Legendre rule on [−1, 1]; exact to degree 2·count − 1. */
export const gaussLegendre = (count: number): Rule => {
  if (!(Number.isInteger(count) && count >= 1))
    throw new RangeError('gaussLegendre needs a whole number of nodes');
  const known = rules.get(count);
  if (known !== undefined) return known;
  const rule = computeRule(count);
  rules.set(count, rule);
  return rule;
};

/** ∫ₐᵇ f(x) dx over `panels` panels of equal width with `nodes` points each. */
export const integrate = (
  f: (x: number) => number,
  a: number,
  b: number,
  { panels = 8, nodes = 16 }: { readonly panels?: number; readonly nodes?: number } = {},
): number => {
  if (!(Number.isFinite(a) && Number.isFinite(b)))
    throw new RangeError('integrate needs finite ends');
  const rule = gaussLegendre(nodes);
  const half = (b - a) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = a + half * (2 * panel + 1);
    for (const [index, node] of rule.nodes.entries())
      sum += at(rule.weights, index) * f(middle + half * node);
  }
  return sum * half;
};

/** Step and reach for what is not told to turn anywhere: 201 nodes. */
const STEP = 0.09;
const REACH = 9;
/** A turn goes from one level to another: what lies beyond is 8e-11 of it. */
const TURN_REACH = 6.5;
/** Steps on the scale of a turn of the normal itself, which is as wide as 1: √(1 + 1/width²) of them lie in one. */
const TURN_STEP = 0.9;
/** Steps are of few sizes, so that rules are kept; eight of them halve a step. */
const SIZES_A_HALVING = 8;
/** Halvings of the widest step after which even a near jump is left as it is. */
const MOST_HALVINGS = 9;

/**
 * Equal steps, weights φ scaled to sum to 1. On a bell-shaped integrand the trapezoidal rule beats
 * Gauss–Legendre panels of as many nodes: its error falls like exp(−2π²/h²) (Trefethen & Weideman 2014,
 * SIAM Review 56: 385–458).
 */
function normalRule(step: number, reach: number): Rule {
  const half = Math.ceil(reach / step);
  const nodes: number[] = [];
  const densities: number[] = [];
  let total = 0;
  for (let k = -half; k <= half; k += 1) {
    const node = k * step;
    const density = normalDensity(node);
    nodes.push(node);
    densities.push(density);
    total += density;
  }
  return { nodes, weights: densities.map((density) => density / total) };
}

const plainRule = once(() => normalRule(STEP, REACH));

const turnRules = new Map<number, Rule>();

/**
 * Nodes and weights for E f(Z) where f goes from one level to another and turns within `width` (1/b for Φ(a + bZ)).
 * φ·f has a spectrum like exp(−ω²/(2 + 2/width²)), so that steps of h err by exp(−2π²/(h² (1 + 1/width²))).
 */
export function normalRuleOf(width: number): Rule {
  const wanted = SIZES_A_HALVING * Math.log2(Math.hypot(1, 1 / width));
  const size = Math.ceil(Math.min(wanted, SIZES_A_HALVING * MOST_HALVINGS));
  const known = turnRules.get(size);
  if (known !== undefined) return known;
  const rule = normalRule(TURN_STEP * 2 ** (-size / SIZES_A_HALVING), TURN_REACH);
  turnRules.set(size, rule);
  return rule;
}

/**
 * E f(Z) for Z ~ N(0, 1), on fixed nodes at which alone f is called. Smooth f of moderate growth: 1e-11;
 * Φ(a + bZ) to b = 10: 1e-10. At a kink the error falls with the square of the step only: 1e-3 of the change of
 * slope for max(0, Z − c); at a jump up to half a step, 3e-2. Of an f that turns from one level to another, `width`
 * says over what distance (1/b for Φ(a + bZ)): then as many nodes as that wants, 17 or more, and 1e-10 for b to 500; beyond it is a jump.
 */
export const expectOverNormal = (f: (z: number) => number, width?: number): number => {
  const { nodes, weights } = width === undefined ? plainRule() : normalRuleOf(width);
  let sum = 0;
  for (let index = 0; index < nodes.length; index += 1) {
    sum += at(weights, index) * f(at(nodes, index));
  }
  return sum;
};
