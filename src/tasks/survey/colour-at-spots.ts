/** Test spots that left colour on the pad where the paint is not known to give it. */
import type { SpotTrial } from '../../correction/spot/spot-trial.ts';
import { isFactoryFilm } from '../../film/condition/condition.ts';
import { isColourNormal, spotsNamed } from '../../film/limits/colour-at-spot.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** Such spots by panel. */
export type ColourAtSpots = ReadonlyMap<string, readonly string[]>;

export type MadeSpot = {
  /** As pages call it. */
  readonly name: string;
  readonly leftColour: boolean;
  /** Said to have left none; where nobody said it, neither holds. */
  readonly isWithoutColour: boolean;
};

export const isFactory = ({ film, condition, also }: PanelSurvey): boolean =>
  film !== null && [condition, ...also].every(isFactoryFilm);

/**
 * Colour is normal of factory paint without a clear. Of repaint on such a car it is where the job states the finish of
 * that panel: what the car left the factory with says nothing of it.
 */
export function colourAtSpots(
  made: ReadonlyMap<string, readonly MadeSpot[]>,
  panels: readonly PanelSurvey[],
  isFinishOfPanel: (panelId: string) => boolean,
): ColourAtSpots {
  const isNormal = (part: PanelSurvey): boolean =>
    isColourNormal(part.facts.finish) &&
    (part.film === null || isFactory(part) || isFinishOfPanel(part.panel.id));
  return new Map(
    panels.flatMap((part) => {
      const spots = (made.get(part.panel.id) ?? [])
        .filter((spot) => spot.leftColour)
        .map(({ name }) => name);
      return spots.length === 0 || isNormal(part) ? [] : [[part.panel.id, spots] as const];
    }),
  );
}

/**
 * Where colour at a spot puts the finish of the whole car in doubt: what each other panel is to know of it. A test spot
 * of its own that is said to have left none bears its clear out.
 */
export function coloursOfOthers(
  made: ReadonlyMap<string, readonly MadeSpot[]>,
  panels: readonly PanelSurvey[],
  colourAt: ColourAtSpots,
): ColourAtSpots {
  const doubting = panels.flatMap((part) => {
    const spots = colourAt.get(part.panel.id) ?? [];
    const isCar = spots.length > 0 && !isColourNormal(part.facts.finish);
    return isCar && (part.film === null || isFactory(part))
      ? [`${spotsNamed(spots)} on the ${part.panel.name}`]
      : [];
  });
  if (doubting.length === 0) return new Map();
  const isBorneOut = (id: string): boolean =>
    (made.get(id) ?? []).some(({ isWithoutColour }) => isWithoutColour);
  return new Map(
    panels.flatMap(({ panel: { id } }) =>
      colourAt.has(id) || isBorneOut(id) ? [] : [[id, doubting] as const],
    ),
  );
}

export const leftColour = ({ colourOnPad }: SpotTrial): boolean => colourOnPad === true;
