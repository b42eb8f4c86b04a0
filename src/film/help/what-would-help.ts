/**
 * What would let more come off a panel at the same risk: each thing that could still be learned by itself, and how
 * much more might go if it comes out as expected. All limits are kept, so that a gain ends at the next of them.
 *
 * Computed by assessing the panel again with that one thing known, never from a table; a panel near its line is held to
 * both sides of it again. A gain that would be written as nought is none; only what a checked gauge would gain is told
 * however little it is, as that is asked first and thought to be more.
 */
import { type Micrometres, type Minutes, micrometres } from '../../base/units.ts';
import { isFactoryFilm } from '../condition/condition.ts';
import type { LineComparison } from '../condition/line-comparison.ts';
import { onTheOtherSide } from '../condition/other-side.ts';
import { overBothSides } from '../condition/over-both-sides.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import { unsaidAllowance } from '../limits/allowance.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import type { TopcoatCase } from '../limits/topcoat-cases.ts';
import { doubtAboutWhatIsLeft } from '../limits/variance-of-left.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelSurvey } from '../survey.ts';
import { chanceAfter, chanceWithExactGauge } from './measured-again.ts';

export type HelpCode = 'history' | 'clear' | 'test-spot' | 'zinc' | 'points' | 'gauge';

export type Help = {
  readonly code: HelpCode;
  /** Change of the budget; of `zinc` below 0, as it can only take away. */
  readonly gain: Micrometres;
  /** Time it takes on this panel; null where it is not a matter of measuring. */
  readonly time: Minutes | null;
  /** Points to come to, for `points`. */
  readonly points: number | null;
  /** Share of the doubt about what is left that the gauge is, for `gauge`. */
  readonly doubtShare?: number;
  /** Of a panel near its line, for `clear`: the gain where the clear reads as its word has it, not as both sides. */
  readonly gainByWord?: Micrometres;
  /** For `test-spot`: whether the patch takes more than may go from this panel, so that it is made on another. */
  readonly isElsewhere?: boolean;
};

export type HelpTerms = {
  readonly removal: RemovalTerms;
  /** ln-SD of a removal once a good test spot was made on this paint. */
  readonly logSdAfterSpot: number;
  /** What the patch of such a spot loses; null where there is nothing to make it with. */
  readonly spotTakes: Micrometres | null;
  /** Whether somebody said if the steel is galvanised. */
  readonly zincKnown: boolean;
  /** Whether a gauge file says what the gauge is worth. */
  readonly gaugeKnown: boolean;
};

/** A panel of factory film that was read. */
type ReadPanel = PanelSurvey & { readonly film: PanelFilm; readonly topcoat: TopcoatCase };

/** One thing more known of a panel. */
type Known = {
  readonly facts?: Partial<PanelFacts>;
  readonly film?: PanelFilm;
  readonly terms?: Partial<RemovalTerms>;
  /** Chance that a panel near its line lies on the other side. */
  readonly chance?: (deciding: LineComparison) => number;
};

/** Ordered by gain. Nothing for panels of which the total says nothing, or that are left alone anyway. */
export function whatWouldHelp(
  panel: PanelSurvey,
  terms: HelpTerms,
  model: FilmModel,
): readonly Help[] {
  if (!isReadFactoryFilm(panel)) return [];
  const gainOf = (known: Known): Micrometres =>
    micrometres(budgetWith(known, panel, terms.removal, model) - panel.budget);
  const all = [
    ...historyHelp(panel, gainOf),
    ...clearHelp(panel, gainOf, terms, model),
    ...spotHelp(panel, gainOf, terms, model),
    ...zincHelp(panel, gainOf, terms),
    ...pointsHelp(panel, gainOf, model),
  ].filter(({ gain }) => Math.abs(gain) >= LEAST_GAIN);
  return [...all, ...gaugeHelp(panel, gainOf, terms, model)].sort((a, b) => b.gain - a.gain);
}

/** Less is written as nought. */
const LEAST_GAIN = 0.005;

const isReadFactoryFilm = (panel: PanelSurvey): panel is ReadPanel =>
  panel.film !== null &&
  panel.topcoat !== null &&
  [panel.condition, ...panel.also].every(isFactoryFilm);

/** What might go with one thing more known, on both sides of the line that a panel is near. */
function budgetWith(
  known: Known,
  panel: ReadPanel,
  removal: RemovalTerms,
  model: FilmModel,
): Micrometres {
  const film = known.film ?? panel.film;
  const facts = { ...panel.facts, ...known.facts };
  const terms = { ...removal, ...known.terms };
  const conditions = [panel.condition, ...panel.also];
  const { sureness, otherSide, baseline } = panel;
  const here = unsaidAllowance(
    { film, facts, points: film.count, conditions, baseline },
    terms,
    model,
  );
  if (sureness === null || otherSide === null || otherSide.overBoth === null) return here.budget;
  const { deciding } = sureness;
  const there = unsaidAllowance(onTheOtherSide({ ...panel, facts }, deciding, film), terms, model);
  if (there.budget >= here.budget) return here.budget;
  const chance = known.chance?.(deciding) ?? deciding.otherSide;
  return overBothSides(here, there, chance, terms).workTo;
}

