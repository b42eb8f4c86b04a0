/** Candidates for a panel, found once for all panels that share what they depend on. */
import { squareMetres } from '../base/units.ts';
import type { PanelSurvey } from '../film/survey.ts';
import type { CorrectionModel } from './catalogue.ts';
import { expectedCorrection } from './defects.ts';
import { foretell, ladderOn, meanRemoval, type PaintKnowledge } from './removal-knowledge.ts';
import { setTime } from './removal-rate.ts';
import type { Step } from './step.ts';
import { type Candidate, candidates, type RatedCandidate } from './step-search.ts';

export type By = 'machine' | 'hand';

export type Found = {
  readonly candidates: readonly RatedCandidate[];
  /** The largest ln-SD among them. */
  readonly widest: number;
};

export type CandidateSearch = {
  /** Ways to work a panel whose general defects have this median depth. */
  readonly find: (by: By, panel: PanelSurvey, depth: number) => Found;
};

export type SearchGrounds = {
  readonly paintOf: (panel: PanelSurvey) => PaintKnowledge;
  readonly hazeAllowed: number;
  readonly model: CorrectionModel;
};

/** They depend on the panel through its paint, its flat width and how deep its defects are. */
export function candidateSearch({ paintOf, hazeAllowed, model }: SearchGrounds): CandidateSearch {
  const onPaint = perPaint((paint) => {
    const rungs = ladderOn(paint, model);
    const ways = remembered((by: By, flatWidth: PanelSurvey['panel']['flatWidth']) => {
      const usable = rungs.filter(
        ({ machine }) => (machine.motion.kind === 'hand') === (by === 'hand'),
      );
      const diameters = usable.map(({ machine }) => machine.padDiameter);
      const context = {
        flatWidth,
        fullSizePad: Math.max(0, ...diameters.filter((diameter) => diameter <= flatWidth)),
        hazeAllowed,
        hazeCleared: model.correction.haze.cleared,
      };
      return candidates(usable, context, {
        paceOf: ({ combination, sets }: Step): number =>
          sets * setTime(combination.machine, squareMetres(1), model.removal),
        mostSets: model.correction.mostSets,
        foretell: (steps) => foretell(steps, paint, model.removal.stepLogSd),
      });
    });
    return remembered((by: By, flatWidth: PanelSurvey['panel']['flatWidth'], depth: number) =>
      rated(ways(by, flatWidth), depth, paint, model.correction),
    );
  });
  return {
    find: (by, panel, depth) => onPaint(paintOf(panel))(by, panel.panel.flatWidth, depth),
  };
}

function rated(
  ways: readonly Candidate[],
  depth: number,
  { removal }: PaintKnowledge,
  { depthLogSd }: CorrectionModel['correction'],
): Found {
  return {
    candidates: ways.map((way) => ({
      ...way,
      correction: expectedCorrection(way.removal, depth, removal.depthScale, depthLogSd),
      mean: meanRemoval(way.removal),
    })),
    widest: ways.reduce((most, way) => Math.max(most, way.removal.logSd), 0),
  };
}

/** The same answer to the same question, worked out once. */
function remembered<A extends readonly (string | number)[], T>(
  answer: (...question: A) => T,
): (...question: A) => T {
  const known = new Map<string, T>();
  return (...question) => {
    const key = question.join(' ');
    const before = known.get(key);
    if (before !== undefined) return before;
    const now = answer(...question);
    known.set(key, now);
    return now;
  };
}

function perPaint<T>(make: (paint: PaintKnowledge) => T): (paint: PaintKnowledge) => T {
  const known = new Map<PaintKnowledge, T>();
  return (paint) => {
    const before = known.get(paint);
    if (before !== undefined) return before;
    const now = make(paint);
    known.set(paint, now);
    return now;
  };
}
