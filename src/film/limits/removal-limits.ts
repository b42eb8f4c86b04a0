/** The three limits on what may come off a panel of factory film: its clear, its life, its total. */
import { LEAST_TENTH, roundTo } from '../../base/rounding.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { Condition } from '../condition/condition.ts';
import type { FilmModel, Finish, LimitPolicy, PanelFacts } from '../film-model.ts';
import type { PanelFilm } from '../panel-film.ts';
import { zincOf } from '../zinc.ts';
import { clearExpected } from './clear-expected.ts';
import { countsForLife, lifeSpent } from './earlier-work.ts';
import { type LimitRoom, removalIn, type UnsaidLimit } from './limit.ts';
import type { TopcoatCase } from './topcoat-cases.ts';
import { topcoatAllowance } from './topcoat-risk.ts';

/** How much risk is taken, and how well a removal can be foretold on this car. */
export type RemovalTerms = {
  readonly risk: number;
  readonly logSd: number;
  readonly policy: LimitPolicy;
  /** The user's own floor for the total film, or null for the built-in one. */
  readonly totalFloor: Micrometres | null;
};

const ZERO = micrometres(0);

/** Floor for the paint at the smallest point: the user's, else by finish (common practice, assumption). */
const paintFloor = (
  finish: Finish,
  stated: Micrometres | null,
  limits: FilmModel['limits'],
): Micrometres =>
  stated ??
  (finish === 'clear-over-base' || finish === 'unknown' || finish === 'matte'
    ? limits.totalFloor
    : limits.totalFloorSingleStage);

/** What a gauge reads of zinc: on galvanised steel so much of a total is no paint. */
export const zincRead = (
  { galvanised }: Pick<PanelFacts, 'galvanised'>,
  { layers }: Pick<FilmModel, 'layers'>,
): Micrometres => micrometres(galvanised ? zincOf(layers).mean : 0);

/** What the smallest point must read: that floor, and the zinc that is read with it. */
export const totalFloor = (
  facts: Pick<PanelFacts, 'finish' | 'galvanised'>,
  stated: Micrometres | null,
  model: Pick<FilmModel, 'limits' | 'layers'>,
): Micrometres =>
  micrometres(paintFloor(facts.finish, stated, model.limits) + zincRead(facts, model));

/** What is known of the panel, and the film that it lacks to the others, as likely as it was cut back. */
export type LimitedPanel = {
  readonly film: PanelFilm;
  readonly facts: PanelFacts;
  readonly conditions: readonly Condition[];
  readonly missing: Micrometres;
};

export const removalLimits = (
  panel: LimitedPanel,
  topcoat: TopcoatCase,
  terms: RemovalTerms,
  model: FilmModel,
): readonly UnsaidLimit[] => [
  clearLimit(panel, topcoat, terms, model),
  lifeLimit(panel, terms, model),
  totalLimit(panel, terms, model),
];

/** Over all that the panel may be, each by its chance; of one that is near its line it is that which holds it back. */
function clearLimit(
  { facts, conditions }: LimitedPanel,
  topcoat: TopcoatCase,
  { risk, logSd }: RemovalTerms,
  model: FilmModel,
): UnsaidLimit {
  const { clear, clearFloor, finish, besides } = topcoat;
  const isNear = besides.some(({ chance }) => chance > model.conditions.nearRisk);
  return {
    code: isNear ? 'near-line' : 'clear',
    value: topcoatAllowance(topcoat, { risk, logSd }),
    room: { of: clear.mean, less: clearFloor, sd: clear.sd, risk },
    said: () => {
      const thinnest = roundTo(100 * model.topcoat.thinnestShare, 1);
      const clearName = finish === 'single-stage' ? 'topcoat' : 'clear';
      const near = isNear ? 'near its line: ' : '';
      return says`${near}${clearName} on the thinnest ${thinnest} %${clearBasis(facts, topcoat)}: ${clearExpected(topcoat, conditions)}`;
    },
  };
}

