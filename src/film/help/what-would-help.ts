/**
 * What would let more come off a panel at the same risk: each thing that could still be learned by itself, and how
 * much more might go if it comes out as expected. All limits are kept, so that a gain ends at the next of them.
 *
 * Computed by assessing the panel again with that one thing known, never from a table, over all that it may be. A gain that would be written as nought is none; only what a checked gauge would gain is told
 * however little it is, as that is asked first and thought to be more.
 */
import { LEAST_TOLD } from '../../base/rounding.ts';
import { type Micrometres, type Minutes, micrometres, plus } from '../../base/units.ts';
import { isFactoryFilm } from '../condition/condition.ts';
import { type ChanceOf, withChances, withLinesUp } from '../condition/possible-sides.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import { budgetOf, unsaidAllowance } from '../limits/allowance.ts';
import type { AllowanceCase } from '../limits/allowance-case.ts';
import type { RemovalTerms } from '../limits/removal-limits.ts';
import type { PlainTopcoat, TopcoatCase } from '../limits/topcoat-cases.ts';
import { doubtAboutWhatIsLeft, shareOf } from '../limits/variance-of-left.ts';
import type { PanelFilm } from '../panel-film.ts';
import type { PanelSurvey } from '../survey.ts';
import { heldBySpot } from './held-by-spot.ts';
import { chanceOfMore, chanceWithExactGauge } from './measured-again.ts';

export type HelpCode =
  | 'history'
  | 'clear'
  | 'test-spot'
  | 'zinc'
  | 'points'
  | 'read-again'
  | 'edge-point'
  | 'gauge';

export type Help = {
  readonly code: HelpCode;
  /** Change of the budget. */
  readonly gain: Micrometres;
  /** Time it takes on this panel; null where it is not a matter of measuring. */
  readonly time: Minutes | null;
  /** Points to come to, for `points`. */
  readonly points: number | null;
  /** Share of the doubt about what is left that the gauge is, for `gauge`. */
  readonly doubtShare?: number;
  /**
   * The gain where it comes out the other way: for `history`, that twice as much was `taken` as is assumed; for `clear`
   * of a panel near its line, that it reads as on the other side of it, of one that is held to the thin clear of others,
   * that it reads as factories paint (`asPainted`); for `read-again`, that it reads the same.
   */
  readonly otherwise?: {
    readonly gain: Micrometres;
    readonly taken?: Micrometres;
    readonly asPainted?: true;
  };
  /** For `test-spot`: whether the patch takes more than may go from this panel, so that it is made on another. */
  readonly isElsewhere?: boolean;
  /** For `read-again`: what it would change of the other parts of the car. */
  readonly elsewhere?: readonly PartGain[];
};

export type PartGain = { readonly part: PanelSurvey; readonly gain: Micrometres };

export type HelpTerms = {
  readonly removal: RemovalTerms;
  /** ln-SD of a removal once a good test spot was made on this paint. */
  readonly logSdAfterSpot: number;
  /** What the patch of such a spot loses; null where there is nothing to make it with. */
  readonly spotTakes: Micrometres | null;
  /** What might go were the car's steel galvanised; null where somebody said whether it is. */
  readonly withZinc: ((part: PanelSurvey) => Micrometres) | null;
  /** Whether a gauge file says what the gauge is worth. */
  readonly gaugeKnown: boolean;
  /** What points that stand out would free if they were read again; a matter of the whole car. */
  readonly readAgain: (part: PanelSurvey) => readonly Help[];
};

/** A panel of factory film that was read. */
type ReadPanel = PanelSurvey & { readonly film: PanelFilm; readonly topcoat: TopcoatCase };

/** One thing more known of a panel. */
type Known = {
  readonly facts?: Partial<PanelFacts>;
  readonly film?: PanelFilm;
  readonly terms?: Partial<RemovalTerms>;
  /** Chance that it lies on the other side of a line. */
  readonly chance?: ChanceOf;
  /** Put back on this panel and on all that it is compared with. */
  readonly putBackOnAll?: Micrometres;
};

/** Ordered by gain. Nothing for panels of which the total says nothing, or that are left alone anyway. */
export function whatWouldHelp(
  panel: PanelSurvey,
  terms: HelpTerms,
  model: FilmModel,
): readonly Help[] {
  if (!isReadFactoryFilm(panel)) return [];
  const held = heldBySpot(panel) ?? Number.POSITIVE_INFINITY;
  const gainOf = (known: Known): Micrometres =>
    micrometres(Math.min(held, budgetWith(known, panel, terms.removal, model)) - panel.budget);
  const all = [
    ...historyHelp(panel, gainOf, model),
    ...clearHelp(panel, gainOf, terms, model),
    ...spotHelp(panel, gainOf, terms, model),
    ...zincHelp(panel, terms),
    ...pointsHelp(panel, gainOf, model),
  ].filter(({ gain, otherwise }) => Math.max(Math.abs(gain), otherwise?.gain ?? 0) >= LEAST_TOLD);
  return [...all, ...terms.readAgain(panel), ...gaugeHelp(panel, gainOf, terms, model)].sort(
    (a, b) => b.gain - a.gain,
  );
}

