/**
 * A panel of one population of film, or one zone of a panel, as far as what may go hangs on it: what it carries, and
 * what else it may be. That it may be thin does not: the floor of its total is a limit of its own.
 */
import { mean, median } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { baselineFor, heldBeside, paintedOverFor } from './car-baseline.ts';
import { type CarContext, panelSpread, totalFindings } from './car-context.ts';
import { type Finding, isFactoryFilm, partedByFiller } from './condition/condition.ts';
import { type SideTests, sideTests } from './condition/condition-tests.ts';
import type { BesideFiller, JudgedPanel } from './condition/judged-panel.ts';
import { type PossibleSides, possibleSides } from './condition/possible-sides.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { type GatheredFilm, type GatheredPanel, thicknesses } from './gathered-panel.ts';
import { calibrationUncertainty } from './gauge/calibration.ts';
import { panelMeanUncertainty } from './help/panel-uncertainty.ts';
import { measuredClear } from './limits/measured-clear.ts';
import { goneUncertain } from './put-back.ts';
import { fallbackPrior, moderatedSpread } from './spread.ts';
import type { Moderation } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';

type JudgedPart = JudgedPanel & {
  readonly facts: PanelFacts;
  readonly moderation: Moderation;
  readonly baseline: Micrometres | null;
  /** By the total film alone; none of film that is as the factory left it. */
  readonly known: readonly Finding[];
  readonly tests: SideTests;
  readonly sides: PossibleSides;
};

export function judgePart(
  gathered: GatheredFilm,
  context: CarContext,
  { model, terms }: Pick<SurveyRequest, 'model' | 'terms'>,
): JudgedPart {
  const facts = withMeasuredClear(gathered, context, model);
  const { points, statistics } = gathered;
  const baseline = baselineFor(context.baseline, gathered);
  const known = totalFindings(gathered, context.baseline, model);
  const factory = known.every((found) => isFactoryFilm(found.condition));
  const prior = factory ? context.prior : fallbackPrior([statistics.mean], model.spread);
  const own = panelSpread(points, context.leastVariance, model.measurement);
  const film = {
    mean: statistics.mean,
    smallest: statistics.min,
    count: points.length,
    spread: moderatedSpread(own, prior),
    calibration: calibrationUncertainty(statistics.mean, model.measurement),
    operators: model.measurement.betweenOperators,
  };
  const uncertainty = panelMeanUncertainty({ ...film, points }, context.scatter);
  const all = { points, median: statistics.median, uncertainty };
  const judged = {
    ...all,
    otherPoints: gathered.otherPoints,
    film,
    gone: goneUncertain(statistics.mean, facts, model.measurement),
    besideFiller: besideFiller(all, context, model),
  };
  const against = {
    ...context.against,
    baseline: baseline?.uncertain ?? null,
    beside: heldBeside(context.baseline, gathered),
    ifPaintedOver: paintedOverFor(context.baseline, facts),
    together: context.paintedSides.get(gathered.panel.id),
  };
  const tests = sideTests(judged, against, model);
  return {
    ...judged,
    facts,
    moderation: { own, prior, leastVariance: context.leastVariance },
    baseline: baseline?.value ?? null,
    known,
    tests,
    sides: possibleSides(tests, terms.risk),
  };
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
    operators: model.measurement.betweenOperators,
  };
  return {
    points,
    median: micrometres(median(films)),
    uncertainty: panelMeanUncertainty(sources, scatter),
  };
}

/**
 * What the job states of a panel's clear stands beside what was read of it; else what was read of it alone; else what the
 * job states of the car's beside what was read of others.
 */
export function withMeasuredClear(
  { facts, clearPoints }: GatheredPanel,
  { leastVariance, readClear }: CarContext,
  model: FilmModel,
): PanelFacts {
  const read = measuredClear(clearPoints, leastVariance, model);
  if (facts.clear?.of === 'panel') return read === null ? facts : { ...facts, clearRead: read };
  const clearElsewhere = read === null ? readClear.get(facts.finish) : undefined;
  return {
    ...facts,
    clear: read ?? facts.clear,
    ...(clearElsewhere === undefined ? {} : { clearElsewhere }),
  };
}