/** What the clear is told from, where it is not from the total alone. */
function clearBasis({ clearElsewhere }: PanelFacts, { told, apart }: TopcoatCase): Sentence {
  const { statedClear: clear, statedUnder: under } = told.knowledge;
  if (clear?.withStated) {
    return says` by the clear as stated and as read${clear.of === 'car' ? ' on other panels' : ''}`;
  }
  const read = clearElsewhere?.find(({ panels }) => panels === clear?.readOn);
  if (read !== undefined) {
    const { mean, sd, panels } = read;
    const beside = under === null ? '' : ' and by what is stated under it';
    return says` by the clear of the car as read on ${panels} ${panels === 1 ? 'panel' : 'panels'} (${bare(mean)} ± ${um(sd)})${beside}`;
  }
  if (clear?.within !== undefined) return says`, as its own layer was read`;
  const of = (one: { readonly of: 'panel' | 'car' }): string =>
    one.of === 'car' ? ' of the car' : '';
  const basis = [
    ...(clear === null ? [] : [`the clear stated${of(clear)}`]),
    ...(under === null ? [] : [`the total less what is stated${of(under)} under it`]),
  ];
  if (apart !== undefined && basis.length === 0) return says` by the total, not by what is stated`;
  return basis.length === 0 ? says`` : says` by ${basis.join(' and ')}`;
}

/** What the panel's life and its total allow, whatever its clear: the smaller of the two. */
export const mostBesideClear = (
  panel: LimitedPanel,
  terms: RemovalTerms,
  model: FilmModel,
): Micrometres =>
  micrometres(
    Math.min(
      removalIn(lifeRoom(panel, terms, model), terms.logSd),
      removalIn(totalRoom(panel, terms, model), terms.logSd),
    ),
  );

/** The most that may come off over the panel's life, less all that earlier work took. */
function lifeRoom(
  { facts, missing }: LimitedPanel,
  { risk }: RemovalTerms,
  { limits, earlier }: FilmModel,
): LimitRoom {
  const life = facts.finish === 'single-stage-solid' ? limits.lifeSolid : limits.life;
  const { mean: before, sd } = lifeSpent(facts, missing, earlier);
  return { of: life, less: before, sd, risk };
}

function lifeLimit(panel: LimitedPanel, terms: RemovalTerms, model: FilmModel): UnsaidLimit {
  const { facts, missing, conditions } = panel;
  const room = lifeRoom(panel, terms, model);
  return {
    code: 'life',
    value: removalIn(room, terms.logSd),
    room,
    said: () => {
      const { of: life, less: before } = room;
      const { recorded, taken } = facts;
      const record =
        recorded === null
          ? ''
          : says`, ${um(recorded.mean)} by the ${recorded.by ?? 'film record'}`;
      const assumed = taken === null ? 'taken to be ' : '';
      const lacks = conditions.includes('cut-back') ? 'lacks' : 'may lack';
      const lacking =
        missing >= LEAST_TENTH && countsForLife(facts)
          ? says`, ${um(missing)} as what it ${lacks} against the baseline`
          : '';
      return says`at most ${um(life)} off over the panel's life, ${um(before)} of it ${assumed}gone${record}${lacking}`;
    },
  };
}

/** What the smallest point reads over the floor of the total. */
const totalRoom = (
  { film, facts }: LimitedPanel,
  terms: RemovalTerms,
  model: FilmModel,
): LimitRoom => ({
  of: film.smallest,
  less: totalFloor(facts, terms.totalFloor, model),
  sd: ZERO,
  risk: model.limits.totalFloorRiskPct / 100,
});

function totalLimit(panel: LimitedPanel, terms: RemovalTerms, model: FilmModel): UnsaidLimit {
  const { facts } = panel;
  const room = totalRoom(panel, terms, model);
  return {
    code: 'total',
    value: removalIn(room, terms.logSd),
    room,
    said: () => {
      const { of: smallest, less: floor } = room;
      const zinc = zincRead(facts, model);
      const ofIt = zinc > 0 ? says`, ${bare(zinc, 0)} of it zinc` : '';
      return says`smallest point reads ${um(smallest)}, ${bare(floor, 0)} must stay${ofIt}`;
    },
  };
}
