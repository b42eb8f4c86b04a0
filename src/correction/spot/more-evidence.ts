/** What further marks, repeats and stacked sets would tell of a combination's rate, before they are made. */
import type { FilmModel } from '../../film/film-model.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { Combination } from '../removal/combination.ts';
import { type Hardness, paintKnowledge } from '../removal/removal-knowledge.ts';
import type { TrialObservation } from './trial-observation.ts';

export type Offer = {
  readonly marks: number;
  /** Readings at each mark before, and as many after. */
  readonly repeats: number;
  readonly sets: number;
  /** ln-SD of the combination's rate afterwards, if the trial comes out as expected. */
  readonly logSd: number;
};

const OFFERS: readonly Omit<Offer, 'logSd'>[] = [
  { marks: 5, repeats: 1, sets: 1 },
  { marks: 10, repeats: 1, sets: 1 },
  { marks: 10, repeats: 1, sets: 2 },
  { marks: 10, repeats: 3, sets: 2 },
];

export type EvidenceCase = {
  readonly observations: readonly TrialObservation[];
  readonly hardness: Hardness;
  readonly model: CorrectionModel;
  readonly gauge: Pick<FilmModel['measurement'], 'repeatability'>;
};

/**
 * Each offer added to the records there are, its outcome the expected one: removal as foretold now, with
 * standard error s·√(2/(marks·repeats)).
 */
export function moreEvidence(
  /** With what a set of it is expected to take now. */
  { id, perSet }: Combination,
  /** The same on paint of usual hardness. */
  usualPerSet: number,
  { observations, hardness, model, gauge }: EvidenceCase,
): readonly Offer[] {
  return OFFERS.map((offer) => {
    const { marks, repeats, sets } = offer;
    const trial: TrialObservation = {
      combination: id,
      foretold: usualPerSet * sets,
      removed: {
        value: perSet * sets,
        standardError: gauge.repeatability * Math.sqrt(2 / (marks * repeats)),
      },
      cleared: null,
    };
    const { removal } = paintKnowledge([...observations, trial], hardness, model);
    return { ...offer, logSd: removal.of(id).sd };
  });
}
