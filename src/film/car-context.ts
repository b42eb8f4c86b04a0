/** What the panels of a car say of one another: the baseline, and how much film varies over a panel. */
import { groupBy } from '../base/group-by.ts';
import type { Uncertain } from '../base/uncertainty.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { mayWitness } from './baseline-makers.ts';
import { baselineFor, type CarBaseline, carBaseline, isSameBaseline } from './car-baseline.ts';
import { type Finding, isFactoryFilm, isStatedRepaint } from './condition/condition.ts';
import { filmFindings } from './condition/film-findings.ts';
import type { JudgedAlike } from './condition/judged-panel.ts';
import { keyingSlips } from './condition/keying-slips.ts';
import { type OutlyingPoints, outlyingPoints } from './condition/outlying-points.ts';
import { panelSlips } from './condition/panel-slips.ts';
import { bestCut, splitZones, type ZoneCut, type Zones } from './condition/zones.ts';
import type { ClearElsewhere, FilmModel, Finish } from './film-model.ts';
import {
  type GatheredFilm,
  type GatheredPanel,
  isRead,
  partOfPanel,
  thicknesses,
} from './gathered-panel.ts';
import { type GaugeScatter, panelMeanUncertainty } from './help/panel-uncertainty.ts';
import { clearElsewhere } from './limits/clear-of-car.ts';
import { measuredClear } from './limits/measured-clear.ts';
import { type PaintedSides, paintedTogether } from './painted-together.ts';
import { displayStep, type PanelPoint, pooledRepeatability } from './panel-points.ts';
import { putBack } from './put-back.ts';
import type { SideWord } from './side-groups.ts';
import {
  leastPointVariance,
  moderatedSpread,
  type OwnSpread,
  ownSpread,
  pooledSpread,
  type Spread,
  type SpreadPrior,
  spreadPrior,
} from './spread.ts';

export type CarContext = {
  readonly baseline: CarBaseline | null;
  /** By each finish that a panel may have of which nobody knows it; empty where no such panel was read. */
  readonly byFinish: readonly (CarBaseline | null)[];
  /** What every panel is judged against besides, with what that is uncertain by. */
  readonly against: JudgedAlike;
  readonly leastVariance: number;
  /** How the gauge scatters, by this car's own repeats where they are enough. */
  readonly scatter: GaugeScatter;
  /** Panels of factory film in one zone, which say how much such film varies over a panel: what each says. */
  readonly pool: ReadonlyMap<string, Witness>;
  /** Panels in two zones. */
  readonly zones: ReadonlyMap<string, Zones>;
  readonly prior: SpreadPrior;
  /** Panels that may have been painted again with their side. */
  readonly paintedSides: PaintedSides;
  /** The clear of the car as it was read on original panels, by their finish. */
  readonly readClear: ReadonlyMap<Finish, readonly ClearElsewhere[]>;
};

/** What a panel of a side is held to be by its total; nothing of one that says nothing of its paint. */
function sideWord(panel: GatheredPanel, car: CarBaseline | null, model: FilmModel): SideWord {
  if (isStatedRepaint(panel.facts)) return 'repaint';
  if (!isRead(panel) || panel.facts.covered) return null;
  if (!hasFactoryTotal(panel, car, model)) return 'repaint';
  return mayWitness(panel) && keyingSlips(panel.points).length === 0 ? 'factory' : null;
}

/** The gauge's own error, which the panels of a car share, left out. */
const meanOf = (
  { points, statistics }: GatheredFilm,
  { prior, leastVariance, scatter }: Pick<CarContext, 'prior' | 'leastVariance' | 'scatter'>,
  { measurement }: FilmModel,
): Uncertain<'µm'> =>
  panelMeanUncertainty(
    {
      mean: statistics.mean,
      points,
      spread: moderatedSpread(panelSpread(points, leastVariance, measurement), prior),
      calibration: micrometres(0),
    },
    scatter,
  );

type Witness = { readonly mean: Micrometres; readonly spread: OwnSpread };

