/** A panel of which nothing was read that a gauge could read: why that is, and what would help. */
import { baselineFor } from './car-baseline.ts';
import type { CarContext } from './car-context.ts';
import { byPrecedence, COVERED, unreadFinding } from './condition/condition.ts';
import { overRangeEvidence, readOverRangeAgain } from './condition/over-range.ts';
import { NO_SIDES } from './condition/possible-sides.ts';
import type { FilmModel } from './film-model.ts';
import type { GatheredPanel } from './gathered-panel.ts';
import { surveyAdvice } from './help/survey-advice.ts';
import { bounded } from './limits/allowance.ts';
import { inWords } from './limits/limit.ts';
import { outrightLimits } from './limits/outright-limits.ts';
import type { PanelSurvey } from './survey.ts';

export function unreadPanel(
  gathered: GatheredPanel,
  { facts, totalFloor }: Pick<PanelSurvey, 'facts' | 'totalFloor'>,
  { baseline }: CarContext,
  model: FilmModel,
): PanelSurvey {
  const { panel, points, otherPoints, clearPoints, overRange } = gathered;
  // Under film or wrap a gauge shows that as well.
  const isBeyond = overRange.length > 0 && !facts.covered;
  const read = {
    onFace: points.length > 0,
    offFace: otherPoints.length > 0,
    clear: clearPoints.length > 0,
  };
  const findings = byPrecedence([unreadFinding(panel, read), ...(facts.covered ? [COVERED] : [])]);
  const outright = outrightLimits(
    facts,
    { points: 0, isFactoryFilm: false, unread: panel, isReadByLayers: read.clear },
    model,
  );
  const { limits, budget, boundBy } = bounded(outright.map(inWords));
  return {
    panel,
    facts,
    points,
    otherPoints,
    overRange,
    readingCount: gathered.readingCount,
    statistics: gathered.statistics,
    totalFloor,
    film: null,
    moderation: null,
    uncertainty: null,
    thinnest: null,
    condition: 'unread',
    baseline: baselineFor(baseline, gathered)?.value ?? null,
    sureness: null,
    sides: NO_SIDES,
    otherSide: null,
    also: findings.slice(1).map((found) => found.condition),
    evidence: [
      ...findings.map(({ evidence }) => evidence),
      ...(isBeyond ? [overRangeEvidence(overRange)] : []),
    ],
    topcoat: null,
    limits,
    budget,
    boundBy,
    zones: [],
    lowPoints: [],
    highPoints: [],
    flagRule: 'none',
    keyingSlips: [],
    ashmanD: null,
    advice: [
      ...(isBeyond ? [readOverRangeAgain(overRange)] : []),
      ...surveyAdvice(gathered, 'unread', facts, model),
    ],
  };
}
