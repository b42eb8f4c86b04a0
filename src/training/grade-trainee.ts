/** One survey against the reference: scores, blunders, what was found, the mark and the verdict. */

import { type Agreement, limitsOfAgreement } from '../base/stats/limits-of-agreement.ts';
import { median } from '../base/stats/summary.ts';
import type { Panel } from '../film/template/template.ts';
import { alikeRepeats } from './alike-repeats.ts';
import { type CarBias, carBias } from './car-bias.ts';
import { commonOrders } from './common-order.ts';
import {
  type ConditionAgreement,
  conditionAgreement,
  conditionPairs,
} from './condition-agreement.ts';
import { type Coverage, coverageOf } from './coverage.ts';
import { faultReasons } from './fault-reasons.ts';
import { lowSpotsFound, repairsFound } from './found.ts';
import { type GradedSurvey, ownRepeatability, panelsInFile, readPanels } from './graded-survey.ts';
import { type KeyingFactors, keyingFactors } from './keying-factors.ts';
import { madeUpValues } from './made-up-values.ts';
import { allowedRepeatability, type Judged, type Mark, markOf } from './mark.ts';
import { patternOf } from './marks-pattern.ts';
import { overallVerdict, type VerdictGround } from './overall-verdict.ts';
import { calibrationsOf, type PanelScore, type Scoring, scorePanel } from './panel-score.ts';
import { type Reason, saidOfClass, spoilsReadings } from './reasons.ts';
import type { ScoreVerdict } from './scores.ts';
import { stepChanges } from './step-changes.ts';
import { swappedPanels } from './swapped-panels.ts';
import type { Marking, TrainingModel } from './training-model.ts';
import { inOrder, type TurnedPoints, turnedPoints, turnedReasons } from './turned-points.ts';
import { asFarAsRead, mostOf, type VoidPanel, voidPanels } from './void-panels.ts';

export type Grade = Judged & {
  readonly verdict: ScoreVerdict;
  /** What makes the verdict; none of a satisfactory one. */
  readonly grounds: readonly VerdictGround[];
  readonly mark: Mark;
  /** Panels whose readings a blunder voids, and the mark if it did not; null where it voids none. */
  readonly voided: readonly VoidPanel[];
  readonly markIfSound: Mark | null;
  /** As the mark counts it: what is void was not read; `coverage` is what was handed in. */
  readonly counted: Coverage;
  readonly bias: CarBias | null;
  /**
   * Over the panels that both read, those that are void left out; null with too few, and where more are left
   * out than stay: limits of the rest would flatter.
   */
  readonly agreement: Agreement | null;
  /** Panels that a slip explains, or that were made up: no limits of agreement count them. */
  readonly slipped: readonly Panel[];
  /** Of the panels that both read; null where there is none. */
  readonly conditions: ConditionAgreement | null;
  readonly reasons: readonly Reason[];
};

export type GradeRequest = Scoring & {
  readonly marking: Marking;
  readonly model: TrainingModel;
  /** What comparing the surveys of the class with each other showed. */
  readonly fromClass?: readonly Reason[];
};

export function gradeTrainee(request: GradeRequest): Grade {
  const { trainee, reference, marking, model, fromClass = [] } = request;
  const keyed = keyingFactors(trainee, reference, model.slips);
  const scoring = { ...request, keyed: keyed.panels };
  const scores = readPanels(trainee).flatMap((read): readonly PanelScore[] => {
    const panel = reference.panels.get(read.panel.id);
    return panel === undefined ? [] : [scorePanel(read, panel, scoring, model.scores)];
  });
  const repeatsAlike = alikeRepeats(trainee, model);
  const ofHand = repeatsAlike === null ? keyed.allPoints : null;
  const turned = turnedThatExplain(request, keyed);
  const judged = judgedBy(turned.turnedBack, scores, ofHand, request);
  const madeUp = madeUpValues(trainee, reference, { slips: model.slips, keyed: keyed.panels });
  const blunders = [
    ...keyed.reasons,
    ...turnedReasons(turned, trainee),
    ...swapsThatExplain({ ...request, trainee: turned.turnedBack }, madeUp.proved, keyed),
    ...stepChanges(trainee, { ...model.slips, keyed: keyed.points }),
    ...madeUp.told,
    ...fromClass,
  ];
  const voided = voidPanels(trainee, blunders, madeUp.proved);
  const marked = { ...marking, ...model.scores, repeatsAlike: repeatsAlike !== null };
  const ifSound = markOf(judged, marked);
  const asRead = asFarAsRead(turned.turnedBack, voided, keyed.allPoints);
  const counted = voided.length === 0 ? judged : judgedBy(asRead, scores, ofHand, request);
  const mark =
    voided.length === 0
      ? ifSound
      : markOf(counted, { ...marked, most: mostOf(voided, model.scores) });
  const slips = blunders.filter(spoilsReadings);
  const wholeSurvey = slips.some(({ panels }) => panels.length === 0);
  const explained = new Set([
    ...(wholeSurvey ? scores.map(({ panel }) => panel.id) : slips.flatMap(({ panels }) => panels)),
    ...madeUp.proved,
  ]);
  const sound = soundScores(scores, explained);
  const bias = carBias(
    sound,
    { ...request, calibration: calibrationOf(request, sound) },
    model.scores,
  );
  const pattern = patternOf({ ...request, trainee: turned.turnedBack }, explained, keyed.points);
  return {
    ...judged,
    // As the mark counts them: a reading in another unit finds no low spot.
    ...{ lowSpots: counted.lowSpots, repairs: counted.repairs },
    ...{ bias, mark, voided, counted: counted.coverage },
    markIfSound: voided.length === 0 ? null : ifSound,
    ...overallVerdict(
      { judged, bias, blunders, voided, pattern, sigmaPt: request.sigmaPt.value, mark },
      marking,
      model,
    ),
    slipped: scores.map(({ panel }) => panel).filter(({ id }) => explained.has(id)),
    agreement:
      sound.length < model.scores.carPanels
        ? null
        : limitsOfAgreement(sound.map(({ difference }) => difference)),
    conditions: conditionAgreement(conditionPairs(trainee, reference)),
    reasons: saidBy(reference, [
      ...blunders,
      ...faultReasons({
        trainee,
        reference,
        judged,
        repeatsAlike,
        bias,
        explained: new Set([
          ...explained,
          ...(pattern.notFollowed?.from ?? []).map(({ id }) => id),
        ]),
        wholeSurvey,
        pattern,
        gaugeMoved: request.gauges.moved,
        keyed: keyed.allPoints,
        limits: model.scores,
      }),
      ...(blunders.length === 0 ? madeUp.tooFew : []),
    ]),
  };
}

