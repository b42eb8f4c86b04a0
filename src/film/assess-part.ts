/** A panel of one population of film, or one zone of a panel: what it is, how sure that is, what may go. */
import type { Micrometres } from '../base/units.ts';
import { unreadPanel } from './assess-unread.ts';
import { type CarContext, standingOut } from './car-context.ts';
import { byPrecedence, isStatedRepaint, thinFinding } from './condition/condition.ts';
import { conditionSureness } from './condition/condition-sureness.ts';
import { filmTests, type SideTests } from './condition/condition-tests.ts';
import { pointsUnderLine } from './condition/film-findings.ts';
import { readOverRangeAgain, restsOnOverRange } from './condition/over-range.ts';
import type { ZoneCut } from './condition/zones.ts';
import type { PanelFacts } from './film-model.ts';
import { type GatheredFilm, type GatheredPanel, isRead } from './gathered-panel.ts';
import { surveyAdvice } from './help/survey-advice.ts';
import { judgePart, withMeasuredClear } from './judge-part.ts';
import { allowance } from './limits/allowance.ts';
import { heldByRange } from './limits/over-range-limit.ts';
import { totalFloor } from './limits/removal-limits.ts';
import type { PanelSurvey } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';
import { thinnestCredible } from './thinnest-credible.ts';
import { withOtherSide } from './with-other-side.ts';

/** A panel in one zone, or one zone of a panel; `cut` is where it might be in two. */
export function assessPart(
  gathered: GatheredPanel,
  context: CarContext,
  request: SurveyRequest,
  cut: ZoneCut | null = null,
): PanelSurvey {
  const { model, terms } = request;
  const floorOf = (facts: PanelFacts): Micrometres => totalFloor(facts, terms.totalFloor, model);
  if (!isRead(gathered)) {
    const facts = withMeasuredClear(gathered, context, model);
    return unreadPanel(gathered, { facts, totalFloor: floorOf(facts) }, context, model);
  }
  const judged = judgePart(gathered, context, request);
  const { facts, film, moderation, uncertainty, baseline, known, sides } = judged;
  const { points, statistics, overRange } = gathered;
  const floor = floorOf(facts);
  // A normal bound speaks of one population of film; on filler there are at least two.
  const onePopulation = points.length > 1 && !known.some((found) => found.condition === 'filler');
  const credible = onePopulation ? thinnestCredible(film, model.tolerance) : null;
  const thinnest = credible?.thinnest ?? null;
  const thin = facts.covered ? undefined : thinFinding(statistics.min, thinnest, floor);
  const findings = byPrecedence([...known, ...(thin === undefined ? [] : [thin])]);
  const conditions = findings.map((found) => found.condition);
  const condition = findings[0].condition;
  const evidence = findings.map((found) => found.evidence);
  const byRange = restsOnOverRange({ evidence });
  const also = conditions.slice(1);
  const tests = filmTests(
    judged.tests,
    { points, cut, film, uncertainty, thinnest: credible, totalFloor: floor },
    context.against,
    model,
  );
  const underLine = pointsUnderLine(points, { facts, baseline }, model.conditions);
  const { low, high, rule } = standingOut(gathered, context, model);
  const allowed = allowance({ film, facts, conditions, baseline, sides }, terms, model);
  const { topcoat, limits, budget, boundBy } = byRange ? heldByRange(allowed, overRange) : allowed;
  const survey = {
    panel: gathered.panel,
    facts,
    points,
    otherPoints: gathered.otherPoints,
    overRange,
    readingCount: gathered.readingCount,
    statistics,
    totalFloor: floor,
    film,
    moderation,
    uncertainty,
    thinnest,
    condition,
    baseline,
    sureness:
      byRange || (condition === 'refinished' && isKnownRepaint(gathered, judged.tests))
        ? null
        : conditionSureness({ condition, also }, tests, model.conditions.nearRisk),
    also,
    sides,
    evidence,
    topcoat,
    limits,
    budget,
    boundBy,
    zones: [],
    lowPoints: low,
    highPoints: high,
    flagRule: rule,
    keyingSlips: [],
    ashmanD: null,
  };
  return withOtherSide(request, survey, [
    ...(byRange ? [readOverRangeAgain(overRange)] : []),
    ...surveyAdvice({ ...gathered, underLine }, condition, facts, model),
  ]);
}

/** No line decides it: the job says so, or it is the odd zone of its panel under the line of a repaint. */
const isKnownRepaint = ({ facts, overRest }: GatheredFilm, { refinished }: SideTests): boolean =>
  isStatedRepaint(facts) ||
  (overRest !== undefined && refinished.comparisons.every(({ isBeyond }) => !isBeyond));
