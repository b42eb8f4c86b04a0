/** Test spots that left colour on the pad where the paint is not known to give it, and those that left none where it should. */

import type { Micrometres } from '../../base/units.ts';
import type { SpotTrial } from '../../correction/spot/spot-trial.ts';
import { isFactoryFilm } from '../../film/condition/condition.ts';
import type { Finish } from '../../film/film-model.ts';
import { isColourNormal, spotsNamed } from '../../film/limits/colour-at-spot.ts';
import { liesInFactoryFilm, liesInRepaint } from '../../film/limits/spot-in-repaint.ts';
import type { PanelSurvey } from '../../film/survey.ts';

/** Such spots by panel. */
export type ColourAtSpots = ReadonlyMap<string, readonly string[]>;

export type MadeSpot = {
  /** As pages call it. */
  readonly name: string;
  readonly leftColour: boolean;
  /** Said to have left none; where nobody said it, or all of its marks rose, neither holds. */
  readonly isWithoutColour: boolean;
  /** What its marks read before. */
  readonly marks: readonly Micrometres[];
};

export type MadeSpots = ReadonlyMap<string, readonly MadeSpot[]>;

export const isFactory = ({ film, condition, also }: PanelSurvey): boolean =>
  film !== null && [condition, ...also].every(isFactoryFilm);

const namesOf = (spots: readonly MadeSpot[]): readonly string[] => spots.map(({ name }) => name);

/** By panel; those without any are left out. */
const byPanel = (
  panels: readonly PanelSurvey[],
  namesOn: (part: PanelSurvey) => readonly string[],
): ColourAtSpots =>
  new Map(
    panels.flatMap((part) => {
      const names = namesOn(part);
      return names.length === 0 ? [] : [[part.panel.id, names] as const];
    }),
  );

/**
 * Colour is normal of factory paint without a clear. Of repaint on such a car it is where the job states the finish of
 * that panel: what the car left the factory with says nothing of it.
 */
export function colourAtSpots(
  made: MadeSpots,
  panels: readonly PanelSurvey[],
  isFinishOfPanel: (panelId: string) => boolean,
): ColourAtSpots {
  const isNormal = (part: PanelSurvey): boolean =>
    isColourNormal(part.facts.finish) &&
    (part.film === null || isFactory(part) || isFinishOfPanel(part.panel.id));
  return byPanel(panels, (part) =>
    isNormal(part)
      ? []
      : namesOf((made.get(part.panel.id) ?? []).filter(({ leftColour: has }) => has)),
  );
}

/**
 * Spots whose colour puts the finish of the whole car in doubt: all but those that surely lie in repaint, whatever their
 * panel is called. A spot that is older than the paint of its panel lay in what was there before.
 */
export function coloursOfCar(
  { made, older }: { readonly made: MadeSpots; readonly older: MadeSpots },
  panels: readonly PanelSurvey[],
  finishOfCar: Finish,
  nearRisk: number,
): ColourAtSpots {
  const coloured = (spots: MadeSpots, { panel }: PanelSurvey): readonly MadeSpot[] =>
    (spots.get(panel.id) ?? []).filter(({ leftColour: has }) => has);
  return byPanel(panels, (part) => [
    ...(isColourNormal(part.facts.finish)
      ? []
      : namesOf(coloured(made, part).filter(({ marks }) => !liesInRepaint(part, marks, nearRisk)))),
    ...(isColourNormal(finishOfCar) ? [] : namesOf(coloured(older, part))),
  ]);
}

/**
 * What each other panel is to know of them. A test spot of its own in its factory film that is said to have left none
 * bears its clear out.
 */
export function coloursOfOthers(
  made: MadeSpots,
  panels: readonly PanelSurvey[],
  { colourAt, ofCar }: { readonly colourAt: ColourAtSpots; readonly ofCar: ColourAtSpots },
): ColourAtSpots {
  const doubting = panels.flatMap(({ panel: { id, name } }) => {
    const spots = ofCar.get(id);
    return spots === undefined ? [] : [`${spotsNamed(spots)} on the ${name}`];
  });
  if (doubting.length === 0) return new Map();
  const isBorneOut = (part: PanelSurvey): boolean =>
    (made.get(part.panel.id) ?? []).some(
      ({ isWithoutColour, marks }) => isWithoutColour && liesInFactoryFilm(part, marks),
    );
  return byPanel(panels, (part) =>
    colourAt.has(part.panel.id) || isBorneOut(part) ? [] : doubting,
  );
}

/** Spots without colour where a finish without a clear is held: there is a clear, or the pad was not looked at. */
export const clearsShown = (
  made: MadeSpots,
  panels: readonly PanelSurvey[],
  isFinishOfPanel: (panelId: string) => boolean,
  nearRisk: number,
): ColourAtSpots =>
  byPanel(panels, (part) =>
    isColourNormal(part.facts.finish)
      ? namesOf(
          (made.get(part.panel.id) ?? []).filter(
            ({ isWithoutColour, marks }) =>
              isWithoutColour &&
              (isFinishOfPanel(part.panel.id) || !liesInRepaint(part, marks, nearRisk)),
          ),
        )
      : [],
  );

export const leftColour = ({ colourOnPad }: SpotTrial): boolean => colourOnPad === true;