/** `makers` make the baseline: the panels themselves, but where readings of others do. */
export function carContext(
  gathered: readonly GatheredPanel[],
  makers: readonly GatheredPanel[],
  model: FilmModel,
): CarContext {
  // Readings in another unit, or ten times what was read, say nothing of the car.
  const slipped = panelSlips(gathered);
  const ofMakers = makers === gathered ? slipped : panelSlips(makers);
  const sound = makers.filter(({ panel }) => !ofMakers.has(panel.id));
  const baseline = carBaseline(sound, model);
  const points = gathered.flatMap((panel) => panel.points);
  const repeated = pooledRepeatability(points);
  const repeatability =
    repeated !== undefined && repeated.dof >= model.measurement.repeatabilityLeastDof
      ? repeated
      : { sd: model.measurement.repeatability, dof: Number.POSITIVE_INFINITY };
  const readings = points.flatMap(({ repeats }) => repeats);
  const repeatsPerPoint = points.length === 0 ? 1 : readings.length / points.length;
  const step = micrometres(Math.max(displayStep(readings), model.measurement.step ?? 0));
  const leastVariance = leastPointVariance(repeatability.sd, repeatsPerPoint, step);
  const factory = gathered
    .filter(isRead)
    // One value that was keyed wrongly would make all film of the car seem to vary as much.
    .filter((one) => keyingSlips(one.points).length === 0 && !slipped.has(one.panel.id))
    .filter((panel) => hasFactoryTotal(panel, baseline, model));
  const pooled = poolOf(factory, leastVariance, model);
  const { zones, zoneSpread } = zonesOf(gathered, pooled, baseline, model);
  const pool = without(pooled, (id) => zones.has(id));
  const scatter = { repeatability, step, curvature: model.measurement.curvature };
  const prior = poolPrior(pool, model);
  return {
    baseline,
    byFinish: gathered.some((panel) => isRead(panel) && panel.facts.finish === 'unknown')
      ? MAY_BE.map((finish) => carBaseline(sound, model, finish))
      : [],
    against: { scatter, zoneSpread },
    leastVariance,
    scatter,
    pool,
    zones,
    prior,
    paintedSides: paintedTogether(
      gathered,
      {
        wordOf: (panel) =>
          slipped.has(panel.panel.id) || zones.has(panel.panel.id)
            ? null
            : sideWord(panel, baseline, model),
        meanOf: (panel) => meanOf(panel, { prior, leastVariance, scatter }, model),
      },
      model,
    ),
    readClear: clearByFinish(
      factory.filter((one) => !zones.has(one.panel.id) && isOriginal(one, baseline, model)),
      leastVariance,
      model,
    ),
  };
}

/** Of panels where the clear was read by itself: all of them, and those alone of which the job states none. */
function clearByFinish(
  original: readonly GatheredFilm[],
  leastVariance: number,
  model: FilmModel,
): CarContext['readClear'] {
  const read = original.flatMap(({ facts, clearPoints }) => {
    const clear = measuredClear(clearPoints, leastVariance, model);
    return clear === null ? [] : [{ clear, facts }];
  });
  const byFinish = groupBy(read, ({ facts }) => facts.finish);
  return new Map(
    [...byFinish].map(([finish, all]) => {
      const unstated = all.filter(({ facts }) => facts.clear?.of !== 'panel');
      const isSame = unstated.length === all.length || unstated.length === 0;
      return [
        finish,
        (isSame ? [all] : [all, unstated]).map((some) => clearElsewhere(some, model)),
      ];
    }),
  );
}

/** Whether factory film is not cut back either, and its readings are of nothing but sound paint. */
const isOriginal = (panel: GatheredFilm, baseline: CarBaseline | null, model: FilmModel): boolean =>
  !panel.facts.clearCoatFailure && totalFindings(panel, baseline, model).length === 0;

const MAY_BE: readonly Finish[] = ['clear-over-base', 'single-stage-solid'];

/**
 * A panel of a finish nobody knows is judged by each that it may have, and by the one that allows less: what factories
 * paint of the thinner one would call it original where it is cut back by the other.
 */
export function leastByFinish<Judged>(
  { facts }: GatheredPanel,
  context: CarContext,
  judge: (context: CarContext) => Judged,
  budgetOf: (judged: Judged) => Micrometres,
): Judged {
  const asSaid = judge(context);
  if (facts.finish !== 'unknown') return asSaid;
  return context.byFinish
    .filter((baseline) => !isSameBaseline(baseline, context.baseline))
    .map((baseline) => judge({ ...context, baseline }))
    .reduce((least, one) => (budgetOf(one) < budgetOf(least) ? one : least), asSaid);
}

type Pool = CarContext['pool'];

const poolOf = (panels: readonly GatheredFilm[], leastVariance: number, model: FilmModel): Pool =>
  new Map(
    panels.map(({ panel, facts, points, statistics }) => [
      panel.id,
      {
        mean: putBack(statistics.mean, facts),
        spread: panelSpread(points, leastVariance, model.measurement),
      },
    ]),
  );

const without = (pool: Pool, isOut: (id: string) => boolean): Pool =>
  new Map([...pool].filter(([id]) => !isOut(id)));

