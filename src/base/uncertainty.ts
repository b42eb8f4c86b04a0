/**
 * Values with their uncertainty, kept by named source (GUM: JCGM 100:2008).
 *
 * Each component is signed: sensitivity × standard uncertainty. Components of one name come from one cause
 * and are fully correlated: they add up in a sum and cancel in a difference. Components of different names
 * are independent and combine as the root of the sum of squares (GUM 5.1.2). Degrees of freedom combine by
 * Welch–Satterthwaite (GUM G.4.1); ∞ stands for a component known as well as any.
 *
 * NaN, an infinite contribution or degrees of freedom not above zero throw a RangeError.
 */
import { kept } from './kept.ts';
import { studentTQuantile } from './stats/student-t.ts';
import { minus, plus, type Quantity, scale } from './units.ts';

export type Component = {
  /** Sensitivity × standard uncertainty, with its sign, in the unit of the value. */
  readonly contribution: number;
  readonly dof: number;
};

export type Uncertain<U extends string> = {
  readonly value: Quantity<U>;
  readonly components: ReadonlyMap<string, Component>;
};

export type BudgetLine = Component & {
  readonly source: string;
  /** Share of the variance, 0 to 1. */
  readonly share: number;
};

const NO_COMPONENTS: Uncertain<string>['components'] = new Map();

/** A value without uncertainty. */
export const exactly = <U extends string>(value: Quantity<U>): Uncertain<U> =>
  withComponents(value, NO_COMPONENTS);

/** A value with standard uncertainties by source. */
export const uncertain = <U extends string>(
  value: Quantity<U>,
  sources: Readonly<Record<string, Component>>,
): Uncertain<U> => {
  const components = new Map<string, Component>();
  for (const source in sources) {
    const component = sources[source];
    if (component !== undefined) components.set(source, sound(source, component));
  }
  return withComponents(value, components);
};

/** Another value, uncertain by the same sources as `of`, each changed; a source that is changed to nothing is left out. */
export const uncertainAs = <U extends string>(
  value: Quantity<U>,
  of: Uncertain<U>,
  changed: (source: string, component: Component) => Component | null,
): Uncertain<U> => {
  const components = new Map<string, Component>();
  for (const [source, component] of of.components) {
    const now = changed(source, component);
    if (now !== null) components.set(source, sound(source, now));
  }
  return withComponents(value, components);
};

const withComponents = <U extends string>(
  value: Quantity<U>,
  components: Uncertain<U>['components'],
): Uncertain<U> => {
  if (!Number.isFinite(value)) throw new RangeError('an uncertain value must be finite');
  return { value, components };
};

const sound = (source: string, component: Component): Component => {
  const { contribution, dof } = component;
  if (!Number.isFinite(contribution))
    throw new RangeError(`the contribution of ${source} must be finite`);
  if (!(dof > 0)) throw new RangeError(`the degrees of freedom of ${source} must be above zero`);
  return component;
};

/** Standard uncertainty of a value known only to lie within ± halfWidth: a/√3 (GUM 4.3.7). */
export const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** Standard uncertainty of a display that moves in steps: δ/√12 (GUM F.2.2.1). */
export const resolution = (step: number): number => step / Math.sqrt(12);

const scaled = ({ contribution, dof }: Component, factor: number): Component => ({
  contribution: contribution * factor,
  dof,
});

/** Those of `a`, and those of `b` times a factor. */
const merge = (
  a: ReadonlyMap<string, Component>,
  b: ReadonlyMap<string, Component>,
  factor: 1 | -1,
): ReadonlyMap<string, Component> => {
  if (b.size === 0) return a;
  const merged = new Map(a);
  for (const [source, component] of b) {
    const known = merged.get(source);
    const own = scaled(component, factor);
    merged.set(
      source,
      known === undefined
        ? own
        : {
            contribution: known.contribution + own.contribution,
            dof: Math.min(known.dof, own.dof),
          },
    );
  }
  return merged;
};

/** Sum; contributions of a shared source add up, with the smaller degrees of freedom. */
export const add = <U extends string>(a: Uncertain<U>, b: NoInfer<Uncertain<U>>): Uncertain<U> => ({
  value: plus(a.value, b.value),
  components: merge(a.components, b.components, 1),
});

/** Difference; what both have in common cancels. */
export const subtract = <U extends string>(
  a: Uncertain<U>,
  b: NoInfer<Uncertain<U>>,
): Uncertain<U> => ({
  value: minus(a.value, b.value),
  components: merge(a.components, b.components, -1),
});

/** Multiple by an exactly known factor. */
export const multiply = <U extends string>(a: Uncertain<U>, factor: number): Uncertain<U> => {
  if (!Number.isFinite(factor)) throw new RangeError('a factor must be finite');
  return uncertainAs(scale(a.value, factor), a, (_, component) => scaled(component, factor));
};

/** Combined standard uncertainty: the root of the sum of squared contributions. */
export const standardUncertainty = <U extends string>({ components }: Uncertain<U>): number => {
  const contributions: number[] = [];
  for (const { contribution } of components.values()) contributions.push(contribution);
  return Math.hypot(...contributions);
};

/**
 * ν_eff = u⁴/Σ(uᵢ⁴/νᵢ) (Welch–Satterthwaite, GUM G.2b), from unrounded u. ∞ where nothing limits it.
 * `u` is given where it is known already.
 */
export const effectiveDegreesOfFreedom = <U extends string>(
  a: Uncertain<U>,
  u = standardUncertainty(a),
): number => {
  if (u === 0) return Infinity;
  let sum = 0;
  for (const { contribution, dof } of a.components.values()) sum += (contribution / u) ** 4 / dof;
  return 1 / sum;
};

/**
 * Half-width of the interval that holds the value with the given confidence: t·u, with ν_eff cut to a
 * whole number before the look-up (GUM G.4.1), though not below 1.
 */
export const expandedUncertainty = <U extends string>(
  a: Uncertain<U>,
  confidence = 0.95,
): number => {
  if (!(confidence > 0 && confidence < 1))
    throw new RangeError('confidence must lie between 0 and 1');
  const u = standardUncertainty(a);
  // Equal contributions give whole degrees of freedom but for the last digits: do not lose one to them.
  const dof = Math.max(1, Math.floor(effectiveDegreesOfFreedom(a, u) * (1 + 1e-12)));
  return coverageFactor(confidence, dof) * u;
};

/** k of an expanded uncertainty (GUM G.3). Kept: whole degrees of freedom are few. */
const coverageFactor = kept(
  (confidence: number, dof: number) => studentTQuantile((1 + confidence) / 2, dof),
  1024,
);

/** The sources by size, each with its share of the variance. */
export const uncertaintyBudget = <U extends string>(a: Uncertain<U>): readonly BudgetLine[] => {
  const u = standardUncertainty(a);
  return [...a.components]
    .map(([source, component]) => ({
      source,
      ...component,
      share: u === 0 ? 0 : (component.contribution / u) ** 2,
    }))
    .sort((one, other) => Math.abs(other.contribution) - Math.abs(one.contribution));
};
