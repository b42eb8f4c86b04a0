/** Published and recomputed values for times: three-point estimates, sums of lognormals, normal updates. */

/**
 * PERT-beta: mean (a + 4m + b)/6 (Malcolm et al. 1959), variance (μ − a)(b − μ)/7; values by the closed
 * form and by R's and scipy's beta distribution.
 */
export const threePointTimes = [
  { times: [2, 5, 14], mean: 6, sd: 2.138089935299395 },
  { times: [1, 2, 3], mean: 2, sd: 0.3779644730092272 },
  { times: [60, 90, 180], mean: 100, sd: 21.38089935299395 },
  { times: [0, 5, 10], mean: 5, sd: 1.889822365046136 },
  { times: [10, 12, 30], mean: 14.666666666666666, sd: 3.197221015541813 },
] as const;

/**
 * Lognormal of equal mean and variance (Fenton 1960): σ² = ln(1 + V/M²), μ = ln M − σ²/2. Beside it the
 * exact quantiles of the sum of two lognormals, by numerical convolution.
 */
export const lognormalSums = [
  {
    mean: 2.2662969061336526,
    variance: 0.729391708024773,
    mu: 0.7517510609004961,
    sigma: 0.36440669494247524,
    exact: { p50: 2.118740544452073, p90: 3.3771789449036462, p95: 3.859603993651755 },
  },
  {
    mean: 2.5954330425010506,
    variance: 0.7357100234518656,
    mu: 0.9019265639262422,
    sigma: 0.3219528365843461,
    exact: { p50: 2.4619419889978653, p90: 3.7169426442134084, p95: 4.183036737186238 },
  },
  {
    mean: 108.9758581458384,
    variance: 455.8166147548949,
    mu: 4.672294423369897,
    sigma: 0.19407189094394173,
    exact: { p50: 106.92078414895467, p90: 137.12792672087969, p95: 147.17880740328877 },
  },
] as const;

/** Conjugate normal: Bolstad, Introduction to Bayesian Statistics, lengths of trout (printed 31.96, .5714). */
export const trout = {
  prior: { mean: 30, sd: 4 },
  values: { mean: 32, count: 12, sd: 2 },
  mean: 31.959183673469386,
  sd: 0.5714285714285714,
  printed: { mean: 31.96, sd: 0.5714 },
} as const;

/** R package Bolstad, example of normnp: y of known SD 1. */
export const normnp = {
  prior: { mean: 3, sd: 2 },
  values: [2.99, 5.56, 2.83, 3.47],
  mean: 3.670588235294118,
  sd: 0.48507125007266594,
} as const;
