/** Readings → survey: what is on each panel, how sure that is, and how much may come off. */
import { groupBy } from '../base/group-by.ts';
import { prefixed, type Remark, remark } from '../base/remark.ts';
import { says, um } from '../base/sentence.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import {
  type CarContext,
  carContext,
  panelSpread,
  possibleCut,
  standingOut,
  totalFindings,
} from './car-context.ts';
import {
  byPrecedence,
  type Finding,
  isFactoryFilm,
  thinFinding,
  unreadFinding,
} from './condition/condition.ts';
import { conditionSureness } from './condition/condition-sureness.ts';
import { filmTests, pointTests } from './condition/condition-tests.ts';
import { keyingQuestion, keyingSlips } from './condition/keying-slips.ts';
import { mirrorNotes } from './condition/mirror-notes.ts';
import { mixedFinding } from './condition/mixed-finding.ts';
import type { ZoneCut, Zones } from './condition/zones.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredPanel, gatherPanel, isRead, partOfPanel } from './gathered-panel.ts';
import { calibrationUncertainty } from './gauge/calibration.ts';
import { panelMeanUncertainty } from './help/panel-uncertainty.ts';
import { surveyAdvice } from './help/survey-advice.ts';
import { allowance, bounded } from './limits/allowance.ts';
import { isClearLayer, measuredClear } from './limits/measured-clear.ts';
import {
  outrightLimits,
  type PanelFilm,
  type RemovalTerms,
  totalFloor,
} from './limits/removal-limits.ts';
import type { Reading } from './reading.ts';
import { fallbackPrior, moderatedSpread } from './spread.ts';
import type { PanelSurvey, Survey, ZoneName, ZoneSurvey } from './survey.ts';
import type { VehicleTemplate } from './template/template.ts';
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
  const panels = gathered.map((panel) => withKeyingSlips(assessPanel(panel, context, request)));
  return {
    template: request.template,
    panels: withSoundPanelCap(panels),
    baseline: context.baseline,
    spreadPrior: context.prior,
    notes: [...layerNotes(request.readings), ...mirrorNotes(panels, request.model.conditions)],
  };
}

function assessPanel(
  gathered: GatheredPanel,
  context: CarContext,
  request: SurveyRequest,
): PanelSurvey {
  const zones = context.zones.get(gathered.panel.id);
  return zones === undefined
    ? assessPart(gathered, context, request, possibleCut(gathered, context.baseline, request.model))
    : assessZones(gathered, zones, context, request);
}

/** A value that looks keyed wrongly is asked about before anything else that it leads to, and nothing it leads to is sure. */
function withKeyingSlips(survey: PanelSurvey): PanelSurvey {
  const slips = keyingSlips(survey.points);
  return slips.length === 0
    ? survey
    : {
        ...survey,
        sureness: survey.sureness === null ? null : { ...survey.sureness, sure: 'near' },
        keyingSlips: slips,
        evidence: [...slips.map(keyingQuestion), ...survey.evidence],
      };
}

/** A panel in one zone, or one zone of a panel; `cut` is where it might be in two. */
function assessPart(
  gathered: GatheredPanel,
  context: CarContext,
  request: SurveyRequest,
  cut: ZoneCut | null = null,
): PanelSurvey {
  const { points, statistics } = gathered;
  const { model, terms } = request;
  const facts = withMeasuredClear(gathered, context, model);
  const floor = totalFloor(facts.finish, terms.totalFloor, model.limits);
  const common = { ...gathered, facts, totalFloor: floor };
  if (statistics === null || !isRead(gathered)) {
    return unreadPanel(common, model);
  }
  const known = totalFindings(gathered, context.baseline, model);
  const factory = known.every((found) => isFactoryFilm(found.condition));
  const prior = factory ? context.prior : fallbackPrior([statistics.mean], model.spread);
  const own = panelSpread(points, context.leastVariance, model.measurement);
  const film: PanelFilm = {
    mean: statistics.mean,
    smallest: statistics.min,
    count: points.length,
    spread: moderatedSpread(own, prior),
    calibration: calibrationUncertainty(statistics.mean, model.measurement),
  };
  // A normal bound speaks of one population of film; on filler there are at least two.
  const onePopulation = points.length > 1 && !known.some((found) => found.condition === 'filler');
  const credible = onePopulation ? thinnestCredible(film, model.tolerance) : null;
  const thinnest = credible?.thinnest ?? null;
  const thin = thinFinding(statistics.min, thinnest, floor);
  const findings = byPrecedence([...known, ...(thin === undefined ? [] : [thin])]);
  const conditions = findings.map((found) => found.condition);
  const condition = findings[0].condition;
  const uncertainty = panelMeanUncertainty({ ...film, points }, context.scatter);
  const tests = filmTests(
    {
      points,
      cut,
      median: statistics.median,
      film,
      uncertainty,
      thinnest: credible,
      totalFloor: floor,
    },
    context.against,
    model,
  );
  const { low, high, rule } = standingOut(gathered, context, model);
  return {
    ...common,
    film,
    moderation: { own, prior },
    uncertainty,
    thinnest,
    condition,
    sureness: conditionSureness(condition, tests, model.conditions.nearRisk),
    also: conditions.slice(1),
    evidence: findings.map(({ evidence }) => evidence),
    ...allowance(
      { film, facts, points: points.length, conditions, baseline: context.baseline },
      terms,
      model,
    ),
    zones: [],
    lowPoints: low,
    highPoints: high,
    flagRule: rule,
    keyingSlips: [],
    ashmanD: null,
    advice: surveyAdvice(common, condition, facts, model.reading.bestPoints),
  };
}

