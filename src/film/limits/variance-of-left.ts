/**
 * What the doubt about the topcoat that is left is made of: C₀₅ − R, the topcoat on the thinnest share of
 * the face less what a job takes off.
 *
 * Var = Var C₀₅ (see `thinClear`) + Var R, R lognormal: m²·e^{σ²}(e^{σ²} − 1). The part of a source is what
 * the variance falls by when that source alone is taken away:
 * - `removal`: σ = 0;
 * - `spread`: how film varies over the panel known exactly, ν → ∞;
 * - `sampling`: the whole face read, n → ∞;
 * - `gauge`: no calibration error, u_cal = 0;
 * - `layers`: what stays with all of these away at once. A perfect total does not say how it is shared
 *   between the topcoat and what lies under it, A·B/(A + B), or how sure a stated layer is.
 * The parts are stated as shares of their sum; together they miss the variance by what two sources do
 * jointly, under a hundredth on panels of a few points.
 */

import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import type { ExpectedRemoval } from './removal-risk.ts';
import { thinClear } from './thin-clear.ts';
import type { TopcoatCase } from './topcoat-cases.ts';

export type DoubtSource = 'layers' | 'removal' | 'spread' | 'sampling' | 'gauge';

export type DoubtPart = { readonly source: DoubtSource; readonly share: number };

/** Sources by size. Without any variance every share is 0. */
export function doubtAboutWhatIsLeft(
  { told }: Pick<TopcoatCase, 'told'>,
  removal: ExpectedRemoval,
  sharing: FilmModel['topcoat'],
): readonly DoubtPart[] {
  const clearVariance = (away: Partial<TopcoatCase['told']['film']>): number =>
    thinClear({ ...told.film, ...away }, told.knowledge, sharing).sd ** 2;
  const { spread } = told.film;
  const certain = { spread: { ...spread, dof: Number.POSITIVE_INFINITY } };
  const everywhere = { count: Number.POSITIVE_INFINITY };
  const exact = { calibration: micrometres(0) };
  const all = clearVariance({});
  const parts: Readonly<Record<DoubtSource, number>> = {
    layers: clearVariance({ ...certain, ...everywhere, ...exact }),
    removal: lognormalVariance(removal),
    spread: all - clearVariance(certain),
    sampling: all - clearVariance(everywhere),
    gauge: all - clearVariance(exact),
  };
  const sum = Object.values(parts).reduce((total, part) => total + part, 0);
  return (Object.keys(parts) as DoubtSource[])
    .map((source) => ({ source, share: sum === 0 ? 0 : parts[source] / sum }))
    .sort((one, other) => other.share - one.share);
}

/** Of one source among them. */
export const shareOf = (wanted: DoubtSource, parts: readonly DoubtPart[]): number =>
  parts.reduce((sum, { source, share }) => (source === wanted ? sum + share : sum), 0);

const lognormalVariance = ({ median, logSd }: ExpectedRemoval): number =>
  median ** 2 * Math.exp(logSd ** 2) * (Math.exp(logSd ** 2) - 1);
