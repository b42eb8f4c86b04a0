/**
 * Whether two rounds of readings differ by more than chance: those of two visits, of two parts of a file, of two
 * operators. One rule for all of them.
 *
 * Of n differences of the later to the earlier, with mean d and the variance s² of one of them, the t interval
 * d ± t·s/√n leaves out 0 in two honest rounds with the chance `falseAlarm`, both tails; |d| under `leastShift` is
 * spoken of in no case. A few differences tell their spread badly, so that of the gauge is held beside it:
 * s² = (ν₀·s₀² + Σ(dᵢ − d)²)/(ν₀ + ν), with ν₀ = `assumedDof`, s₀² = 2·u² for the repeatability u, and
 * 2·(u² + `film`²) where points have no names to be found again by (moderated t: Smyth 2004).
 */
import { differenceInterval, type MeanDifference } from '../base/stats/mean-difference.ts';
import { mean } from '../base/stats/summary.ts';
import type { FilmModel } from './film-model.ts';

export type RoundRule = Pick<FilmModel['measurement'], 'repeatability' | 'rounds'> & {
  readonly pointsAreNamed: boolean;
};

/** Of one or more differences. */
export function roundDifference(differences: readonly number[], rule: RoundRule): MeanDifference {
  const difference = mean(differences);
  const squares = differences.reduce((sum, one) => sum + (one - difference) ** 2, 0);
  const within = { squares, dof: differences.length - 1 };
  return moderatedDifference({ difference, count: differences.length }, within, rule);
}

type Scattered = { readonly squares: number; readonly dof: number };

/** `within` is what differences scatter by about their own means, of this set or of others like it. */
export function moderatedDifference(
  { difference, count }: { readonly difference: number; readonly count: number },
  within: Scattered,
  { repeatability, rounds, pointsAreNamed }: RoundRule,
): MeanDifference {
  const film = pointsAreNamed ? 0 : rounds.film ** 2;
  const assumed = 2 * (repeatability ** 2 + film);
  const dof = rounds.assumedDof + within.dof;
  const variance = (rounds.assumedDof * assumed + within.squares) / dof;
  return { difference, standardError: Math.sqrt(variance / count), dof };
}

/** `among` is how many such questions are asked at once: they share the chance. */
export function roundsDiffer(
  of: MeanDifference,
  { rounds: { falseAlarm, leastShift } }: Pick<RoundRule, 'rounds'>,
  among = 1,
): boolean {
  const [low, high] = differenceInterval(of, 1 - falseAlarm / among);
  return Math.abs(of.difference) >= leastShift && (low > 0 || high < 0);
}
