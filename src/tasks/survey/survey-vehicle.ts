/** Readings and settings of a vehicle → its survey, with what it rests on. */
import type { Outcome } from '../../base/diagnostics.ts';
import { micrometres } from '../../base/units.ts';
import { untriedLogSd } from '../../correction/removal/removal-knowledge.ts';
import type { Gauge } from '../../correction/spot/spot-trial.ts';
import { assessFilm } from '../../film/assess-film.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import { withOwnSpots } from '../../film/limits/after-test-spot.ts';
import type { RemovalTerms } from '../../film/limits/removal-limits.ts';
import type { Reading } from '../../film/reading.ts';
import type { PanelSurvey, Survey } from '../../film/survey.ts';
import type { SurveyRequest } from '../../film/survey-request.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Job, JobVehicle } from '../../formats/job/job.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { keyingNotes } from '../read/keying-notes.ts';
import {
  inputsOf,
  type LoadedFile,
  type ReadInput,
  type VehicleReadings,
} from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { earlierWorkAssumption } from '../settings/earlier-work-assumption.ts';
import { asMeasured } from '../settings/gauge-in-use.ts';
import {
  type EffectiveFacts,
  layerAssumptions,
  panelFacts,
  panelKnowledge,
  plainFacts,
  withSubstrates,
} from '../settings/panel-facts.ts';
import { withoutOwnObservations } from '../settings/rates-in-use.ts';
import type { Settings } from '../settings/settings.ts';
import {
  type CarPaint,
  carPaint,
  spentOnSpots,
  type TrialsByPanel,
  trialsOnPanels,
} from './car-paint.ts';
import { type SaidSubstrates, saidSubstrates } from './said-substrates.ts';
import { takenInAll } from './taken-in-all.ts';

/** A vehicle's survey and everything a report says around it. */
export type SurveyResult = {
  readonly vehicle: string | null;
  readonly identity: JobVehicle | null;
  readonly survey: Survey;
  /** What the survey was made from, to be made again with something else known. */
  readonly request: SurveyRequest;
  /** What is held of each panel's paint besides its readings, and where that is from. */
  readonly facts: ReadonlyMap<string, EffectiveFacts>;
  /** What panels are made of where it is said, and by whom. */
  readonly substrates: SaidSubstrates['substrates'];
  /** How it gives way, by its test spots if there are any. */
  readonly paint: CarPaint;
  readonly trials: TrialsByPanel;
  /** As resolved, and the spread of a removal as test spots leave it. */
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
};

export type SurveyVehicleRequest = {
  readonly readings: VehicleReadings;
  /** As measured, of the same car: panels are held to the baseline that they make. Absent, to their own. */
  readonly baselineReadings?: readonly Reading[] | undefined;
  readonly settings: Settings;
  readonly job: Placed<Job> | undefined;
  readonly filmRecord: Placed<FilmRecord> | undefined;
  readonly inputs: readonly ReadInput[];
  readonly spots?: LoadedFile | undefined;
  /** Says how bad the defects were that the spots were to clear. */
  readonly defects?: LoadedFile | undefined;
};

