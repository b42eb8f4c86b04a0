/** The three limits on what may come off a panel of factory film: its clear, its life, its total. */
import { roundTo } from '../../base/rounding.ts';
import { bare, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel, Finish, LimitPolicy, PanelFacts } from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import { countsForLife, lifeSpent } from './earlier-work.ts';
import { type LimitRoom, removalIn, type UnsaidLimit } from './limit.ts';
import type { TopcoatCase } from './topcoat-cases.ts';

/** How much risk is taken, and how well a removal can be foretold on this car. */
export type RemovalTerms = {
  readonly risk: number;
  readonly logSd: number;
  readonly policy: LimitPolicy;
  /** The user's own floor for the total film, or null for the built-in one. */
  readonly totalFloor: Micrometres | null;
};

const ZERO = micrometres(0);

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

/** What is known of the panel, and the film that it lacks to the others where it was cut back. */
export type LimitedPanel = {
  readonly film: PanelFilm;
  readonly facts: PanelFacts;
  readonly missing: Micrometres;
};

type Bound = Omit<UnsaidLimit, 'value'> & { readonly room: LimitRoom };

export const removalLimits = (
  panel: LimitedPanel,
  topcoat: TopcoatCase,
  terms: RemovalTerms,
  model: FilmModel,
): readonly UnsaidLimit[] =>
  [
    clearLimit(panel, topcoat, terms, model),
    lifeLimit(panel, terms, model),
    totalLimit(panel, terms, model),
  ].map((one) => ({ ...one, value: removalIn(one.room, terms.logSd) }));

function clearLimit(
  { facts }: LimitedPanel,
  { clear: { mean, sd }, clearFloor, finish }: TopcoatCase,
  { risk }: RemovalTerms,
  model: FilmModel,
): Bound {
  return {
    code: 'clear',
    room: { of: mean, less: clearFloor, sd, risk },
    said: () => {
      const thinnest = roundTo(100 * model.topcoat.thinnestShare, 1);
      const clearName = finish === 'single-stage' ? 'topcoat' : 'clear';
      return says`${clearName} on the thinnest ${thinnest} %${clearBasis(facts)}: ${bare(Math.max(0, mean))} ± ${um(sd)} expected, ${bare(clearFloor)} must stay`;
    },
  };
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
function lifeLimit(
  { facts, missing }: LimitedPanel,
  { risk }: RemovalTerms,
  { limits, earlier }: FilmModel,
): Bound {
  const life = facts.finish === 'single-stage-solid' ? limits.lifeSolid : limits.life;
  const { mean: before, sd } = lifeSpent(facts, missing, earlier);
  return {
    code: 'life',
    room: { of: life, less: before, sd, risk },
    said: () => {
      const { recorded, taken } = facts;
      const record =
        recorded === null
          ? ''
          : says`, ${um(recorded.mean)} by the ${recorded.by ?? 'film record'}`;
      const assumed = taken === null ? 'taken to be ' : '';
      const lacking =
        missing > 0 && countsForLife(facts)
          ? says`, ${um(missing)} as what it lacks against the baseline`
          : '';
      return says`at most ${um(life)} off over the panel's life, ${um(before)} of it ${assumed}gone${record}${lacking}`;
    },
  };
}

function totalLimit(
  { film: { smallest }, facts }: LimitedPanel,
  terms: RemovalTerms,
  { limits }: FilmModel,
): Bound {
  const floor = totalFloor(facts.finish, terms.totalFloor, limits);
  return {
    code: 'total',
    room: { of: smallest, less: floor, sd: ZERO, risk: limits.totalFloorRiskPct / 100 },
    said: () => says`smallest point reads ${um(smallest)}, ${bare(floor, 0)} must stay`,
  };
}
