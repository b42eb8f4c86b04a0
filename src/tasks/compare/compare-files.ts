/** Readings of two or more visits → what came off, what is left, and whether to go on. */
import type { Diagnostic, Outcome } from '../../base/diagnostics.ts';
import {
  type SurveyComparison,
  withAllPoints,
  withoutPointsApart,
} from '../../film/compare/compare-surveys.ts';
import { chosenPanels } from '../read/match-panels.ts';
import { inputsOf, type LoadedFile, type ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { Settings } from '../settings/settings.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { type CommonShift, commonShift, isOfGauge, shiftDoubts } from './common-shift.ts';
import { filmDoubts, type VisitStep } from './compare-film-doubts.ts';
import type { NamedGauges } from './compare-gauges.ts';
import { type ComparedGloss, compareGloss } from './compare-gloss.ts';
import { leftOn, type PanelLeft, partsOf } from './compare-left-parts.ts';
import { type MarksOnly, marksOnly } from './compare-marks.ts';
import { nothingShared } from './compare-nothing-shared.ts';
import { dayDoubts } from './compare-order.ts';
import { type PanelPlace, panelsWithPlaces, placesOnPanels } from './compare-places.ts';
import {
  type NamedPlaces,
  type PlaceRead,
  readPlaces,
  withNamedPlaces,
} from './compare-places-read.ts';
import { type Planned, plannedPanels, type RateSeen } from './compare-plan.ts';
import {
  type BeforeWork,
  type PlanFit,
  planBeforeMarks,
  planDoubts,
  planOfOthers,
  recordOfPlan,
} from './compare-plan-fit.ts';
import { saferParts } from './compare-points-apart.ts';
import { recordDoubts } from './compare-record-doubts.ts';
import { type Seen, seenOver, type Visits, visitsKnown } from './compare-seen.ts';
import { slipsOfVisits, type VisitSlip } from './compare-slips.ts';
import { type Standings, standings } from './compare-standing.ts';
import { swapDoubts } from './compare-swaps.ts';
import {
  measuredThen,
  type UnreadPanel,
  unreadPanels,
  unreadUnplanned,
  workedUnread,
} from './compare-unread.ts';
import { notRecorded, type Unrecorded, unrecordedPanels } from './compare-unrecorded.ts';
import { visitsInParts } from './compare-visit-in-parts.ts';
import { type VisitPanels, visitOf } from './compare-visit-record.ts';
import { readVisits, type Visit } from './compare-visits.ts';
import { asWorked, type Worked } from './compare-worked.ts';

export type CompareResult = {
  readonly vehicle: string | null;
  readonly identity: SurveyResult['identity'];
  readonly settings: Settings;
  readonly inputs: readonly ReadInput[];
  readonly assumptions: readonly Assumption[];
  /** From the first visit to the last. */
  readonly total: SurveyComparison;
  /** From visit to visit; one step where there are two. */
  readonly steps: readonly VisitStep[];
  /** In walking order, those that were asked for. */
  readonly panels: readonly PanelLeft[];
  /** What came off each panel, as a record keeps it. */
  readonly visit: VisitPanels;
  /** Places that the plan worked deeper than their panels, with what was read there. */
  readonly places: readonly PanelPlace[];
  /** Ids of the panels on which the plan has one, worked or not. */
  readonly deeper: ReadonlySet<string>;
  /** The test spots that no record was given yet. */
  readonly newSpots: SurveyResult['newSpots'];
  /** The place of this visit in the record that is given; null where it is not there yet. */
  readonly again: number | null;
  /** Where a record is written: the panels read both times, or worked against the plan, that it keeps nothing of. */
  readonly unrecorded: readonly Unrecorded[];
  /** Panels that were worked and not compared, as a record holds them. */
  readonly unread: readonly UnreadPanel[];
  /** Values of any visit that look keyed wrongly, on the panels that were asked for. */
  readonly slips: readonly VisitSlip[];
  /** Whether a plan was named. */
  readonly planned: boolean;
  /** Of what else it was made, where it was; nothing of a plan of these readings. */
  readonly planOfOthers: readonly string[];
  /** The readings that it was made from, where the first visit read marks for it; null where it did not. */
  readonly planBeforeMarks: string | null;
  readonly marks: MarksOnly;
  /** The file that says which sets were worked, and the ids of the panels that it speaks of. */
  readonly worked: { readonly file: string; readonly panels: ReadonlySet<string> } | null;
  /** Where only a shift of the gauge explains what was seen, none looks wrong. */
  readonly rates: readonly RateSeen[];
  /** One amount that all panels lost more than was to go, or less; null where they did not. */
  readonly shift: CommonShift | null;
  readonly gloss: readonly ComparedGloss[];
  readonly before: SurveyResult;
  /** As the vehicle stands now. */
  readonly left: SurveyResult;
};

export type CompareRequest = PlanFit & {
  readonly gauges: NamedGauges;
  /** Sets that were worked of the plan; without it all of them. */
  readonly workedFile: LoadedFile | undefined;
  readonly gloss: LoadedFile | undefined;
  /** Whether what came off is written to a film record. */
  readonly recording?: boolean;
  /** The day of the visit, where it is said. */
  readonly date?: string | undefined;
  readonly panels: readonly string[];
};

/** A record that the plan was made with counts, though it is not given. */
export function compareFiles(given: CompareRequest): Outcome<CompareResult> {
  const { plan, filmRecord = plan && recordOfPlan(plan) } = given;
  const request = { ...given, filmRecord };
  const read = readVisits(request);
  const [first, ...later] = read.value ?? [];
  const last = later.at(-1);
  if (first === undefined || last === undefined) return { diagnostics: read.diagnostics };
  const named = besidesOf(request, first);
  const diagnostics = [...read.diagnostics, ...named.diagnostics];
  if (named.value === undefined) return { diagnostics };
  const visits = { first, last, all: [first, ...later] };
  const outcome = comparedVisits(visits, named.value, request, given);
  return {
    ...outcome,
    diagnostics: [...diagnostics, ...outcome.diagnostics],
  };
}

/** What is named beside the readings, by the template of the first of them. */
type Besides = {
  readonly planned: Planned;
  readonly worked: Worked;
  /** Of the panels asked about. */
  readonly ids: ReadonlySet<string>;
  readonly gloss: readonly ComparedGloss[];
};

function besidesOf(
  request: CompareRequest,
  { surveyed: { vehicle, survey } }: Visit,
): Outcome<Besides> {
  const { template } = survey;
  const planned = plannedPanels(request.plan, vehicle, template);
  const worked = asWorked(planned.value ?? new Map(), request.workedFile, template);
  const panels = chosenPanels(request.panels, template);
  const gloss = compareGloss(request.gloss, template);
  const diagnostics = [planned, worked, panels, gloss].flatMap((one) => one.diagnostics);
  if (
    planned.value === undefined ||
    worked.value === undefined ||
    panels.value === undefined ||
    gloss.value === undefined
  ) {
    return { diagnostics };
  }
  const ids = new Set(panels.value.map(({ id }) => id));
  const value = { planned: planned.value, worked: worked.value, ids, gloss: gloss.value };
  return { value, diagnostics };
}

function comparedVisits(
  visits: Visits,
  besides: Besides,
  request: CompareRequest,
  asGiven: CompareRequest,
): Outcome<CompareResult> {
  const { first, last } = visits;
  const seen = seenOver(visits, besides.worked.done, request);
  const { total, rises, found } = seen;
  const held = new Set([...(found.again === null ? [] : [found.again]), ...found.within]);
  const compared = new Set(total.panels.map(({ panel }) => panel.id));
  const onRecord = visitsKnown(request)[found.again ?? -1];
  const stay = measuredThen(onRecord, compared);
  const deeper = new Set([...panelsWithPlaces(besides.planned)].filter((id) => !stay.has(id)));
  const standing = standings({ first, last, total, rises, held, deeper }, request).value;
  if (standing === undefined) return { diagnostics: [] };
  const marks = marksOnly(total, request.settings.film);
  const before = { surveyed: standing.all.before, planned: besides.planned, marks };
  const known = { compared: new Set([...compared, ...stay]), deeper };
  const value = resultOf(visits, { besides, seen, standing, before, known }, request);
  return {
    value,
    diagnostics: [
      ...planDoubts(asGiven, before),
      ...shiftDoubts(value.shift, [first.file, last.file]),
      ...doubtsOf(visits, seen, request),
      ...notRecorded(value.unrecorded, last.file),
      ...(request.recording === true ? workedUnread(value.unread, [first.file, last.file]) : []),
    ],
  };
}

/** What the visit holds as measured, now or by its record, and where the plan works places that it does not hold yet. */
type MeasuredNow = {
  readonly compared: ReadonlySet<string>;
  readonly deeper: ReadonlySet<string>;
};

function resultOf(
  { first, last, all }: Visits,
  {
    besides: { planned, worked, ids, gloss },
    seen: { inputs, assumptions, total, steps, rises, found, named },
    standing,
    before,
    known,
  }: {
    readonly besides: Besides;
    readonly seen: Seen;
    readonly standing: Standings;
    readonly before: BeforeWork;
    readonly known: MeasuredNow;
  },
  request: CompareRequest,
): CompareResult {
  const ofOthers = planOfOthers(request, before);
  const isOwnPlan = ofOthers.length === 0;
  const madeBefore = planBeforeMarks(request, before);
  // A plan of these very readings took them for a survey.
  const isOfThese = request.plan !== undefined && isOwnPlan && madeBefore === null;
  const marks = { ...before.marks, before: before.marks.before && !isOfThese };
  const model = request.settings.film;
  const places = withNamedPlaces(
    readPlaces(worked.done, total.panels, { first, last }, model),
    named,
    (id) => before.surveyed.survey.panels.find(({ panel }) => panel.id === id)?.budget ?? null,
    { compared: total.panels, times: { first, last }, model },
  );
  const deeper = new Set([...known.deeper, ...namedOn(named, places)]);
  const work = { planned, done: worked.done, places, ids, rises, isOwnPlan, marks };
  const { parts: rest, rates } = leftOn(withoutPointsApart(total), work, standing.rest);
  const parts =
    standing.all === standing.rest
      ? rest
      : saferParts(total, leftOn(withAllPoints(total), work, standing.all).parts, rest);
  const visit = visitOf(parts, standing.all.asked.survey.panels);
  const shift = commonShift(parts.flatMap(partsOf), {
    stepSd: request.settings.correction.removal.stepLogSd,
    isOwnPlan,
  });
  return {
    vehicle: first.surveyed.vehicle ?? last.surveyed.vehicle,
    identity: first.surveyed.identity,
    settings: request.settings,
    inputs: [...inputs, ...inputsOf(request.planFile, request.workedFile, request.gloss)],
    assumptions: [...unique(all), ...assumptions],
    total,
    steps,
    panels: parts.filter(({ comparison }) => ids.has(comparison.panel.id)),
    visit,
    places: placesOnPanels(places, first.surveyed.survey.template).filter(({ panel }) =>
      deeper.has(panel.id),
    ),
    deeper,
    newSpots: first.surveyed.newSpots,
    again: found.again,
    unrecorded:
      request.recording === true
        ? [...unrecordedPanels(parts, visit), ...unreadUnplanned(worked.unplanned, known.compared)]
        : [],
    unread: unreadPanels(worked.done, known.compared, first.surveyed.survey.template),
    slips: slipsOfVisits(all, ids),
    planned: request.plan !== undefined,
    planOfOthers: ofOthers,
    planBeforeMarks: madeBefore,
    marks,
    worked: workedOf(worked.said, request.workedFile),
    rates: isOfGauge(shift) ? rates.map((rate) => ({ ...rate, looks: null })) : rates,
    shift,
    gloss,
    before: first.surveyed,
    left: standing.all.known,
  };
}

/** What is doubtful of the visits themselves, of their order, and of the record. */
const doubtsOf = (
  { first, last, all }: Visits,
  { total, steps, found }: Seen,
  { recording = false, date, ...request }: CompareRequest,
): readonly Diagnostic[] => [
  ...recordDoubts({ visits: visitsKnown(request), found, first, last, recording, date }),
  ...nothingShared(total, { first, last }),
  ...dayDoubts(date, all),
  ...swapDoubts(total, [first.file, last.file]),
  ...filmDoubts(total, steps, last.file),
  ...visitsInParts(steps),
];

/** Ids of the panels on which such a place was read. */
const namedOn = (
  named: readonly NamedPlaces[],
  places: ReadonlyMap<string, readonly PlaceRead[]>,
): readonly string[] =>
  named.map(({ panel }) => panel.id).filter((id) => (places.get(id) ?? []).length > 0);

const workedOf = (
  said: ReadonlySet<string> | null,
  file: LoadedFile | undefined,
): CompareResult['worked'] =>
  said === null || file === undefined ? null : { file: file.name, panels: said };

/** What the visits rest on, each said once. */
function unique(visits: readonly Visit[]): readonly Assumption[] {
  const all = visits.flatMap(({ surveyed }) => surveyed.assumptions);
  return all.filter(
    ({ code, text }, i) => all.findIndex((one) => one.code === code && one.text === text) === i,
  );
}
