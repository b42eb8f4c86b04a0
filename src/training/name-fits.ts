/**
 * How well what was read under the name of one panel fits the name of another, as −2·ln of its likelihood.
 *
 * At marks of one name the film of each mark is compared (src/training/fit-at-marks.ts): where film goes up and down over a
 * panel tells two panels apart whose means are alike. Else the means are compared.
 *
 * Whoever numbers the marks of a panel in another order writes values that fit the name of another by chance. So its own
 * name fits a panel no worse than in the likeliest of the n! orders of its marks, on any of N panels, does: 2·ln(n!·N) are
 * counted against that.
 *
 * Where marks scatter more than they should even about the names that they fit best, as with an unsteady hand, all likelihoods
 * are taken to that power less (quasi-likelihood: Wedderburn 1974, Biometrika 61: 439), for the same reason.
 */
import { median } from '../base/stats/summary.ts';
import {
  type Fit,
  fitOf,
  type MarkPair,
  misfitInAnyOrder,
  repeatsAtMarks,
  scoresAtMarks,
  sharedMarks,
} from './fit-at-marks.ts';
import { panelsInFile, type ReadPanel, readPanels } from './graded-survey.ts';
import {
  beyondSigma,
  compared,
  type KeyedScoring,
  NOTHING_KEYED,
  type Scoring,
} from './panel-score.ts';
import type { ReferencePanel } from './reference.ts';
import { zScore } from './scores.ts';
import type { TrainingModel } from './training-model.ts';

/** A panel that both read. */
export type Named = { readonly read: ReadPanel; readonly reference: ReferencePanel };

export type NameFit = {
  /** How much better it fits the other name than its own. */
  readonly gain: number;
  /** Largest |z| of a mark under the other name, of a mean where means are compared: one low spot makes no swap. */
  readonly largest: number;
  /** By film mark by mark; else by the means alone. */
  readonly atMarks: boolean;
  /** −2·ln of the likelihood under the other name, over the marks that it is of: about 1 where it is the right one. */
  readonly scatter: number;
  /** The same of all `count` scores together. */
  readonly misfit: number;
  readonly count: number;
  /** What repeats alone make of `scatter`. */
  readonly ofRepeats: number;
};

/** In the order of the trainee’s file; panels with a reading keyed wrongly are none, their means are of no panel. */
export function namedPanels({
  trainee,
  reference,
  keyed = NOTHING_KEYED,
}: KeyedScoring): readonly Named[] {
  const inFile = panelsInFile(trainee);
  return readPanels(trainee)
    .flatMap((read) => {
      const panel = reference.panels.get(read.panel.id);
      return panel === undefined || keyed.has(read.panel.id) ? [] : [{ read, reference: panel }];
    })
    .toSorted(
      (one, other) => inFile.indexOf(one.read.panel.id) - inFile.indexOf(other.read.panel.id),
    );
}

/** Of what stands under each name, as of each. */
export function nameFits(
  named: readonly Named[],
  names: readonly ReferencePanel[],
  scoring: Scoring,
  model: TrainingModel,
): readonly (readonly NameFit[])[] {
  const ofPanels = 2 * Math.log(named.length);
  const fits = named.map((one) =>
    names.map((other) => nameFit(one, other, { ...scoring, model, ofPanels })),
  );
  const least = fits.map((row) => Math.min(...row.map(({ scatter }) => scatter)));
  const beyond = least.length === 0 ? 1 : Math.max(1, median(least));
  return fits.map((row) => row.map((one) => ({ ...one, gain: one.gain / beyond })));
}

type Request = Scoring & {
  readonly model: TrainingModel;
  /** What it costs that it is the marks of this panel which are numbered in another order. */
  readonly ofPanels: number;
};

/** Of what stands under a name, as of another. Fewer marks in common than are wanted say nothing of how film goes up and down. */
function nameFit(
  { read, reference: own }: Named,
  other: ReferencePanel,
  request: Request,
): NameFit {
  const { sharedMarks: least } = request.model.scores;
  const { panelShare } = request.model.patterns;
  const ownPairs = sharedMarks(read, own, request);
  const pairs = sharedMarks(read, other, request);
  const atMarks = [ownPairs, pairs].every(({ length }) => length >= least);
  const fit = (panel: ReferencePanel, some: readonly MarkPair[]): Fit =>
    fitOf(
      atMarks ? scoresAtMarks(some, request) : [scoreOfMeans(read, panel, request, least)],
      panelShare,
    );
  const otherwise = fit(other, pairs);
  const asNamed = fit(own, ownPairs).misfit;
  const asOwn = atMarks
    ? Math.min(asNamed, misfitInAnyOrder(ownPairs, request, panelShare) + request.ofPanels)
    : asNamed;
  return {
    ...otherwise,
    gain: asOwn - otherwise.misfit,
    atMarks,
    count: atMarks ? pairs.length : 1,
    ofRepeats: atMarks ? repeatsAtMarks(pairs, request) : 0,
  };
}

function scoreOfMeans(
  read: ReadPanel,
  panel: ReferencePanel,
  scoring: Scoring,
  least: number,
): number {
  const unmarked = { ...panel, marked: new Set<string>() };
  const found = compared(read, unmarked, scoring, least);
  const uncertainty = beyondSigma(found, 0, { ...scoring.sigmaPt, from: 'stated' });
  return zScore(found.difference, scoring.sigmaPt.value, uncertainty);
}
