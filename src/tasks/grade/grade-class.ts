/** Surveys of a class and its reference → grades, and the class as a whole by each one’s latest attempt. */
import { type Diagnostic, error, type Outcome, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { Panel } from '../../film/template/template.ts';
import { usualMarking } from '../../formats/data/training-defaults.ts';
import { classView, sigmaOfClass } from '../../training/class-view.ts';
import { type Grade, gradeTrainee } from '../../training/grade-trainee.ts';
import type { GradedSurvey } from '../../training/graded-survey.ts';
import type { Gauges, SigmaPt } from '../../training/panel-score.ts';
import { together } from '../../training/reasons.ts';
import { consensusReference, expertReference, type Reference } from '../../training/reference.ts';
import { marksUnlike, unlikeReference } from '../../training/unlike-reference.ts';
import { mostDrifted } from '../settings/gauge-in-use.ts';
import { copiesAmong, copyReasons, readAgain, type Surveyed } from './class-copies.ts';
import type { GradeBase } from './grade-base.ts';
import type { Entry } from './grade-hand-in.ts';
import type { GradedClass, GradeFilesRequest } from './grade-request.ts';
import { soundGauge } from './sound-gauge.ts';

export type GradedSurveys = Pick<
  GradedClass,
  | 'reference'
  | 'sigmaPt'
  | 'view'
  | 'unlike'
  | 'marksUnlike'
  | 'copied'
  | 'leftOut'
  | 'mostOfRepeats'
> & {
  readonly grades: ReadonlyMap<Entry, Grade>;
};

export function gradeSurveys(
  surveys: readonly Surveyed[],
  expert: GradedSurvey | undefined,
  base: GradeBase,
  request: GradeFilesRequest,
): Outcome<GradedSurveys> {
  const { training } = request.settings.models;
  const latest = surveys.filter(({ entry }) => !surveys.some((one) => isLater(one.entry, entry)));
  const ofClass = latest.map(({ survey }) => survey);
  const again = readAgain(latest, training);
  const once = ofClass.filter((survey) => !again.has(survey));
  const reference =
    expert === undefined ? consensusReference(once, training.class) : expertReference(expert);
  if (reference.panels.size === 0) {
    const twice = latest.filter(({ survey }) => again.has(survey)).map(({ entry }) => entry.file);
    return noConsensus(training.class.leastSurveys, twice);
  }
  const sigmaPt = sigmaInForce(request, once, reference);
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
        fromClass: copyReasons(survey, ofTwo, expert),
      }),
    ]),
  );
  const view = classView(
    latest.flatMap(({ entry, survey }) => {
      const grade = grades.get(entry);
      return grade === undefined ? [] : [{ survey, grade, again: again.has(survey) }];
    }),
    reference,
    training.verdict,
  );
  const gradesOnce = latest.flatMap(({ entry, survey }) =>
    again.has(survey) ? [] : (grades.get(entry) ?? []),
  );
  const unlike = unlikeReference(reference, gradesOnce, sigmaPt.value, training);
  const ofMarks = marksUnlike(reference, gradesOnce, training.class);
  return {
    value: {
      ...{ reference, sigmaPt, grades, view, unlike, marksUnlike: ofMarks },
      copied: copies.map(({ surveys: two, ...copy }) => ({
        ...copy,
        trainees: two.filter((one) => one !== expert).map(nameOf),
        fromReference: two.some((one) => one === expert),
      })),
      mostOfRepeats: view.gaugeRr?.most ? nameOf(view.gaugeRr.most.survey) : null,
      leftOut: view.leftOut.map(({ survey, why }) => ({ trainee: nameOf(survey), why })),
    },
    diagnostics: [
      ...classAgainst(unlike, request.reference?.name),
      ...marksAgainst(ofMarks, request.reference?.name),
    ],
  };
}

const classAgainst = (panels: readonly Panel[], file = ''): readonly Diagnostic[] =>
  panels.length === 0
    ? []
    : [
        warning(
          'grade-reference-doubted',
          `the reference is in doubt: most of the class agree with each other and not with it on ${together(panels.map(({ name }) => name))}`,
          { at: { file }, hint: 'read these panels again, or grade with --consensus in its place' },
        ),
      ];

const marksAgainst = (areUnlike: boolean, file = ''): readonly Diagnostic[] =>
  areUnlike
    ? [
        warning(
          'grade-reference-doubted',
          'the reference is in doubt: the values of most of the class do not follow its marks',
          {
            at: { file },
            hint: 'look whether its marks have the names and places that the class was told, before anybody is asked',
          },
        ),
      ]
    : [];

/** Files whose readings are those of another are one witness with it. */
const noConsensus = (least: number, twice: readonly string[]): Outcome<GradedSurveys> => {
  const once =
    twice.length === 0
      ? ''
      : `: the readings of ${together(twice.map(shownFile))} are those of another file of the class, and count once`;
  return {
    diagnostics: [
      error(
        'grade-no-consensus',
        `no panel was read by ${least} trainees: there is no consensus${once}`,
        { hint: 'name the file of an expert first, or more surveys of the class' },
      ),
    ],
  };
};

function sigmaInForce(
  { rubric, settings: { models } }: GradeFilesRequest,
  surveys: readonly GradedSurvey[],
  reference: Reference,
): SigmaPt {
  const stated = rubric?.value.sigmaPt;
  const usual: SigmaPt = { value: models.training.scores.sigmaPt, from: 'stated' };
  if (stated === 'class') return sigmaOfClass(surveys, reference, models.training.class) ?? usual;
  return stated === undefined ? usual : { value: stated, from: 'stated' };
}

/** Whether one gauge took both sides, and whether its file says what they are uncertain by. */
export function gaugesOf(
  { gauge, handedIn }: Entry,
  { expert }: GradeBase,
  request: GradeFilesRequest,
): Gauges {
  const [own, theirs] = [handedIn?.serial ?? null, expert?.serial ?? null];
  const bothSerials = own !== null && theirs !== null;
  const otherSerial = bothSerials && own !== theirs;
  const [isOwn, isTheirs] = [gauge, request.gauge].map((one) => soundGauge(one) !== undefined);
  const isNamed = bothSerials || isOwn === true || isTheirs === true;
  return {
    same: isOwn !== true && !otherSerial,
    stated: isTheirs === true && expert !== null,
    onlyOwn: isOwn === true && isTheirs !== true,
    moved: gauge === undefined ? undefined : mostDrifted(gauge.file.value)?.change,
    unnamed: isNamed ? undefined : request.settings.film.measurement.proportional,
  };
}

/** A later attempt of the same trainee; one that could not be read stands for nobody. */
const isLater = (one: Entry, other: Entry): boolean =>
  one.name === other.name && one.attempt > other.attempt;
