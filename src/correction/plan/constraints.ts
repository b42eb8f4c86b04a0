/** What a sequence of steps must respect, one named predicate each: allowed, or the reason why not. */
import { shown } from '../../base/rounding.ts';
import type { Micrometres, Millimetres } from '../../base/units.ts';
import type { Combination } from '../removal/combination.ts';
import { hazeAfter, medianRemoval, type Step } from '../removal/step.ts';

export type ConstraintContext = {
  /** The largest median removal that keeps every limit at the stated risk. */
  readonly budget: Micrometres;
  /** Narrowest flat stretch of the panel. */
  readonly flatWidth: Millimetres;
  /** Largest pad of the shop that lies flat on the panel, by machine; 0 when none does. */
  readonly fullSizePad: number;
  readonly hazeCleared: Micrometres;
  /** Worst haze that the aim lets stand. */
  readonly hazeAllowed: number;
};

export type Constraint = {
  readonly name: string;
  /** Undefined when allowed, else the reason. */
  readonly refuse: (steps: readonly Step[], context: ConstraintContext) => string | undefined;
};

export const padLiesFlat: Constraint = {
  name: 'pad-lies-flat',
  refuse: (steps, { flatWidth }) => {
    const wide = steps.find(({ combination }) => !fits(combination, flatWidth));
    return wide === undefined
      ? undefined
      : `a ${wide.combination.machine.padDiameter} mm pad does not lie flat on ${flatWidth} mm`;
  },
};

const fits = ({ machine }: Combination, flatWidth: Millimetres): boolean =>
  machine.motion.kind === 'hand' || machine.padDiameter <= flatWidth;

/** Small pads are for tight places: on a panel that takes a full-size pad they cost hours. */
export const fullSizeWhereItFits: Constraint = {
  name: 'full-size-where-it-fits',
  refuse: (steps, { fullSizePad }) => {
    const small = steps.find(
      ({ combination: { machine } }) =>
        machine.motion.kind !== 'hand' && machine.padDiameter < fullSizePad,
    );
    return small === undefined
      ? undefined
      : `a ${small.combination.machine.padDiameter} mm pad is for tight places, ${fullSizePad} mm lies flat here`;
  },
};

/** Whether a step is milder than the one before it. */
export const isMilder = (before: Step, step: Step): boolean =>
  step.combination.rung < before.combination.rung;

export const eachStepMilder: Constraint = {
  name: 'each-step-milder',
  refuse: (steps) =>
    steps.every((step, i) => {
      const before = steps[i - 1];
      return before === undefined || isMilder(before, step);
    })
      ? undefined
      : 'a step is not milder than the one before',
};

export const lastStepNotRotary: Constraint = {
  name: 'last-step-not-rotary',
  refuse: (steps) =>
    steps.at(-1)?.combination.machine.motion.kind === 'rotary'
      ? 'the last step would be by rotary, which leaves holograms'
      : undefined,
};

export const hazeCleared: Constraint = {
  name: 'haze-cleared',
  refuse: (steps, context) => {
    const haze = hazeAfter(steps, context.hazeCleared);
    return haze <= context.hazeAllowed
      ? undefined
      : `haze of grade ${haze} would be left, ${context.hazeAllowed} is allowed`;
  },
};

export const withinBudget: Constraint = {
  name: 'within-budget',
  refuse: (steps, { budget }) => {
    const median = medianRemoval(steps);
    return median <= budget
      ? undefined
      : `takes ${shown(median, 2)} µm, ${shown(budget, 2)} µm may go`;
  },
};

/** Limits of technique on each step by itself. */
export const stepConstraints: readonly Constraint[] = [padLiesFlat, fullSizeWhereItFits];

export const techniqueConstraints: readonly Constraint[] = [
  ...stepConstraints,
  eachStepMilder,
  lastStepNotRotary,
  hazeCleared,
];

export const allConstraints: readonly Constraint[] = [...techniqueConstraints, withinBudget];

/** The first constraint that refuses, or undefined. */
export function refusal(
  steps: readonly Step[],
  context: ConstraintContext,
  constraints: readonly Constraint[] = allConstraints,
): { readonly constraint: string; readonly reason: string } | undefined {
  for (const { name, refuse } of constraints) {
    const reason = refuse(steps, context);
    if (reason !== undefined) return { constraint: name, reason };
  }
  return undefined;
}
