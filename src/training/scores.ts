/**
 * Scores of proficiency testing (ISO 13528; ISO/IEC 17043) for a difference d from the reference.
 *
 * - z = d/σ_pt, z′ = d/√(σ_pt² + what the comparison itself is uncertain by);
 * - ζ = d/√(u² + u_ref²), standard uncertainties of both;
 * - E_n = d/√(U² + U_ref²), expanded ones, where both are stated; within 1 it is satisfactory.
 */
import { roundTo, shown } from '../base/rounding.ts';
import type { TrainingModel } from './training-model.ts';

export type ScoreVerdict = 'satisfactory' | 'questionable' | 'unsatisfactory';

export const zScore = (difference: number, sigmaPt: number, uncertainty = 0): number =>
  difference / Math.hypot(sigmaPt, uncertainty);

export const zetaScore = (difference: number, u: number, uReference: number): number =>
  difference / Math.hypot(u, uReference);

/** The same with expanded uncertainties. */
export const enNumber = zetaScore;

export type ScoreLimits = Pick<TrainingModel['scores'], 'questionable' | 'unsatisfactory'>;

/** |z| ≤ 2 satisfactory, under 3 questionable, 3 and more unsatisfactory. */
export function scoreVerdict(
  z: number,
  { questionable, unsatisfactory }: ScoreLimits,
): ScoreVerdict {
  const size = Math.abs(z);
  if (size >= unsatisfactory) return 'unsatisfactory';
  return size > questionable ? 'questionable' : 'satisfactory';
}

const MOST_FIGURES = 4;

/** A score with as many figures as its verdict takes: 2.97 is not yet the 3.0 that is unsatisfactory. */
export function scoreText(z: number, limits: ScoreLimits): string {
  const verdict = scoreVerdict(z, limits);
  const digits = [1, 2, 3].find((some) => scoreVerdict(roundTo(z, some), limits) === verdict);
  return shown(z, digits ?? MOST_FIGURES).replace('-', '−');
}
