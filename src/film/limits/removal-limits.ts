/** The limits on what may come off a panel, each with what it allows, and the budget they leave. */
import { type Remark, spoken } from '../../base/remark.ts';
import { roundTo } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type {
  FilmModel,
  Finish,
  LayerPrior,
  LayerThickness,
  LimitPolicy,
  PanelFacts,
  RecordedRemoval,
} from '../film-model.ts';
import type { Spread } from '../spread.ts';
import { ceilingAllowance, clearAllowance } from './removal-risk.ts';
import {
  type LayerKnowledge,
  meanClear,
  NO_ZINC,
  type ThinClear,
  type TotalFilm,
  thinClear,
} from './thin-clear.ts';

/** A topcoat as it may be: its prior, its floor and the limit over the panel's life. */
export type TopcoatCase = {
  readonly finish: 'clear-over-base' | 'single-stage';
  readonly clear: ThinClear;
  /** Mean over the panel, where `clear` speaks of the thinnest part. */
  readonly meanClear: LayerThickness;
  readonly clearFloor: Micrometres;
  /** What both were told from. */
  readonly told: { readonly film: TotalFilm; readonly knowledge: LayerKnowledge };
};

export type LimitCode =
  | 'clear'
  | 'life'
  | 'total'
  | 'readings'
  | 'finish'
  | 'covered'
  | 'fresh-paint'
  | 'test-spot'
  | 'sound-panels'
  | 'no-data';

/** A limit and the largest median removal it allows. */
export type Limit = Remark & { readonly code: LimitCode; readonly value: Micrometres };

const limit = (code: LimitCode, said: string | Sentence, value: Micrometres): Limit => ({
  code,
  ...spoken(said),
  value,
});

export type PanelFilm = {
  readonly mean: Micrometres;
  readonly smallest: Micrometres;
  readonly count: number;
  readonly spread: Spread;
  readonly calibration: Micrometres;
};

/** How much risk is taken, and how well a removal can be foretold on this car. */
export type RemovalTerms = {
  readonly risk: number;
  readonly logSd: number;
  readonly policy: LimitPolicy;
  /** The user's own floor for the total film, or null for the built-in one. */
  readonly totalFloor: Micrometres | null;
};

const ZERO = micrometres(0);

const NOTHING_RECORDED: RecordedRemoval = { mean: ZERO, sd: ZERO };

/**
 * Clear already gone: stated, else assumed; what visits on record took besides; on a cut-back panel
 * also what is missing.
 */
export function clearTaken(
  { taken, recorded }: PanelFacts,
  missing: Micrometres,
  model: FilmModel['earlier'],
): RecordedRemoval {
  const { mean, sd } = recorded ?? NOTHING_RECORDED;
  return { mean: micrometres((taken ?? model.unknownClear) + mean + Math.max(0, missing)), sd };
}

/** The topcoats the panel may carry: one when the finish is known, both when it is not. */
export function topcoatCases(
  film: PanelFilm,
  facts: PanelFacts,
  taken: RecordedRemoval,
  policy: LimitPolicy,
  model: FilmModel,
): readonly TopcoatCase[] {
  const { layers, limits, stated } = model;
  const clearOf = (prior: LayerPrior): Pick<TopcoatCase, 'clear' | 'meanClear' | 'told'> => {
    const total = { ...film, taken };
    const knowledge = {
      ...prior,
      statedClear: facts.clear,
      statedUnder: facts.under,
      zinc: facts.galvanised ? zincOf(layers) : NO_ZINC,
      panelToPanel: stated.panelToPanel,
    };
    return {
      clear: thinClear(total, knowledge, model.topcoat),
      meanClear: meanClear(total, knowledge, model.topcoat),
      told: { film: total, knowledge },
    };
  };
  const clearOverBase = (): TopcoatCase => ({
    finish: 'clear-over-base',
    ...clearOf(layers.clearOverBase),
    clearFloor: policy === 'strict' ? limits.clearFloorStrict : limits.clearFloor,
  });
  const singleStage = (): TopcoatCase => ({
    finish: 'single-stage',
    ...clearOf(layers.singleStage),
    clearFloor: limits.singleStageFloor,
  });
  if (facts.finish === 'clear-over-base' || facts.finish === 'matte') return [clearOverBase()];
  return facts.finish === 'unknown' ? [clearOverBase(), singleStage()] : [singleStage()];
}

/** What galvanised steel reads more than bare steel does, and how much less surely. */
const zincOf = ({ galvanisedUnder, clearOverBase: { under } }: FilmModel['layers']) => ({
  mean: galvanisedUnder.mean - under.mean,
  variance: galvanisedUnder.sd ** 2 - under.sd ** 2,
});

