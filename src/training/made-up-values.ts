/**
 * Values that no honest survey is likely to hold. Each check reckons how many such panels (or pairs of them)
 * an honest survey would show, λ, and speaks where as many as were found have a chance under the false alarm
 * by Poisson’s law. δ is the step of the display, σ how much film varies over a panel, n the points of one.
 *
 * - all points of a panel alike: λ = Σ (δ/(σ√(2π)))ⁿ⁻¹/√n
 * - the values of another panel again, in order: λ = Σ over pairs (δ/(2σ√π))ⁿ
 * - values that only rise or only fall: λ = Σ 2/n! (panels whose reference does so at its marks left out)
 * - too regular: variance between points against that of the reference, by F; panels of even film only
 */

import { says, um } from '../base/sentence.ts';
import { regularisedLowerGamma } from '../base/stats/gamma.ts';
import { fUpperTail } from '../base/stats/incomplete-beta.ts';
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

/** Under this a sequence of values says nothing. */
const LEAST_POINTS = 3;
/** The finest step that a display has, in µm: exact equality of finer figures is no more telling. */
const FINEST_STEP = 0.1;

type Checked = {
  readonly trainee: GradedSurvey;
  readonly reference: Reference;
  readonly panels: readonly ReadPanel[];
  readonly step: number;
  readonly film: number;
  readonly falseAlarm: number;
};

export function madeUpValues(
  trainee: GradedSurvey,
  reference: Reference,
  { falseAlarm }: TrainingModel['slips'],
): readonly Reason[] {
  const panels = readPanels(trainee).filter(({ points }) => points.length >= LEAST_POINTS);
  const checked: Checked = {
    trainee,
    reference,
    panels,
    step: Math.max(stepOf(trainee), FINEST_STEP),
    film: Math.sqrt(reference.film.variance),
    falseAlarm,
  };
  const alike = valuesAlike(checked);
  return [
    ...alike,
    ...valuesRepeated(checked),
    ...valuesInOrder(checked),
    // Points that are all alike are too regular as well: once is enough.
    ...(alike.length === 0 ? tooRegular(checked) : []),
  ];
}

const valuesOf = ({ points }: { readonly points: readonly PanelPoint[] }): readonly number[] =>
  points.map(({ thickness }) => thickness);

const isAlike = (values: readonly number[]): boolean => new Set(values).size === 1;

/** P(X ≥ count) of a Poisson variable. */
const atLeast = (count: number, expected: number): number =>
  count === 0 ? 1 : regularisedLowerGamma(count, expected);

function valuesAlike(checked: Checked): readonly Reason[] {
  const { panels, step, film, falseAlarm } = checked;
  const found = panels.filter((panel) => isAlike(valuesOf(panel)));
  const alike = Math.min(1, step / (film * Math.sqrt(2 * Math.PI)));
  const expected = panels.reduce(
    (sum, { points: { length: n } }) => sum + alike ** (n - 1) / Math.sqrt(n),
    0,
  );
  if (atLeast(found.length, expected) >= falseAlarm) return [];
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
  const { panels, step, film, falseAlarm } = checked;
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
  if (atLeast(found.length, expected) >= falseAlarm) return [];
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
  const { reference, falseAlarm } = checked;
  const panels = checked.panels.filter(
    ({ panel }) => !isInOrder(reference.panels.get(panel.id)?.points ?? []),
  );
  const found = panels.filter(({ points }) => isInOrder(points));
  const expected = panels.reduce((sum, { points }) => sum + 2 / factorial(points.length), 0);
  if (atLeast(found.length, expected) >= falseAlarm) return [];
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
  const steps = points.slice(1).map(({ thickness }, k) => thickness - (points[k]?.thickness ?? 0));
  return points.length > 1 && (steps.every((step) => step > 0) || steps.every((step) => step < 0));
}

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

function tooRegular(checked: Checked): readonly Reason[] {
  const { panels, reference, film, falseAlarm } = checked;
  const even = panels.filter(({ panel }) => reference.panels.get(panel.id)?.even === true);
  const dof = even.reduce((sum, { points }) => sum + points.length - 1, 0);
  if (dof === 0) return [];
  const variance =
    even.reduce(
      (sum, panel) => sum + (panel.points.length - 1) * sampleVariance(valuesOf(panel)),
      0,
    ) / dof;
  const chance = 1 - fUpperTail(variance / reference.film.variance, dof, reference.film.dof);
  if (chance >= falseAlarm) return [];
  const own = Math.sqrt(variance);
  return [
    toldOf(
      'too-regular',
      even.slice(0, 1),
      checked,
      () =>
        says`your points on a panel differ by ${um(own, 2)} (SD), on this car film varies by ${um(film)}: too regular to be true; spread the points over the panel, and write each reading as it comes`,
      [],
    ),
  ];
}

function toldOf(
  code: BlunderCode,
  panels: readonly ReadPanel[],
  { trainee }: Checked,
  say: (names: string) => ReturnType<typeof says>,
  about: readonly ReadPanel[] = panels,
): Reason {
  const [first] = panels;
  return reason(code, say(together(panels.map(({ panel }) => panel.name))), {
    panels: about.map(({ panel }) => panel.id),
    at: first === undefined ? undefined : faceReadings(trainee, first.panel.id)[0],
  });
}
