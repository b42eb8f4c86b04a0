/** Surveys of a class and its reference → grades, and the class as a whole by each one’s latest attempt. */
import { at } from '../../base/at.ts';
import { error, type Outcome } from '../../base/diagnostics.ts';
import { says, um } from '../../base/sentence.ts';
import { usualMarking } from '../../formats/data/training-defaults.ts';
import { classView, sigmaOfClass } from '../../training/class-view.ts';
import { copiedSurveys } from '../../training/copied-surveys.ts';
import { followedSurveys } from '../../training/followed-surveys.ts';
import { type Grade, gradeTrainee } from '../../training/grade-trainee.ts';
import { faceReadings, type GradedSurvey } from '../../training/graded-survey.ts';
import { keyedLeftOut } from '../../training/keyed-left-out.ts';
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
  const copies = copiesAmong(surveys, ofClass, reference, training);
  const nameOf = (survey: GradedSurvey): string =>
    surveys.flatMap((one) => (one.survey === survey ? [one.entry.name] : [])).join('');
  // Handed in twice by one trainee is told to the trainer, and is nobody’s blunder.
  const ofTwo = copies.filter(({ surveys: two }) => new Set(two.map(nameOf)).size > 1);
  const grades = new Map(
    surveys.map(({ entry, survey }) => [
      entry,
      gradeTrainee({
        trainee: survey,
        reference,
        sigmaPt,
        gauges: gaugesOf(entry, base, request),
        marking: request.rubric?.value ?? usualMarking(training),
        model: training,
        fromClass: ofTwo.flatMap((copy) => copyReasons(survey, copy, expert)),
      }),
    ]),
  );
  const view = classView(
    latest.flatMap(({ entry, survey }) => {
      const grade = grades.get(entry);
      return grade === undefined ? [] : [{ survey, grade }];
    }),
    reference,
    training.verdict,
  );
  return {
    value: {
      ...{ reference, sigmaPt, grades, view },
      copied: copies.map(({ surveys: two, ...copy }) => ({
        ...copy,
        trainees: two.filter((one) => one !== expert).map(nameOf),
        fromReference: two.some((one) => one === expert),
      })),
      leftOut: view.leftOut.map(({ survey, why }) => ({ trainee: nameOf(survey), why })),
    },
    diagnostics: [],
  };
}

/** Two surveys one of which has its values from the other, by values that are the same or by how near they lie. */
type Copy = Pick<CopiedSurveys, 'same' | 'of' | 'apart'> & {
  readonly surveys: readonly GradedSurvey[];
};

/** The expert’s survey is one to copy from as well. Those that follow another are told where they are no plain copy. */
function copiesAmong(
  surveys: readonly Surveyed[],
  ofClass: readonly GradedSurvey[],
  reference: Reference,
  model: TrainingModel,
): readonly Copy[] {
  const experts = reference.expert === null ? [] : [reference.expert];
  const all = [...surveys.map(({ survey }) => survey), ...experts];
  const bare = all.map((one) => keyedLeftOut(one, reference, model.slips));
  const plain = copiedSurveys(bare, model).map(({ surveys: places, same, of }): Copy => {
    const two = places.map((place) => at(all, place));
    return { surveys: two, same, of, apart: null };
  });
  const told = (pair: Copy['surveys']): boolean =>
    plain.some((copy) => pair.every((one) => copy.surveys.includes(one)));
  const latest = bare.filter((_, place) => [...ofClass, ...experts].includes(at(all, place)));
  const followed = followedSurveys(latest, model)
    .map((pair) => ({ ...pair, surveys: pair.surveys.map((one) => at(all, bare.indexOf(one))) }))
    .filter((pair) => !told(pair.surveys))
    .map(
      ({ surveys: two, same, of, apart, usual }): Copy => ({
        surveys: two,
        same,
        of,
        apart: { sd: apart, usual },
      }),
    );
  return [...plain, ...followed];
}

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
function copyReasons(
  survey: GradedSurvey,
  { surveys, same, of, apart }: Copy,
  expert: GradedSurvey | undefined,
): readonly Reason[] {
  if (!surveys.includes(survey)) return [];
  const fromExpert = expert !== undefined && surveys.includes(expert);
  const other = fromExpert ? 'the reference' : 'another survey of this class';
  const said =
    apart === null
      ? `${same} of ${of} values are those of ${other}, more than two who measure have in common: each reads the car alone, and writes what the gauge shows`
      : says`at ${of} points your values lie ${um(apart.sd)} (SD) from those of ${other}, nearer than two who measure come (in this class ${um(apart.usual)} is usual): each reads the car alone, and writes what the gauge shows`;
  return [reason('survey-copied', said, { at: faceReadings(survey)[0] })];
}
