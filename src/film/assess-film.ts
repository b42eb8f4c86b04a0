/** Readings → survey: what is on each panel, how sure that is, and how much may come off. */
import { valueAt } from '../base/at.ts';
import { assessPart } from './assess-part.ts';
import { assessZones } from './assess-zones.ts';
import { usualBaseline } from './car-baseline.ts';
import { type CarContext, leastByFinish, possibleCut } from './car-context.ts';
import { asMeant, type KeyingSlip, keyingQuestion, readAgain } from './condition/keying-slips.ts';
import { mirrorNotes } from './condition/mirror-notes.ts';
import { slipsOfCar } from './condition/panel-slips.ts';
import { fewOfPaintNotes } from './few-of-paint-note.ts';
import { gatherCar } from './gathered-car.ts';
import type { GatheredPanel } from './gathered-panel.ts';
import { withoutEdges } from './help/all-repainted.ts';
import { layerNotes } from './layer-notes.ts';
import { withAfterTestSpot } from './limits/after-test-spot.ts';
import { visitNotes } from './limits/left-after-visit.ts';
import { overrunNotes } from './overrun-note.ts';
import { placeNotes } from './place-note.ts';
import { putBackNote } from './put-back-note.ts';
import { withStatedInDoubt } from './stated-in-doubt.ts';
import type { PanelSurvey, Survey } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';
import { thickBaselineNotes } from './thick-baseline-note.ts';
import { unreadWorkNotes } from './unread-work-note.ts';

export function assessFilm(request: SurveyRequest): Survey {
  const { panels: gathered, context } = gatherCar(request);
  const slips = slipsOfCar(gathered);
  const ifMeant = withoutSlips(slips, request);
  const assess = (panel: GatheredPanel): PanelSurvey => assessPanel(panel, context, request);
  const panels = withStatedInDoubt(gathered, gathered.map(assess), assess).map((panel) =>
    withKeyingSlips(withOverruns(panel), valueAt(slips, panel.panel.id), ifMeant),
  );
  const baseline = usualBaseline(context.baseline);
  return {
    template: request.template,
    panels: withoutEdges(withAfterTestSpot(panels, request)),
    baseline: baseline?.value ?? null,
    baselineUncertain: baseline?.uncertain ?? null,
    baselineMakers:
      context.baseline !== null && baseline?.from === 'panels' ? context.baseline.makers : [],
    heldToOthers: gathered
      .map(({ panel }) => panel)
      .filter(({ id }) => context.baseline?.heldToOthers.has(id)),
    spreadPrior: context.prior,
    notes: [
      ...thickBaselineNotes(context.baseline, request.model.conditions),
      ...fewOfPaintNotes(context.baseline, gathered),
      ...putBackNote(gathered),
      ...layerNotes(request.readings, panels),
      ...mirrorNotes(panels, request.model.conditions),
    ],
  };
}

const assessPanel = (
  gathered: GatheredPanel,
  context: CarContext,
  request: SurveyRequest,
): PanelSurvey =>
  leastByFinish(
    gathered,
    context,
    (one) => assessIn(gathered, one, request),
    ({ budget }) => budget,
  );

function assessIn(
  gathered: GatheredPanel,
  context: CarContext,
  request: SurveyRequest,
): PanelSurvey {
  const zones = context.zones.get(gathered.panel.id);
  return zones === undefined
    ? assessPart(gathered, context, request, possibleCut(gathered, context.baseline, request.model))
    : assessZones(gathered, zones, context, request);
}

/** The car as it would be if each value that looks keyed wrongly was; null without any. */
function withoutSlips(
  slips: ReadonlyMap<string, readonly KeyingSlip[]>,
  request: SurveyRequest,
): Survey | null {
  return [...slips.values()].every((ofPanel) => ofPanel.length === 0)
    ? null
    : assessFilm({ ...request, readings: asMeant(request.readings, slips) });
}

/** What an earlier visit took beyond what might go, or of one place, is said of the panel, whatever it is. */
function withOverruns(survey: PanelSurvey): PanelSurvey {
  const notes = [
    ...overrunNotes(survey),
    ...unreadWorkNotes(survey.facts),
    ...placeNotes(survey.facts),
    ...visitNotes(survey),
  ];
  return notes.length === 0 ? survey : { ...survey, evidence: [...survey.evidence, ...notes] };
}

/** A value that looks keyed wrongly is asked about before anything else that it leads to, and nothing it leads to is sure. */
function withKeyingSlips(
  survey: PanelSurvey,
  found: readonly KeyingSlip[],
  ifMeant: Survey | null,
): PanelSurvey {
  const then = ifMeant?.panels.find(({ panel }) => panel.id === survey.panel.id);
  if (then === undefined) return survey;
  const { condition, budget } = then;
  const slips = found.map((slip) => ({ ...slip, condition, budget }));
  return slips.length === 0
    ? survey
    : {
        ...survey,
        sureness: survey.sureness === null ? null : { ...survey.sureness, sure: 'near' },
        // What it would be otherwise is asked once the value is.
        otherSide: null,
        keyingSlips: slips,
        evidence: [...slips.map(keyingQuestion), ...survey.evidence],
        advice: [...slips.map(readAgain), ...survey.advice],
      };
}
