/** What a panel is: the first condition that applies, the others beside it, each with its evidence. */
import { type Remark, remark } from '../../base/remark.ts';
import { bare, type Sentence, says, um } from '../../base/sentence.ts';
import { median as medianOf } from '../../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel, PanelFacts } from '../film-model.ts';
import type { Panel } from '../template/template.ts';

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
  /** Of every point on its face. */
  readonly thicknesses: readonly Micrometres[];
  readonly baseline: Micrometres | null;
};

export type Finding = { readonly condition: Condition; readonly evidence: Remark };

/** Whoever says when a panel was painted says that it no longer carries factory film, whatever it reads. */
export const isStatedRepaint = ({ paintedDaysAgo }: Pick<PanelFacts, 'paintedDaysAgo'>): boolean =>
  paintedDaysAgo !== null;

/** Conditions that the readings and the job decide, before any spread is known; strongest first. */
export function filmFindings(
  { facts, median, mean, thicknesses, baseline }: ConditionEvidence,
  model: FilmModel['conditions'],
): readonly Finding[] {
  const findings: Finding[] = [];
  if (facts.covered) {
    findings.push(finding('covered', 'declared as covered by film, wrap or coating'));
  }
  const largest = Math.max(...thicknesses);
  if (largest > model.filler) {
    findings.push(finding('filler', fillerEvidence(thicknesses, baseline, model), largest));
  }
  const refinished = repaintEvidence(facts, refinishedEvidence(median, baseline, model));
  if (refinished !== undefined) findings.push(finding('refinished', refinished, median));
  if (refinished === undefined && baseline !== null && mean < baseline - model.cutBack) {
    findings.push(
      finding(
        'cut-back',
        says`mean ${um(mean)} is ${um(baseline - mean)} under the baseline of ${um(baseline)}: cut back, or painted thin; either way what it lacks is taken to be gone from the clear`,
        mean,
      ),
    );
  }
  return findings;
}

/** How many points it is, and what the others read: filler under one of them need not be under all. */
function fillerEvidence(
  thicknesses: readonly Micrometres[],
  baseline: Micrometres | null,
  model: FilmModel['conditions'],
): Sentence {
  const over = thicknesses.filter((one) => one > model.filler);
  const rest = thicknesses.filter((one) => one <= model.filler);
  const range = (some: readonly Micrometres[]): Sentence =>
    some.length === 1
      ? says`${um(Math.max(...some))}`
      : says`${bare(Math.min(...some))} to ${um(Math.max(...some))}`;
  const [count, all] = [over.length, thicknesses.length];
  const how = count === all ? 'all of its points' : `${count} of its ${all} points`;
  const said = says`${how} over ${um(model.filler)}, at ${range(over)}`;
  if (rest.length === 0) return said;
  const isRepaint = refinishedEvidence(micrometres(medianOf(rest)), baseline, model) !== undefined;
  const like = isRepaint ? 'as repaint does' : 'as factory film does';
  return says`${said}; the rest ${rest.length === 1 ? 'reads' : 'read'} ${range(rest)}, ${like}`;
}

/** What the job states stands before what the film reads like. */
function repaintEvidence(
  { paintedDaysAgo }: PanelFacts,
  byFilm: Sentence | undefined,
): Sentence | undefined {
  if (paintedDaysAgo === null) return byFilm;
  const stated = says`painted ${daysAgo(paintedDaysAgo)}, by the job`;
  return byFilm === undefined
    ? says`${stated}, so no factory film, whatever the total reads`
    : says`${stated}; ${byFilm}`;
}

/** `30 days ago`. */
export const daysAgo = (days: number): string => `${days} day${days === 1 ? '' : 's'} ago`;

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