/** Both zones by themselves; the panel shows all of its points, and what the zone that allows least allows. */
function assessZones(
  gathered: GatheredPanel,
  { thinner, thicker, ashmanD, cut }: Zones,
  context: CarContext,
  request: SurveyRequest,
): PanelSurvey {
  const zoneOf = (zone: ZoneName, points: Zones['thinner']): ZoneSurvey => ({
    ...assessPart(partOfPanel(gathered, points), context, request),
    zone,
  });
  const zones = [zoneOf('thinner', thinner), zoneOf('thicker', thicker)] as const;
  const [one, other] = zones;
  const least = other.budget < one.budget ? other : one;
  const findings = byPrecedence([
    mixedFinding(zones, ashmanD),
    ...zones.flatMap(({ zone, condition, also, evidence }) =>
      [condition, ...also].flatMap((one, k) => inZone(zone, one, evidence[k])),
    ),
  ]);
  const { zone: _, ...allowing } = least;
  const thinnest = zones.flatMap((zone) => zone.thinnest ?? []);
  const conditions = [...new Set(findings.map((found) => found.condition))];
  return {
    ...allowing,
    ...gathered,
    facts: allowing.facts,
    // Both speak of one population of film: each zone has its own.
    moderation: null,
    uncertainty: null,
    thinnest: thinnest.length === 0 ? null : micrometres(Math.min(...thinnest)),
    condition: findings[0].condition,
    sureness: conditionSureness(
      findings[0].condition,
      pointTests({ points: gathered.points, cut }, context.against, request.model),
      request.model.conditions.nearRisk,
    ),
    also: conditions.slice(1),
    evidence: findings.map(({ evidence }) => evidence),
    zones,
    ashmanD,
    lowPoints: zones.flatMap(({ lowPoints }) => lowPoints),
    highPoints: zones.flatMap(({ highPoints }) => highPoints),
    advice: surveyAdvice(
      gathered,
      findings[0].condition,
      allowing.facts,
      request.model.reading.bestPoints,
    ),
  };
}

/** What stands out in a zone; factory film that is in order needs no word. */
const inZone = (
  zone: ZoneName,
  condition: Finding['condition'],
  evidence: Remark | undefined,
): readonly Finding[] =>
  condition === 'original' || evidence === undefined
    ? []
    : [{ condition, evidence: prefixed(`${zone} zone: `, evidence) }];

/** What the job states of a panel's clear stands; else what was read of it; else what it states of the car's. */
function withMeasuredClear(
  { facts, clearPoints }: GatheredPanel,
  { leastVariance }: CarContext,
  model: FilmModel,
): PanelFacts {
  if (facts.clear?.of === 'panel') return facts;
  return { ...facts, clear: measuredClear(clearPoints, leastVariance, model) ?? facts.clear };
}

function unreadPanel(
  common: GatheredPanel & { readonly totalFloor: Micrometres },
  model: FilmModel,
): PanelSurvey {
  const { panel, facts, points, otherPoints } = common;
  const read = { onFace: points.length > 0, offFace: otherPoints.length > 0 };
  const findings = byPrecedence([
    unreadFinding(panel, read),
    ...(facts.covered ? filmCovered : []),
  ]);
  const limits = outrightLimits(facts, { points: 0, isFactoryFilm: false, unread: true }, model);
  return {
    ...common,
    film: null,
    moderation: null,
    uncertainty: null,
    thinnest: null,
    condition: 'unread',
    sureness: null,
    also: findings.slice(1).map((found) => found.condition),
    evidence: findings.map(({ evidence }) => evidence),
    topcoat: null,
    ...bounded(limits),
    zones: [],
    lowPoints: [],
    highPoints: [],
    flagRule: 'none',
    keyingSlips: [],
    ashmanD: null,
    advice: surveyAdvice(common, 'unread', facts, model.reading.bestPoints),
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
  // A panel left alone for its finish or its age says nothing of what sound film allows.
  const sound = panels.filter(
    ({ condition, points, boundBy }) =>
      condition === 'original' &&
      points.length > 1 &&
      boundBy.code !== 'finish' &&
      boundBy.code !== 'fresh-paint',
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
              says`after a test spot ${um(cap)} at most, the least of the sound panels`,
              cap,
            ),
          ],
        },
  );
}

/** Readings of single layers are no total film: never averaged in; those of the clear speak for it. */
function layerNotes(readings: readonly Reading[]): readonly Remark[] {
  const single = readings.filter(({ layer }) => layer !== '');
  const ofClear = single.filter(isClearLayer).length;
  const use =
    ofClear === 0
      ? 'not used'
      : ofClear === single.length
        ? 'used for the clear'
        : `${ofClear} of the clear used for it`;
  return single.length === 0
    ? []
    : [
        remark(
          'layer-readings',
          `${single.length} reading${single.length === 1 ? ' is' : 's are'} of a single layer, not of the whole film: kept apart, ${use}`,
          single.length,
        ),
      ];
}
