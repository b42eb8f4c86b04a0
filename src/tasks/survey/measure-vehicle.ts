/** Readings and settings of a vehicle → what was read on each of its panels: a survey's figures before it judges. */
import type { Outcome } from '../../base/diagnostics.ts';
import { type MeasuredPanel, measuredPanels } from '../../film/measured-panels.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { keyingNotes } from '../read/keying-notes.ts';
import { type SurveyVehicleRequest, surveyGrounds } from './survey-grounds.ts';

export type MeasuredVehicle = {
  readonly vehicle: string | null;
  readonly template: VehicleTemplate;
  readonly panels: readonly MeasuredPanel[];
};

export function measureVehicle(request: SurveyVehicleRequest): Outcome<MeasuredVehicle> {
  const grounds = surveyGrounds(request);
  if (grounds.value === undefined) return { diagnostics: grounds.diagnostics };
  const { vehicle, facts, settings, asking } = grounds.value;
  const asked = asking(facts, settings.terms);
  const panels = measuredPanels(asked);
  const notes = keyingNotes(panels, request.readings.readings);
  return {
    value: { vehicle, template: asked.template, panels },
    diagnostics: [...grounds.diagnostics, ...notes],
  };
}
