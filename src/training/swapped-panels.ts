/**
 * Two panels mixed up, by the likelihood ratio of the two ways of naming them:
 * 2·ln LR = Σ z²(as named) − Σ z²(swapped) over a pair. An honest survey has an LR over K with a chance of at
 * most 1/K (Markov), so K is the count of pairs over the chance of a false alarm. Pairs of the left and the right are
 * tried first, and all of them together besides: who mixes up the sides of the car does so on every panel, each a
 * little apart. Then all other pairs are, such as bonnet and roof, the surest first and no panel twice.
 *
 * At marks of one name the film of each mark is compared, z = d/√(σ_pt² + s_r²/k + s_r²/k_ref) a mark: where film
 * goes up and down over a panel tells two panels apart whose means are alike. What a hand reads a panel off by is in
 * all its marks: a share of the variance (half, by default) is held to be that, the rest to be of each mark. Else the means are compared.
 *
 * Each of the two must fit worse as it is named: none that fits its own name is swapped because the other does not.
 */
import { says } from '../base/sentence.ts';
import { mean } from '../base/stats/summary.ts';
import { sum } from '../base/sum.ts';
import type { PanelSurvey } from '../film/survey.ts';
import { faceReadings, markedPoints, type ReadPanel, readPanels } from './graded-survey.ts';
import { beyondSigma, compared, type Scoring } from './panel-score.ts';
import { type Reason, reason, together } from './reasons.ts';
import type { ReferencePanel } from './reference.ts';
import { zScore } from './scores.ts';
import type { TrainingModel } from './training-model.ts';

type Pair = {
  readonly panels: readonly [ReadPanel, ReadPanel];
  /** 2·ln of the likelihood ratio for swapped. */
  readonly evidence: number;
  /** The smaller of what each of the two brings to it. */
  readonly ofEach: number;
  /** Largest |z| of a mark once swapped, of a mean where means are compared: one low spot makes no swap. */
  readonly left: number;
};

export function swappedPanels(scoring: Scoring, model: TrainingModel): readonly Reason[] {
  const pairs = allPairs(readPanels(scoring.trainee)).flatMap((panels) =>
    pairEvidence(panels, scoring, {
      least: model.scores.sharedMarks,
      ofPanel: model.patterns.panelShare,
    }),
  );
  const sides = pairs.filter(({ panels: [one, other] }) => one.panel.mirror === other.panel.id);
  const proof = 2 * Math.log(1 / model.slips.falseAlarm);
  const { unsatisfactory } = model.scores;
  const fits = ({ left }: Pair): boolean => left < unsatisfactory;
  const areBothOff = ({ ofEach }: Pair): boolean => ofEach > 1;
  if (areAllSwapped(sides, proof) && sides.every(fits)) {
    return [
      toldSides(
        sides.flatMap(({ panels }) => panels),
        'all over the car',
        scoring,
      ),
    ];
  }
  const proved = (some: readonly Pair[]): readonly Pair[] =>
    some
      .filter((pair) => pair.evidence > proof + 2 * Math.log(some.length))
      .filter((pair) => fits(pair) && areBothOff(pair));
  const ofSides = proved(sides);
  const others = proved(pairs.filter((pair) => !sides.includes(pair)));
  return [
    ...ofSides.map(({ panels }) =>
      toldSides(panels, together(panels.map(({ panel }) => panel.name)), scoring),
    ),
    ...surestFirst(others, ofSides).map(({ panels }) => toldPanels(panels, scoring)),
  ];
}

function areAllSwapped(sides: readonly Pair[], proof: number): boolean {
  const all = sum(sides.map(({ evidence }) => evidence));
  const most = sides.filter(({ evidence }) => evidence > 0).length > sides.length / 2;
  return sides.length > 1 && all > proof && most;
}

const allPairs = (panels: readonly ReadPanel[]): readonly Pair['panels'][] =>
  panels.flatMap((one, i) => panels.slice(i + 1).map((other) => [one, other] as const));

/** Of pairs that share a panel the surest; none of a panel that is told already. */
function surestFirst(pairs: readonly Pair[], told: readonly Pair[]): readonly Pair[] {
  const kept: Pair[] = [];
  for (const pair of [...pairs].sort((one, other) => other.evidence - one.evidence)) {
    const taken = [...told, ...kept].flatMap(({ panels }) => panels);
    if (!pair.panels.some((panel) => taken.includes(panel))) kept.push(pair);
  }
  return kept;
}

/** Fewer marks in common than `least` say nothing of how film goes up and down. */
function pairEvidence(
  [one, other]: Pair['panels'],
  scoring: Scoring,
  { least, ofPanel }: { readonly least: number; readonly ofPanel: number },
): readonly Pair[] {
  const { panels } = scoring.reference;
  const [first, second] = [panels.get(one.panel.id), panels.get(other.panel.id)];
  if (first === undefined || second === undefined) return [];
  const marks = [one, other].every((read) =>
    [first, second].every((panel) => sharedMarks(read, panel, scoring).length >= least),
  );
  const z = (read: ReadPanel, panel: ReferencePanel): Fit =>
    fitOf(
      marks ? scoresAtMarks(read, panel, scoring) : [scoreOfMeans(read, panel, scoring, least)],
      ofPanel,
    );
  const [named, otherNamed] = [z(one, first), z(other, second)];
  const [swapped, otherSwapped] = [z(one, second), z(other, first)];
  const ofEach = [named.misfit - swapped.misfit, otherNamed.misfit - otherSwapped.misfit] as const;
  return [
    {
      panels: [one, other],
      evidence: ofEach[0] + ofEach[1],
      ofEach: Math.min(...ofEach),
      left: Math.max(swapped.largest, otherSwapped.largest),
    },
  ];
}

type Fit = { readonly misfit: number; readonly largest: number };

/**
 * −2·ln of the likelihood of z at n marks of which a share w of the variance is of the panel, in all of its marks, and the
 * rest of each mark: n·z̄²/(1 − w + n·w) + Σ(z − z̄)²/(1 − w); z² where means are compared.
 */
function fitOf(scores: readonly number[], ofPanel: number): Fit {
  const centre = mean(scores);
  const count = scores.length;
  const about = sum(scores.map((score) => (score - centre) ** 2));
  return {
    misfit: (count * centre ** 2) / (1 - ofPanel + count * ofPanel) + about / (1 - ofPanel),
    largest: Math.max(...scores.map(Math.abs)),
  };
}

function sharedMarks(read: ReadPanel, { points, marked }: ReferencePanel, { trainee }: Scoring) {
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
  sharedMarks(read, panel, scoring).map(({ own, theirs }) =>
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

const toldPanels = (panels: readonly ReadPanel[], { trainee }: Pick<Scoring, 'trainee'>): Reason =>
  reason(
    'panels-swapped',
    says`${together(panels.map(({ panel }) => panel.name))} are swapped: with their names changed the readings agree with the reference; write the name of a panel while you stand before it`,
    {
      panels: panels.map(({ panel }) => panel.id),
      at: faceReadings(trainee, panels[0]?.panel.id)[0],
    },
  );

const toldSides = (
  panels: readonly PanelSurvey[],
  where: string,
  { trainee }: Pick<Scoring, 'trainee'>,
): Reason =>
  reason(
    'sides-swapped',
    says`left and right are swapped, ${where}: with the sides changed the readings agree with the reference; sides are as seen from the driver’s seat`,
    {
      panels: panels.map(({ panel }) => panel.id),
      at: faceReadings(trainee, panels[0]?.panel.id)[0],
    },
  );
