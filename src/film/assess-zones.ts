/** A panel in two zones: each by itself, and the panel by what the zone that allows least allows. */
import { prefixed, type Remark } from '../base/remark.ts';
import { mean } from '../base/stats/summary.ts';
import { micrometres } from '../base/units.ts';
import { assessPart } from './assess-part.ts';
import { type CarContext, leastByFinish } from './car-context.ts';
import { byPrecedence, type Finding } from './condition/condition.ts';
import { conditionSureness } from './condition/condition-sureness.ts';
import { pointTests } from './condition/condition-tests.ts';
import { mixedFinding } from './condition/mixed-finding.ts';
import type { Zones } from './condition/zones.ts';
import { type GatheredPanel, thicknesses } from './gathered-panel.ts';
import { surveyAdvice } from './help/survey-advice.ts';
import { goneUncertain } from './put-back.ts';
import type { PanelSurvey, ZoneName, ZoneSurvey } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';
import { withOtherSide } from './with-other-side.ts';
import { zonePart } from './zone-part.ts';

/** Both zones by themselves; the panel shows all of its points, and what the zone that allows least allows. */
export function assessZones(
  gathered: GatheredPanel,
  parted: Zones,
  context: CarContext,
  request: SurveyRequest,
): PanelSurvey {
  const zoneIn = (one: CarContext, zone: ZoneName): PanelSurvey =>
    assessPart(zonePart(gathered, parted, zone, one.baseline), one, request);
  // Of a finish nobody knows each zone by the one that allows it less, whichever that is for the other.
  const zoneOf = (zone: ZoneName): ZoneSurvey => ({
    ...leastByFinish(
      gathered,
      context,
      (one) => zoneIn(one, zone),
      ({ budget }) => budget,
    ),
    zone,
  });
  const zones = [zoneOf('thinner'), zoneOf('thicker')] as const;
  const { ashmanD, cut } = parted;
  const [one, other] = zones;
  const least = other.budget < one.budget ? other : one;
  const findings = byPrecedence([
    mixedFinding(zones, ashmanD),
    ...zones.flatMap(({ zone, condition, also, evidence }) =>
      [condition, ...also].flatMap((one, k) => inZone(zone, one, evidence[k])),
    ),
  ]);
  const { zone: _, otherSide: __, advice: ___, ...allowing } = least;
  const thinnest = zones.map((zone) => zone.thinnest).filter((one) => one !== null);
  const conditions = [...new Set(findings.map((found) => found.condition))];
  const film = micrometres(mean(thicknesses(gathered.points)));
  const gone = goneUncertain(film, gathered.facts, request.model.measurement);
  const survey = {
    ...allowing,
    ...gathered,
    facts: allowing.facts,
    // Both speak of one population of film: each zone has its own.
    moderation: null,
    uncertainty: null,
    // One zone at least is factory film, of which a bound is drawn.
    thinnest: micrometres(Math.min(...thinnest)),
    condition: findings[0].condition,
    sureness: conditionSureness(
      { condition: findings[0].condition, also: conditions.slice(1) },
      pointTests({ ...gathered, gone }, cut, context.against, request.model),
      request.model.conditions.nearRisk,
    ),
    also: conditions.slice(1),
    evidence: findings.map(({ evidence }) => evidence),
    zones,
    ashmanD,
    lowPoints: zones.flatMap(({ lowPoints }) => lowPoints),
    highPoints: zones.flatMap(({ highPoints }) => highPoints),
  };
  const advice = surveyAdvice(gathered, findings[0].condition, allowing.facts, request.model);
  // Where a test spot is of use is a matter of each zone.
  const ofAll = advice.filter(({ code }) => code !== 'test-spot');
  return withOtherSide(request, survey, ofAll);
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
