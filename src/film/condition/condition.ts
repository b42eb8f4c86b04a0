/** What a panel is: the first condition that applies, the others beside it, each with its evidence. */
import { counted } from '../../base/counted.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { bare, nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import { median as medianOf } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { coatOf } from '../coat-of.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';
import { goneAllOver, putBack } from '../put-back.ts';
import type { Panel } from '../template/template.ts';
import { type OverRangePoint, overRangeEvidence } from './over-range.ts';

/** In order of precedence. */
export type Condition =
  | 'unread'
  | 'covered'
  | 'filler'
  | 'mixed'
  | 'refinished'
  | 'thin'
  | 'cut-back'
  | 'original';

/** Paint on metal that left the factory, whatever was polished off since. */
export const isFactoryFilm = (condition: Condition): boolean =>
  condition === 'original' || condition === 'thin' || condition === 'cut-back';

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

export type Finding = { readonly condition: Condition; readonly evidence: Remark };

type PaintedSince = Pick<PanelFacts, 'paintedDaysAgo' | 'recorded'>;

/**
 * Whoever says when a panel was painted says that it no longer carries factory film, whatever it reads; so does a film
 * record by which paint came on.
 */
export const isStatedRepaint = ({ paintedDaysAgo, recorded }: PaintedSince): boolean =>
  paintedDaysAgo !== null || (recorded?.gains ?? []).length > 0;

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

/** Whatever it reads is what lies over the paint as well: of the paint nothing is known. */
export const COVERED: Finding = {
  condition: 'covered',
  evidence: remark('covered', 'declared as covered by film, wrap or coating'),
};

/** Points over the line of filler, and the others: filler under one point says nothing of its neighbours. */
export function partedByFiller<Point extends Pick<ReadPoint, 'thickness'>>(
  points: readonly Point[],
  { filler }: Pick<FilmModel['conditions'], 'filler'>,
): readonly [readonly Point[], readonly Point[]] {
  return [
    points.filter(({ thickness }) => thickness > filler),
    points.filter(({ thickness }) => thickness <= filler),
  ];
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
  const like = whatLike(rest, (film) => refinishedEvidence(film, baseline, model) !== undefined);
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

/** `30 days ago`. */
export const daysAgo = (days: number): string => `${counted(days, 'day')} ago`;

/** A factory paints no two such levels on one panel: the one that lies off the usual film was painted later. */
const oddEvidence = ({ overRest }: ConditionEvidence): Sentence | undefined =>
  overRest === null
    ? undefined
    : says`${um(overRest)} over the rest of its panel, which factory film is not: counts as repaint till a test spot`;

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

/** How far over the car's baseline a median is that of a repaint. */
export const repaintReach = (
  baseline: Micrometres,
  { refinishedAbove, refinishedAboveShare }: FilmModel['conditions'],
): number => Math.max(refinishedAbove, refinishedAboveShare * baseline);

/** Whether the film reads like repaint where `baseline` is usual. */
export const isRepaintTo = (
  baseline: Micrometres,
  film: Micrometres,
  model: FilmModel['conditions'],
): boolean => film > baseline + repaintReach(baseline, model);

/** A point under the floor is thin; a credible minimum under it may be. */
export function thinFinding(
  smallest: Micrometres,
  thinnest: Micrometres | null,
  floor: Micrometres,
): Finding | undefined {
  if (smallest < floor) {
    return finding(
      'thin',
      says`a point reads ${um(smallest)}, under the floor of ${um(floor)}`,
      smallest,
    );
  }
  return thinnest !== null && thinnest < floor
    ? finding('thin', says`may be thin: ${um(thinnest)} is credible somewhere on it`, thinnest)
    : undefined;
}

/** `read` is where points were read; those off the face do not speak for it. */
export function unreadFinding(
  panel: Panel,
  read: { readonly onFace: boolean; readonly offFace: boolean },
): Finding {
  if (read.onFace) {
    return finding(
      'unread',
      `on ${panel.substrate} a magnetic or eddy-current gauge reads no film`,
    );
  }
  const where = read.offFace ? 'no reading on its face, only off it' : 'no reading';
  return finding('unread', `${where}: what paint it carries is not known`);
}

/** An electromagnetic gauge needs metal under the paint (ISO 2178, ISO 2360; ASTM D6132 for others). */
export const needsUltrasound = ({ substrate }: Panel): boolean =>
  substrate === 'plastic' || substrate === 'composite';

export const PRECEDENCE: readonly Condition[] = [
  'unread',
  'covered',
  'filler',
  'mixed',
  'refinished',
  'thin',
  'cut-back',
  'original',
];

/** Findings in order of precedence; a panel without any is original. */
export const byPrecedence = (findings: readonly Finding[]): readonly [Finding, ...Finding[]] => {
  const [first, ...rest] = [...findings].sort(
    (a, b) => PRECEDENCE.indexOf(a.condition) - PRECEDENCE.indexOf(b.condition),
  );
  return first === undefined
    ? [finding('original', 'in line with factory film')]
    : [first, ...rest];
};

const finding = (condition: Condition, text: string | Sentence, value?: number): Finding => ({
  condition,
  evidence: remark(condition, text, value),
});