const saidBy = ({ kind }: Scoring['reference'], reasons: readonly Reason[]): readonly Reason[] =>
  kind === 'expert' ? reasons : reasons.map(saidOfClass);

/** From the other end; where that explains nothing and values do not follow the marks, in another order that they follow. */
function turnedThatExplain(request: GradeRequest, keyed: KeyingFactors): TurnedPoints {
  const turned = fromOtherEnd(request, keyed);
  if (turned.panels.length > 0) return turned;
  const { panels, points } = keyed;
  const unread = notReadAtMarks(request, panels, points);
  if (unread.size === 0) return turned;
  const sought = new Set([...unread].filter((id) => !panels.has(id)));
  const ordered = inOrder(
    request.trainee,
    commonOrders(request, sought, request.model.slips.falseAlarm),
  );
  const stillUnread = notReadAtMarks({ ...request, trainee: ordered.turnedBack }, panels, points);
  return ordered.panels.length > 0 && stillUnread.size === 0 ? ordered : turned;
}

/** As with swaps: a panel that fits the other end does so by chance where the rest of the car does not follow its marks. */
function fromOtherEnd(request: GradeRequest, { panels, points }: KeyingFactors): TurnedPoints {
  const turned = turnedPoints(request, panels);
  if (turned.panels.length === 0) return turned;
  const known = new Set([...panels, ...turned.panels.map(({ panel }) => panel.id)]);
  const unread = notReadAtMarks(request, known, points);
  return turned.panels.some(({ panel }) => unread.has(panel.id))
    ? turnedPoints(request, new Set([...panels, ...unread]))
    : turned;
}

/** Where the other panels do not follow the car either, a panel that fits another name does so by chance. */
function swapsThatExplain(
  request: GradeRequest,
  proved: ReadonlySet<string>,
  { panels, points }: KeyingFactors,
): readonly Reason[] {
  const swaps = swappedPanels({ ...request, keyed: panels }, request.model);
  if (swaps.length === 0) return swaps;
  const known = new Set([...proved, ...panels, ...swaps.flatMap((one) => one.panels)]);
  const unread = notReadAtMarks(request, known, points);
  return swaps.filter((one) => !one.panels.some((panel) => unread.has(panel)));
}

/** Ids of the panels that do not follow their marks, by those that are not `known`: all, or one and all after it in the file. */
function notReadAtMarks(
  request: GradeRequest,
  known: ReadonlySet<string>,
  points: ReadonlySet<string>,
): ReadonlySet<string> {
  const { notFollowed } = patternOf(request, known, points);
  if (notFollowed?.at !== 'marks') return new Set();
  const all = panelsInFile(request.trainee);
  const [first] = notFollowed.from;
  return new Set(first === undefined ? all : all.slice(all.indexOf(first.id)));
}

/** `keyed` are points that say nothing of the hand; null where all repeats say nothing of it. */
function judgedBy(
  trainee: GradedSurvey,
  scores: readonly PanelScore[],
  keyed: ReadonlySet<string> | null,
  { reference }: Pick<Scoring, 'reference'>,
): Judged {
  const repeated = keyed === null ? null : ownRepeatability(trainee, keyed);
  return {
    scores,
    coverage: coverageOf(trainee, reference),
    lowSpots: lowSpotsFound(trainee, reference),
    repairs: repairsFound(trainee, reference),
    repeatability: repeated === null ? null : allowedRepeatability(repeated, trainee.repeatability),
  };
}

/** Those that no slip puts off; none where more are put off than are left, for the rest would flatter. */
function soundScores(
  scores: readonly PanelScore[],
  slipped: ReadonlySet<string>,
): readonly PanelScore[] {
  const sound = scores.filter(({ panel }) => !slipped.has(panel.id));
  return 2 * sound.length < scores.length ? [] : sound;
}

/** Of both gauges: the largest over the panels where they are not one, and the middle one where nobody named any. */
function calibrationOf(
  { trainee, reference, gauges, model }: GradeRequest,
  scores: readonly PanelScore[],
): number {
  if (gauges.same) return scores.length === 0 ? 0 : median(scores.map((one) => one.calibration));
  return readPanels(trainee).reduce((most, read) => {
    const theirs = reference.panels.get(read.panel.id);
    return theirs === undefined
      ? most
      : Math.max(most, Math.hypot(...calibrationsOf(read, theirs, gauges, model.scores)));
  }, 0);
}
