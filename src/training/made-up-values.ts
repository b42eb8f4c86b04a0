/**
 * Values that no honest survey is likely to hold. Each check reckons how many such panels (or pairs of them)
 * an honest survey would show, λ, and speaks where as many as were found have a chance under the false alarm
 * by Poisson’s law. δ is the step of the display, σ how much film varies over a panel (at marks of both, no more than
 * the reference’s own readings of them do), n the points of one.
 *
 * - all points of a panel alike: λ = Σ (δ/(σ√(2π)))ⁿ⁻¹/√n
 * - the values of another panel again, in order: λ = Σ over pairs (δ/(2σ√π))ⁿ
 * - values that only rise or only fall: λ = Σ 2/n!, or the share of the others that do so (panels whose reference may do so left out)
 * - too regular, on panels of which nothing is told yet: src/training/too-regular.ts
 */

import { counted } from '../base/counted.ts';
import { says, um } from '../base/sentence.ts';
import { regularisedLowerGamma } from '../base/stats/gamma.ts';
import { sum } from '../base/sum.ts';
import {
  type Checked,
  chanceOfSoEven,
  type MadeUp,
  toldOf,
  valuesOf,
  varianceThere,
} from './checked-values.ts';
import { coverageOf } from './coverage.ts';
import {
  faceReadings,
  type GradedSurvey,
  type ReadPanel,
  readPanels,
  stepOf,
} from './graded-survey.ts';
import { type Reason, reason } from './reasons.ts';
import type { Reference } from './reference.ts';
import { chanceTogether, evenPanels, showsScatter, tooRegular } from './too-regular.ts';
import type { TrainingModel } from './training-model.ts';
import { isInOrder } from './values-in-order.ts';

/** Two values always rise or fall. */
const LEAST_POINTS = 3;

export type MadeUpValues = {
  readonly told: readonly Reason[];
  /** Ids of the panels whose values are made up beyond reasonable doubt: nobody read these. */
  readonly proved: ReadonlySet<string>;
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
  const again = [...valuesAlike(checked), ...valuesRepeated(checked)];
  // Points that are all alike, or those of another panel, are too regular as well: once is enough.
  const known = new Set(again.flatMap((one) => one.panels));
  const rest = { ...checked, panels: panels.filter(({ panel }) => !known.has(panel.id)) };
  const inOrder = valuesInOrder(checked);
  const all = [...again, ...tooRegular(rest)];
  const told = [...again, ...inOrder, ...all.slice(again.length)].map((one) => one.told);
  return {
    told,
    proved: new Set(
      all.filter(({ chance }) => chance < slips.provedAlarm).flatMap((one) => one.panels),
    ),
    tooFew: told.length === 0 ? tooFewToTell(checked) : [],
  };
}

const isAlike = (values: readonly number[]): boolean => new Set(values).size === 1;

/** P(X ≥ count) of a Poisson variable. */
const atLeast = (count: number, expected: number): number =>
  count === 0 ? 1 : regularisedLowerGamma(count, expected);

/** How much film varies where a panel was read, no more than it shows itself; on a panel that the reference has not, as on the car. */
function filmThere(read: ReadPanel, { film, reference, trainee }: Checked): number {
  const theirs = reference.panels.get(read.panel.id);
  if (theirs === undefined) return film;
  const { variance } = varianceThere(read, theirs, trainee);
  const own = theirs.own.dof === 0 ? variance : theirs.own.variance;
  return Math.min(film, Math.sqrt(Math.min(variance, own)));
}

function valuesAlike(checked: Checked): readonly MadeUp[] {
  const { panels, step, film, slips } = checked;
  const found = panels.filter((panel) => isAlike(valuesOf(panel)));
  const shareOf = (panel: ReadPanel): number => {
    const alike = Math.min(1, step / (filmThere(panel, checked) * Math.sqrt(2 * Math.PI)));
    const n = panel.points.length;
    return alike ** (n - 1) / Math.sqrt(n);
  };
  const chance = atLeast(found.length, sum(panels.map(shareOf)));
  if (chance >= slips.falseAlarm) return [];
  return [
    madeUp(
      chance,
      'values-alike',
      found,
      checked,
      (names) =>
        says`${names}: all points read the same, and on this car film varies by ${um(film)} over a panel: read each point, and write what the gauge shows`,
    ),
  ];
}