/** Repaint has a topcoat as well, once a test spot was made on it. */
const isReadFactoryFilm = (panel: PanelSurvey): panel is ReadPanel =>
  panel.topcoat !== null && [panel.condition, ...panel.also].every(isFactoryFilm);

/** What might go with one thing more known. */
function budgetWith(
  known: Known,
  panel: ReadPanel,
  removal: RemovalTerms,
  model: FilmModel,
): Micrometres {
  return budgetOf(caseWith(known, panel), { ...removal, ...known.terms }, model);
}

function caseWith(
  { chance, putBackOnAll = micrometres(0), ...known }: Known,
  panel: ReadPanel,
): AllowanceCase {
  return {
    film: known.film ?? panel.film,
    facts: { ...panel.facts, ...known.facts },
    conditions: [panel.condition, ...panel.also],
    baseline: panel.baseline === null ? null : plus(panel.baseline, putBackOnAll),
    sides: withLinesUp(
      chance === undefined ? panel.sides : withChances(panel.sides, chance),
      putBackOnAll,
    ),
  };
}

type GainOf = (known: Known) => Micrometres;

function historyHelp(
  { facts }: ReadPanel,
  gainOf: GainOf,
  { earlier }: FilmModel,
): readonly Help[] {
  if (facts.taken !== null) return [];
  // A history is the car's: what it took off one panel it took off those that this one is compared with.
  const gainAt = (taken: Micrometres): Micrometres =>
    gainOf({ facts: { taken }, putBackOnAll: taken });
  const twice = micrometres(2 * earlier.unknownClear);
  return [
    {
      code: 'history',
      gain: gainAt(micrometres(0)),
      otherwise: { gain: gainAt(twice), taken: twice },
      time: null,
      points: null,
    },
  ];
}

/** The expected value of a clear that somebody reads is that of today; only the doubt about it goes. */
function clearHelp(
  panel: ReadPanel,
  gainOf: GainOf,
  { removal }: HelpTerms,
  model: FilmModel,
): readonly Help[] {
  const { facts, topcoat } = panel;
  if (facts.clear !== null) return [];
  const gainAt = ({ meanClear: { mean } }: PlainTopcoat): Micrometres =>
    gainOf({ facts: { clear: { mean, sd: model.stated.clearSd, of: 'panel' } } });
  const near = topcoat.besides.find(({ chance }) => chance > model.conditions.nearRisk);
  const painted = near === undefined ? asFactoriesPaint(panel, removal, model) : null;
  const otherwise = [
    ...(near?.topcoat ? [{ gain: gainAt(near.topcoat) }] : []),
    ...(painted === null ? [] : [{ gain: gainAt(painted), asPainted: true as const }]),
  ];
  return [
    {
      code: 'clear',
      gain: gainAt(topcoat),
      ...(otherwise[0] === undefined ? {} : { otherwise: otherwise[0] }),
      time: model.measuring.clearTime,
      points: null,
    },
  ];
}

/** The topcoat as its own film tells it, where it is held to a clear that was read on other panels; null where it is not. */
function asFactoriesPaint(
  panel: ReadPanel,
  removal: RemovalTerms,
  model: FilmModel,
): PlainTopcoat | null {
  if (panel.topcoat.told.knowledge.statedClear?.readOn === undefined) return null;
  const { clearElsewhere: _, ...facts } = panel.facts;
  return unsaidAllowance({ ...caseWith({}, panel), facts }, removal, model).topcoat;
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

/** With zinc the car is judged without its spots. */
const zincHelp = (panel: ReadPanel, { withZinc }: HelpTerms): readonly Help[] =>
  withZinc === null || heldBySpot(panel) !== null
    ? []
    : [
        {
          code: 'zinc',
          gain: micrometres(withZinc(panel) - panel.budget),
          time: null,
          points: null,
        },
      ];

function pointsHelp(
  { film, points }: ReadPanel,
  gainOf: GainOf,
  model: FilmModel,
): readonly Help[] {
  return nextCount(film.count, model).map((count) => ({
    code: 'points',
    gain: gainOf({
      film: withPoints(film, count),
      chance: (line) => chanceOfMore(line, points, { count, checked: false }),
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
  if (gaugeKnown || panel.budget === 0 || panel.budget === heldBySpot(panel)) return [];
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
      doubtShare: shareOf('gauge', doubt),
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
