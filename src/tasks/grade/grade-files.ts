/**
 * A reference and files of trainees → the grades of a class.
 *
 * A file that cannot be read costs its trainee the grade and nobody else’s: it is told as a warning. Only where the
 * reference, or every file, cannot be read does nothing come of it.
 */
import { type Diagnostic, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { usualMarking } from '../../formats/data/training-defaults.ts';
import type { Grade } from '../../training/grade-trainee.ts';
import type { GradedSurvey } from '../../training/graded-survey.ts';
import { middleSurvey } from '../../training/middle-survey.ts';
import { withGauge } from '../settings/gauge-in-use.ts';
import { jobOfAnother } from '../survey/survey-files.ts';
import type { Surveyed } from './class-copies.ts';
import { namelessDiagnostic, namelessFiles } from './grade-anonymous.ts';
import { gradeAssumptions, ownGauge, yourGauge } from './grade-assumptions.ts';
import { type GradeBase, gradeBase } from './grade-base.ts';
import { type GradedSurveys, gaugesOf, gradeSurveys } from './grade-class.ts';
import { type Entry, type HandIn, handIn } from './grade-hand-in.ts';
import type { GradedClass, GradedTrainee, GradeFilesRequest } from './grade-request.ts';
import { asScored, entrySurvey, expertSurvey } from './grade-survey.ts';
import { referenceDoubts } from './reference-doubts.ts';

export function gradeFiles(request: GradeFilesRequest): Outcome<GradedClass> {
  const files = request.anonymous ? namelessFiles(request.trainees) : request.trainees;
  const base = gradeBase(request, files);
  if (base.value === undefined) return { diagnostics: base.diagnostics };
  const expert = expertSurvey(base.value, request);
  const before = [
    ...base.diagnostics,
    ...mismatchOf(request, base.value),
    ...gaugeOfAll(request),
    ...expert.diagnostics,
    ...referenceDoubts(expert.value, request.settings.models.training),
  ];
  if (hasErrors(before)) return { diagnostics: before };
  const handed = handIn(request, files, base.value);
  const surveys = surveysOf(handed.value, expert.value, request);
  const said = [...before, ...handed.diagnostics, ...surveys.diagnostics];
  if (handed.value === undefined || surveys.value === undefined || hasErrors(said)) {
    return { diagnostics: said };
  }
  const graded = gradeSurveys(surveys.value, expert.value, base.value, request);
  return graded.value === undefined
    ? { diagnostics: [...said, ...graded.diagnostics] }
    : {
        value: classOf(graded.value, handed.value, base.value, request),
        diagnostics: [...said, ...graded.diagnostics],
      };
}

const gaugeOfAll = ({ settings, gauge }: GradeFilesRequest): readonly Diagnostic[] => {
  const { diagnostics } = withGauge(settings, gauge);
  return gauge === undefined ? diagnostics : diagnostics.map((one) => asScored(one, gauge));
};

/** Of every file that could be read, all by one baseline: the expert’s, or that of the class. */
function surveysOf(
  handed: HandIn | undefined,
  expert: GradedSurvey | undefined,
  request: GradeFilesRequest,
): Outcome<readonly Surveyed[]> {
  if (handed === undefined) return { diagnostics: [] };
  const by = (baseline: GradedSurvey | undefined) =>
    handed.entries.map((entry) => ({ entry, ...entrySurvey(entry, baseline, request) }));
  const ofClass = (): GradedSurvey | undefined =>
    middleSurvey(by(undefined).flatMap(({ value }) => value ?? []));
  const all = by(expert ?? ofClass());
  const diagnostics = all.flatMap((one) => one.diagnostics);
  return {
    value: all.flatMap(({ entry, value }) =>
      value === undefined ? [] : [{ entry, survey: value }],
    ),
    diagnostics: request.anonymous
      ? diagnostics.map((one) => namelessDiagnostic(one, handed.hidden))
      : diagnostics,
  };
}

function classOf(
  { grades, ...graded }: GradedSurveys,
  { entries, inputs, asked }: HandIn,
  base: GradeBase,
  request: GradeFilesRequest,
): GradedClass {
  const { job, rubric, settings, anonymous } = request;
  const { expert, template } = base;
  const identity = job?.value.vehicle ?? null;
  const marking = rubric?.value ?? usualMarking(settings.models.training);
  const gauges = entries.map((entry) => gaugesOf(entry, base, request));
  const ownPoints =
    expert !== null &&
    [...grades.values()].every(({ scores }) => scores.every(({ shared }) => shared === 0));
  const marksUnused = expert === null && (request.marked || entries.some(hasMarks));
  const about = {
    ...{ sigmaPt: graded.sigmaPt, marking, entries, ownPoints, marksUnused },
    oneGauge: gauges.every(({ same }) => same),
    unnamedGauge: gauges.some(({ unnamed }) => unnamed !== undefined),
  };
  return {
    ...graded,
    vehicle: base.vehicle ?? identity?.id ?? null,
    identity,
    template,
    marking,
    referenceFile: expert?.input.file ?? null,
    // Whoever reads the sheets of a nameless class need not know its trainer either.
    assessor: anonymous ? null : (expert?.assessor ?? null),
    date: expert?.date ?? null,
    rubric: rubric === undefined ? null : (rubric.value.name ?? rubric.name),
    trainees: entries.map((entry) => traineeOf(entry, grades)),
    asked,
    inputs: [...(expert === null ? [] : [expert.input]), ...inputs],
    assumptions: [...base.assumptions, ...gradeAssumptions(request, about)],
    settings,
  };
}

const hasMarks = ({ handedIn }: Entry): boolean =>
  handedIn?.readings.readings.some(({ marked }) => marked) ?? false;

const traineeOf = (entry: Entry, grades: ReadonlyMap<Entry, Grade>): GradedTrainee => ({
  name: entry.name,
  attempt: entry.attempt,
  attempts: entry.attempts,
  file: entry.file,
  date: entry.handedIn?.date ?? null,
  ownGauge: ownGauge(entry),
  yourGauge: yourGauge(entry),
  grade: grades.get(entry) ?? null,
  notRead: entry.notRead,
});

/** What a job states of one vehicle is not lent to another. */
function mismatchOf({ job }: GradeFilesRequest, { vehicle }: GradeBase): readonly Diagnostic[] {
  const mismatch = job === undefined ? undefined : jobOfAnother(job, vehicle);
  return mismatch === undefined ? [] : [mismatch];
}
