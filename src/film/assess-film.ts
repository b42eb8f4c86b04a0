/** Readings → survey: what is on each panel, how sure that is, and how much may come off. */
import { groupBy } from '../base/group-by.ts';
import { type Remark, remark } from '../base/remark.ts';
import { shown } from '../base/rounding.ts';
import { maximum, mean, median, minimum, sampleStandardDeviation } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { calibrationUncertainty } from './calibration.ts';
import {
  byPrecedence,
  type Condition,
  type Finding,
  filmFindings,
  isFactoryFilm,
  needsUltrasound,
  thinFinding,
  unreadFinding,
} from './condition.ts';
import type { FilmModel, PanelFacts } from './film-model.ts';
import { outlyingPoints } from './outlying-points.ts';
import { displayStep, gatherPoints, type PanelPoint, pooledRepeatability } from './panel-points.ts';
import type { Reading } from './reading.ts';
import {
  bindingLimit,
  clearTaken,
  type Limit,
  outrightLimits,
  type PanelFilm,
  type RemovalTerms,
  removalLimits,
  topcoatCases,
  totalFloor,
} from './removal-limits.ts';
import {
  fallbackPrior,
  leastPointVariance,
  moderatedSpread,
  ownSpread,
  type SpreadPrior,
  spreadPrior,
} from './spread.ts';
import type { PanelStatistics, PanelSurvey, Survey } from './survey.ts';
import { surveyAdvice } from './survey-advice.ts';
import type { Panel, VehicleTemplate } from './template.ts';
import { thinnestCredible } from './thinnest-credible.ts';

export type SurveyRequest = {
  readonly template: VehicleTemplate;
  /** Readings of one vehicle, their panels named by the template's ids. */
  readonly readings: readonly Reading[];
  readonly factsOf: (panelId: string) => PanelFacts;
  readonly terms: RemovalTerms;
  readonly model: FilmModel;
};

/** What is known of a panel before the car's panels are seen together. */
type Gathered = {
  readonly panel: Panel;
  readonly facts: PanelFacts;
  readonly points: readonly PanelPoint[];
  readonly otherPoints: readonly PanelPoint[];
  readonly readingCount: number;
  readonly statistics: PanelStatistics | null;
};

/** The car as a whole: what its panels say of one another. */
type CarContext = {
  readonly baseline: Micrometres | null;
  readonly leastVariance: number;
  readonly repeatability: Micrometres;
  readonly pool: ReadonlyMap<string, readonly Micrometres[]>;
  readonly prior: SpreadPrior;
};

/** Repeats worth pooling before they replace the assumed repeatability. */
const LEAST_REPEATABILITY_DOF = 5;

export function assessFilm(request: SurveyRequest): Survey {
  const byPanel = groupBy(request.readings, ({ panel }) => panel);
  const gathered = request.template.panels.map((panel) =>
    gather(panel, request.factsOf(panel.id), byPanel.get(panel.id) ?? []),
  );
  const context = carContext(gathered, request.model);
  const panels = gathered.map((panel) => assessPanel(panel, context, request));
  return {
    template: request.template,
    panels: withSoundPanelCap(panels),
    baseline: context.baseline,
    notes: mirrorNotes(panels, request.model.conditions),
  };
}

function gather(panel: Panel, facts: PanelFacts, readings: readonly Reading[]): Gathered {
  const all = gatherPoints(readings);
  // Only steel is galvanised: an aluminium panel on a galvanised car carries no zinc.
  const galvanised = facts.galvanised && panel.substrate === 'steel';
  const points = all.filter(({ place }) => place === 'face');
  return {
    panel,
    facts: { ...facts, galvanised },
    points,
    otherPoints: all.filter(({ place }) => place !== 'face'),
    readingCount: points.reduce((sum, { repeats }) => sum + repeats.length, 0),
    statistics: points.length === 0 ? null : statisticsOf(points),
  };
}

