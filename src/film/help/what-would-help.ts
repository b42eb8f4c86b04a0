/**
 * What would let more come off a panel at the same risk: each thing that could still be learned, and the
 * budget that it would free if it comes out as expected.
 *
 * Computed by assessing the panel again with that one thing known, never from a table. A gain below a
 * hundredth of a micrometre is none; only what a checked gauge would gain is told however little it is, as that
 * is asked first and thought to be more.
 */
import { type Micrometres, type Minutes, micrometres } from '../../base/units.ts';
import { isFactoryFilm } from '../condition/condition.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import { allowedBudget } from '../limits/allowance.ts';
import type { PanelFilm, RemovalTerms, TopcoatCase } from '../limits/removal-limits.ts';
import { doubtAboutWhatIsLeft } from '../limits/variance-of-left.ts';
import type { PanelSurvey } from '../survey.ts';

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
};

export type HelpTerms = {
  readonly removal: RemovalTerms;
  /** ln-SD of a removal once a good test spot was made on this paint. */
  readonly logSdAfterSpot: number;
  /** Whether somebody said if the steel is galvanised. */
  readonly zincKnown: boolean;
  /** Whether a gauge file says what the gauge is worth. */
  readonly gaugeKnown: boolean;
};

/** Ordered by gain. Nothing for panels of which the total says nothing, or that are left alone anyway. */
export function whatWouldHelp(
  panel: PanelSurvey,
  terms: HelpTerms,
  model: FilmModel,
): readonly Help[] {
  const { film, facts } = panel;
  const conditions = [panel.condition, ...panel.also];
  if (film === null || panel.topcoat === null || !conditions.every(isFactoryFilm)) return [];
  const { removal, zincKnown, gaugeKnown } = terms;
  const budget = (known: Known): Micrometres =>
    allowedBudget(
      {
        film: known.film ?? film,
        facts: { ...facts, ...known.facts },
        points: (known.film ?? film).count,
        conditions,
        baseline: panel.baseline,
      },
      { ...removal, ...known.terms },
      model,
    );
  const { pointTime, clearTime, testSpotTime } = model.measuring;
  const help = (
    code: HelpCode,
    known: Known,
    time: Minutes | null,
    points: number | null = null,
  ) => ({
    code,
    gain: micrometres(budget(known) - panel.budget),
    time,
    points,
  });
  const all: readonly Help[] = [
    ...(facts.taken === null ? [help('history', { facts: { taken: micrometres(0) } }, null)] : []),
    // The expected value of a clear that somebody reads is that of today; only the doubt about it goes.
    ...(facts.clear === null
      ? [
          help(
            'clear',
            {
              facts: {
                clear: {
                  mean: panel.topcoat.meanClear.mean,
                  sd: model.stated.clearSd,
                  of: 'panel',
                },
              },
            },
            clearTime,
          ),
        ]
      : []),
    ...(terms.logSdAfterSpot < removal.logSd
      ? [help('test-spot', { terms: { logSd: terms.logSdAfterSpot } }, testSpotTime)]
      : []),
    ...(zincKnown || facts.galvanised || panel.panel.substrate !== 'steel'
      ? []
      : [help('zinc', { facts: { galvanised: true } }, null)]),
    ...nextCount(film.count, model).map((count) =>
      help(
        'points',
        { film: withPoints(film, count) },
        times(pointTime, count - film.count),
        count,
      ),
    ),
  ].filter(({ gain }) => Math.abs(gain) >= LEAST_GAIN);
  const exact = { film: { ...film, calibration: micrometres(0) } };
  const gauge =
    gaugeKnown || panel.budget === 0
      ? []
      : [
          {
            code: 'gauge' as const,
            // The other limits know nothing of it.
            gain: micrometres(panel.boundBy.code === 'clear' ? budget(exact) - panel.budget : 0),
            time: null,
            points: null,
            doubtShare: gaugeShare(panel.topcoat, panel.budget, removal, model),
          },
        ];
  return [...all, ...gauge].sort((a, b) => b.gain - a.gain);
}

function gaugeShare(
  topcoat: TopcoatCase,
  budget: Micrometres,
  { logSd }: RemovalTerms,
  model: FilmModel,
): number {
  const doubt = doubtAboutWhatIsLeft(topcoat, { median: budget, logSd }, model.topcoat);
  return doubt.find(({ source }) => source === 'gauge')?.share ?? 0;
}

const LEAST_GAIN = 0.01;

type Known = {
  readonly facts?: Partial<PanelFacts>;
  readonly film?: PanelFilm;
  readonly terms?: Partial<RemovalTerms>;
};

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
