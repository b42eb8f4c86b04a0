/**
 * A visit at which only marks were read is no survey: what might go is what the plan says, made of the readings before
 * them. It holds where the marks do not contradict those readings.
 *
 * The panels share one spread of film, s² = Σ (nᵢ − 1)·sᵢ² / Σ (nᵢ − 1) by the plan's readings, with the gauge's
 * repeatability. x̄ᵢ of the plan less ȳᵢ of the marks may be off by uᵢ = s·√(1/nᵢ + 1/mᵢ). The mean over the panels is
 * asked at 1 chance in 20, and each of the k panels at 1 in 20 · k (t). One gauge is taken to have read both: another
 * makes them differ, and then the plan is in doubt.
 */
import { bare, type Sentence, says, tell, um } from '../../base/sentence.ts';
import { studentTQuantile } from '../../base/stats/student-t.ts';
import { sum } from '../../base/sum.ts';
import type { SurveyComparison } from '../../film/compare/compare-surveys.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import type { Planned } from './compare-plan.ts';

/** At which of the two visits only marks were read. */
export type MarksOnly = { readonly before: boolean; readonly after: boolean };

/** Where most of the panels that were found again have fewer points than machine work takes. */
export function marksOnly(
  { panels }: SurveyComparison,
  { reading }: Pick<FilmModel, 'reading'>,
): MarksOnly {
  const paired = panels.filter(({ by }) => by === 'pairs');
  const isOnly = (at: 'before' | 'after'): boolean =>
    2 * paired.filter(({ counts }) => counts[at] < reading.leastPoints).length > paired.length;
  return { before: isOnly('before'), after: isOnly('after') };
}

/** Chance that marks of the very film are said to contradict it, on the average, and again on any panel. */
const FALSE_DOUBT = 0.05;

/** What of a panel was read when the plan was made, and by the marks. */
type ReadTwice = {
  readonly name: string;
  readonly less: number;
  /** In units of the spread of film. */
  readonly times: number;
};

export type MarksAgainstPlan = 'agree' | 'unknown' | { readonly contradict: string };

export function marksAgainstPlan(
  planned: Planned,
  { survey, settings }: SurveyResult,
): MarksAgainstPlan {
  const read = survey.panels.flatMap(({ panel, statistics, points }) => {
    const { film = null, zones = [] } = planned.get(panel.id) ?? {};
    return film === null || statistics === null || zones.length > 0
      ? []
      : [{ name: panel.name, film, mean: statistics.mean, count: points.length }];
  });
  const dof = sum(read.map(({ film }) => film.points - 1));
  if (dof === 0) return 'unknown';
  const squares = read.map(({ film }) => (film.points - 1) * (film.sd ?? 0) ** 2);
  const spread = Math.hypot(Math.sqrt(sum(squares) / dof), settings.film.measurement.repeatability);
  const twice = read.map(({ name, film, mean, count }) => ({
    name,
    less: film.mean - mean,
    times: Math.sqrt(1 / film.points + 1 / count),
  }));
  const reach = (questions: number): number =>
    spread * studentTQuantile(1 - FALSE_DOUBT / (2 * questions), dof);
  return (
    contradiction([onAverage(twice)], reach(1)) ??
    contradiction(twice, reach(twice.length)) ??
    'agree'
  );
}

function contradiction(asked: readonly ReadTwice[], reach: number): MarksAgainstPlan | null {
  const found = asked.find(({ less, times }) => Math.abs(less) > reach * times);
  return found === undefined ? null : { contradict: tell(contradicted(found, reach), 'um') };
}

function onAverage(all: readonly ReadTwice[]): ReadTwice {
  return {
    name: '',
    less: sum(all.map(({ less }) => less)) / all.length,
    times: Math.hypot(...all.map(({ times }) => times)) / all.length,
  };
}

function contradicted({ name, less, times }: ReadTwice, reach: number): Sentence {
  const where = name === '' ? 'on average over the panels' : `on the ${name}`;
  return says`the marks read ${bare(Math.abs(less))} ± ${um(reach * times)} ${less > 0 ? 'less' : 'more'} than those ${where}`;
}
