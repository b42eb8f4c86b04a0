/**
 * All that a vehicle is surveyed by, before anything is judged: its readings put right, what files say of its panels,
 * the test spots on it. What is wrong with any of them is said here.
 */
import type { Outcome } from '../../base/diagnostics.ts';
import type { Gauge } from '../../correction/spot/spot-trial.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { Reading } from '../../film/reading.ts';
import type { SurveyRequest } from '../../film/survey-request.ts';
import type { Substrate, VehicleTemplate } from '../../film/template/template.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { daysRead } from '../read/days-read.ts';
import type { LoadedFile, ReadInput, VehicleReadings } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { asMeasured } from '../settings/gauge-in-use.ts';
import {
  type EffectiveFacts,
  type PanelKnowledge,
  panelFacts,
  panelKnowledge,
  plainFacts,
  withSubstrates,
} from '../settings/panel-facts.ts';
import { withoutOwnObservations } from '../settings/rates-in-use.ts';
import type { Settings } from '../settings/settings.ts';
import { believedClears } from './believed-clears.ts';
import { trialsOnPanels } from './car-paint.ts';
import { filesNameOthers } from './files-name-others.ts';
import { withOperators } from './operators-differ.ts';
import { overRangeIn } from './over-range-in.ts';
import { placesRead } from './places-read.ts';
import { type SaidSubstrates, saidSubstrates } from './said-substrates.ts';
import { type SpotsByAge, spotsByAge } from './spots-by-age.ts';
import { allSpots, spotsOnRecord } from './spots-on-record.ts';
import { stuckGauge } from './stuck-gauge.ts';

export type SurveyVehicleRequest = {
  readonly readings: VehicleReadings;
  /** As measured, of the same car: panels are held to the baseline that they make. Absent, to their own. */
  readonly baselineReadings?: readonly Reading[] | undefined;
  readonly settings: Settings;
  readonly job: Placed<Job> | undefined;
  readonly filmRecord: Placed<FilmRecord> | undefined;
  readonly inputs: readonly ReadInput[];
  readonly spots?: readonly LoadedFile[];
  /** Says how bad the defects were that the spots were to clear. */
  readonly defects?: LoadedFile | undefined;
};

export type FactsByPanel = ReadonlyMap<string, EffectiveFacts>;
export type Asking = (facts: FactsByPanel, terms: RemovalTerms) => SurveyRequest;

export type SurveyGrounds = SpotsByAge & {
  readonly vehicle: string | null;
  readonly template: VehicleTemplate;
  readonly settings: Settings;
  readonly facts: FactsByPanel;
  readonly substrates: SaidSubstrates['substrates'];
  /** As it measured these readings. */
  readonly gauge: Gauge;
  readonly asking: Asking;
  /** Why its files are perhaps of two cars. */
  readonly filesDoubted: readonly Assumption[];
};

export function surveyGrounds(request: SurveyVehicleRequest): Outcome<SurveyGrounds> {
  const { readings, job, filmRecord, spots = [] } = request;
  const { template } = readings;
  if (template === null) throw new Error('a survey needs a template');
  const vehicle = readings.vehicle ?? job?.value.vehicle?.id ?? null;
  const settings = withoutOwnObservations(request.settings, vehicle, spots);
  const said = panelKnowledge(job, filmRecord, template);
  const earlier = spotsOnRecord(filmRecord, template);
  if (said.value === undefined || earlier.value === undefined) {
    return { diagnostics: [...said.diagnostics, ...earlier.diagnostics] };
  }
  const knowledge = said.value;
  const told = new Map(
    template.panels.map(({ id }) => [
      id,
      panelFacts(settings.facts, id, knowledge, settings.film.stated),
    ]),
  );
  const { substrates, diagnostics: contradicted } = saidSubstrates(
    readings.readings,
    substratesByJob(knowledge),
    template,
  );
  const asRead = asMeasured(readings.readings, settings);
  const byOperators = withOperators(asRead.readings, request.inputs, asRead.model);
  const measured = { readings: asRead.readings, model: byOperators.model };
  const believed = believedClears(told, measured.readings, template);
  const days = daysRead(readings.readings, request.inputs);
  const read = { readings: measured.readings, days };
  const facts = placesRead(believed.facts, read, measured.model);
  const asking: Asking = (ofPanel, terms) => ({
    template:
      substrates.size === 0
        ? template
        : withSubstrates(template, (id) => substrates.get(id)?.substrate),
    readings: measured.readings,
    overRange: overRangeIn(readings.leftOut),
    baselineReadings: request.baselineReadings,
    factsOf: (id) => plainFacts(ofPanel.get(id) ?? settings.facts),
    terms,
    model: measured.model,
  });
  const tried =
    spots.length === 0
      ? { value: new Map(), diagnostics: [] }
      : trialsOnPanels(
          spots,
          { defects: request.defects, readings: readings.readings },
          template,
          settings,
        );
  if (tried.value === undefined) return { diagnostics: tried.diagnostics };
  const gauge = measured.model.measurement;
  const byAge = spotsByAge(allSpots(tried.value, earlier.value), facts, days);
  return {
    value: {
      ...{ vehicle, template, settings, facts, substrates, ...byAge, gauge, asking },
      filesDoubted: [
        ...byOperators.assumptions,
        ...filesNameOthers(readings.readings, request.inputs),
      ],
    },
    diagnostics: [
      ...tried.diagnostics,
      ...contradicted,
      ...byOperators.diagnostics,
      ...stuckGauge(asRead),
      ...believed.diagnostics,
    ],
  };
}

const substratesByJob = ({ job }: PanelKnowledge): ReadonlyMap<string, Substrate> =>
  new Map(
    [...job].flatMap(([id, { paint }]) =>
      paint.substrate === undefined ? [] : [[id, paint.substrate] as const],
    ),
  );
