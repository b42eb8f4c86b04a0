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
    `Nothing may go from ${shown.length === 1 ? 'it' : 'them'}, nothing is learnt from such a trial, and either is in doubt for the whole car: settle which before any panel is worked.`,
  ];
  return [notice('Colour on the pad', joined(told, ' '))];
}
