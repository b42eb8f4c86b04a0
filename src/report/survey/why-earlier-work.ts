/** What is stated of earlier work, and what it takes the place of: known to be little, it frees film. */
import { bare, type Sentence, says, tell, um } from '../../base/sentence.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { type Block, paragraph } from '../model.ts';
import type { WhyContext } from './why-context.ts';

export function earlierWorkBlocks(
  { facts: { taken, takenSd } }: Pick<PanelSurvey, 'facts'>,
  { result, unit }: Pick<WhyContext, 'result' | 'unit'>,
): readonly Block[] {
  if (taken === null) return [];
  const { unknownClear, unknownLife } = result.settings.film.earlier;
  const lets = taken < unknownLife ? ', so that more may go than if it were unknown' : '';
  const said = says`${stated(taken, takenSd)} stated, in the place of the ${um(unknownClear)} of topcoat and ${um(unknownLife)} of the life limit allowed for where nobody knows${lets}`;
  return [paragraph('Earlier work', tell(said, unit))];
}

const stated = (taken: number, sd: number): Sentence =>
  sd === 0 ? says`${um(taken)}, taken as exact,` : says`${bare(taken)} ± ${um(sd)} (SD)`;
