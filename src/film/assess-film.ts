/** Readings → survey: what is on each panel, how sure that is, and how much may come off. */
import { groupBy } from '../base/group-by.ts';
import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { allowance, bounded } from './allowance.ts';
import { calibrationUncertainty } from './calibration.ts';
import { type CarContext, carContext, standingOut, totalFindings } from './car-context.ts';
import { byPrecedence, type Finding, thinFinding, unreadFinding } from './condition.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredPanel, gatherPanel, isRead, thicknesses } from './gathered-panel.ts';
import { mirrorNotes } from './mirror-notes.ts';
import type { Reading } from './reading.ts';
import { outrightLimits, type PanelFilm, type RemovalTerms, totalFloor } from './removal-limits.ts';
import { fallbackPrior, moderatedSpread, ownSpread } from './spread.ts';
import type { PanelSurvey, Survey } from './survey.ts';
import { surveyAdvice } from './survey-advice.ts';
import type { VehicleTemplate } from './template.ts';
import { thinnestCredible } from './thinnest-credible.ts';

export type SurveyRequest = {
  readonly template: VehicleTemplate;
  /** Readings of one vehicle, their panels named by the template's ids. */
  readonly readings: readonly Reading[];
  readonly factsOf: (panelId: string) => PanelFacts;
  readonly terms: RemovalTerms;
  readonly model: FilmModel;
};

export function assessFilm(request: SurveyRequest): Survey {
  const byPanel = groupBy(request.readings, ({ panel }) => panel);
  const gathered = request.template.panels.map((panel) =>
    gatherPanel(panel, request.factsOf(panel.id), byPanel.get(panel.id) ?? []),
  );
  const context = carContext(gathered, request.model);
  const panels = gathered.map((panel) => assessPanel(panel, context, request));
  return {
    template: request.template,
    panels: withSoundPanelCap(panels),
    baseline: context.baseline,
    notes: [...layerNotes(request.readings), ...mirrorNotes(panels, request.model.conditions)],
  };
}

function assessPanel(
  gathered: GatheredPanel,
  context: CarContext,
  request: SurveyRequest,
): PanelSurvey {
  const { panel, facts, points, statistics } = gathered;
  const { model, terms } = request;
  const floor = totalFloor(facts.finish, terms.totalFloor, model.limits);
  const common = { ...gathered, totalFloor: floor };
  if (statistics === null || !isRead(gathered)) {
    return unreadPanel(common, model);
  }
  const pooled = context.pool.has(panel.id);
  const prior = pooled ? context.prior : fallbackPrior([statistics.mean], model.spread);
  const film: PanelFilm = {
    mean: statistics.mean,
    smallest: statistics.min,
    count: points.length,
    spread: moderatedSpread(ownSpread(thicknesses(points), context.leastVariance), prior),
    calibration: calibrationUncertainty(statistics.mean, model.measurement),
  };
  const known = totalFindings(gathered, context.baseline, model);
  // A normal bound speaks of one population of film; on filler there are at least two.
  const onePopulation = points.length > 1 && !known.some((found) => found.condition === 'filler');
  const thinnest = onePopulation ? thinnestCredible(film, model.tolerance) : null;
  const thin = thinFinding(statistics.min, thinnest, floor);
  const findings = byPrecedence([...known, ...(thin === undefined ? [] : [thin])]);
  const conditions = findings.map((found) => found.condition);
  const condition = findings[0].condition;
  const { low, high } = standingOut(gathered, context, model);
  return {
    ...common,
    film,
    thinnest,
    condition,
    also: conditions.slice(1),
    evidence: findings.map(({ evidence }) => evidence),
    ...allowance(
      { film, facts, points: points.length, conditions, baseline: context.baseline },
      terms,
      model,
    ),
    lowPoints: low,
    highPoints: high,
    advice: surveyAdvice(common, condition, facts),
  };
}

function unreadPanel(
  common: GatheredPanel & { readonly totalFloor: Micrometres },
  model: FilmModel,
): PanelSurvey {
  const { panel, facts, points } = common;
  const findings = byPrecedence([
    unreadFinding(panel, points.length > 0),
    ...(facts.covered ? filmCovered : []),
  ]);
  const limits = outrightLimits(
    facts,
    { points: 0, isFactoryFilm: false, unread: true },
    model.freshPaintDays,
  );
  return {
    ...common,
    film: null,
    thinnest: null,
    condition: 'unread',
    also: findings.slice(1).map((found) => found.condition),
    evidence: findings.map(({ evidence }) => evidence),
    topcoat: null,
    ...bounded(limits),
    lowPoints: [],
    highPoints: [],
    advice: surveyAdvice(common, 'unread', facts),
  };
}

const filmCovered: readonly Finding[] = [
  {
    condition: 'covered',
    evidence: remark('covered', 'declared as covered by film, wrap or coating'),
  },
];

/** On refinished and unread panels even a test spot may never allow more than on a sound one. */
function withSoundPanelCap(panels: readonly PanelSurvey[]): readonly PanelSurvey[] {
  const sound = panels.filter(
    ({ condition, points }) => condition === 'original' && points.length > 1,
  );
  if (sound.length === 0) return panels;
  const cap = micrometres(Math.min(...sound.map(({ budget }) => budget)));
  return panels.map((panel) =>
    panel.boundBy.code !== 'test-spot' && panel.boundBy.code !== 'no-data'
      ? panel
      : {
          ...panel,
          evidence: [
            ...panel.evidence,
            remark(
              'sound-panel-cap',
              `even after a test spot never more than ${shown(cap, 1)} µm, the least of the sound panels`,
              cap,
            ),
          ],
        },
  );
}

/** Readings of single layers are no total film; they are said, never averaged in. */
function layerNotes(readings: readonly Reading[]): readonly Remark[] {
  const count = readings.filter(({ layer }) => layer !== '').length;
  return count === 0
    ? []
    : [
        remark(
          'layer-readings',
          `${count} reading${count === 1 ? ' is' : 's are'} of a single layer, not of the whole film: kept apart, not used`,
          count,
        ),
      ];
}
