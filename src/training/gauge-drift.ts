/**
 * A gauge that creeps while the car is read: at marks that both read, in the order of the file, what the trainee reads
 * more grows (or falls) along a line.
 *
 * An honest hand reads each panel at a level of its own, and a few levels make a slope by chance. With s² the variance
 * about a line for each panel, of one slope, on n − P − 1 degrees of freedom:
 * u²(b) = s²/Σ(x − x̄)² + τ²·Σ_panels(Σ(x − x̄))²/(Σ(x − x̄)²)², τ² what levels usually vary by, or what these do about
 * the line where that is more. By s² alone up to 6 honest surveys in 100 would be told (test/simulation/MARKS.md).
 *
 * Told where the slope b has a chance under the false alarm (t on n − 2 degrees of freedom), the line comes to σ_pt or
 * more from the first mark to the last, and levels of the panels’ own fit no better than they usually do: by F,
 * (RSS − RSS_panels)/(P − 1) against s² + τ²·n/P. A panel read wrongly makes a slope as well, and fails that.
 */
import { groupBy } from '../base/group-by.ts';
import { fUpperTail } from '../base/stats/incomplete-beta.ts';
import { studentTCdf } from '../base/stats/student-t.ts';
import { mean } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { MarkCompared } from './marks-compared.ts';

export type GaugeDrift = {
  /** From the first mark to the last. */
  readonly total: Micrometres;
  readonly marks: number;
  /** What the line says of a panel, the mean over its marks, by its id. */
  readonly onPanel: ReadonlyMap<string, number>;
};

type Limits = {
  readonly falseAlarm: number;
  readonly sigmaPt: number;
  /** Fewer marks, or all on one panel, show no drift. */
  readonly leastMarks: number;
  /** Chance under which levels of their own fit the panels better than the line does. */
  readonly levelsChance: number;
  /** What panels of an honest hand are read apart by. */
  readonly levelSd: number;
};

type Placed = { readonly x: number; readonly y: number; readonly panel: string };

export function gaugeDrift(
  marks: readonly MarkCompared[],
  { falseAlarm, sigmaPt, leastMarks, levelsChance, levelSd }: Limits,
): GaugeDrift | null {
  const placed = marks.map(({ panel, difference }, x) => ({ x, y: difference, panel: panel.id }));
  const byPanel = [...groupBy(placed, ({ panel }) => panel).values()];
  const [n, panels] = [placed.length, byPanel.length];
  if (n < leastMarks || panels < 2 || n - panels < 3) return null;
  const [line, levels] = [fitted([placed]), fitted(byPanel)];
  const total = line.slope * (n - 1);
  if (Math.abs(total) < sigmaPt) return null;
  const noise = levels.residual / (n - panels - 1);
  const apart = Math.max(0, line.residual - levels.residual) / (panels - 1);
  const usual = noise + (levelSd ** 2 * n) / panels;
  if (fUpperTail(apart / usual, panels - 1, n - panels - 1) < levelsChance) return null;
  const [centreX, centreY] = [mean(placed.map(({ x }) => x)), mean(placed.map(({ y }) => y))];
  const ofLevel = Math.max(levelSd ** 2, ((apart - noise) * panels) / n);
  const lever = sum(byPanel.map((own) => sum(own.map(({ x }) => x - centreX)) ** 2));
  const slopeSd = Math.sqrt(noise / line.spread + (ofLevel * lever) / line.spread ** 2);
  const chance = 2 * studentTCdf(-Math.abs(line.slope / slopeSd), n - 2);
  if (chance >= falseAlarm) return null;
  const onPanel = byPanel.map(
    (own) =>
      [own[0].panel, centreY + line.slope * (mean(own.map(({ x }) => x)) - centreX)] as const,
  );
  return { total: micrometres(total), marks: n, onPanel: new Map(onPanel) };
}

/** One slope through groups that each have a level of their own: least squares. */
function fitted(groups: readonly (readonly Placed[])[]) {
  const centred = groups.flatMap((group) => {
    const [x0, y0] = [mean(group.map(({ x }) => x)), mean(group.map(({ y }) => y))];
    return group.map(({ x, y }) => ({ x: x - x0, y: y - y0 }));
  });
  const spread = sum(centred.map(({ x }) => x ** 2));
  const slope = sum(centred.map(({ x, y }) => x * y)) / spread;
  const residual = sum(centred.map(({ x, y }) => (y - slope * x) ** 2));
  return { slope, spread, residual };
}
