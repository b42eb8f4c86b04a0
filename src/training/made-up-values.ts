/**
 * Values that no honest survey is likely to hold. Each check reckons how many such panels (or pairs of them)
 * an honest survey would show, λ, and speaks where as many as were found have a chance under the false alarm
 * by Poisson’s law. δ is the step of the display, σ how much film varies over a panel, n the points of one.
 *
 * - all points of a panel alike: λ = Σ (δ/(σ√(2π)))ⁿ⁻¹/√n
 * - the values of another panel again, in order: λ = Σ over pairs (δ/(2σ√π))ⁿ
 * - values that only rise or only fall: λ = Σ 2/n! (panels whose reference does so at its marks left out)
 * - too regular: variance between points against that of the reference, by F, all panels together; and panels
 *   whose F against their own in the reference has a chance under that of an even panel, counted (binomial); even film
 *   only
 */

import { at } from '../base/at.ts';
import { counted } from '../base/counted.ts';
import { says, um } from '../base/sentence.ts';
import { regularisedLowerGamma } from '../base/stats/gamma.ts';
import { binomialUpperTail, fUpperTail } from '../base/stats/incomplete-beta.ts';
import { sampleVariance } from '../base/stats/summary.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import {
  faceReadings,
  type GradedSurvey,
  type ReadPanel,
  readPanels,
  stepOf,
} from './graded-survey.ts';
import { type BlunderCode, type Reason, reason, together } from './reasons.ts';
import type { Reference } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

/** Two values always rise or fall. */
const LEAST_POINTS = 3;

type Checked = {
  readonly trainee: GradedSurvey;
  readonly reference: Reference;
  readonly panels: readonly ReadPanel[];
  readonly step: number;
  readonly film: number;
  readonly slips: TrainingModel['slips'];
};

export type MadeUpValues = {
  readonly told: readonly Reason[];
  /** No blunder: what was handed in proves neither. */
  readonly tooFew: readonly Reason[];
};

/** Panels whose readings are in another unit, or lost a decimal mark, are told as that and left out here. */
export function madeUpValues(
  trainee: GradedSurvey,
  reference: Reference,
  { slips, keyed }: { readonly slips: TrainingModel['slips']; readonly keyed: ReadonlySet<string> },
): MadeUpValues {
  const panels = readPanels(trainee).filter(
    ({ panel, points }) => points.length >= LEAST_POINTS && !keyed.has(panel.id),
  );
  const checked: Checked = {
    trainee,
    reference,
    panels,
    step: Math.max(stepOf(trainee), slips.finestStep),
    film: Math.sqrt(reference.film.variance),
    slips,
  };
  const alike = valuesAlike(checked);
  const told = [
    ...alike,
    ...valuesRepeated(checked),
    ...valuesInOrder(checked),
    // Points that are all alike are too regular as well: once is enough.
    ...(alike.length === 0 ? tooRegular(checked) : []),
  ];
  return { told, tooFew: told.length === 0 ? tooFewToTell(checked) : [] };
}

const valuesOf = ({ points }: { readonly points: readonly PanelPoint[] }): readonly number[] =>
  points.map(({ thickness }) => thickness);

const isAlike = (values: readonly number[]): boolean => new Set(values).size === 1;

/** P(X ≥ count) of a Poisson variable. */
const atLeast = (count: number, expected: number): number =>
  count === 0 ? 1 : regularisedLowerGamma(count, expected);

function valuesAlike(checked: Checked): readonly Reason[] {
  const { panels, step, film, slips } = checked;
  const found = panels.filter((panel) => isAlike(valuesOf(panel)));
  const alike = Math.min(1, step / (film * Math.sqrt(2 * Math.PI)));
  const expected = panels.reduce(
    (sum, { points: { length: n } }) => sum + alike ** (n - 1) / Math.sqrt(n),
    0,
  );
  if (atLeast(found.length, expected) >= slips.falseAlarm) return [];
  return [
    toldOf(
      'values-alike',
      found,
      checked,
      (names) =>
        says`${names}: all points read the same, and on this car film varies by ${um(film)} over a panel: read each point, and write what the gauge shows`,
    ),
  ];
}

function valuesRepeated(checked: Checked): readonly Reason[] {
  const { panels, step, film, slips } = checked;
  const match = Math.min(1, step / (2 * film * Math.sqrt(Math.PI)));
  const pairs = panels.flatMap((one, i) =>
    panels
      .slice(i + 1)
      .filter(({ points }) => points.length === one.points.length)
      .map((other) => [one, other] as const),
  );
  const expected = pairs.reduce((sum, [{ points }]) => sum + match ** points.length, 0);
  const found = pairs.filter(([one, other]) => {
    const values = valuesOf(one);
    return !isAlike(values) && valuesOf(other).every((value, k) => value === values[k]);
  });
  if (atLeast(found.length, expected) >= slips.falseAlarm) return [];
  return [
    toldOf(
      'values-repeated',
      [...new Set(found.flat())],
      checked,
      (names) =>
        says`${names}: the same values in the same order: write each panel while you stand before it`,
    ),
  ];
}

