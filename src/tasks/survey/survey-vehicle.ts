/** Readings and settings of a vehicle → its survey, with what it rests on. */
import type { Outcome } from '../../base/diagnostics.ts';
import { micrometres } from '../../base/units.ts';
import { untriedLogSd } from '../../correction/removal/removal-knowledge.ts';
import type { Gauge } from '../../correction/spot/spot-trial.ts';
import { assessFilm } from '../../film/assess-film.ts';
import type { RecordedRemoval } from '../../film/film-model.ts';
import { withOwnSpots } from '../../film/limits/after-test-spot.ts';
import { TEST_SPOTS } from '../../film/limits/earlier-work.ts';
import type { PanelSurvey, Survey } from '../../film/survey.ts';
import type { SurveyRequest } from '../../film/survey-request.ts';
import type { JobVehicle } from '../../formats/job/job.ts';
import { keyingNotes } from '../read/keying-notes.ts';
import { inputsOf, type ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import { earlierWorkAssumptions } from '../settings/earlier-work-assumption.ts';
import { type EffectiveFacts, layerAssumptions } from '../settings/panel-facts.ts';
import type { Settings } from '../settings/settings.ts';
import { type CarPaint, carPaint, spentOnSpots, type TrialsByPanel } from './car-paint.ts';
import { colourAtSpots } from './colour-at-spots.ts';
import type { SaidSubstrates } from './said-substrates.ts';
import {
  type Asking,
  type FactsByPanel,
  type SurveyVehicleRequest,
  surveyGrounds,
} from './survey-grounds.ts';
import { takenInAll } from './taken-in-all.ts';

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
  /** As resolved, and the spread of a removal as test spots leave it. */
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
};

export function surveyVehicle(request: SurveyVehicleRequest): Outcome<SurveyResult> {
  const grounds = surveyGrounds(request);
  if (grounds.value === undefined) return { diagnostics: grounds.diagnostics };
  const { vehicle, template, settings, facts, substrates, trials, gauge, asking } = grounds.value;
  const told = afterSpots(trials, { facts, settings, gauge }, asking);
  const { readings, job, inputs, spots } = request;
  const value = {
    vehicle,
    identity: job?.value.vehicle ?? null,
    ...told,
    substrates,
    trials,
    inputs: [...inputs, ...inputsOf(spots)],
    assumptions: [
      ...readings.assumptions,
      ...settings.assumptions,
      ...layerAssumptions(job, settings.film.stated),
      ...earlierWorkAssumptions(facts, template, settings.film.earlier, (id) =>
        told.survey.panels.some(({ panel, points }) => panel.id === id && points.length > 0),
      ),
    ],
  };
  const notes = keyingNotes(told.survey.panels, readings.readings);
  return { value, diagnostics: [...grounds.diagnostics, ...notes] };
}

type Told = Pick<SurveyResult, 'survey' | 'request' | 'facts' | 'paint' | 'settings'>;

/**
 * The survey with what test spots taught. Which panels carry factory paint the readings alone say, so
 * they are assessed before; what the spots took then counts as earlier work on their panels, and a
 * removal is foretold as well as by an untried combination on this paint.
 */
function afterSpots(
  trials: TrialsByPanel,
  { facts, settings, gauge }: { facts: FactsByPanel; settings: Settings; gauge: Gauge },
  asking: Asking,
): Told {
  const untaught = asking(facts, settings.terms);
  const before = assessFilm(untaught);
  const isFinishOfPanel = (id: string): boolean => facts.get(id)?.finish !== settings.facts.finish;
  const colourAt = colourAtSpots(trials, before.panels, isFinishOfPanel);
  const paint = carPaint({ trials, colourAt }, before.panels, settings, gauge);
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
      const colour = colourAt.get(part.panel.id);
      const spent = colour === undefined ? taken : { ...taken, colourAt: colour };
      return [[part.panel.id, withSpent(own, spent)] as const];
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
      by: facts.recorded.value === null ? TEST_SPOTS : 'film record and test spots',
    },
    origin: 'readings',
    where: 'test spots',
  },
});

const NOTHING = { mean: micrometres(0), sd: micrometres(0) };
