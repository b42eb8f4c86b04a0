/** Test spots that left colour on the pad where the paint is not known to give it. */
import type { SpotTrial } from '../../correction/spot/spot-trial.ts';
import { isFactoryFilm } from '../../film/condition/condition.ts';
import { isColourNormal } from '../../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** Such spots by panel. */
export type ColourAtSpots = ReadonlyMap<string, readonly string[]>;

export const isFactory = ({ film, condition, also }: PanelSurvey): boolean =>
  film !== null && [condition, ...also].every(isFactoryFilm);

/**
 * Colour is normal of factory paint without a clear. Of repaint on such a car it is where the job states the finish of
 * that panel: what the car left the factory with says nothing of it.
 */
export function colourAtSpots(
  trials: ReadonlyMap<string, readonly SpotTrial[]>,
  panels: readonly PanelSurvey[],
  isFinishOfPanel: (panelId: string) => boolean,
): ColourAtSpots {
  const isNormal = (part: PanelSurvey): boolean =>
    isColourNormal(part.facts.finish) &&
    (part.film === null || isFactory(part) || isFinishOfPanel(part.panel.id));
  return new Map(
    panels.flatMap((part) => {
      const spots = (trials.get(part.panel.id) ?? []).filter(leftColour).map(({ spot }) => spot);
      return spots.length === 0 || isNormal(part) ? [] : [[part.panel.id, spots] as const];
    }),
  );
}

export const leftColour = ({ colourOnPad }: SpotTrial): boolean => colourOnPad === true;