export function surveyVehicle(request: SurveyVehicleRequest): Outcome<SurveyResult> {
  const { readings, job, filmRecord, inputs, spots } = request;
  const { template } = readings;
  if (template === null) throw new Error('a survey needs a template');
  const identity = job?.value.vehicle ?? null;
  const vehicle = readings.vehicle ?? identity?.id ?? null;
  const settings = withoutOwnObservations(request.settings, vehicle, spots ? [spots] : []);
  const said = panelKnowledge(job, filmRecord, template);
  if (said.value === undefined) return { diagnostics: said.diagnostics };
  const knowledge = said.value;
  const facts = new Map(
    template.panels.map(({ id }) => [
      id,
      panelFacts(settings.facts, id, knowledge, settings.film.stated),
    ]),
  );
  const byJob = new Map(
    [...knowledge.job].flatMap(([id, { paint }]) =>
      paint.substrate === undefined ? [] : [[id, paint.substrate] as const],
    ),
  );
  const { substrates, diagnostics: contradicted } = saidSubstrates(
    readings.readings,
    byJob,
    template,
  );
  const measured = asMeasured(readings.readings, settings);
  const asking: Asking = (ofPanel, terms) => ({
    template: withSubstrates(template, (id) => substrates.get(id)?.substrate),
    readings: measured.readings,
    baselineReadings: request.baselineReadings,
    factsOf: (id) => plainFacts(ofPanel.get(id) ?? settings.facts),
    terms,
    model: measured.model,
  });
  const tried =
    spots === undefined
      ? { value: new Map(), diagnostics: [] }
      : trialsOnPanels(spots, request.defects, template, settings);
  if (tried.value === undefined) return { diagnostics: tried.diagnostics };
  const known = { facts, settings, gauge: measured.model.measurement };
  const told = afterSpots(tried.value, known, asking);
  const value = {
    vehicle,
    identity,
    ...told,
    substrates,
    trials: tried.value,
    inputs: [...inputs, ...inputsOf(spots)],
    assumptions: [
      ...readings.assumptions,
      ...settings.assumptions,
      ...layerAssumptions(job, settings.film.stated),
      ...earlierWorkAssumption(facts, template),
    ],
  };
  const diagnostics = [
    ...tried.diagnostics,
    ...contradicted,
    ...keyingNotes(told.survey, readings.readings),
  ];
  return { value, diagnostics };
}

type Facts = ReadonlyMap<string, EffectiveFacts>;
type Asking = (facts: Facts, terms: RemovalTerms) => SurveyRequest;
type Told = Pick<SurveyResult, 'survey' | 'request' | 'facts' | 'paint' | 'settings'>;

/**
 * The survey with what test spots taught. Which panels carry factory paint the readings alone say, so
 * they are assessed before; what the spots took then counts as earlier work on their panels, and a
 * removal is foretold as well as by an untried combination on this paint.
 */
function afterSpots(
  trials: TrialsByPanel,
  { facts, settings, gauge }: { facts: Facts; settings: Settings; gauge: Gauge },
  asking: Asking,
): Told {
  const untaught = asking(facts, settings.terms);
  const before = assessFilm(untaught);
  const paint = carPaint(trials, before.panels, settings, gauge);
  if (trials.size === 0) return { survey: before, request: untaught, facts, paint, settings };
  const { correction } = settings;
  const logSd = untriedLogSd(paint.car, correction.removal.stepLogSd);
  const terms = { ...settings.terms, logSd };
  const spent = new Map(
    before.panels.flatMap((part) => {
      const ofPanel = trials.get(part.panel.id);
      const own = facts.get(part.panel.id);
      if (ofPanel === undefined || own === undefined) return [];
      const taken = spentOnSpots(ofPanel, paint.paintOf(part), gauge, correction);
      return [[part.panel.id, withSpent(own, taken)] as const];
    }),
  );
  const all = new Map([...facts, ...spent]);
  const request = asking(all, terms);
  const survey = assessFilm(request);
  const logSdOf = (part: PanelSurvey): number | null =>
    paint.hasOwnSpot(part.panel.id)
      ? untriedLogSd(paint.paintOf(part), correction.removal.stepLogSd)
      : null;
  return {
    survey: {
      ...survey,
      panels: withOwnSpots(survey.panels, logSdOf, { terms, model: settings.film }),
    },
    request,
    facts: all,
    paint,
    settings: { ...settings, terms },
  };
}

/** What spots took, beside what is on record of earlier visits; it is gone from their patches alone. */
const withSpent = (facts: EffectiveFacts, taken: RecordedRemoval): EffectiveFacts => ({
  ...facts,
  recorded: {
    value: {
      ...takenInAll([
        ...(facts.recorded.value === null ? [] : [facts.recorded.value]),
        { ...taken, allOver: NOTHING },
      ]),
      by: facts.recorded.value === null ? 'test spots' : 'film record and test spots',
    },
    origin: 'readings',
    where: 'test spots',
  },
});

const NOTHING = { mean: micrometres(0), sd: micrometres(0) };