function statisticsOf(points: readonly PanelPoint[]): PanelStatistics {
  const values = thicknesses(points);
  return {
    mean: micrometres(mean(values)),
    sd: values.length < 2 ? null : micrometres(sampleStandardDeviation(values)),
    min: micrometres(minimum(values)),
    max: micrometres(maximum(values)),
    median: micrometres(median(values)),
  };
}

const thicknesses = (points: readonly PanelPoint[]): readonly Micrometres[] =>
  points.map(({ thickness }) => thickness);

function carContext(gathered: readonly Gathered[], model: FilmModel): CarContext {
  const baseline = baselineOf(gathered, model);
  const points = gathered.flatMap((panel) => panel.points);
  const pooled = pooledRepeatability(points);
  const repeatability =
    pooled !== undefined && pooled.dof >= LEAST_REPEATABILITY_DOF
      ? pooled.sd
      : model.measurement.repeatability;
  const readings = points.flatMap(({ repeats }) => repeats);
  const repeatsPerPoint = points.length === 0 ? 1 : readings.length / points.length;
  const leastVariance = leastPointVariance(repeatability, repeatsPerPoint, displayStep(readings));
  const pool = new Map(
    gathered
      .filter((panel) => isRead(panel) && hasFactoryTotal(panel, baseline, model))
      .map((panel) => [panel.panel.id, thicknesses(panel.points)]),
  );
  return {
    baseline,
    leastVariance,
    repeatability,
    pool,
    prior: poolPrior(pool, leastVariance, model),
  };
}

function poolPrior(pool: CarContext['pool'], leastVariance: number, model: FilmModel): SpreadPrior {
  const panels = [...pool.values()];
  return spreadPrior(
    panels.map((values) => ownSpread(values, leastVariance)),
    panels.map(mean),
    model.spread,
  );
}

const isRead = ({ panel, points }: Gathered): boolean =>
  points.length > 0 && !needsUltrasound(panel);

function baselineOf(gathered: readonly Gathered[], model: FilmModel): Micrometres | null {
  const medians = gathered
    .filter(isRead)
    .flatMap(({ statistics }) => (statistics === null ? [] : [statistics.median]))
    .filter((value) => value <= model.conditions.refinished);
  return medians.length === 0 ? null : micrometres(median(medians));
}

function totalFindings(
  { panel, facts, statistics }: Gathered,
  baseline: Micrometres | null,
  model: FilmModel,
): readonly Finding[] {
  if (statistics === null) return [];
  const { min, max } = statistics;
  return filmFindings(
    { panel, facts, ...statistics, smallest: min, largest: max, baseline },
    model.conditions,
  );
}

const hasFactoryTotal = (
  panel: Gathered,
  baseline: Micrometres | null,
  model: FilmModel,
): boolean =>
  totalFindings(panel, baseline, model).every(({ condition }) => isFactoryFilm(condition));

function assessPanel(gathered: Gathered, context: CarContext, request: SurveyRequest): PanelSurvey {
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
  const thinnest = points.length < 2 ? null : thinnestCredible(film, model.tolerance);
  // A credible minimum speaks of one population of film; on filler there are at least two.
  const thin = thinFinding(statistics.min, pooled ? thinnest : null, floor);
  const findings = byPrecedence([
    ...totalFindings(gathered, context.baseline, model),
    ...(thin === undefined ? [] : [thin]),
  ]);
  const condition = findings[0].condition;
  const verdict = allowance(film, gathered, findings, context, request);
  return {
    ...common,
    film,
    thinnest,
    condition,
    also: findings.slice(1).map((found) => found.condition),
    evidence: findings.map(({ evidence }) => evidence),
    ...verdict,
    lowPoints: outliers(gathered, context, model).low,
    highPoints: outliers(gathered, context, model).high,
    advice: surveyAdvice(common, condition, facts),
  };
}