/** Floor for the smallest point's total: the user's, else by finish (common practice, assumption). */
export const totalFloor = (
  finish: Finish,
  stated: Micrometres | null,
  model: FilmModel['limits'],
): Micrometres =>
  stated ??
  (finish === 'clear-over-base' || finish === 'unknown' || finish === 'matte'
    ? model.totalFloor
    : model.totalFloorSingleStage);

/** The three limits of a panel of sound factory film. */
export function removalLimits(
  film: PanelFilm,
  facts: PanelFacts,
  topcoat: TopcoatCase,
  terms: RemovalTerms,
  model: FilmModel,
): readonly Limit[] {
  const { limits } = model;
  const floor = totalFloor(facts.finish, terms.totalFloor, limits);
  const thinnest = roundTo(100 * model.topcoat.thinnestShare, 1);
  const clearName = topcoat.finish === 'single-stage' ? 'topcoat' : 'clear';
  return [
    limit(
      'clear',
      says`${clearName} on the thinnest ${thinnest} %${clearBasis(facts)}: ${bare(Math.max(0, topcoat.clear.mean))} ± ${um(topcoat.clear.sd)} expected, ${bare(topcoat.clearFloor)} must stay`,
      clearAllowance(topcoat.clear, topcoat.clearFloor, terms),
    ),
    lifeLimit(facts, terms, model),
    limit(
      'total',
      says`smallest point reads ${um(film.smallest)}, ${bare(floor, 0)} must stay`,
      ceilingAllowance(film.smallest - floor, {
        risk: limits.totalFloorRiskPct / 100,
        logSd: terms.logSd,
      }),
    ),
  ];
}

/** What the clear is told from, where it is not from the total alone. */
function clearBasis({ clear, under }: PanelFacts): string {
  if (clear?.within !== undefined) return ', as its own layer was read';
  const of = (one: { readonly of: 'panel' | 'car' }): string =>
    one.of === 'car' ? ' of the car' : '';
  const basis = [
    ...(clear === null ? [] : [`the clear stated${of(clear)}`]),
    ...(under === null ? [] : [`the total less what is stated${of(under)} under it`]),
  ];
  return basis.length === 0 ? '' : ` by ${basis.join(' and ')}`;
}

/** The most that may come off over the panel's life, less all that earlier work took. */
function lifeLimit(facts: PanelFacts, terms: RemovalTerms, model: FilmModel): Limit {
  const life = facts.finish === 'single-stage-solid' ? model.limits.lifeSolid : model.limits.life;
  const { mean, sd } = facts.recorded ?? NOTHING_RECORDED;
  const before = (facts.taken ?? model.earlier.unknownLife) + mean;
  const left = { mean: micrometres(life - before), sd };
  const record =
    facts.recorded === null ? '' : says`, ${um(mean)} by the ${facts.recorded.by ?? 'film record'}`;
  const assumed = facts.taken === null ? 'taken to be ' : '';
  return limit(
    'life',
    says`at most ${um(life)} off over the panel's life, ${um(before)} of it ${assumed}gone${record}`,
    sd > 0 ? clearAllowance(left, ZERO, terms) : ceilingAllowance(left.mean, terms),
  );
}

/** Reasons that allow nothing at all, whatever the film. */
export function outrightLimits(
  facts: PanelFacts,
  state: { readonly points: number; readonly isFactoryFilm: boolean; readonly unread: boolean },
  { freshPaintDays, reading }: Pick<FilmModel, 'freshPaintDays' | 'reading'>,
): readonly Limit[] {
  const limits: Limit[] = [];
  const nothing = (code: LimitCode, text: string): void => {
    limits.push(limit(code, text, ZERO));
  };
  if (state.unread) nothing('no-data', 'nothing is known of the film, a test spot comes first');
  if (facts.covered)
    nothing('covered', 'covered by film, wrap or coating: not paint to be polished');
  if (facts.finish === 'matte') nothing('finish', 'a matte finish is never polished');
  if (facts.paintedDaysAgo !== null && facts.paintedDaysAgo < freshPaintDays) {
    nothing('fresh-paint', `painted ${facts.paintedDaysAgo} days ago, under ${freshPaintDays}`);
  }
  if (!state.unread && !state.isFactoryFilm && !facts.covered) {
    nothing('test-spot', 'the total says nothing of refinish clear, a test spot comes first');
  }
  if (!state.unread && state.points === 1) {
    nothing(
      'readings',
      `one point is no basis for machine work: read at least ${reading.leastPoints}, best ${reading.bestPoints}`,
    );
  }
  return limits;
}

/** The smallest allowance binds; equal ones, the first. */
export function bindingLimit(limits: readonly Limit[]): Limit {
  const [first, ...rest] = limits;
  if (first === undefined) throw new Error('a panel has at least one limit');
  return rest.reduce((least, limit) => (limit.value < least.value ? limit : least), first);
}
