/**
 * Numerical integration by Gauss–Legendre rules, and expectations over the standard normal.
 *
 * Deterministic; the rules are computed once per order and kept. For a smooth function on a panel the
 * error falls faster than any power of the number of nodes; at a kink it falls only with the square of
 * the panel's width (an expectation of max(0, Z − c) is good to about 1e-3), so place panels on kinks.
 */
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
      sum += (rule.weights[index] ?? 0) * f(middle + half * node);
  }
  return sum * half;
};

/** Twelve panels of nine points on ±8.5, beyond which lies less than 2e-17; weights sum to 1. */
const normalRule = (): Rule => {
  const { nodes, weights } = gaussLegendre(9);
  const half = 8.5 / 12;
  const all = Array.from({ length: 12 }, (_, panel) => half * (2 * panel - 11)).flatMap((middle) =>
    nodes.map((node, index) => {
      const z = middle + half * node;
      return { z, weight: (weights[index] ?? 0) * normalDensity(z) };
    }),
  );
  const total = all.reduce((sum, { weight }) => sum + weight, 0);
  return { nodes: all.map(({ z }) => z), weights: all.map(({ weight }) => weight / total) };
};

let standardNormal: Rule | undefined;

/**
 * E f(Z) for Z ~ N(0, 1), on 108 fixed nodes. Smooth f that grows no faster than a polynomial of low
 * degree: 1e-12. The function is called at finite z from −8.5 to 8.5 only.
 */
export const expectOverNormal = (f: (z: number) => number): number => {
  standardNormal ??= normalRule();
  const { nodes, weights } = standardNormal;
  let sum = 0;
  for (let index = 0; index < nodes.length; index += 1)
    sum += (weights[index] ?? 0) * f(nodes[index] ?? 0);
  return sum;
};
