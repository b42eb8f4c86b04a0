/** Colour on the pad where a clear was said to be: before anything else, as it puts the whole car in doubt. */

import type { PanelFacts } from '../../film/film-model.ts';
import { doubtsFinish, spotsNamed } from '../../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

export const colourFirst = (surveyed: readonly PanelSurvey[]): readonly Block[] => [
  ...clearFirst(surveyed),
  ...throughFirst(surveyed.filter(doubtsFinish)),
];

const placesOf = (
  surveyed: readonly PanelSurvey[],
  spotsOf: (facts: PanelFacts) => readonly string[] | undefined,
): string =>
  surveyed
    .flatMap(({ panel, facts }) => {
      const spots = spotsOf(facts);
      return spots === undefined ? [] : [`${panel.name} (${spotsNamed(spots)})`];
    })
    .join(', ');

/** The other way round: a finish without a clear was stated, and no colour came. */
function clearFirst(surveyed: readonly PanelSurvey[]): readonly Block[] {
  const where = placesOf(surveyed, ({ clearShownAt }) => clearShownAt);
  if (where === '') return [];
  const told = [
    `${where}: none came, so there is a clear, or the pad was not looked at. A finish without a clear was stated.`,
    'Settle which before any panel is worked. Till then the finish counts as unknown: the lesser of both reckonings.',
  ];
  return [notice('No colour on the pad', joined(told, ' '))];
}

function throughFirst(shown: readonly PanelSurvey[]): readonly Block[] {
  if (shown.length === 0) return [];
  const told = [
    `${placesOf(shown, ({ colourOfCar }) => colourOfCar)}: through the clear there, or the finish is not what was said.`,
    'Settle which before any panel is worked. Till then nothing may go from factory film, but where its own clear was read or a test spot of its own left no colour; such a trial teaches nothing.',
  ];
  return [notice('Colour on the pad', joined(told, ' '))];
}
