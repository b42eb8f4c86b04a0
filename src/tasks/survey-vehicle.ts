/** Readings and settings of a vehicle → its survey, with what it rests on. */
import type { Outcome } from '../base/diagnostics.ts';
import { assessFilm } from '../film/assess-film.ts';
import type { Survey } from '../film/survey.ts';
import type { VehicleTemplate } from '../film/template.ts';
import { filmModel } from '../formats/data/film-defaults.ts';
import type { JobPanel, JobVehicle } from '../formats/job.ts';
import { byPanelId } from './match-panels.ts';
import type { ReadInput, VehicleReadings } from './read-vehicles.ts';
import { type Assumption, panelFacts, type Settings, withSubstrates } from './settings.ts';

/** A vehicle's survey and everything a report says around it. */
export type SurveyResult = {
  readonly vehicle: string | null;
  readonly identity: JobVehicle | null;
  readonly survey: Survey;
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
};

export type SurveyVehicleRequest = {
  readonly readings: VehicleReadings;
  readonly settings: Settings;
  readonly identity: JobVehicle | null;
  readonly inputs: readonly ReadInput[];
};

export function surveyVehicle(request: SurveyVehicleRequest): Outcome<SurveyResult> {
  const { readings, settings, identity, inputs } = request;
  if (readings.template === null) throw new Error('a survey needs a template');
  const panels = jobPanels(settings, readings.template);
  if (panels.value === undefined) return { diagnostics: panels.diagnostics };
  const byId = panels.value;
  const survey = assessFilm({
    template: withSubstrates(readings.template, (id) => byId.get(id)?.substrate),
    readings: readings.readings,
    factsOf: (id) => panelFacts(settings, byId.get(id)),
    terms: settings.terms,
    model: filmModel,
  });
  const value = {
    vehicle: readings.vehicle ?? identity?.id ?? null,
    identity,
    survey,
    settings,
    inputs,
    assumptions: [...readings.assumptions, ...settings.assumptions],
  };
  return { value, diagnostics: [] };
}

/** What the job says of single panels, by id; a panel named twice keeps what each name says. */
function jobPanels(
  settings: Settings,
  template: VehicleTemplate,
): Outcome<ReadonlyMap<string, JobPanel>> {
  const named = [...settings.panels].map(([name, value]) => ({ name, value }));
  const { value, diagnostics } = byPanelId(named, template);
  if (value === undefined) return { diagnostics };
  const merged = [...value].map(([id, parts]) => [id, Object.assign({}, ...parts)] as const);
  return { value: new Map(merged), diagnostics };
}
