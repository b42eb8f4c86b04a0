/** A panel of one population of film, or one zone of a panel: what it is, how sure that is, what may go. */
import { mean, median } from '../base/stats/summary.ts';
import { micrometres } from '../base/units.ts';
import { unreadPanel } from './assess-unread.ts';
import { baselineFor } from './car-baseline.ts';
import { type CarContext, panelSpread, standingOut, totalFindings } from './car-context.ts';
import {
  byPrecedence,
  isFactoryFilm,
  isStatedRepaint,
  partedByFiller,
  thinFinding,
} from './condition/condition.ts';
import { conditionSureness } from './condition/condition-sureness.ts';
import { type BesideFiller, filmTests } from './condition/condition-tests.ts';
import { possibleSides } from './condition/possible-sides.ts';
import type { ZoneCut } from './condition/zones.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredPanel, isRead, thicknesses } from './gathered-panel.ts';
import { calibrationUncertainty } from './gauge/calibration.ts';
import { panelMeanUncertainty } from './help/panel-uncertainty.ts';
import { surveyAdvice } from './help/survey-advice.ts';
import { allowance } from './limits/allowance.ts';
import { measuredClear } from './limits/measured-clear.ts';
import { totalFloor } from './limits/removal-limits.ts';
import type { PanelFilm } from './panel-film.ts';
import { goneUncertain } from './put-back.ts';
import { fallbackPrior, moderatedSpread } from './spread.ts';
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
  const facts = withMeasuredClear(gathered, context, model);
  const floor = totalFloor(facts, terms.totalFloor, model);
  if (!isRead(gathered)) return unreadPanel(gathered, { facts, totalFloor: floor }, context, model);
  const { points, statistics } = gathered;
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
  const all = { points, median: statistics.median, uncertainty };
  const tests = filmTests(
    {
      ...all,
      cut,
      gone: goneUncertain(facts),
      film,
      thinnest: credible,
      totalFloor: floor,
      besideFiller: besideFiller(all, context, model),
    },
    { ...context.against, baseline: baseline?.uncertain ?? null },
    model,
  );
  const sides = possibleSides(tests, terms.risk);
  const { low, high, rule } = standingOut(gathered, context, model);
  const { topcoat, limits, budget, boundBy } = allowance(
    { film, facts, conditions, baseline: baseline?.value ?? null, sides },
    terms,
    model,
  );
  const survey = {
    panel: gathered.panel,
    facts,
    points,
    otherPoints: gathered.otherPoints,
    readingCount: gathered.readingCount,
    statistics,
    totalFloor: floor,
    film,
    moderation: { own, prior, leastVariance: context.leastVariance },
    uncertainty,
    thinnest,
    condition,
    baseline: baseline?.value ?? null,
    sureness:
      condition === 'refinished' && isStatedRepaint(facts)
        ? null
        : conditionSureness({ condition, also }, tests, model.conditions.nearRisk),
    also,
    sides,
    evidence: findings.map(({ evidence }) => evidence),
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
  return withOtherSide(request, survey, surveyAdvice(gathered, condition, facts, model));
}

/** The points that are no filler, where some are and some are not: its spread is no part of theirs. */
function besideFiller(
  all: BesideFiller,
  { leastVariance, scatter }: CarContext,
  model: FilmModel,
): BesideFiller {
  const [over, points] = partedByFiller(all.points, model.conditions);
  if (over.length === 0 || points.length === 0) return all;
  const films = thicknesses(points);
  const average = micrometres(mean(films));
  const own = panelSpread(points, leastVariance, model.measurement);
  const sources = {
    mean: average,
    points,
    spread: moderatedSpread(own, fallbackPrior([average], model.spread)),
    calibration: calibrationUncertainty(average, model.measurement),
  };
  return {
    points,
    median: micrometres(median(films)),
    uncertainty: panelMeanUncertainty(sources, scatter),
  };
}

/** What the job states of a panel's clear stands; else what was read of it; else what it states of the car's. */
function withMeasuredClear(
  { facts, clearPoints }: GatheredPanel,
  { leastVariance }: CarContext,
  model: FilmModel,
): PanelFacts {
  if (facts.clear?.of === 'panel') return facts;
  return { ...facts, clear: measuredClear(clearPoints, leastVariance, model) ?? facts.clear };
}
