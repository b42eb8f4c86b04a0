import { Z_95 } from '../base/stats/normal.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { LayerPrior } from './film-model.ts';
import type { Spread } from './spread.ts';

/** Share of the topcoat's variance that may lie within a panel rather than between panels. */
const WITHIN_PANEL_CEILING = 0.6;

/** Topcoat left on the thinnest 5 % of a panel's face: a normal distribution. */
export type ThinClear = { readonly mean: Micrometres; readonly sd: Micrometres };

/**
 * What a total reading says about the topcoat on the thinnest 5 % of the panel's face.
 *
 * Clear C ~ N(μ_C, σ_C²) over U ~ N(μ_U, σ_U²), of which `taken` is gone from the clear. Half of the
 * spread over the panel is put down to the clear, v = min(s̃²/2, 0.6·σ_C²). A total below what was
 * expected lowers the clear by its share g; a thick total never raises it. The second term of the
 * variance is that of 1.645·√v̂ on ν degrees of freedom.
 */
export function thinClear(
  panel: {
    readonly mean: Micrometres;
    readonly count: number;
    readonly spread: Spread;
    readonly calibration: Micrometres;
    readonly taken: Micrometres;
  },
  { top, under }: LayerPrior,
): ThinClear {
  const { mean, count, spread, calibration, taken } = panel;
  const panelVariance = spread.sd ** 2;
  const within = Math.min(panelVariance / 2, WITHIN_PANEL_CEILING * top.sd ** 2);
  const between = top.sd ** 2 - within;
  const underBetween = Math.max(under.sd ** 2 - (panelVariance - within), under.sd ** 2 / 3);
  const share = between / (between + underBetween + calibration ** 2 + panelVariance / count);
  const shortfall = Math.min(0, mean - (top.mean + under.mean - taken));
  return {
    mean: micrometres(top.mean - taken + share * shortfall - Z_95 * Math.sqrt(within)),
    sd: micrometres(Math.sqrt(between * (1 - share) + (Z_95 ** 2 * within) / (2 * spread.dof))),
  };
}
