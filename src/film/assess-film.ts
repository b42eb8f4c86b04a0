/** Readings → survey: what is on each panel, how sure that is, and how much may come off. */
import { groupBy } from '../base/group-by.ts';
import { prefixed, type Remark, remark } from '../base/remark.ts';
import { says, um } from '../base/sentence.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineFor, usualBaseline } from './car-baseline.ts';
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
  isStatedRepaint,
  thinFinding,
  unreadFinding,
} from './condition/condition.ts';
import { conditionSureness } from './condition/condition-sureness.ts';
import { filmTests, pointTests } from './condition/condition-tests.ts';
import { keyingQuestion, keyingSlips, readAgain } from './condition/keying-slips.ts';
import { mirrorNotes } from './condition/mirror-notes.ts';
import { mixedFinding } from './condition/mixed-finding.ts';
import { otherSideOf } from './condition/other-side.ts';
import type { ZoneCut, Zones } from './condition/zones.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredPanel, gatherPanel, isRead, partOfPanel } from './gathered-panel.ts';
import { calibrationUncertainty } from './gauge/calibration.ts';
import { panelMeanUncertainty } from './help/panel-uncertainty.ts';
import { settlingAdvice } from './help/settling.ts';
import { surveyAdvice } from './help/survey-advice.ts';
import { allowance, bounded } from './limits/allowance.ts';
import { isSound } from './limits/allowance-at.ts';
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
    baseline: usualBaseline(context.baseline),
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
        // What it would be otherwise is asked once the value is.
        otherSide: null,
        keyingSlips: slips,
        evidence: [...slips.map(keyingQuestion), ...survey.evidence],
        advice: [...slips.map(readAgain), ...survey.advice],
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
    return unreadPanel(common, context, model);
  }
  const baseline = baselineFor(context.baseline, facts);
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
  const also = conditions.slice(1);
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
    { ...context.against, baseline: baseline?.uncertain ?? null },
    model,
  );
  const { low, high, rule } = standingOut(gathered, context, model);
  return withOtherSide(request, {
    ...common,
    film,
    moderation: { own, prior },
    uncertainty,
    thinnest,
    condition,
    baseline: baseline?.value ?? null,
    sureness:
      condition === 'refinished' && isStatedRepaint(facts)
        ? null
        : conditionSureness({ condition, also }, tests, model.conditions.nearRisk),
    also,
    evidence: findings.map(({ evidence }) => evidence),
    ...allowance(
      { film, facts, points: points.length, conditions, baseline: baseline?.value ?? null },
      terms,
      model,
    ),
    zones: [],
    lowPoints: low,
    highPoints: high,
    flagRule: rule,
    keyingSlips: [],
    ashmanD: null,
    advice: surveyAdvice(common, condition, facts, model),
  });
}

function withOtherSide(
  { terms, model }: SurveyRequest,
  survey: Omit<PanelSurvey, 'otherSide'>,
): PanelSurvey {
  const judged = { ...survey, otherSide: otherSideOf(survey, terms, model) };
  const settling = settlingAdvice(judged, {
    mostPoints: model.reading.mostPoints,
    nearRisk: model.conditions.nearRisk,
  });
  return { ...judged, advice: [...survey.advice, ...settling] };
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
  const { zone: _, otherSide: __, ...allowing } = least;
  const thinnest = zones.flatMap((zone) => zone.thinnest ?? []);
  const conditions = [...new Set(findings.map((found) => found.condition))];
  return withOtherSide(request, {
    ...allowing,
    ...gathered,
    facts: allowing.facts,
    // Both speak of one population of film: each zone has its own.
    moderation: null,
    uncertainty: null,
    thinnest: thinnest.length === 0 ? null : micrometres(Math.min(...thinnest)),
    condition: findings[0].condition,
    sureness: conditionSureness(
      { condition: findings[0].condition, also: conditions.slice(1) },
      pointTests({ points: gathered.points, cut }, context.against, request.model),
      request.model.conditions.nearRisk,
    ),
    also: conditions.slice(1),
    evidence: findings.map(({ evidence }) => evidence),
    zones,
    ashmanD,
    lowPoints: zones.flatMap(({ lowPoints }) => lowPoints),
    highPoints: zones.flatMap(({ highPoints }) => highPoints),
    advice: surveyAdvice(gathered, findings[0].condition, allowing.facts, request.model),
  });
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
  { baseline }: CarContext,
  model: FilmModel,
): PanelSurvey {
  const { panel, facts, points, otherPoints } = common;
  const read = { onFace: points.length > 0, offFace: otherPoints.length > 0 };
  const findings = byPrecedence([
    unreadFinding(panel, read),
    ...(facts.covered ? filmCovered : []),
  ]);
  const limits = outrightLimits(facts, { points: 0, isFactoryFilm: false, unread: panel }, model);
  return {
    ...common,
    film: null,
    moderation: null,
    uncertainty: null,
    thinnest: null,
    condition: 'unread',
    baseline: baselineFor(baseline, facts)?.value ?? null,
    sureness: null,
    otherSide: null,
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
    advice: surveyAdvice(common, 'unread', facts, model),
  };
}

const filmCovered: readonly Finding[] = [
  {
    condition: 'covered',
    evidence: remark('covered', 'declared as covered by film, wrap or coating'),
  },
];

/** On repaint even a test spot may never allow more than on factory film. */
function withSoundPanelCap(panels: readonly PanelSurvey[]): readonly PanelSurvey[] {
  const [first, ...others] = panels.filter(isSound);
  if (first === undefined) return panels;
  const least = others.reduce((far, one) => (one.budget < far.budget ? one : far), first);
  const cap = remark(
    'sound-panel-cap',
    says`after a test spot on it no more than on ${least.panel.name}, the original panel that allows least: ${um(least.budget)} as things stand`,
    least.budget,
  );
  const capped = <Part extends PanelSurvey>(part: Part): Part =>
    part.boundBy.code === 'test-spot' && part.zones.length === 0
      ? { ...part, evidence: [...part.evidence, cap] }
      : part;
  return panels.map((panel) => ({ ...capped(panel), zones: panel.zones.map(capped) }));
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
