/** The limits on what may come off a panel, each with what it allows, and the budget they leave. */
import { shown } from '../base/rounding.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { FilmModel, Finish, LayerPrior, LimitPolicy, PanelFacts } from './film-model.ts';
import { ceilingAllowance, clearAllowance } from './removal-risk.ts';
import type { Spread } from './spread.ts';
import { type ThinClear, thinClear } from './thin-clear.ts';

/** A topcoat as it may be: its prior, its floor and the limit over the panel's life. */
export type TopcoatCase = {
  readonly finish: 'clear-over-base' | 'single-stage';
  readonly clear: ThinClear;
  readonly clearFloor: Micrometres;
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
  | 'no-data';

/** A limit and the largest median removal it allows. */
export type Limit = {
  readonly code: LimitCode;
  readonly text: string;
  readonly value: Micrometres;
};

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
/** The trade compares the smallest point after the removal's own upper 95 %. */
const TOTAL_FLOOR_RISK = 0.05;

/** Clear already gone: on record or stated, else assumed; on a cut-back panel also what is missing. */
export const clearTaken = (
  facts: PanelFacts,
  missing: Micrometres,
  model: FilmModel['earlier'],
): Micrometres => micrometres((facts.taken ?? model.unknownClear) + Math.max(0, missing));

/** The topcoats the panel may carry: one when the finish is known, both when it is not. */
export function topcoatCases(
  film: PanelFilm,
  facts: PanelFacts,
  taken: Micrometres,
  policy: LimitPolicy,
  model: FilmModel,
): readonly TopcoatCase[] {
  const under = facts.galvanised ? model.layers.galvanisedUnder : model.layers.clearOverBase.under;
  const clearOverBase = (): TopcoatCase => ({
    finish: 'clear-over-base',
    clear: thinClear({ ...film, taken }, { top: model.layers.clearOverBase.top, under }),
    clearFloor: policy === 'strict' ? model.limits.clearFloorStrict : model.limits.clearFloor,
  });
  const singleStage = (prior: LayerPrior = model.layers.singleStage): TopcoatCase => ({
    finish: 'single-stage',
    clear: thinClear({ ...film, taken }, prior),
    clearFloor: model.limits.singleStageFloor,
  });
  if (facts.finish === 'clear-over-base' || facts.finish === 'matte') return [clearOverBase()];
  return facts.finish === 'unknown' ? [clearOverBase(), singleStage()] : [singleStage()];
}

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
  const { limits, earlier } = model;
  const life = facts.finish === 'single-stage-solid' ? limits.lifeSolid : limits.life;
  const before = facts.taken ?? earlier.unknownLife;
  const floor = totalFloor(facts.finish, terms.totalFloor, limits);
  const clearName = topcoat.finish === 'single-stage' ? 'topcoat' : 'clear';
  return [
    {
      code: 'clear',
      text: `${clearName} on the thinnest 5 %: ${shown(Math.max(0, topcoat.clear.mean), 1)} ± ${shown(topcoat.clear.sd, 1)} µm expected, ${shown(topcoat.clearFloor, 1)} must stay`,
      value: clearAllowance(topcoat.clear, topcoat.clearFloor, terms),
    },
    {
      code: 'life',
      text: `at most ${shown(life, 1)} µm off over the panel's life, ${shown(before, 1)} µm of it ${facts.taken === null ? 'taken to be' : ''} gone`.replace(
        '  ',
        ' ',
      ),
      value: ceilingAllowance(life - before, terms),
    },
    {
      code: 'total',
      text: `smallest point reads ${shown(film.smallest, 1)} µm, ${shown(floor, 0)} must stay`,
      value: ceilingAllowance(film.smallest - floor, {
        risk: TOTAL_FLOOR_RISK,
        logSd: terms.logSd,
      }),
    },
  ];
}

/** Reasons that allow nothing at all, whatever the film. */
export function outrightLimits(
  facts: PanelFacts,
  state: { readonly points: number; readonly isFactoryFilm: boolean; readonly unread: boolean },
  freshPaintDays: number,
): readonly Limit[] {
  const limits: Limit[] = [];
  const nothing = (code: LimitCode, text: string): void => {
    limits.push({ code, text, value: ZERO });
  };
  if (state.unread) nothing('no-data', 'nothing is known of the film, a test spot comes first');
  if (facts.covered)
    nothing('covered', 'covered by film, wrap or coating: not paint to be polished');
  if (facts.finish === 'matte') nothing('finish', 'a matte finish is never polished');
  if (facts.paintedDaysAgo !== null && facts.paintedDaysAgo < freshPaintDays) {
    nothing('fresh-paint', `painted ${facts.paintedDaysAgo} days ago, under ${freshPaintDays}`);
  }
  if (!state.unread && !state.isFactoryFilm) {
    nothing('test-spot', 'the total says nothing of refinish clear, a test spot comes first');
  }
  if (!state.unread && state.points === 1) {
    nothing('readings', 'one point is no basis for machine work: read at least 3, best 5');
  }
  return limits;
}

/** The smallest allowance binds; equal ones, the first. */
export function bindingLimit(limits: readonly Limit[]): Limit {
  const [first, ...rest] = limits;
  if (first === undefined) throw new Error('a panel has at least one limit');
  return rest.reduce((least, limit) => (limit.value < least.value ? limit : least), first);
}
