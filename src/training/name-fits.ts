/**
 * How well what was read under the name of one panel fits the name of another, as −2·ln of its likelihood.
 *
 * At marks of one name the film of each mark is compared, z = d/√(σ_pt² + s_r²/k + s_r²/k_ref) a mark: where film
 * goes up and down over a panel tells two panels apart whose means are alike. What a hand reads a panel off by is in
 * all its marks: a share of the variance (half, by default) is held to be that, the rest to be of each mark. Else the means are compared.
 *
 * Where marks scatter more than that even about the names that they fit best, as with an unsteady hand, or marks read in
 * another order, all likelihoods are taken to that power less (quasi-likelihood: Wedderburn 1974, Biometrika 61: 439): else
 * a panel fits another name by chance.
 */
import { mean, median } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import { markedPoints, panelsInFile, type ReadPanel, readPanels } from './graded-survey.ts';
import { beyondSigma, compared, type Scoring } from './panel-score.ts';
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
};

/** In the order of the trainee’s file. */
export function namedPanels({ trainee, reference }: Scoring): readonly Named[] {
  const inFile = panelsInFile(trainee);
  return readPanels(trainee)
    .flatMap((read) => {
      const panel = reference.panels.get(read.panel.id);
      return panel === undefined ? [] : [{ read, reference: panel }];
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
  const fits = named.map((one) => names.map((other) => nameFit(one, other, scoring, model)));
  const least = fits.map((row) => Math.min(...row.map(({ scatter }) => scatter)));
  const beyond = least.length === 0 ? 1 : Math.max(1, median(least));
  return fits.map((row) => row.map((one) => ({ ...one, gain: one.gain / beyond })));
}

/** Of what stands under a name, as of another. Fewer marks in common than `sharedMarks` say nothing of how film goes up and down. */
function nameFit(
  { read, reference: own }: Named,
  other: ReferencePanel,
  scoring: Scoring,
  { scores: { sharedMarks: least }, patterns: { panelShare } }: TrainingModel,
): NameFit {
  const atMarks = [own, other].every((panel) => sharedPairs(read, panel, scoring).length >= least);
  const [named, otherwise] = [own, other].map((panel) =>
    fitOf(
      atMarks ? scoresAtMarks(read, panel, scoring) : [scoreOfMeans(read, panel, scoring, least)],
      panelShare,
    ),
  ) as [Fit, Fit];
  const { misfit, largest, scatter } = otherwise;
  return { gain: named.misfit - misfit, largest, atMarks, scatter };
}

type Fit = Pick<NameFit, 'largest' | 'scatter'> & { readonly misfit: number };

/**
 * −2·ln of the likelihood of z at n marks of which a share w of the variance is of the panel, in all of its marks, and the
 * rest of each mark: n·z̄²/(1 − w + n·w) + Σ(z − z̄)²/(1 − w); z² where means are compared.
 */
function fitOf(scores: readonly number[], ofPanel: number): Fit {
  const centre = mean(scores);
  const count = scores.length;
  const about = sum(scores.map((score) => (score - centre) ** 2));
  const misfit = (count * centre ** 2) / (1 - ofPanel + count * ofPanel) + about / (1 - ofPanel);
  return { misfit, scatter: misfit / count, largest: Math.max(...scores.map(Math.abs)) };
}

function sharedPairs(read: ReadPanel, { points, marked }: ReferencePanel, { trainee }: Scoring) {
  const own = markedPoints(trainee, read.panel.id);
  return read.points.flatMap((point) =>
    points
      .filter((theirs) => theirs.point === point.point)
      .filter(() => own.has(point.point) && marked.has(point.point))
      .map((theirs) => ({ own: point, theirs })),
  );
}

const scoresAtMarks = (
  read: ReadPanel,
  panel: ReferencePanel,
  scoring: Scoring,
): readonly number[] =>
  sharedPairs(read, panel, scoring).map(({ own, theirs }) =>
    zScore(
      own.thickness - theirs.thickness,
      scoring.sigmaPt.value,
      Math.hypot(
        scoring.trainee.repeatability / Math.sqrt(own.repeats.length),
        scoring.reference.repeatability / Math.sqrt(theirs.repeats.length),
      ),
    ),
  );

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
