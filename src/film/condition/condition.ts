/** What a panel may be, in order of precedence, and the lines that are no matter of its spread. */
import { counted } from '../../base/counted.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
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

export type Finding = { readonly condition: Condition; readonly evidence: Remark };

type PaintedSince = Pick<PanelFacts, 'paintedDaysAgo' | 'recorded'>;

/**
 * Whoever says when a panel was painted says that it no longer carries factory film, whatever it reads; so does a film
 * record by which paint came on.
 */
export const isStatedRepaint = ({ paintedDaysAgo, recorded }: PaintedSince): boolean =>
  paintedDaysAgo !== null || (recorded?.gains ?? []).length > 0;

/** Whatever it reads is what lies over the paint as well: of the paint nothing is known. */
export const COVERED: Finding = {
  condition: 'covered',
  evidence: remark('covered', 'declared as covered by film, wrap or coating'),
};

/** Points over the line of filler, and the others: filler under one point says nothing of its neighbours. */
export function partedByFiller<Point extends { readonly thickness: Micrometres }>(
  points: readonly Point[],
  { filler }: Pick<FilmModel['conditions'], 'filler'>,
): readonly [readonly Point[], readonly Point[]] {
  return [
    points.filter(({ thickness }) => thickness > filler),
    points.filter(({ thickness }) => thickness <= filler),
  ];
}

/** `30 days ago`. */
export const daysAgo = (days: number): string => `${counted(days, 'day')} ago`;

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
  read: {
    readonly onFace: boolean;
    readonly offFace: boolean;
    /** Its clear by itself, as no gauge for metal reads it. */
    readonly clear?: boolean;
  },
): Finding {
  if (read.clear === true && needsUltrasound(panel)) return finding('unread', readByLayers(panel));
  if (read.onFace) {
    return finding(
      'unread',
      `on ${panel.substrate} a magnetic or eddy-current gauge reads no film`,
    );
  }
  const where = read.offFace ? 'no reading on its face, only off it' : 'no reading';
  return finding('unread', `${where}: what paint it carries is not known`);
}

/** What was read is there, and nothing to hold it against. */
export const readByLayers = ({ substrate }: Panel): string =>
  `its layers were read, as by an ultrasonic gauge, but what factories paint on ${substrate} is not known here: whether that is their paint no reading tells`;

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

export const finding = (
  condition: Condition,
  text: string | Sentence,
  value?: number,
): Finding => ({
  condition,
  evidence: remark(condition, text, value),
});