function valuesRepeated(checked: Checked): readonly MadeUp[] {
  const { panels, step, film, slips } = checked;
  const match = Math.min(1, step / (2 * film * Math.sqrt(Math.PI)));
  const pairs = panels.flatMap((one, i) =>
    panels
      .slice(i + 1)
      .filter(({ points }) => points.length === one.points.length)
      .map((other) => [one, other] as const),
  );
  const expected = sum(pairs.map(([{ points }]) => match ** points.length));
  const found = pairs.filter(([one, other]) => {
    const values = valuesOf(one);
    return !isAlike(values) && valuesOf(other).every((value, k) => value === values[k]);
  });
  const chance = atLeast(found.length, expected);
  if (chance >= slips.falseAlarm) return [];
  return [
    madeUp(
      chance,
      'values-repeated',
      [...new Set(found.flat())],
      checked,
      (names) =>
        says`${names}: the same values in the same order: write each panel while you stand before it`,
    ),
  ];
}

/** A panel that the reference, or half of the others, have so is left out; of the others, as often as they have it so. */
function valuesInOrder(checked: Checked): readonly MadeUp[] {
  const { slips } = checked;
  const shared = checked.panels.map((read) => ({ read, share: shareInOrder(read, checked) }));
  const panels = shared.filter(({ share }) => share < 1 / 2);
  const found = panels.map(({ read }) => read).filter(({ points }) => isInOrder(points));
  const expected = panels.map(({ read, share }) =>
    Math.max(2 / factorial(read.points.length), share),
  );
  const chance = atLeast(found.length, sum(expected));
  if (chance >= slips.falseAlarm) return [];
  return [
    madeUp(
      chance,
      'values-in-order',
      found,
      checked,
      () =>
        says`on ${found.length} of ${panels.length} panels the values only rise or only fall: film does not lie like that; write readings in the order that you take them`,
    ),
  ];
}

/** Of the other surveys that the reference is made of, those whose values of the panel only rise or only fall. */
function shareInOrder(read: ReadPanel, { reference }: Checked): number {
  const theirs = reference.panels.get(read.panel.id);
  if (theirs === undefined) return 0;
  const { count, of } = theirs.inOrder;
  if (reference.kind === 'expert') return count / of;
  return (count - (isInOrder(read.points) ? 1 : 0)) / Math.max(1, of - 1);
}

const madeUp = (chance: number, ...told: Parameters<typeof toldOf>): MadeUp => ({
  chance,
  panels: told[1].map(({ panel }) => panel.id),
  told: toldOf(...told),
});

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

/** Said where values that scatter by a share of the film only would not be told: of these nobody knows. */
function tooFewToTell(checked: Checked): readonly Reason[] {
  const { slips, trainee, reference } = checked;
  const seen =
    chanceTogether(
      evenPanels(checked).map(({ read, theirs }) => ({
        chance: chanceOfSoEven(slips.madeUpSpread ** 2 * theirs.own.variance, read, {
          theirs,
          trainee,
        }),
      })),
    ) < slips.falseAlarm;
  if (seen) return [];
  return [
    reason('too-few-to-tell', whyTooFew(trainee, reference), { at: faceReadings(trainee)[0] }),
  ];
}

function whyTooFew(trainee: GradedSurvey, reference: Reference): string {
  const panels = [...reference.panels.values()];
  if (!panels.some(showsScatter)) {
    return 'the reference read one point of a panel, which shows no scatter: nobody can tell by it whether your points were read at the car or made up';
  }
  const { share, points: wanted } = coverageOf(trainee, reference);
  if (reference.kind === 'expert' && share === 1) {
    return `the reference read ${counted(wanted, 'point')} on ${counted(panels.length, 'panel')}, too few to tell by it whether your points were read at the car or made up`;
  }
  const points = sum(readPanels(trainee).map((panel) => panel.points.length));
  return `${counted(points, 'point')} ${points === 1 ? 'is' : 'are'} too few to tell by their scatter whether they were read at the car or made up: read more panels, at more points`;
}
