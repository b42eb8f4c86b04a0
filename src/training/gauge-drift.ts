/**
 * A gauge that creeps while the car is read: at marks that both read, in the order of the file, what the trainee reads
 * more grows (or falls) along a line.
 *
 * Told where the slope b has a chance under the false alarm (t on n − 2 degrees of freedom), the line comes to σ_pt or
 * more from the first mark to the last, and a line for each panel, of one slope, tells no more: by F on the residual
 * sums of squares, (RSS − RSS_panels)/(P − 1) against RSS_panels/(n − P − 1). A panel read wrongly makes a slope as
 * well, and fails that.
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

/** Fewer marks, or all on one panel, show no drift. */
const LEAST_MARKS = 10;
/** Chance under which levels of their own fit the panels better than the line does. */
const BY_PANELS = 0.01;

type Placed = { readonly x: number; readonly y: number; readonly panel: string };

export function gaugeDrift(
  marks: readonly MarkCompared[],
  { falseAlarm, sigmaPt }: { readonly falseAlarm: number; readonly sigmaPt: number },
): GaugeDrift | null {
  const placed = marks.map(({ panel, difference }, x) => ({ x, y: difference, panel: panel.id }));
  const byPanel = [...groupBy(placed, ({ panel }) => panel).values()];
  const [n, panels] = [placed.length, byPanel.length];
  if (n < LEAST_MARKS || panels < 2 || n - panels < 3) return null;
  const line = fitted([placed]);
  const total = line.slope * (n - 1);
  const slopeSd = Math.sqrt(line.residual / (n - 2) / line.spread);
  const chance = slopeSd === 0 ? 0 : 2 * studentTCdf(-Math.abs(line.slope / slopeSd), n - 2);
  if (Math.abs(total) < sigmaPt || chance >= falseAlarm) return null;
  const levels = fitted(byPanel);
  const ratio =
    (line.residual - levels.residual) / (panels - 1) / (levels.residual / (n - panels - 1));
  if (fUpperTail(ratio, panels - 1, n - panels - 1) < BY_PANELS) return null;
  const [centreX, centreY] = [mean(placed.map(({ x }) => x)), mean(placed.map(({ y }) => y))];
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
