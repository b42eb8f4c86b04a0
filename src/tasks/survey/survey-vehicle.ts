/** Readings and settings of a vehicle → its survey, with what it rests on. */
import type { Outcome } from '../../base/diagnostics.ts';
import type { Survey } from '../../film/survey.ts';
import type { SurveyRequest } from '../../film/survey-request.ts';
import type { WrittenSpot } from '../../formats/film-record.ts';
import type { JobVehicle } from '../../formats/job/job.ts';
import { keyingNotes } from '../read/keying-notes.ts';
import { inputsOf, type ReadInput, type VehicleReadings } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { earlierWorkAssumptions } from '../settings/earlier-work-assumption.ts';
import { layerAssumptions } from '../settings/panel-facts.ts';
import type { Settings } from '../settings/settings.ts';
import { afterSpots } from './after-spots.ts';
import type { CarPaint, TrialsByPanel } from './car-paint.ts';
import { layersApart } from './layers-apart.ts';
import { materialAssumptions } from './material-assumptions.ts';
import { recordAssumption, recordDiffers } from './record-of-whom.ts';
import type { SaidSubstrates } from './said-substrates.ts';
import { spotAssumptions } from './spot-assumptions.ts';
import { type FactsByPanel, type SurveyVehicleRequest, surveyGrounds } from './survey-grounds.ts';

/** A vehicle's survey and everything a report says around it. */
export type SurveyResult = {
  readonly vehicle: string | null;
  readonly identity: JobVehicle | null;
  readonly survey: Survey;
  /** What the survey was made from, to be made again with something else known. */
  readonly request: SurveyRequest;
  /** What is held of each panel's paint besides its readings, and where that is from. */
  readonly facts: FactsByPanel;
  /** What panels are made of where it is said, and by whom. */
  readonly substrates: SaidSubstrates['substrates'];
  /** How it gives way, by its test spots if there are any. */
  readonly paint: CarPaint;
  readonly trials: TrialsByPanel;
  /** Those of which no record was given yet, as it keeps them. */
  readonly newSpots: readonly WrittenSpot[];
  /** As resolved, and the spread of a removal as test spots leave it. */
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  /** Cells of its panels that gave no reading. */
  readonly leftOut: VehicleReadings['leftOut'];
  readonly assumptions: readonly Assumption[];
};

export function surveyVehicle(request: SurveyVehicleRequest): Outcome<SurveyResult> {
  const grounds = surveyGrounds(request);
  if (grounds.value === undefined) return { diagnostics: grounds.diagnostics };
  const { vehicle, template, settings, facts, substrates, trials } = grounds.value;
  const told = afterSpots(grounds.value);
  const { readings, job, inputs, spots = [] } = request;
  const { panels } = told.survey;
  const value = {
    vehicle,
    identity: job?.value.vehicle ?? null,
    ...told,
    substrates,
    trials,
    inputs: [...inputs, ...inputsOf(...spots)],
    leftOut: readings.leftOut,
    assumptions: [
      ...materialAssumptions(
        panels.map(({ panel }) => panel),
        panels.filter(({ points }) => points.length > 0).map(({ panel }) => panel),
        substrates,
      ),
      ...readings.assumptions,
      ...grounds.value.filesDoubted,
      ...settings.assumptions,
      ...recordAssumption(request.filmRecord, vehicle),
      ...layerAssumptions(job, settings.film.stated),
      ...earlierWorkAssumptions(facts, template, settings.film.earlier, (id) =>
        told.survey.panels.some(({ panel, points }) => panel.id === id && points.length > 0),
      ),
      ...spotAssumptions(grounds.value, template),
    ],
  };
  const notes = keyingNotes(told.survey.panels, readings.readings);
  const doubts = recordDiffers(request.filmRecord, readings.readings, template, settings.film);
  const apart = layersApart(panels, facts);
  return { value, diagnostics: [...grounds.diagnostics, ...apart, ...doubts, ...notes] };
}