/**
 * Panels in two zones, by the spread of the other panels of factory film. A panel that might be in two
 * itself is no witness against another: its spread would hide both.
 */
function zonesOf(
  gathered: readonly GatheredPanel[],
  factory: Pool,
  baseline: CarBaseline | null,
  model: FilmModel,
): { readonly zones: CarContext['zones']; readonly zoneSpread: Spread } {
  const suspects = gathered.filter(
    (panel) => mayBeInZones(panel, model) && !isOnFiller(panel, baseline, model),
  );
  const suspected = new Set(suspects.map(({ panel }) => panel.id));
  const prior = poolPrior(
    without(factory, (id) => suspected.has(id)),
    model,
  );
  const zoneSpread = {
    sd: micrometres(Math.sqrt(prior.variance)),
    // An assumption is no more evidence than its weight.
    dof: Number.isFinite(prior.dofCeiling) ? prior.dofCeiling : prior.dof,
  };
  const zones = new Map(
    suspects.flatMap((panel) => {
      const parted = splitZones(panel.points, zoneSpread.sd, model.zones);
      if (parted === undefined) return [];
      const parts = [parted.thinner, parted.thicker].map((points) => partOfPanel(panel, points));
      // Two levels of repaint are repaint: there is no part of it whose clear is known.
      return parts.some((part) => hasFactoryTotal(part, baseline, model))
        ? [[panel.panel.id, parted] as const]
        : [];
    }),
  );
  return { zones, zoneSpread };
}

/** Whether its points lie so that it is in two zones, if film varies little over the other panels. */
export const mayBeInZones = (panel: GatheredPanel, { zones }: FilmModel): boolean =>
  isRead(panel) && splitZones(panel.points, 0, zones) !== undefined;

/**
 * Filler was painted over, and clear is sprayed over more than the repair: whatever its other points read, they are no
 * zone of factory film.
 */
const isOnFiller = (
  panel: GatheredPanel,
  baseline: CarBaseline | null,
  model: FilmModel,
): boolean =>
  isRead(panel) &&
  totalFindings(panel, baseline, model).some(({ condition }) => condition === 'filler');

/** Where a panel might be cut in two; null where it may not, or where both parts would be repaint. */
export function possibleCut(
  panel: GatheredPanel,
  baseline: CarBaseline | null,
  model: FilmModel,
): ZoneCut | null {
  const cut = bestCut(panel.points, model.zones);
  if (cut === undefined) return null;
  const partOf = (values: readonly number[]): GatheredFilm =>
    partOfPanel(
      panel,
      panel.points.filter(({ thickness }) => values.includes(thickness)),
    );
  const isFactory = [cut.lower, cut.upper].some((values) =>
    hasFactoryTotal(partOf(values), baseline, model),
  );
  return isFactory ? cut : null;
}

/** A panel's own spread: at least what the gauge puts there, and more where points are curved. */
export function panelSpread(
  points: readonly PanelPoint[],
  leastVariance: number,
  { curvature }: FilmModel['measurement'],
): OwnSpread {
  const curved = points.filter((point) => point.curved).length / Math.max(1, points.length);
  return ownSpread(thicknesses(points), leastVariance + curved * curvature ** 2);
}

function poolPrior(pool: Pool, model: FilmModel): SpreadPrior {
  const witnesses = [...pool.values()];
  return spreadPrior(
    witnesses.map(({ spread }) => spread),
    witnesses.map(({ mean }) => mean),
    model.spread,
  );
}

/** Conditions that the total film alone decides. */
export function totalFindings(
  { panel, facts, points, otherPoints, statistics, overRange, overRest }: GatheredFilm,
  car: CarBaseline | null,
  model: FilmModel,
): readonly Finding[] {
  const baseline = baselineFor(car, { panel, facts })?.value ?? null;
  const read = { panel, facts, ...statistics, points, otherPoints, overRange, baseline };
  return filmFindings({ ...read, overRest: overRest ?? null }, model.conditions);
}

const hasFactoryTotal = (
  panel: GatheredFilm,
  baseline: CarBaseline | null,
  model: FilmModel,
): boolean =>
  totalFindings(panel, baseline, model).every(({ condition }) => isFactoryFilm(condition));

/** Flags rest on the other panels' spread; with too few of them, on the panel's own points. */
export function standingOut(
  { panel, points }: GatheredPanel,
  { pool }: CarContext,
  model: FilmModel,
): OutlyingPoints {
  const others = [...pool].flatMap(([id, { spread }]) => (id === panel.id ? [] : [spread]));
  return outlyingPoints(points, pooledSpread(others, model.spread), model.flagRisk);
}
