/** Readings and settings of a vehicle → its survey, with what it rests on. */
import type { Outcome } from '../base/diagnostics.ts';
import { assessFilm } from '../film/assess-film.ts';
import type { Survey } from '../film/survey.ts';
import type { FilmRecord } from '../formats/film-record.ts';
import type { Job, JobVehicle } from '../formats/job.ts';
import type { Placed } from '../formats/placed.ts';
import type { Assumption } from './assumption.ts';
import {
  type EffectiveFacts,
  layerAssumptions,
  panelFacts,
  panelKnowledge,
  plainFacts,
  withSubstrates,
} from './panel-facts.ts';
import type { ReadInput, VehicleReadings } from './read-vehicles.ts';
import type { Settings } from './settings.ts';

/** A vehicle's survey and everything a report says around it. */
export type SurveyResult = {
  readonly vehicle: string | null;
  readonly identity: JobVehicle | null;
  readonly survey: Survey;
  /** What is held of each panel's paint besides its readings, and where that is from. */
  readonly facts: ReadonlyMap<string, EffectiveFacts>;
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
};

export type SurveyVehicleRequest = {
  readonly readings: VehicleReadings;
  readonly settings: Settings;
  readonly job: Placed<Job> | undefined;
  readonly filmRecord: Placed<FilmRecord> | undefined;
  readonly inputs: readonly ReadInput[];
};

export function surveyVehicle(request: SurveyVehicleRequest): Outcome<SurveyResult> {
  const { readings, settings, job, filmRecord, inputs } = request;
  const { template } = readings;
  if (template === null) throw new Error('a survey needs a template');
  const known = panelKnowledge(job, filmRecord, template);
  if (known.value === undefined) return { diagnostics: known.diagnostics };
  const knowledge = known.value;
  const facts = new Map(
    template.panels.map(({ id }) => [
      id,
      panelFacts(settings.facts, id, knowledge, settings.film.stated),
    ]),
  );
  const survey = assessFilm({
    template: withSubstrates(template, (id) => knowledge.job.get(id)?.paint.substrate),
    readings: readings.readings,
    factsOf: (id) => plainFacts(facts.get(id) ?? settings.facts),
    terms: settings.terms,
    model: settings.film,
  });
  const identity = job?.value.vehicle ?? null;
  const value = {
    vehicle: readings.vehicle ?? identity?.id ?? null,
    identity,
    survey,
    facts,
    settings,
    inputs,
    assumptions: [
      ...readings.assumptions,
      ...settings.assumptions,
      ...layerAssumptions(job, settings.film.stated),
    ],
  };
  return { value, diagnostics: [] };
}
