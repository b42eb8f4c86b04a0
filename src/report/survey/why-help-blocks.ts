/** What would let more go from a panel, and what would let less. */
import { LEAST_TOLD } from '../../base/rounding.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { toldFacts } from '../facts.ts';
import { type Block, type Facts, list } from '../model.ts';
import { type Advice, adviceLine, adviceOf, NOT_TO_ADD } from './help-lines.ts';
import type { WhyContext } from './why-context.ts';

export function helpBlocks(survey: PanelSurvey, { helped, unit }: WhyContext): readonly Block[] {
  const advice = adviceOf(survey, helped);
  const lines = (some: readonly Advice[]): readonly Facts[] =>
    some.map((one) => toldFacts(adviceLine(one), unit));
  const helps = advice.filter((one) => !lowersIt(one));
  const lowers = advice.filter(lowersIt);
  const hasGains = helps.some(({ value }) => value !== undefined);
  return [
    list(
      hasGains
        ? { text: `What would help; ${NOT_TO_ADD}`, short: 'What would help' }
        : 'What would help',
      helps.length === 0 ? ['nothing that is known of'] : lines(helps),
    ),
    ...(lowers.length === 0 ? [] : [list('What would lower it', lines(lowers))]),
  ];
}

const lowersIt = ({ value }: Advice): boolean => value !== undefined && value < -LEAST_TOLD;
