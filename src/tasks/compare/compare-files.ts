/** Readings of two or more visits → what came off, what is left, and whether to go on. */
import { type Diagnostic, note, type Outcome, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { tell, um } from '../../base/sentence.ts';
import { hardestVerdict } from '../../correction/go-on.ts';
import {
  compareSurveys,
  type PanelComparison,
  type SurveyComparison,
} from '../../film/compare/compare-surveys.ts';
import type { PanelSurvey, ZoneName } from '../../film/survey.ts';
import { chosenPanels, listed } from '../read/match-panels.ts';
import { inputsOf, type LoadedFile, type ReadInput } from '../read/read-request.ts';
import type { Assumption } from '../settings/assumption.ts';
import type { Settings } from '../settings/settings.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { gaugesCompared, type NamedGauges } from './compare-gauges.ts';
import { type ComparedGloss, compareGloss } from './compare-gloss.ts';
import { type OneMoreSet, type PartLeft, partLeft, type Surveys } from './compare-panel.ts';
import {
  measuredParts,
  mildestSet,
  type Planned,
  plannedPanels,
  type RateSeen,
  seenRates,
} from './compare-plan.ts';
import { type PlanFit, planDoubts, recordOfPlan } from './compare-plan-fit.ts';
import { slipsOfVisits, type VisitSlip } from './compare-slips.ts';
import { type Standing, standingNow } from './compare-standing.ts';
import { notRecorded, type Unrecorded, unrecordedPanels } from './compare-unrecorded.ts';
import { type VisitPanels, visitOf } from './compare-visit-record.ts';
import { readVisits, type Visit } from './compare-visits.ts';
import { asWorked } from './compare-worked.ts';

export type PanelLeft = PartLeft & { readonly zones: readonly PartLeft[] };

/** What came off from one visit to the next. */
export type VisitStep = {
  readonly from: string;
  readonly to: string;
  readonly comparison: SurveyComparison;
};

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
  /** Where a record is written: the panels read both times that it keeps nothing of. */
  readonly unrecorded: readonly Unrecorded[];
  /** Values of any visit that look keyed wrongly, on the panels that were asked for. */
  readonly slips: readonly VisitSlip[];
  /** Whether a plan was named. */
  readonly planned: boolean;
  /** The file that says which sets were worked, and the ids of the panels that it speaks of. */
  readonly worked: { readonly file: string; readonly panels: ReadonlySet<string> } | null;
  readonly rates: readonly RateSeen[];
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
  readonly panels: readonly string[];
};

/** A record that the plan was made with counts, though it is not given. */
export function compareFiles(given: CompareRequest): Outcome<CompareResult> {
  const { plan, filmRecord = plan && recordOfPlan(plan) } = given;
  const request = { ...given, filmRecord };
  const visits = readVisits(request);
  const [first, ...later] = visits.value ?? [];
  const last = later.at(-1);
  if (first === undefined || last === undefined) return { diagnostics: visits.diagnostics };
  const { template } = first.surveyed.survey;
  const planned = plannedPanels(request.plan, first.surveyed.vehicle, template);
  const worked = asWorked(planned.value ?? new Map(), request.workedFile, template);
  const panels = chosenPanels(request.panels, template);
  const gloss = compareGloss(request.gloss, template);
  const read = [visits, planned, worked, panels, gloss].flatMap((one) => one.diagnostics);
  if (
    planned.value === undefined ||
    worked.value === undefined ||
    panels.value === undefined ||
    gloss.value === undefined
  ) {
    return { diagnostics: read };
  }
  const inputs = onceEach([first, ...later].flatMap(({ surveyed }) => surveyed.inputs));
  const standing = gaugesCompared({ ...request, inputs });
  const compare = (from: Visit, to: Visit): SurveyComparison =>
    compareSurveys(from.surveyed.survey, to.surveyed.survey, {
      marked: { before: from.marked, after: to.marked },
      gauges: standing.gauges,
      model: request.settings.film,
      scatterDof: request.settings.correction.spot.scatterDof,
    });
  const total = compare(first, last);
  const left = standingNow(first, last, total, request);
  if (left.value === undefined) return { diagnostics: [...read, ...left.diagnostics] };
  const ids = new Set(panels.value.map(({ id }) => id));
  const { done, said } = worked.value;
  const surveys = left.value;
  const { parts, rates } = leftOn(total, { planned: planned.value, done, ids }, surveys);
  const visit = visitOf(parts);
  const value: CompareResult = {
    vehicle: first.surveyed.vehicle ?? last.surveyed.vehicle,
    identity: first.surveyed.identity,
    settings: request.settings,
    inputs: [...inputs, ...inputsOf(request.planFile, request.workedFile, request.gloss)],
    assumptions: [...unique([first, ...later]), standing.assumption],
    total,
    steps: [first, ...later].slice(1).map((to, i) => {
      const from = [first, ...later][i] ?? first;
      return { from: from.file, to: to.file, comparison: compare(from, to) };
    }),
    panels: parts.filter(({ comparison }) => ids.has(comparison.panel.id)),
    visit,
    unrecorded: request.recording === true ? unrecordedPanels(total.panels, visit) : [],
    slips: slipsOfVisits([first, ...later], ids),
    planned: request.plan !== undefined,
    worked:
      said === null || request.workedFile === undefined
        ? null
        : { file: request.workedFile.name, panels: said },
    rates,
    gloss: gloss.value,
    before: first.surveyed,
    left: left.value.known,
  };
  return {
    value,
    diagnostics: [
      ...read,
      ...planDoubts(given, left.value.before),
      ...doubts(value, last.file),
      ...notRecorded(value.unrecorded, last.file),
    ],
  };
}

