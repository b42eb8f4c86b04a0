/** What the readings and the job say a panel is, before any spread is known: each condition with its evidence. */
import { bare, nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import { median as medianOf } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { coatOf } from '../coat-of.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';
import { goneAllOver, putBack } from '../put-back.ts';
import type { Panel } from '../template/template.ts';
import {
  COVERED,
  daysAgo,
  type Finding,
  finding,
  partedByFiller,
  repaintReach,
} from './condition.ts';
import { type OverRangePoint, overRangeEvidence } from './over-range.ts';

export type ConditionEvidence = {
  readonly panel: Panel;
  readonly facts: PanelFacts;
  readonly median: Micrometres;
  readonly mean: Micrometres;
  /** Every point on its face. */
  readonly points: readonly ReadPoint[];
  /** Those off it, which tell of filler alone. */
  readonly otherPoints: readonly PlacedPoint[];
  /** Those beyond the range of the gauge. */
  readonly overRange?: readonly OverRangePoint[];
  readonly baseline: Micrometres | null;
  /** Of a zone that is odd to the factory film beside it: by how much it is thicker. */
  readonly overRest: Micrometres | null;
};

type PlacedPoint = ReadPoint & Pick<PanelPoint, 'place'>;
type ReadPoint = { readonly point: string; readonly thickness: Micrometres };

/**
 * Conditions that the readings and the job decide, before any spread is known; strongest first. What is known to have
 * been taken is put back before.
 */
export function filmFindings(
  read: ConditionEvidence,
  model: FilmModel['conditions'],
): readonly Finding[] {
  if (read.facts.covered) return [COVERED];
  const { facts, median, mean, points, otherPoints, baseline } = beforeEarlierWork(read);
  const told = tellPutBack(facts);
  const findings: Finding[] = [];
  const [over, rest] = partedByFiller(points, model);
  if (over.length > 0) {
    const largest = Math.max(...thicknessesOf(over));
    findings.push(
      finding('filler', told(fillerEvidence(over, rest, { baseline, model })), largest),
    );
  }
  const [offFace] = partedByFiller(otherPoints, model);
  if (over.length === 0 && offFace.length > 0) {
    const largest = Math.max(...thicknessesOf(offFace));
    findings.push(finding('filler', told(fillerOffFace(offFace, points, model)), largest));
  }
  const { overRange = [] } = read;
  if (over.length + offFace.length === 0 && overRange.length > 0) {
    findings.push({ condition: 'filler', evidence: overRangeEvidence(overRange) });
  }
  const film = over.length === 0 || rest.length === 0 ? median : medianFilm(rest);
  const byFilm = refinishedEvidence(film, baseline, model) ?? oddEvidence(read);
  const refinished = repaintEvidence(facts, byFilm);
  if (refinished !== undefined) findings.push(finding('refinished', told(refinished), film));
  if (refinished === undefined && baseline !== null && mean < baseline - model.cutBack) {
    findings.push(
      finding(
        'cut-back',
        told(
          says`mean ${um(mean)} is ${um(baseline - mean)} under the baseline of ${um(baseline)}: counts as cut-back, be it cut or painted thin, with what it lacks gone from the ${coatOf(facts.finish)}`,
        ),
        mean,
      ),
    );
  }
  return findings;
}

function beforeEarlierWork(read: ConditionEvidence): ConditionEvidence {
  const { facts, median, mean, points, otherPoints } = read;
  if (goneAllOver(facts).mean === 0) return read;
  return {
    ...read,
    median: putBack(median, facts),
    mean: putBack(mean, facts),
    points: points.map((one) => ({ ...one, thickness: putBack(one.thickness, facts) })),
    otherPoints: otherPoints.map((one) => ({ ...one, thickness: putBack(one.thickness, facts) })),
  };
}

/** `with the 2.9 µm taken before put back, mean 107.1 µm is …`. */
function tellPutBack(facts: PanelFacts): (evidence: Sentence) => Sentence {
  const { mean } = goneAllOver(facts);
  return (evidence) =>
    mean === 0 ? evidence : says`with the ${um(mean)} taken before put back, ${evidence}`;
}

const thicknessesOf = (points: readonly Pick<ReadPoint, 'thickness'>[]): readonly Micrometres[] =>
  points.map(({ thickness }) => thickness);

const medianFilm = (points: readonly ReadPoint[]): Micrometres =>
  micrometres(medianOf(thicknessesOf(points)));

/** Which points it is, and what the others read. */
function fillerEvidence(
  over: readonly ReadPoint[],
  rest: readonly ReadPoint[],
  {
    baseline,
    model,
  }: { readonly baseline: Micrometres | null; readonly model: FilmModel['conditions'] },
): Sentence {
  const line = um(model.filler, 0);
  if (rest.length === 0) return says`all of its points over ${line}, at ${rangeOf(over)}`;
  const [word, reads] = over.length === 1 ? ['point', 'reads'] : ['points', 'read'];
  const names = over.map(({ point }) => point).join(', ');
  const others = rest.length === 1 ? 'the other reads' : `the other ${rest.length} read`;
  const like = whatLike(rest, (film) => readsLikeRepaint(film, baseline, model));
  return says`${word} ${names} ${reads} ${rangeOf(over)}, over ${line}${nextFact}${others} ${rangeOf(rest)}, ${like}`;
}

/** What the points read like, one by one: their middle may be factory film where some are not. */
function whatLike(points: readonly ReadPoint[], isRepaint: (film: Micrometres) => boolean): string {
  const repainted = thicknessesOf(points).filter(isRepaint).length;
  if (repainted === 0) return 'like factory film';
  return repainted === points.length ? 'like repaint' : `${repainted} of them like repaint`;
}

/** `point 1 (edge) reads 640.0 µm, over 500 µm`: wherever filler lies, the panel was repaired and painted over. */
function fillerOffFace(
  over: readonly PlacedPoint[],
  onFace: readonly ReadPoint[],
  model: FilmModel['conditions'],
): Sentence {
  const [word, reads] = over.length === 1 ? ['point', 'reads'] : ['points', 'read'];
  const names = over.map(({ point, place }) => `${point} (${place})`).join(', ');
  return says`${word} ${names} off the face ${reads} ${rangeOf(over)}, over ${um(model.filler, 0)}${nextFact}those on the face read ${rangeOf(onFace)}`;
}

function rangeOf(points: readonly ReadPoint[]): Sentence {
  const films = thicknessesOf(points);
  const [least, most] = [Math.min(...films), Math.max(...films)];
  return films.length === 1 ? says`${um(most)}` : says`${bare(least)} to ${um(most)}`;
}

/** What the job states stands before what the film reads like. */
function repaintEvidence(
  { paintedDaysAgo, recorded }: PanelFacts,
  byFilm: Sentence | undefined,
): Sentence | undefined {
  const [gain] = recorded?.gains ?? [];
  if (paintedDaysAgo === null) return gain === undefined ? byFilm : gainEvidence(gain, byFilm);
  const stated = says`painted ${daysAgo(paintedDaysAgo)}, by the job`;
  return byFilm === undefined
    ? says`${stated}, so no factory film, whatever the total reads`
    : says`${stated}${nextFact}${byFilm}`;
}

/** What adds so much is paint, until somebody knows better. */
function gainEvidence(
  { date, by }: { readonly date: string | null; readonly by: Micrometres },
  byFilm: Sentence | undefined,
): Sentence {
  const gained =
    date === null
      ? says`reads ${um(by)} more than before`
      : says`reads ${um(by)} more since ${date}, by the film record`;
  const counts = says`${gained}: counts as repaint, unless a gauge, wax or other places made it`;
  return byFilm === undefined ? counts : says`${counts}${nextFact}${byFilm}`;
}

/** A factory paints no two such levels on one panel: the one that lies off the usual film was painted later. */
const oddEvidence = ({ overRest }: ConditionEvidence): Sentence | undefined =>
  overRest === null
    ? undefined
    : says`${um(overRest)} over the rest of its panel, which factory film is not: counts as repaint till a test spot`;

const readsLikeRepaint = (
  film: Micrometres,
  baseline: Micrometres | null,
  model: FilmModel['conditions'],
): boolean => refinishedEvidence(film, baseline, model) !== undefined;

/** Points of a repair that do not read like repaint themselves, where others do: its edge lies between. */
export function pointsUnderLine(
  points: readonly ReadPoint[],
  { facts, baseline }: Pick<ConditionEvidence, 'facts' | 'baseline'>,
  model: FilmModel['conditions'],
): readonly string[] {
  const under = points.filter(
    ({ thickness }) => !readsLikeRepaint(putBack(thickness, facts), baseline, model),
  );
  return under.length === points.length ? [] : under.map(({ point }) => point);
}

/** Which line it is over, and where that is from: the lower of the one for any car and the car's own. */
function refinishedEvidence(
  median: Micrometres,
  baseline: Micrometres | null,
  model: FilmModel['conditions'],
): Sentence | undefined {
  const ofCar = baseline === null ? model.refinished : baseline + repaintReach(baseline, model);
  if (baseline !== null && ofCar < model.refinished) {
    return median > ofCar
      ? says`median ${um(median)} is over ${um(ofCar)}, which is ${um(ofCar - baseline)} over the baseline`
      : undefined;
  }
  return median > model.refinished
    ? says`median ${um(median)} is over ${um(model.refinished)}, the line for any car`
    : undefined;
}
