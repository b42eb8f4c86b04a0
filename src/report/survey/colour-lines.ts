/** Colour on the pad where a clear was said to be: before anything else, as it puts the whole car in doubt. */
import { coloursAt, doubtsFinish, spotsNamed } from '../../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

export function colourFirst(surveyed: readonly PanelSurvey[]): readonly Block[] {
  const shown = surveyed.filter(doubtsFinish);
  if (shown.length === 0) return [];
  const where = shown.map(({ panel, facts }) => `${panel.name} (${spotsNamed(coloursAt(facts))})`);
  const told = [
    `${where.join(', ')}: through the clear there, or the finish is not what was said.`,
    'Settle which before any panel is worked. Till then nothing may go from factory film, but where its own clear was read or a test spot of its own left no colour; such a trial teaches nothing.',
  ];
  return [notice('Colour on the pad', joined(told, ' '))];
}
