/**
 * Numerical integration by Gauss–Legendre rules, and expectations over the standard normal.
 *
 * Deterministic; the rules are computed once per order and kept. For a smooth function on a panel the
 * error falls faster than any power of the number of nodes; at a kink it falls only with the square of
 * the panel's width, so place ends of panels on kinks.
 */
import { at } from '../at.ts';
import { normalDensity } from './normal.ts';

export type Rule = { readonly nodes: readonly number[]; readonly weights: readonly number[] };

/** Value and derivative of the Legendre polynomial of the given degree, by its three-term recurrence. */
const legendre = (degree: number, x: number): { value: number; slope: number } => {
  let previous = 1;
  let value = x;
  for (let k = 2; k <= degree; k += 1) {
    [previous, value] = [value, ((2 * k - 1) * x * value - (k - 1) * previous) / k];
  }
  return { value, slope: (degree * (x * value - previous)) / (x * x - 1) };
};

const legendreRoot = (degree: number, index: number): number => {
  let x = Math.cos((Math.PI * (index + 0.75)) / (degree + 0.5));
  for (let step = 0; step < 50; step += 1) {
    const { value, slope } = legendre(degree, x);
    const change = value / slope;
    x -= change;
    if (Math.abs(change) < 1e-16) break;
  }
  return x;
};

const computeRule = (count: number): Rule => {
  const nodes = Array.from({ length: count }, (_, index) => {
    if (2 * index + 1 === count) return 0;
    return 2 * index < count ? -legendreRoot(count, index) : legendreRoot(count, count - 1 - index);
  });
  const weights = nodes.map((x) => {
    if (count === 1) return 2;
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

const STEP = 0.09;
const REACH = 9;
/** Halvings of the step after which even a near jump is left as it is. */
const MOST_HALVINGS = 6;
/** Doublings of it for what turns slowly: at four steps φ itself is still summed to 1e-16. */
const MOST_DOUBLINGS = 2;

/**
 * Equal steps on ±9, weights φ scaled to sum to 1. On a bell-shaped integrand the trapezoidal rule beats
 * Gauss–Legendre panels of as many nodes: its error falls like exp(−2π²/h²) (Trefethen & Weideman 2014,
 * SIAM Review 56: 385–458).
 */
const normalRule = (halvings: number): Rule => {
  const half = (REACH / STEP) * 2 ** halvings;
  const nodes = Array.from({ length: 2 * half + 1 }, (_, index) => (REACH * (index - half)) / half);
  const densities = nodes.map(normalDensity);
  const total = densities.reduce((sum, density) => sum + density, 0);
  return { nodes, weights: densities.map((density) => density / total) };
};

const normalRules = new Map<number, Rule>();

/** Nodes and weights of `expectOverNormal`, for what turns within `width`. */
export const normalRuleOf = (width: number): Rule => {
  const wanted = Math.ceil(Math.log2((1.1 * STEP) / width));
  const halvings = Math.min(MOST_HALVINGS, Math.max(-MOST_DOUBLINGS, wanted));
  const known = normalRules.get(halvings);
  if (known !== undefined) return known;
  const rule = normalRule(halvings);
  normalRules.set(halvings, rule);
  return rule;
};

/**
 * E f(Z) for Z ~ N(0, 1), on fixed nodes, 201 of them, at which alone f is called. Smooth f of moderate
 * growth: 1e-11; Φ(a + bZ) to b = 10: 1e-10. Where f turns more sharply or more slowly, `width` says over
 * what distance (1/b for Φ(a + bZ)), and the step is halved or doubled until it is a tenth finer than
 * that: 1e-10 again. At a kink the error falls with the square of the step only: 1e-3 of the change of
 * slope for max(0, Z − c); at a jump up to half a step, 3e-2.
 */
export const expectOverNormal = (f: (z: number) => number, width = 1.1 * STEP): number => {
  const { nodes, weights } = normalRuleOf(width);
  let sum = 0;
  for (let index = 0; index < nodes.length; index += 1) {
    sum += at(weights, index) * f(at(nodes, index));
  }
  return sum;
};
