/**
 * Candidates for a panel, found once for all panels that share what they depend on: those of a car, those
 * of other cars in the same shop, and those of the same car under another aim.
 */
import { kept } from '../../base/kept.ts';
import { millimetres, squareMetres } from '../../base/units.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { doubtOf, expectedCorrection, leastClearingMore } from '../defects.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import { type PaintKnowledge, stepRemoval, workableOn } from '../removal/removal-knowledge.ts';
import { setTime } from '../removal/removal-rate.ts';
import type { Step } from '../removal/step.ts';
import { heldTo } from './allowed-removal.ts';
import type { Candidate, CandidateColumns } from './candidate-columns.ts';
import { columnsInClasses, type Ranked, type RatedCandidate, ranked } from './choose-steps.ts';
import type { ConstraintContext } from './constraints.ts';
import { candidateColumns } from './step-search.ts';

export type By = 'machine' | 'hand';

/** Ways to work a panel whose general defects have a median depth, where so much haze may stay. */
export type FindWays = (by: By, depth: number, hazeAllowed: number) => Ranked;

export type SearchGrounds = {
  readonly paintOf: (panel: PanelSurvey) => PaintKnowledge;
  readonly model: CorrectionModel;
};

export type FlatWidth = PanelSurvey['panel']['flatWidth'];
type FindOnPaint = (by: By, flatWidth: FlatWidth, hazeAllowed: number, depth: number) => Ranked;

/** They depend on the panel through its paint, its flat width and how deep its defects are. */
export function waysToWork(panel: PanelSurvey, { paintOf, model }: SearchGrounds): FindWays {
  const onPaint = searchesIn(model)(paintOf(panel));
  const { flatWidth } = panel.panel;
  return (by, depth, hazeAllowed) => onPaint(by, flatWidth, hazeAllowed, depth);
}

/** Paints whose candidates are kept at a time: a batch of cars with test spots has a paint for each. */
const PAINTS_KEPT = 16;

const searches = new WeakMap<CorrectionModel, (paint: PaintKnowledge) => FindOnPaint>();

/** The same search for the same model, whoever asks: it answers the same question the same way. */
function searchesIn(model: CorrectionModel): (paint: PaintKnowledge) => FindOnPaint {
  const known = searches.get(model);
  if (known !== undefined) return known;
  const byContent = new Map<string, FindOnPaint>();
  const byIdentity = new WeakMap<PaintKnowledge, FindOnPaint>();
  const search = (paint: PaintKnowledge): FindOnPaint => {
    const before = byIdentity.get(paint);
    if (before !== undefined) return before;
    const rungs = workableOn(paint, model);
    const key = paintKey(paint, rungs);
    const found = byContent.get(key) ?? searchOnPaint(paint, rungs, model);
    byIdentity.set(paint, found);
    byContent.delete(key);
    byContent.set(key, found);
    for (const oldest of [...byContent.keys()].slice(0, -PAINTS_KEPT)) byContent.delete(oldest);
    return found;
  };
  searches.set(model, search);
  return search;
}

/** All that candidates depend on in a paint: paints nobody tried have it in common. */
const paintKey = ({ removal, worstHaze }: PaintKnowledge, rungs: readonly Combination[]): string =>
  [
    removal.depthScale.mean,
    removal.depthScale.sd,
    ...rungs.flatMap(({ id }) => {
      const { mean, sd, withDepth } = removal.of(id);
      return [id, mean, sd, withDepth];
    }),
    ...[...(worstHaze ?? [])].flat(),
  ].join(' ');

/**
 * Panels on which the same pads are used are worked alike, however wide they are; deeper defects are
 * another look at the same classes.
 */
function searchOnPaint(
  paint: PaintKnowledge,
  rungs: readonly Combination[],
  model: CorrectionModel,
): FindOnPaint {
  const search = kept((by: By, pad: number, hazeAllowed: number) => {
    const usable = rungsBy(by, rungs);
    const technique = techniqueOn(millimetres(pad), hazeAllowed, usable, model);
    const ways = candidateColumns(usable, technique, {
      paceOf: (step) => paceOf(step, model),
      mostSets: model.correction.mostSets,
      removalOf: (step) => stepRemoval(step, paint),
      stepLogSd: model.removal.stepLogSd,
    });
    const logSds = [...new Set(ways.logSd)];
    const widest = logSds.reduce((most, logSd) => Math.max(most, logSd), 0);
    return {
      classes: columnsInClasses(ways, model.correction.choice),
      heldTo: [...new Set(logSds.map((logSd) => heldTo(logSd, widest)))],
      widest,
      doubts: doubtsOf(ways),
    };
  });
  const found = kept((by: By, pad: number, hazeAllowed: number, depth: number) => {
    const { classes, widest, doubts, ...found } = search(by, pad, hazeAllowed);
    const { depthScale } = paint.removal;
    const { depthLogSd } = model.correction;
    const rate = ({ steps, removal, mean, strongest, pace }: Candidate): RatedCandidate => ({
      steps,
      removal,
      mean,
      strongest,
      pace,
      correction: expectedCorrection(removal, depth, depthScale, depthLogSd),
      heldTo: heldTo(removal.logSd, widest),
    });
    const leastToClearMore = ({ removal }: RatedCandidate): number =>
      ROUNDED * leastClearingMore(removal, doubts, depth, depthScale, depthLogSd);
    return ranked(classes, found.heldTo, rate, leastToClearMore);
  });
  return (by, flatWidth, hazeAllowed, depth) =>
    found(by, largestFlat(flatWidth, rungsBy(by, rungs)), hazeAllowed, depth);
}

/** What two sums of the same steps may differ by. */
const ROUNDED = 1 - 1e-12;

/** The least and the most doubt about what one of the ways clears. */
function doubtsOf({ logSd, withDepth }: CandidateColumns): readonly [least: number, most: number] {
  let [least, most] = [Infinity, 0];
  for (let k = 0; k < logSd.length; k += 1) {
    const doubt = doubtOf({ logSd: logSd[k] as number, withDepth: withDepth[k] as number });
    least = Math.min(least, doubt);
    most = Math.max(most, doubt);
  }
  return [least, most];
}

export const rungsBy = (by: By, rungs: readonly Combination[]): readonly Combination[] =>
  rungs.filter(({ machine }) => (machine.motion.kind === 'hand') === (by === 'hand'));

/** What technique looks at on a panel that is flat so far, besides the steps. */
export const techniqueOn = (
  flatWidth: FlatWidth,
  hazeAllowed: number,
  usable: readonly Combination[],
  model: CorrectionModel,
): Omit<ConstraintContext, 'budget'> => ({
  flatWidth,
  // A rotary cannot end a panel: its pad takes the place of no smaller one.
  fullSizePad: largestFlat(
    flatWidth,
    usable.filter(({ machine }) => machine.motion.kind !== 'rotary'),
  ),
  hazeAllowed,
  hazeCleared: model.correction.haze.cleared,
});

/** Diameter of the largest pad that lies flat; 0 where none does. */
export const largestFlat = (
  flatWidth: FlatWidth,
  usable: readonly Pick<Combination, 'machine'>[],
): number =>
  Math.max(
    0,
    ...usable.map(({ machine }) => machine.padDiameter).filter((diameter) => diameter <= flatWidth),
  );

/** Machine minutes per square metre. */
export const paceOf = (
  { combination, sets }: Step,
  { removal }: Pick<CorrectionModel, 'removal'>,
): number => sets * setTime(combination.machine, squareMetres(1), removal);