/** Each survey of a visit names the test spots anew. */
const onceEach = (inputs: readonly ReadInput[]): readonly ReadInput[] =>
  inputs.filter(({ file }, i) => inputs.findIndex((one) => one.file === file) === i);

/** What the visits rest on, each said once. */
function unique(visits: readonly Visit[]): readonly Assumption[] {
  const all = visits.flatMap(({ surveyed }) => surveyed.assumptions);
  return all.filter(
    ({ code, text }, i) => all.findIndex((one) => one.code === code && one.text === text) === i,
  );
}

/** What was to come off, what of it was worked, and the panels asked about. */
type ComparedWork = {
  readonly planned: Planned;
  readonly done: Planned;
  readonly ids: ReadonlySet<string>;
};

/** Every compared panel as it stands, by all that was seen, and the plan's rates on the panels asked about. */
function leftOn(
  { panels }: SurveyComparison,
  { planned, done, ids }: ComparedWork,
  { before, known, asked }: Standing,
): { readonly parts: readonly PanelLeft[]; readonly rates: readonly RateSeen[] } {
  const { settings } = known;
  const measured = measuredParts(panels, done);
  const seen = seenRates(measured, settings.correction);
  const set = mildestSet(settings.correction, settings.terms.logSd);
  const mildest: OneMoreSet | null = set === null ? null : { ...set, from: 'mildest' };
  const grounds = { terms: settings.terms, model: settings.film };
  const parts = panels.map((comparison): PanelLeft => {
    const { id } = comparison.panel;
    const [plan, worked] = [planned.get(id), done.get(id)];
    const surveysOf = (zone: ZoneName | null): Surveys => ({
      before: partIn(before, id, zone),
      standing: partIn(known, id, zone),
      asked: partIn(asked, id, zone),
    });
    const common = { seen, mildest, grounds };
    const measuredAs = (foretold: typeof plan) =>
      measured.find((part) => part.foretold.path === foretold?.path);
    const zones = comparison.zones.map((zone) => {
      const ofZone = (panel: typeof plan) =>
        panel?.zones.find((one) => one.zone === zone.zone) ?? panel;
      const foretold = ofZone(worked);
      return partLeft({
        comparison: zone,
        planned: ofZone(plan),
        foretold,
        measured: measuredAs(foretold),
        surveys: surveysOf(zone.zone),
        ...common,
      });
    });
    const whole = partLeft({
      comparison,
      planned: plan,
      foretold: worked,
      measured: measuredAs(worked),
      surveys: surveysOf(null),
      ...common,
    });
    return zones.length === 0 ? { ...whole, zones } : { ...byItsZones(whole, zones), zones };
  });
  const ofAsked = measuredParts(
    panels.filter(({ panel }) => ids.has(panel.id)),
    done,
  );
  return { parts, rates: seenRates(ofAsked, settings.correction).rates };
}

/** A panel in a survey, or the zone of it where it reads as two there too. */
function partIn(
  { survey }: SurveyResult,
  id: string,
  zone: ZoneName | null,
): PanelSurvey | undefined {
  const found = survey.panels.find(({ panel }) => panel.id === id);
  return found?.zones.find((one) => one.zone === zone) ?? found;
}

/** A panel in two zones shows what the zone shows that allows least, and takes the hardest verdict. */
function byItsZones({ comparison }: PartLeft, zones: readonly PartLeft[]): PartLeft {
  const [first, ...others] = zones;
  if (first === undefined) throw new Error('a panel in zones has one');
  const budget = ({ left }: PartLeft): number => left?.budget ?? Number.POSITIVE_INFINITY;
  const least = others.reduce((one, other) => (budget(other) < budget(one) ? other : one), first);
  return {
    ...least,
    comparison,
    // Steps, and what they were to take, are those of its zones.
    planned: null,
    foretold: null,
    allowed: null,
    against: null,
    overruns: zones.flatMap((zone) => zone.overruns),
    verdict: hardestVerdict(zones.map(({ verdict }) => verdict)),
  };
}

/** What is worth a word before anybody acts on the comparison. */
function doubts({ total }: CompareResult, after: string): readonly Diagnostic[] {
  const gained = total.panels.filter((one) => one.gained);
  const named = total.panels.flatMap(({ unpaired, by }) =>
    by === 'pairs' ? [] : unpaired.notMarked,
  );
  return [
    ...(gained.length === 0 ? [] : [filmGained(gained, after)]),
    ...(named.length === 0
      ? []
      : [
          note(
            'compare-not-marked',
            'points are called alike before and after, and are not marked: taken for other places, each panel is compared by its mean',
            { at: { file: after }, hint: 'if they are the same marked places, say --marked' },
          ),
        ]),
  ];
}

function filmGained(gained: readonly PanelComparison[], after: string): Diagnostic {
  const told = gained.map(
    ({ panel, change }) => `${panel.name} by ${tell([um(-(change?.removed.value ?? 0))], 'um')}`,
  );
  return warning(
    'compare-film-gained',
    `${shownFile(after)} reads more film than before: ${listed(told)}`,
    {
      at: { file: after },
      hint: 'are the files the wrong way round? else check the gauge, wipe off wax and polish, read the same places again',
    },
  );
}
