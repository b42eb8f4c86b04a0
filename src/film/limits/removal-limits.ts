/** The limits on what may come off a panel, each with what it allows, and the budget they leave. */
import { type Remark, spoken } from '../../base/remark.ts';
import { roundTo } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { daysAgo, needsUltrasound } from '../condition/condition.ts';
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
import type { Panel } from '../template/template.ts';
import { zincOf } from '../zinc.ts';
import { ceilingAllowance, clearAllowance } from './removal-risk.ts';
import {
  clearChain,
  type LayerKnowledge,
  NO_ZINC,
  type ThinClear,
  type TotalFilm,
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
  | 'near-line'
  | 'no-data';

/** What a limit leaves for a removal: film over a floor, or a ceiling less what is gone. */
export type LimitRoom = {
  readonly of: Micrometres;
  readonly less: Micrometres;
  /** SD of the film or of what is gone; 0 where it is exact. */
  readonly sd: Micrometres;
  /** Chance of passing it that is taken. */
  readonly risk: number;
};

export const roomLeft = ({ of, less }: LimitRoom): Micrometres => micrometres(of - less);

/** A limit and the largest median removal it allows; without a room it allows nothing whatever the film. */
export type Limit = Remark & {
  readonly code: LimitCode;
  readonly value: Micrometres;
  readonly room?: LimitRoom;
};

/** A limit before it is put into words: most cases that are asked for are asked for the budget alone. */
type UnsaidLimit = {
  readonly code: LimitCode;
  readonly room: LimitRoom;
  readonly said: () => Sentence;
};

/** By how much may be taken of its room. */
const limit = ({ code, room, said }: UnsaidLimit, logSd: number): Limit => ({
  code,
  ...spoken(said()),
  value: removalIn(room, logSd),
  room,
});

/** The largest median removal that keeps to a room. */
const removalIn = (room: LimitRoom, logSd: number): Micrometres =>
  room.sd > 0
    ? clearAllowance({ mean: roomLeft(room), sd: room.sd }, ZERO, { risk: room.risk, logSd })
    : ceilingAllowance(roomLeft(room), { risk: room.risk, logSd });

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
    const { onThinnest, overPanel } = clearChain(total, knowledge, model.topcoat);
    return {
      clear: onThinnest,
      meanClear: {
        mean: micrometres(overPanel.mean),
        sd: micrometres(Math.sqrt(overPanel.variance)),
      },
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
export const removalLimits = (
  film: PanelFilm,
  facts: PanelFacts,
  topcoat: TopcoatCase,
  terms: RemovalTerms,
  model: FilmModel,
): readonly Limit[] =>
  unsaidLimits(film, facts, topcoat, terms, model).map((one) => limit(one, terms.logSd));

/** The least that they allow. */
export const leastRemoval = (
  film: PanelFilm,
  facts: PanelFacts,
  topcoat: TopcoatCase,
  terms: RemovalTerms,
  model: FilmModel,
): Micrometres =>
  micrometres(
    Math.min(
      ...unsaidLimits(film, facts, topcoat, terms, model).map(({ room }) =>
        removalIn(room, terms.logSd),
      ),
    ),
  );

function unsaidLimits(
  film: PanelFilm,
  facts: PanelFacts,
  topcoat: TopcoatCase,
  terms: RemovalTerms,
  model: FilmModel,
): readonly UnsaidLimit[] {
  const { limits } = model;
  const { risk } = terms;
  const floor = totalFloor(facts.finish, terms.totalFloor, limits);
  const { mean, sd } = topcoat.clear;
  return [
    {
      code: 'clear',
      room: { of: mean, less: topcoat.clearFloor, sd, risk },
      said: () => {
        const thinnest = roundTo(100 * model.topcoat.thinnestShare, 1);
        const clearName = topcoat.finish === 'single-stage' ? 'topcoat' : 'clear';
        return says`${clearName} on the thinnest ${thinnest} %${clearBasis(facts)}: ${bare(Math.max(0, mean))} ± ${um(sd)} expected, ${bare(topcoat.clearFloor)} must stay`;
      },
    },
    lifeLimit(facts, terms, model),
    {
      code: 'total',
      room: { of: film.smallest, less: floor, sd: ZERO, risk: limits.totalFloorRiskPct / 100 },
      said: () => says`smallest point reads ${um(film.smallest)}, ${bare(floor, 0)} must stay`,
    },
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
function lifeLimit(facts: PanelFacts, terms: RemovalTerms, model: FilmModel): UnsaidLimit {
  const life = facts.finish === 'single-stage-solid' ? model.limits.lifeSolid : model.limits.life;
  const { mean, sd } = facts.recorded ?? NOTHING_RECORDED;
  const before = (facts.taken ?? model.earlier.unknownLife) + mean;
  return {
    code: 'life',
    room: { of: life, less: micrometres(before), sd, risk: terms.risk },
    said: () => {
      const record =
        facts.recorded === null
          ? ''
          : says`, ${um(mean)} by the ${facts.recorded.by ?? 'film record'}`;
      const assumed = facts.taken === null ? 'taken to be ' : '';
      return says`at most ${um(life)} off over the panel's life, ${um(before)} of it ${assumed}gone${record}`;
    },
  };
}

/** Reasons that allow nothing at all, whatever the film. */
export function outrightLimits(
  facts: PanelFacts,
  state: {
    readonly points: number;
    readonly isFactoryFilm: boolean;
    /** The panel where nothing was read of it. */
    readonly unread: Panel | null;
  },
  { freshPaintDays, reading }: Pick<FilmModel, 'freshPaintDays' | 'reading'>,
): readonly Limit[] {
  const limits: Limit[] = [];
  const nothing = (code: LimitCode, text: string): void => {
    limits.push({ code, ...spoken(text), value: ZERO });
  };
  if (state.unread !== null) nothing('no-data', whyUnread(state.unread));
  if (facts.covered)
    nothing('covered', 'covered by film, wrap or coating: not paint to be polished');
  if (facts.finish === 'matte') nothing('finish', 'a matte finish is never polished');
  if (facts.paintedDaysAgo !== null && facts.paintedDaysAgo < freshPaintDays) {
    nothing('fresh-paint', `painted ${daysAgo(facts.paintedDaysAgo)}, under ${freshPaintDays}`);
  }
  if (state.unread === null && !state.isFactoryFilm && !facts.covered) {
    nothing('test-spot', 'the total says nothing of refinish clear, a test spot comes first');
  }
  if (state.unread === null && state.points === 1) {
    nothing(
      'readings',
      `one point is no basis for machine work: read at least ${reading.leastPoints}, best ${reading.bestPoints}`,
    );
  }
  return limits;
}

const whyUnread = (panel: Panel): string =>
  needsUltrasound(panel)
    ? `a gauge for metal reads no film on ${panel.substrate}`
    : 'nothing is known of it until it is read';

/** The smallest allowance binds; equal ones, the first. */
export function bindingLimit(limits: readonly Limit[]): Limit {
  const [first, ...rest] = limits;
  if (first === undefined) throw new Error('a panel has at least one limit');
  return rest.reduce((least, limit) => (limit.value < least.value ? limit : least), first);
}