type GainOf = (known: Known) => Micrometres;

const historyHelp = ({ facts }: ReadPanel, gainOf: GainOf): readonly Help[] =>
  facts.taken === null
    ? [
        {
          code: 'history',
          gain: gainOf({ facts: { taken: micrometres(0) } }),
          time: null,
          points: null,
        },
      ]
    : [];

/** The expected value of a clear that somebody reads is that of today; only the doubt about it goes. */
function clearHelp(
  panel: ReadPanel,
  gainOf: GainOf,
  { removal }: HelpTerms,
  model: FilmModel,
): readonly Help[] {
  if (panel.facts.clear !== null) return [];
  const gainAt = (mean: Micrometres): Micrometres =>
    gainOf({ facts: { clear: { mean, sd: model.stated.clearSd, of: 'panel' } } });
  const isNear = panel.otherSide !== null && panel.otherSide.overBoth !== null;
  return [
    {
      code: 'clear',
      gain: gainAt(expectedClear(panel, removal, model)),
      time: model.measuring.clearTime,
      points: null,
      ...(isNear ? { gainByWord: gainAt(panel.topcoat.meanClear.mean) } : {}),
    },
  ];
}

/** Over both sides of the line that a panel is near, by the chance of either. */
function expectedClear(panel: ReadPanel, removal: RemovalTerms, model: FilmModel): Micrometres {
  const { topcoat, sureness, otherSide, film } = panel;
  const here = topcoat.meanClear.mean;
  if (sureness === null || otherSide === null || otherSide.overBoth === null) return here;
  const { deciding } = sureness;
  const there = unsaidAllowance(onTheOtherSide(panel, deciding, film), removal, model).topcoat;
  const other = there?.meanClear.mean ?? here;
  return micrometres(here + deciding.otherSide * (other - here));
}

/** What a patch loses is lost there alone: it takes nothing from what the panels gain. */
const spotHelp = (
  { budget }: ReadPanel,
  gainOf: GainOf,
  { removal, logSdAfterSpot, spotTakes }: HelpTerms,
  { measuring }: FilmModel,
): readonly Help[] =>
  logSdAfterSpot < removal.logSd
    ? [
        {
          code: 'test-spot',
          gain: gainOf({ terms: { logSd: logSdAfterSpot } }),
          time: measuring.testSpotTime,
          points: null,
          isElsewhere: spotTakes !== null && budget < spotTakes,
        },
      ]
    : [];

const zincHelp = (
  { facts, panel }: ReadPanel,
  gainOf: GainOf,
  { zincKnown }: HelpTerms,
): readonly Help[] =>
  zincKnown || facts.galvanised || panel.substrate !== 'steel'
    ? []
    : [{ code: 'zinc', gain: gainOf({ facts: { galvanised: true } }), time: null, points: null }];

function pointsHelp(
  { film, points }: ReadPanel,
  gainOf: GainOf,
  model: FilmModel,
): readonly Help[] {
  return nextCount(film.count, model).map((count) => ({
    code: 'points',
    gain: gainOf({
      film: withPoints(film, count),
      chance: (deciding) =>
        chanceAfter(deciding, points, { count, checked: false }) ?? deciding.otherSide,
    }),
    time: times(model.measuring.pointTime, count - film.count),
    points: count,
  }));
}

/** What a gauge without any error would free. */
function gaugeHelp(
  panel: ReadPanel,
  gainOf: GainOf,
  { removal, gaugeKnown }: HelpTerms,
  model: FilmModel,
): readonly Help[] {
  if (gaugeKnown || panel.budget === 0) return [];
  const { topcoat, budget, film } = panel;
  const doubt = doubtAboutWhatIsLeft(
    topcoat,
    { median: budget, logSd: removal.logSd },
    model.topcoat,
  );
  return [
    {
      code: 'gauge',
      gain: gainOf({
        film: { ...film, calibration: micrometres(0) },
        chance: chanceWithExactGauge,
      }),
      time: null,
      points: null,
      doubtShare: doubt.find(({ source }) => source === 'gauge')?.share ?? 0,
    },
  ];
}

/** From few points to the best count, from there to the most that is worth its time. */
function nextCount(count: number, { reading }: FilmModel): readonly number[] {
  const { leastPoints, bestPoints, mostPoints } = reading;
  return [leastPoints, bestPoints, mostPoints].filter((next) => next > count).slice(0, 1);
}

/** More points that agree with those there are. */
const withPoints = (film: PanelFilm, count: number): PanelFilm => ({
  ...film,
  count,
  spread: { ...film.spread, dof: film.spread.dof + count - film.count },
});

const times = (each: Minutes, count: number): Minutes => (each * count) as Minutes;
