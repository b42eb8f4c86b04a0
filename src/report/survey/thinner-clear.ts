import { type Sentence, says, um } from '../../base/sentence.ts';

/** The case that a risk is told for besides, in the same words on every page. */
export const wereThinner = (thinner: number): Sentence =>
  says`if the topcoat were ${um(thinner, null)} thinner`;
