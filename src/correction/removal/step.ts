import type { Micrometres } from '../../base/units.ts';
import type { Combination } from './combination.ts';

/** So many sets of one combination over a panel. */
export type Step = { readonly combination: Combination; readonly sets: number };

/** Median removal of the steps together: the sum of their medians. */
export const medianRemoval = (steps: readonly Step[]): Micrometres =>
  steps.reduce((sum, { combination, sets }) => sum + combination.perSet * sets, 0) as Micrometres;

/** Sets of all steps together. */
export const setsOf = (steps: readonly Step[]): number =>
  steps.reduce((sum, { sets }) => sum + sets, 0);

/** The hardest step taken, by its place on the ladder; -1 for no step at all. */
export const strongestRung = (steps: readonly Step[]): number =>
  steps.reduce((rung, { combination }) => Math.max(rung, combination.rung), -1);

/** The same by the order of care. */
export const mostCare = (steps: readonly Step[]): number =>
  steps.reduce((most, { combination }) => Math.max(most, combination.care), -1);

/** Haze left when all is done: each step clears a grade per `cleared` it removes and leaves its own. */
export const hazeAfter = (steps: readonly Step[], cleared: Micrometres): number =>
  steps.reduce((haze, step) => hazeAfterEffect(haze, hazeEffect(step, cleared)), 0);

/** The haze that a step leaves by itself, and how many grades of what was there it clears. */
export type HazeEffect = { readonly leaves: number; readonly clears: number };

export const hazeEffect = ({ combination, sets }: Step, cleared: Micrometres): HazeEffect => ({
  leaves: combination.haze,
  clears: Math.floor((combination.perSet * sets) / cleared + 1e-9),
});

export const hazeAfterEffect = (before: number, { leaves, clears }: HazeEffect): number =>
  Math.max(leaves, before - clears);

export const stepsId = (steps: readonly Step[]): string =>
  steps.map(({ combination, sets }) => `${combination.id}×${sets}`).join(' + ');
