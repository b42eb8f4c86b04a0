/** What may go wrong on a panel if a plan takes all that may go. */
import { finePercent } from '../../base/rounding.ts';
import { nextFact, says, um } from '../../base/sentence.ts';
import type { PanelWhy } from '../../film/help/panel-why.ts';
import type { DoubtSource } from '../../film/limits/variance-of-left.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { joined } from '../facts.ts';
import { type Block, list, paragraph } from '../model.ts';
import { sidesStep } from './sureness-lines.ts';
import { wereThinner } from './thinner-clear.ts';
import { toldIn, type WhyContext } from './why-context.ts';

const DOUBT: Readonly<Record<DoubtSource, string>> = {
  layers: 'how the total is shared between the layers',
  removal: 'the removal',
  spread: 'the spread over the panel',
  sampling: 'the number of points',
  gauge: 'the gauge’s own error',
};

export function riskBlocks(
  survey: PanelSurvey,
  { risk, sides, doubt }: PanelWhy,
  { result, unit }: WhyContext,
): readonly Block[] {
  const { topcoat, budget } = survey;
  if (risk === null || topcoat === null || budget === 0) return [];
  const { thinnerClear } = result.settings.film;
  const name = topcoat.finish === 'single-stage' ? 'topcoat' : 'clear';
  const risks = says`${finePercent(risk.risk)} that less than ${um(topcoat.clearFloor)} of ${name} stays where it is thinnest${nextFact}${finePercent(risk.riskIfThin)} ${wereThinner(thinnerClear)}${nextFact}before any polishing ${finePercent(risk.already)}`;
  const parts = doubt.map(({ source, share }) => `${DOUBT[source]} ${finePercent(share)}`);
  return [
    list('Risk if a plan took it all', [risks, ...sidesStep(survey, sides)].map(toldIn(unit))),
    paragraph(`Shares of the variance of the ${name} left then`, joined(parts, ', ')),
  ];
}
