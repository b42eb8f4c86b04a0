/** Whether a comparison is given what its plan was made with, and what the plan says of a record that it is not given. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { type FilmRecord, filmRecordOf } from '../../formats/film-record.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { PlanFile, RecordedBefore } from '../../formats/plan-file.ts';
import { listed } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { type MarksAgainstPlan, type MarksOnly, marksAgainstPlan } from './compare-marks.ts';
import type { Planned } from './compare-plan.ts';
import type { VisitsRequest } from './compare-visits.ts';

export type PlanFit = VisitsRequest & {
  readonly plan: Placed<PlanFile> | undefined;
  readonly planFile: LoadedFile | undefined;
};

/** What earlier visits took, and paint that came on at them, as a plan made with a film record tells it: counted where that record is not given. */
export function recordOfPlan({ value, placeOf }: Placed<PlanFile>): Placed<FilmRecord> | undefined {
  const panels = value.recorded.map(({ panel, mean, sd, gained }) => ({
    panel,
    taken_um: mean,
    taken_sd_um: sd,
    ...(gained === null ? {} : { gained_um: gained }),
  }));
  if (panels.length === 0) return undefined;
  const file: FilmRecord['file'] = {
    schema: 'leastcut/film-record/1',
    visits: [{ date: null, panels }],
  };
  // What the record says of its panel n is what the plan says where it stands; a visit added later stands nowhere.
  const place: Placed<FilmRecord>['placeOf'] = ([, visit, , panel]) => {
    const from = visit === 0 && typeof panel === 'number' ? value.recorded[panel] : undefined;
    return placeOf(from?.path ?? ['panels']);
  };
  return { value: filmRecordOf(file), placeOf: place };
}

/** What the plan was made with, and these readings are not compared with. */
export const planDoubts = (request: PlanFit, before: BeforeWork): readonly Diagnostic[] =>
  request.plan === undefined
    ? []
    : [
        ...spotsLeftOut(request.plan.value, request),
        ...recordLeftOut(request.plan.value, request, before.surveyed),
        ...ofOthers(request, before),
      ];

/** What was read before the work, beside what the plan says of it. */
export type BeforeWork = {
  readonly surveyed: SurveyResult;
  readonly planned: Planned;
  readonly marks: MarksOnly;
};

/** Of what else it was made than is compared here, where it was: what it allows is then no leave. */
export const planOfOthers = (request: PlanFit, before: BeforeWork): readonly string[] =>
  ofOthers(request, before).map(({ message }) => message);

/** The readings that the plan was made from, where marks were read for it that do not contradict them. */
export const planBeforeMarks = (request: PlanFit, before: BeforeWork): string | null =>
  request.plan !== undefined &&
  isOfOtherReadings(request.plan.value, request) &&
  ofOthers(request, before).length === 0
    ? madeFrom(request.plan.value)
    : null;

const ofOthers = (request: PlanFit, before: BeforeWork): readonly Diagnostic[] =>
  request.plan === undefined
    ? []
    : [
        ...otherReadings(request.plan.value, request, before),
        ...otherNearside(request.plan.value, request),
      ];

const atPlan = ({ planFile }: PlanFit) =>
  planFile === undefined ? {} : { at: { file: planFile.name } };

function spotsLeftOut({ bySpots }: PlanFile, request: PlanFit): readonly Diagnostic[] {
  if (!bySpots || (request.spots ?? []).length > 0) return [];
  return [
    warning(
      'compare-spots-left-out',
      'the plan was made with test spots, and what they took counts here no longer: more may seem to be left than is',
      { ...atPlan(request), hint: 'add --spots, with the file that the plan was made with' },
    ),
  ];
}

/** Less than this is rounding. */
const WORTH_A_WORD = 0.01;

function recordLeftOut(
  { recorded }: PlanFile,
  request: PlanFit,
  before: SurveyResult,
): readonly Diagnostic[] {
  const [name] = recorded.flatMap(({ file }) => (file === null ? [] : [shownFile(file)]));
  if (name === undefined) return [];
  const hint = `add --film-record ${name}`;
  if (request.filmRecord === undefined) {
    const what = recorded.some(({ gained }) => gained !== null)
      ? 'it took, and that it holds panels painted since,'
      : 'it took';
    const message = `the plan was made with the film record ${name}, which is not given: what the plan says ${what} is counted, and a record written without it forgets its visits`;
    return [warning('compare-record-left-out', message, { ...atPlan(request), hint })];
  }
  const lacking = recorded.filter((one) => one.file !== null && holdsLess(before, one));
  if (lacking.length === 0) return [];
  const message = `the film record that is given holds less than the one the plan was made with (${name}) of ${listed(lacking.map(({ panel }) => panel))}: more may seem to be left than is`;
  return [warning('compare-record-left-out', message, { ...atPlan(request), hint })];
}

/** Less that was taken, or no paint that came on; of a panel that was not read nothing is said. */
function holdsLess({ survey }: SurveyResult, { panel: id, mean, gained }: RecordedBefore): boolean {
  const found = survey.panels.find(({ panel }) => panel.id === id);
  if (found === undefined) return false;
  const { recorded } = found.facts;
  return (
    mean - (recorded?.mean ?? 0) > WORTH_A_WORD ||
    (gained !== null && recorded?.gains === undefined)
  );
}

function isOfOtherReadings({ readings }: PlanFile, { files: [before] }: PlanFit): boolean {
  const isOne = readings.some(({ sha256 }) => sha256 === before?.sha256);
  return before !== undefined && readings.length > 0 && !isOne;
}

const madeFrom = ({ readings }: PlanFile): string =>
  listed([...new Set(readings.map(({ file }) => shownFile(file)))]);

/** Marks are read once a plan asks for them: it cannot have been made from them. */
function marksOnPlan(plan: PlanFile, request: PlanFit, before: BeforeWork): MarksAgainstPlan {
  if (!before.marks.before) return 'unknown';
  return request.filmRecord !== undefined && isMadeBeforeRecord(plan, before)
    ? { contradict: 'the film record that is given holds visits that it was made without' }
    : marksAgainstPlan(before.planned, before.surveyed);
}

const isMadeBeforeRecord = ({ recorded }: PlanFile, { surveyed }: BeforeWork): boolean =>
  surveyed.survey.panels.some(({ panel, facts }) => {
    const held = recorded.find((one) => one.panel === panel.id)?.mean ?? 0;
    return (facts.recorded?.mean ?? 0) - held > WORTH_A_WORD;
  });

function otherReadings(plan: PlanFile, request: PlanFit, work: BeforeWork): readonly Diagnostic[] {
  const [before] = request.files;
  if (before === undefined || !isOfOtherReadings(plan, request)) return [];
  const marks = marksOnPlan(plan, request, work);
  if (marks === 'agree') return [];
  const why = marks === 'unknown' ? '' : `; ${marks.contradict}`;
  return [
    warning(
      'compare-plan-of-others',
      `the plan was made from other readings than ${shownFile(before.name)} as it is now: from ${madeFrom(plan)}${why}`,
      {
        ...atPlan(request),
        hint: 'give the plan of this visit, or first the readings that it was made from',
      },
    ),
  ];
}

function otherNearside({ nearside }: PlanFile, request: PlanFit): readonly Diagnostic[] {
  const { value } = request.settings.nearside;
  if (nearside === null || value === null || nearside === value) return [];
  return [
    warning(
      'compare-plan-of-others',
      `the plan was made with the nearside ${nearside}, and here it is ${value}: panels may be those of the other side`,
      { ...atPlan(request), hint: `say --nearside ${nearside}, or make the plan again` },
    ),
  ];
}
