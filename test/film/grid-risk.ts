/** A second way to the risk and the budget: plain sums, nothing shared with the program. */

/** P(C − R < floor) by the midpoint rule on z in ±8, with an error function of its own (series). */
export function gridRisk(
  mean: number,
  sd: number,
  floor: number,
  median: number,
  logSd: number,
): number {
  const steps = 1600;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const z = -8 + (16 * (i + 0.5)) / steps;
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    sum += density * (16 / steps) * phi((floor + median * Math.exp(logSd * z) - mean) / sd);
  }
  return sum;
}

/** Φ by its Taylor series about 0 (Marsaglia 2004, J. Stat. Softw. 11(4)). */
function phi(x: number): number {
  if (x > 7) return 1;
  if (x < -7) return 0;
  let term = x;
  let sum = x;
  for (let i = 3; sum + term !== sum && i < 400; i += 2) {
    term *= (x * x) / i;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}

/** The largest median with a risk of at most `risk`, by halving. */
export function gridBudget(
  mean: number,
  sd: number,
  floor: number,
  logSd: number,
  risk = 0.05,
): number {
  if (gridRisk(mean, sd, floor, 0, logSd) > risk) return 0;
  let low = 0;
  let high = 60;
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (gridRisk(mean, sd, floor, middle, logSd) > risk) high = middle;
    else low = middle;
  }
  return low;
}