function valuesInOrder(checked: Checked): readonly Reason[] {
  const { reference, slips } = checked;
  const panels = checked.panels.filter(
    ({ panel }) => !isInOrder(reference.panels.get(panel.id)?.points ?? []),
  );
  const found = panels.filter(({ points }) => isInOrder(points));
  const expected = panels.reduce((sum, { points }) => sum + 2 / factorial(points.length), 0);
  if (atLeast(found.length, expected) >= slips.falseAlarm) return [];
  return [
    toldOf(
      'values-in-order',
      found,
      checked,
      () =>
        says`on ${found.length} of ${panels.length} panels the values only rise or only fall: film does not lie like that; write readings in the order that you take them`,
    ),
  ];
}

/** Each value above the one before, or each under it. */
function isInOrder(points: readonly PanelPoint[]): boolean {
  const steps = points.slice(1).map(({ thickness }, k) => thickness - at(points, k).thickness);
  return points.length > 1 && (steps.every((step) => step > 0) || steps.every((step) => step < 0));
}

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

/**
 * Over all panels together, and by how many of them read more even than theirs in the reference: who makes up
 * half of a survey is seen by the second.
 */
function tooRegular(checked: Checked): readonly Reason[] {
  const even = evenPanels(checked);
  if (even.length === 0) return [];
  const { film } = checked.reference;
  const dof = even.reduce((sum, one) => sum + one.dof, 0);
  const pooled = even.reduce((sum, one) => sum + one.dof * one.variance, 0) / dof;
  if (lowerF(pooled / film.variance, dof, film.dof) < checked.slips.falseAlarm) {
    return [regular(checked, even, pooled, 'on a panel')];
  }
  const { evenPanel } = checked.slips;
  const flat = even.filter(({ chance }) => chance < evenPanel);
  if (binomialUpperTail(flat.length, even.length, evenPanel) >= checked.slips.falseAlarm) return [];
  const ofFlat = flat.reduce((sum, one) => sum + one.dof * one.variance, 0);
  return [
    regular(
      checked,
      flat,
      ofFlat / flat.reduce((sum, one) => sum + one.dof, 0),
      `on ${flat.length} of ${even.length} panels (${together(flat.map(({ read }) => read.panel.name))})`,
    ),
  ];
}

/** Said where values that scatter by a share of the film only would not be told: of these nobody knows. */
function tooFewToTell(checked: Checked): readonly Reason[] {
  const { reference, slips, trainee } = checked;
  const dof = evenPanels(checked).reduce((sum, one) => sum + one.dof, 0);
  const seen =
    dof > 0 && lowerF(slips.madeUpSpread ** 2, dof, reference.film.dof) < slips.falseAlarm;
  if (seen) return [];
  const points = readPanels(trainee).reduce((sum, panel) => sum + panel.points.length, 0);
  return [
    reason(
      'too-few-to-tell',
      `${counted(points, 'point')} ${points === 1 ? 'is' : 'are'} too few to tell by their scatter whether they were read at the car or made up: read more panels, at more points`,
      { at: faceReadings(trainee)[0] },
    ),
  ];
}

function evenPanels({ panels, reference }: Checked): readonly EvenPanel[] {
  return panels.flatMap((read): readonly EvenPanel[] => {
    const theirs = reference.panels.get(read.panel.id);
    if (theirs?.even !== true) return [];
    const [dof, variance] = [read.points.length - 1, sampleVariance(valuesOf(read))];
    const ratio = variance / theirs.spread.sd ** 2;
    return [{ read, dof, variance, chance: lowerF(ratio, dof, theirs.spread.dof) }];
  });
}

type EvenPanel = {
  readonly read: ReadPanel;
  readonly dof: number;
  readonly variance: number;
  /** Of so even a panel, or one more so. */
  readonly chance: number;
};

const lowerF = (ratio: number, dof: number, ofReference: number): number =>
  1 - fUpperTail(ratio, dof, ofReference);

const regular = (
  checked: Checked,
  panels: readonly EvenPanel[],
  variance: number,
  where: string,
): Reason =>
  toldOf(
    'too-regular',
    panels.slice(0, 1).map(({ read }) => read),
    checked,
    () =>
      says`your points ${where} differ by ${um(Math.sqrt(variance), 2)} (SD), on this car film varies by ${um(checked.film)}: too regular to be true; spread the points over the panel, and write each reading as it comes`,
    [],
  );

function toldOf(
  code: BlunderCode,
  panels: readonly ReadPanel[],
  { trainee }: Checked,
  say: (names: string) => ReturnType<typeof says>,
  about: readonly ReadPanel[] = panels,
): Reason {
  return reason(code, say(together(panels.map(({ panel }) => panel.name))), {
    panels: about.map(({ panel }) => panel.id),
    at: panels.flatMap(({ panel }) => faceReadings(trainee, panel.id))[0],
  });
}