type Allowance = Pick<PanelSurvey, 'topcoat' | 'limits' | 'budget' | 'boundBy'>;

/** The limits of the topcoat that allows least; nothing at all where the total proves nothing. */
function allowance(
  film: PanelFilm,
  { facts, points }: Gathered,
  findings: readonly [Finding, ...Finding[]],
  { baseline }: CarContext,
  { terms, model }: SurveyRequest,
): Allowance {
  const conditions: readonly Condition[] = findings.map(({ condition }) => condition);
  const missing = conditions.includes('cut-back') && baseline !== null ? baseline - film.mean : 0;
  const taken = clearTaken(facts, micrometres(missing), model.earlier);
  const outright = outrightLimits(
    facts,
    { points: points.length, isFactoryFilm: conditions.every(isFactoryFilm), unread: false },
    model.freshPaintDays,
  );
  const cases = topcoatCases(film, facts, taken, terms.policy, model).map((topcoat) => {
    const limits = removalLimits(film, facts, topcoat, terms, model);
    return { topcoat, ...bounded([...outright, ...limits]) };
  });
  return worst(cases);
}

function worst(cases: readonly Allowance[]): Allowance {
  const [first, ...rest] = cases;
  if (first === undefined) throw new Error('a panel carries at least one topcoat');
  return rest.reduce((least, one) => (one.budget < least.budget ? one : least), first);
}

function bounded(limits: readonly Limit[]): Pick<PanelSurvey, 'limits' | 'budget' | 'boundBy'> {
  const boundBy = bindingLimit(limits);
  return { limits, budget: boundBy.value, boundBy };
}

function unreadPanel(
  common: Gathered & { readonly totalFloor: Micrometres },
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

/** Flags rest on the other panels' spread; with too few of them there are none. */
function outliers(
  { panel, points }: Gathered,
  { pool, leastVariance }: CarContext,
  model: FilmModel,
): ReturnType<typeof outlyingPoints> {
  const others = new Map([...pool].filter(([id]) => id !== panel.id));
  const prior = poolPrior(others, leastVariance, model);
  return Number.isFinite(prior.dofCeiling) ? outlyingPoints(points, prior) : { low: [], high: [] };
}

/** On refinished and unread panels even a test spot may never allow more than on a sound one. */
function withSoundPanelCap(panels: readonly PanelSurvey[]): readonly PanelSurvey[] {
  const sound = panels.filter(({ film, condition }) => film !== null && isFactoryFilm(condition));
  if (sound.length === 0) return panels;
  const cap = micrometres(Math.min(...sound.map(({ budget }) => budget)));
  return panels.map((panel) =>
    panel.boundBy.code !== 'test-spot' && panel.boundBy.code !== 'no-data'
      ? panel
      : {
          ...panel,
          advice: [
            ...panel.advice,
            remark(
              'sound-panel-cap',
              `even after a test spot never more than ${shown(cap, 1)} µm, the least of the sound panels`,
              cap,
            ),
          ],
        },
  );
}

function mirrorNotes(
  panels: readonly PanelSurvey[],
  model: FilmModel['conditions'],
): readonly Remark[] {
  const byId = new Map(panels.map((panel) => [panel.panel.id, panel]));
  return panels.flatMap((left) => {
    const right = left.panel.mirror === null ? undefined : byId.get(left.panel.mirror);
    if (right === undefined || left.panel.id > right.panel.id) return [];
    if (left.film === null || right.film === null) return [];
    const difference = Math.abs(left.film.mean - right.film.mean);
    const reach = Math.min(
      model.mirror,
      model.mirrorShare * Math.min(left.film.mean, right.film.mean),
    );
    return difference <= reach
      ? []
      : [
          remark(
            'mirror-difference',
            `${left.panel.name} and ${right.panel.name} differ by ${shown(difference, 1)} µm`,
            difference,
          ),
        ];
  });
}
