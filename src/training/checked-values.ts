/** A survey as it is looked through for values that were made up, and how that is told. */
import type { says } from '../base/sentence.ts';
import { fUpperTail } from '../base/stats/incomplete-beta.ts';
import type { VarianceOf } from '../base/stats/pooled-variance.ts';
import { sampleVariance } from '../base/stats/summary.ts';
import type { PanelPoint } from '../film/panel-points.ts';
import { faceReadings, type GradedSurvey, markedPoints, type ReadPanel } from './graded-survey.ts';
import { type BlunderCode, type Reason, reason, together } from './reasons.ts';
import type { Reference, ReferencePanel } from './reference.ts';
import type { TrainingModel } from './training-model.ts';

export type Checked = {
  readonly trainee: GradedSurvey;
  readonly reference: Reference;
  readonly panels: readonly ReadPanel[];
  readonly step: number;
  readonly film: number;
  readonly slips: TrainingModel['slips'];
};

/** Something that an honest survey shows with a chance under the false alarm. */
export type MadeUp = {
  readonly told: Reason;
  readonly chance: number;
  /** Ids of the panels whose values it is about. */
  readonly panels: readonly string[];
};

export const valuesOf = ({
  points,
}: {
  readonly points: readonly PanelPoint[];
}): readonly number[] => points.map(({ thickness }) => thickness);

export const lowerF = (ratio: number, dof: number, ofReference: number): number =>
  1 - fUpperTail(ratio, dof, ofReference);

/**
 * Of values that vary so little, or less, on a panel: by F against the film there as the panels say it together, and against
 * what the reference’s own points show there, on no more degrees of freedom than they have. The greater counts: panels of
 * one car may differ in how even they are, and none is expected to scatter more than it shows itself.
 */
export function chanceOfSoEven(
  variance: number,
  read: ReadPanel,
  { theirs, trainee }: { readonly theirs: ReferencePanel; readonly trainee: GradedSurvey },
): number {
  const dof = read.points.length - 1;
  // Marks that the reference reads alike are no measure: nobody reads them more even.
  const against = (film: VarianceOf): number =>
    film.variance === 0 ? 1 : lowerF(variance / film.variance, dof, film.dof);
  return Math.max(against(varianceThere(read, theirs, trainee)), against(theirs.own));
}

/**
 * How much the film at the places of a panel varies that were read, by the reference: at marks of both these places, and
 * never more than the panel. Marks that happen to lie on even film are read even by everybody.
 */
export function varianceThere(
  read: ReadPanel,
  theirs: ReferencePanel,
  trainee: GradedSurvey,
): VarianceOf {
  const ofPanel = { variance: theirs.spread.sd ** 2, dof: theirs.spread.dof };
  const own = markedPoints(trainee, read.panel.id);
  const shared = read.points.filter(({ point }) => own.has(point) && theirs.marked.has(point));
  if (shared.length < read.points.length) return ofPanel;
  const names = new Set(shared.map(({ point }) => point));
  const there = theirs.points.filter(({ point }) => names.has(point));
  const variance = sampleVariance(valuesOf({ points: there }));
  return variance < ofPanel.variance ? { variance, dof: there.length - 1 } : ofPanel;
}

export function toldOf(
  code: BlunderCode,
  panels: readonly ReadPanel[],
  { trainee }: Pick<Checked, 'trainee'>,
  say: (names: string) => ReturnType<typeof says>,
): Reason {
  return reason(code, say(together(panels.map(({ panel }) => panel.name))), {
    panels: panels.map(({ panel }) => panel.id),
    at: panels.flatMap(({ panel }) => faceReadings(trainee, panel.id))[0],
  });
}
