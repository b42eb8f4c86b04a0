/** Surveys of a class and its reference → grades, and the class as a whole by each one’s latest attempt. */
import { error, type Outcome } from '../../base/diagnostics.ts';
import { says, um } from '../../base/sentence.ts';
import { usualMarking } from '../../formats/data/training-defaults.ts';
import { classView, sigmaOfClass } from '../../training/class-view.ts';
import { type CopiedPair, copiedSurveys } from '../../training/copied-surveys.ts';
import { type FollowedPair, followedSurveys } from '../../training/followed-surveys.ts';
import { type Grade, gradeTrainee } from '../../training/grade-trainee.ts';
import { faceReadings, type GradedSurvey } from '../../training/graded-survey.ts';
import type { Gauges, SigmaPt } from '../../training/panel-score.ts';
import { type Reason, reason } from '../../training/reasons.ts';
import { consensusReference, expertReference, type Reference } from '../../training/reference.ts';
import type { TrainingModel } from '../../training/training-model.ts';
import type { GradeBase } from './grade-base.ts';
import type { Entry } from './grade-hand-in.ts';
import type { CopiedSurveys, GradedClass, GradeFilesRequest } from './grade-request.ts';

export type Surveyed = { readonly entry: Entry; readonly survey: GradedSurvey };
export type GradedSurveys = Pick<
  GradedClass,
  'reference' | 'sigmaPt' | 'view' | 'copied' | 'leftOut'
> & {
  readonly grades: ReadonlyMap<Entry, Grade>;
};

export function gradeSurveys(
  surveys: readonly Surveyed[],
  expert: GradedSurvey | undefined,
  base: GradeBase,
  request: GradeFilesRequest,
): Outcome<GradedSurveys> {
  const { training } = request.settings;
  const latest = surveys.filter(({ entry }) => !surveys.some((one) => isLater(one.entry, entry)));
  const ofClass = latest.map(({ survey }) => survey);
  const reference =
    expert === undefined ? consensusReference(ofClass, training.class) : expertReference(expert);
  if (reference.panels.size === 0) return noConsensus(training.class.leastSurveys);
  const sigmaPt = sigmaInForce(request, ofClass, reference);
  const pairs = copiedSurveys(
    surveys.map(({ survey }) => survey),
    training.slips,
  );
  const followed = followedBesides(surveys, ofClass, pairs, training.slips);
  const grades = new Map(
    surveys.map(({ entry, survey }, i) => [
      entry,
      gradeTrainee({
        trainee: survey,
        reference,
        sigmaPt,
        gauges: gaugesOf(entry, base, request),
        marking: request.rubric?.value ?? usualMarking(training),
        model: training,
        fromClass: [...copiedReasons(i, survey, pairs), ...followedReasons(survey, followed)],
      }),
    ]),
  );
  const view = classView(
    latest.flatMap(({ entry, survey }) => {
      const grade = grades.get(entry);
      return grade === undefined ? [] : [{ survey, grade }];
    }),
    reference,
  );
  const nameOf = (survey: GradedSurvey): string =>
    latest.flatMap((one) => (one.survey === survey ? [one.entry.name] : [])).join('');
  return {
    value: {
      ...{ reference, sigmaPt, grades, view },
      copied: [
        ...pairs.map((pair) => copiedByName(pair, surveys)),
        ...followed.map((pair) => followedByName(pair, nameOf)),
      ],
      leftOut: view.leftOut.map(({ survey, why }) => ({ trainee: nameOf(survey), why })),
    },
    diagnostics: [],
  };
}

/** Those that follow another survey without being told as its copy. */
function followedBesides(
  surveys: readonly Surveyed[],
  ofClass: readonly GradedSurvey[],
  copies: readonly CopiedPair[],
  model: TrainingModel['slips'],
): readonly FollowedPair[] {
  const told = copies.map(({ surveys: pair }) => pair.map((i) => surveys[i]?.survey));
  return followedSurveys(ofClass, model).filter(
    ({ surveys: pair }) => !told.some((two) => pair.every((one) => two.includes(one))),
  );
}

function copiedByName(
  { surveys: [one, other], same, of }: CopiedPair,
  surveys: readonly Surveyed[],
): CopiedSurveys {
  const nameAt = (i: number): string => surveys[i]?.entry.name ?? '';
  return { trainees: [nameAt(one), nameAt(other)], same, of, apart: null };
}

const followedByName = (
  { surveys: [one, other], same, of, apart, usual }: FollowedPair,
  nameOf: (survey: GradedSurvey) => string,
): CopiedSurveys => ({
  trainees: [nameOf(one), nameOf(other)],
  same,
  of,
  apart: { sd: apart, usual },
});

const noConsensus = (least: number): Outcome<GradedSurveys> => ({
  diagnostics: [
    error('grade-no-consensus', `no panel was read by ${least} trainees: there is no consensus`, {
      hint: 'name the file of an expert first, or more surveys of the class',
    }),
  ],
});

function sigmaInForce(
  { rubric, settings: { training } }: GradeFilesRequest,
  surveys: readonly GradedSurvey[],
  reference: Reference,
): SigmaPt {
  const stated = rubric?.value.sigmaPt;
  const usual: SigmaPt = { value: training.scores.sigmaPt, from: 'stated' };
  if (stated === 'class') return sigmaOfClass(surveys, reference, training.class) ?? usual;
  return stated === undefined ? usual : { value: stated, from: 'stated' };
}

/** Whether one gauge took both sides, and whether its file says what they are uncertain by. */
export function gaugesOf(
  { gauge, handedIn }: Entry,
  { expert }: GradeBase,
  request: GradeFilesRequest,
): Gauges {
  const [own, theirs] = [handedIn?.serial ?? null, expert?.serial ?? null];
  const otherSerial = own !== null && theirs !== null && own !== theirs;
  return {
    same: gauge === undefined && !otherSerial,
    stated: request.gauge !== undefined && expert !== null,
  };
}

/** A later attempt of the same trainee; one that could not be read stands for nobody. */
const isLater = (one: Entry, other: Entry): boolean =>
  one.name === other.name && one.attempt > other.attempt;

/** Neither side is named to the other. */
const copiedReasons = (
  place: number,
  survey: GradedSurvey,
  pairs: readonly CopiedPair[],
): readonly Reason[] =>
  pairs
    .filter(({ surveys }) => surveys.includes(place))
    .map(({ same, of }) =>
      reason(
        'survey-copied',
        `${same} of ${of} values are those of another survey of this class: each reads the car alone`,
        { at: faceReadings(survey)[0] },
      ),
    );

const followedReasons = (survey: GradedSurvey, pairs: readonly FollowedPair[]): readonly Reason[] =>
  pairs
    .filter(({ surveys }) => surveys.includes(survey))
    .map(({ of, apart, usual }) =>
      reason(
        'survey-copied',
        says`at ${of} points your values lie ${um(apart)} (SD) from those of another survey, in this class ${um(usual)} is usual: each chooses and reads points alone; if you both read the very same places, say so`,
        { at: faceReadings(survey)[0] },
      ),
    );
