/** Cars for tests: a template of plain panels and readings given as lists of numbers. */

import { metres, micrometres, millimetres, squareMetres } from '../../src/base/units.ts';
import { assessFilm } from '../../src/film/assess-film.ts';
import { NO_SIDES } from '../../src/film/condition/possible-sides.ts';
import type { FilmModel, PanelFacts } from '../../src/film/film-model.ts';
import type { Allowance } from '../../src/film/limits/allowance.ts';
import { allowanceAgain } from '../../src/film/limits/allowance-at.ts';
import type { RemovalTerms } from '../../src/film/limits/removal-limits.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { PanelSurvey, Survey } from '../../src/film/survey.ts';
import type { Panel, VehicleTemplate } from '../../src/film/template/template.ts';
import { filmModel } from '../../src/formats/models.ts';

/** √(.35² + .40² + .15²), the removal's ln-SD before any test spot. */
export const UNTRIED_LOG_SD = Math.hypot(0.35, 0.4, 0.15);

export const plainPanel = (id: string, rest: Partial<Panel> = {}): Panel => ({
  id,
  name: id.replaceAll('-', ' '),
  area: squareMetres(1),
  substrate: 'steel',
  facing: 'vertical',
  mirror: null,
  flatWidth: millimetres(400),
  trimLength: metres(3),
  points: [1, 2, 3, 4, 5].map((n) => ({ point: `${n}`, u: n / 6, v: 0.5 })),
  ...rest,
});

export const plainTemplate = (...panels: readonly Panel[]): VehicleTemplate => ({
  id: 'plain',
  name: 'plain car',
  panels,
});

export const knownFacts: PanelFacts = {
  finish: 'clear-over-base',
  taken: micrometres(0),
  takenSd: micrometres(0),
  recorded: null,
  clear: null,
  under: null,
  galvanised: false,
  covered: false,
  clearCoatFailure: false,
  paintedDaysAgo: null,
};

export const standardTerms: RemovalTerms = {
  risk: 0.05,
  logSd: UNTRIED_LOG_SD,
  policy: 'standard',
  totalFloor: null,
};

export const reading = (
  panel: string,
  point: string,
  um: number,
  rest: Partial<Reading> = {},
): Reading => ({
  vehicle: null,
  panel,
  point,
  repeat: 1,
  thickness: micrometres(um),
  layer: '',
  place: 'face',
  marked: false,
  curved: false,
  origin: { file: 'test.csv', line: 1, column: 1 },
  ...rest,
});

/** One reading at each of the points 1, 2, 3 … */
export const onFace = (panel: string, ...ums: readonly number[]): readonly Reading[] =>
  ums.map((um, i) => reading(panel, `${i + 1}`, um));

/** Five points of mean `centre`, sample SD 4. */
export const fiveAround = (panel: string, centre: number): readonly Reading[] =>
  onFace(panel, centre - 4, centre + 4, centre - 4, centre, centre + 4);

export type CarOptions = {
  readonly panels: readonly Panel[];
  readonly readings: readonly Reading[];
  readonly facts?: Partial<PanelFacts>;
  readonly factsOf?: (id: string) => Partial<PanelFacts>;
  readonly terms?: Partial<RemovalTerms>;
  readonly model?: FilmModel;
};

export const surveyOf = ({ panels, readings, facts, factsOf, terms, model }: CarOptions): Survey =>
  assessFilm({
    template: plainTemplate(...panels),
    readings,
    factsOf: (id) => ({ ...knownFacts, ...facts, ...factsOf?.(id) }),
    terms: { ...standardTerms, ...terms },
    model: model ?? filmModel,
  });

/** A panel in two zones that are both factory film: one was cut back, and the clear was read at every point. */
export const inTwoZones = (): readonly Reading[] => [
  ...onFace('tested', 96, 98, 97, 124, 126, 125),
  ...[44, 45, 46, 45, 44, 46].map((um, i) => reading('tested', `${i + 1}`, um, { layer: 'clear' })),
];

/** A car of which so many panels make a usual film of its own. */
export const atLeastPanels = (baselinePanels: number): FilmModel => ({
  ...filmModel,
  conditions: { ...filmModel.conditions, baselinePanels },
});

/** A panel that is read alone is held against nothing then. */
export const byItself = atLeastPanels(1);

export function panelOf(survey: Survey, id: string): PanelSurvey {
  const found = survey.panels.find(({ panel }) => panel.id === id);
  if (found === undefined) throw new Error(`no panel ${id}`);
  return found;
}

/** Its limits if the panel were what its word says for certain. */
export const byItsWord = (panel: PanelSurvey, terms: Partial<RemovalTerms> = {}): Allowance =>
  allowanceAgain(
    { ...panel, sides: NO_SIDES },
    { terms: { ...standardTerms, ...terms }, model: filmModel },
  );

/** What might go then. */
export const ifWordHolds = (panel: PanelSurvey, terms: Partial<RemovalTerms> = {}): number =>
  byItsWord(panel, terms).budget;

const SOUND = ['sound-a', 'sound-b', 'sound-c', 'sound-d'] as const;

/** A car that is known by its own panels alone: four that agree have a usual film beyond doubt. */
export const byItsPanels = (model: FilmModel = filmModel): FilmModel => ({
  ...model,
  conditions: { ...model.conditions, aboutItsCarDof: 1e-9 },
});

/** A panel under test among four sound ones read at 112, which are the usual film of their car beyond doubt. */
export function amongSound(
  readings: readonly Reading[],
  rest: Omit<Partial<CarOptions>, 'readings' | 'panels'> & { readonly panel?: Partial<Panel> } = {},
): { readonly survey: Survey; readonly panel: PanelSurvey } {
  const { panel, model, ...options } = rest;
  const survey = surveyOf({
    panels: [...SOUND.map((id) => plainPanel(id)), plainPanel('tested', panel)],
    readings: [...SOUND.flatMap((id) => fiveAround(id, 112)), ...readings],
    ...options,
    model: byItsPanels(model),
  });
  return { survey, panel: panelOf(survey, 'tested') };
}
