/** A plan, and the sets that were worked of it → what those sets were to take. */
import {
  type Diagnostic,
  error,
  hasErrors,
  note,
  type Outcome,
  type Place,
} from '../../base/diagnostics.ts';
import { sum } from '../../base/sum.ts';
import { micrometres } from '../../base/units.ts';
import { isPointOf } from '../../film/place-note.ts';
import { nameWithZone } from '../../film/survey.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { ForetoldPanel, PlannedPlace } from '../../formats/plan-file.ts';
import { readWorkedFile, type WorkedRow } from '../../intake/read-worked-file.ts';
import { rowsByPanelId } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Planned } from './compare-plan.ts';

export type Worked = {
  /** The plan with its steps as they were worked; panels that no file speaks of as worked in full. */
  readonly done: Planned;
  /** Ids of the panels that a file speaks of; null where none was given. */
  readonly said: ReadonlySet<string> | null;
  /** Panels that a file says were worked, and on which the plan works nothing. */
  readonly unplanned: readonly Panel[];
};

export function asWorked(
  planned: Planned,
  file: LoadedFile | undefined,
  template: VehicleTemplate,
): Outcome<Worked> {
  if (file === undefined)
    return { value: { done: planned, said: null, unplanned: [] }, diagnostics: [] };
  const read = readWorkedFile(file);
  if (read.value === undefined) return { diagnostics: read.diagnostics };
  const matched = rowsByPanelId(read.value, template);
  const diagnostics = [...read.diagnostics, ...matched.diagnostics];
  if (matched.value === undefined) return { diagnostics };
  const rowsOf = matched.value;
  const done = new Map(planned);
  for (const panel of template.panels) {
    const rows = rowsOf.get(panel.id);
    if (rows === undefined) continue;
    const plan = planned.get(panel.id);
    const mistakes = plan === undefined ? notInPlan(panel, rows) : mistakesOf(panel, plan, rows);
    diagnostics.push(...mistakes);
    if (plan !== undefined) done.set(panel.id, workedPanel(plan, rows));
  }
  const unplanned = template.panels.filter(
    ({ id }) => rowsOf.get(id)?.some(({ sets }) => sets > 0) === true && !isWorked(planned.get(id)),
  );
  return hasErrors(diagnostics)
    ? { diagnostics }
    : { value: { done, said: new Set(rowsOf.keys()), unplanned }, diagnostics };
}

const isWorked = (plan: ForetoldPanel | undefined): boolean =>
  plan !== undefined && partsOf(plan).some(({ steps }) => steps.length > 0);

type Rows = readonly WorkedRow[];

/** What is planned and worked by itself: the panel, or each of its zones. */
const partsOf = (plan: ForetoldPanel): readonly ForetoldPanel[] =>
  plan.zones.length === 0 ? [plan] : plan.zones;

/** The rows that speak of a step of a part. */
const rowsAbout = ({ zone, steps }: ForetoldPanel, place: number, rows: Rows): Rows =>
  rows.filter((row) => {
    if (row.zone !== null && row.zone !== zone) return false;
    return (
      row.step === null || row.step === `${place + 1}` || row.step === steps[place]?.combination
    );
  });

function workedPanel(plan: ForetoldPanel, rows: Rows): ForetoldPanel {
  const places = plan.places.flatMap((place) => workedPlace(place, rows));
  if (plan.zones.length === 0) return { ...workedPart(plan, rows), places };
  return {
    ...plan,
    places,
    zones: plan.zones.map((zone) => ({ ...workedPart(zone, rows), places })),
  };
}

/** The rows that speak of a spot: by the name of its point; 0 sets of the whole panel are none of the spot. */
const rowsOfPlace = ({ point }: PlannedPlace, rows: Rows): Rows =>
  rows.filter(({ zone, step }) => (step === null ? zone === null : isPointOf(step, point)));

/** In proportion to its sets, as a step; one that nothing is said of was worked as planned. */
function workedPlace(place: PlannedPlace, rows: Rows): readonly PlannedPlace[] {
  const [row] = rowsOfPlace(place, rows);
  if (row === undefined) return [place];
  if (row.sets === 0) return [];
  const { median, high, inAll, sets } = place;
  const share = sets === null ? 1 : row.sets / sets;
  return [
    {
      ...place,
      sets: row.sets,
      median: micrometres(median * share),
      high: micrometres(high * share),
      inAll: inAll === null ? null : micrometres(Math.max(0, inAll + median * (share - 1))),
    },
  ];
}

/** Each step takes in proportion to its sets, and the part in proportion to its steps; the doubt stays as it is. */
function workedPart(part: ForetoldPanel, rows: Rows): ForetoldPanel {
  const { removal } = part;
  const steps = part.steps.flatMap((step, place) => {
    const [row] = rowsAbout(part, place, rows);
    const { sets } = row ?? step;
    return sets === 0
      ? []
      : [{ ...step, sets, removal: micrometres((step.removal * sets) / step.sets) }];
  });
  if (removal === null || steps.length === 0) return { ...part, steps, removal: null };
  const share = sum(steps.map((one) => one.removal)) / sum(part.steps.map((one) => one.removal));
  return { ...part, steps, removal: { ...removal, median: micrometres(removal.median * share) } };
}

const mistake = (at: Place, message: string, hint: string): Diagnostic =>
  error('worked-mismatch', message, { at, hint });

/** What was worked against the plan is taken as said: no rate is learned of it, and what came off is told all the same. */
const notInPlan = ({ name }: Pick<Panel, 'name'>, rows: Rows): readonly Diagnostic[] =>
  rows
    .filter(({ sets }) => sets > 0)
    .slice(0, 1)
    .map(({ at }) =>
      note('worked-unplanned', `the plan works nothing on the ${name}, and it was worked`, {
        at,
        hint: 'what came off it is told against what might go; no rate is learned from it',
      }),
    );

function mistakesOf(panel: Panel, plan: ForetoldPanel, rows: Rows): readonly Diagnostic[] {
  const spots = plan.places.map((place) => ({
    name: panel.name,
    step: `the spot at ${place.point}`,
    rows: rowsOfPlace(place, rows),
  }));
  const ofSpots = new Set(spots.flatMap((one) => one.rows));
  const others = rows.filter((row) => !ofSpots.has(row));
  const parts = partsOf(plan).filter(({ steps }) => steps.length > 0);
  if (parts.length === 0) return [...notInPlan(panel, others), ...twice(spots)];
  const about = parts.flatMap((part) =>
    part.steps.map((step, place) => ({
      name: nameWithZone(panel.name, part.zone),
      step: `step ${place + 1} (${step.combination})`,
      rows: rowsAbout(part, place, rows),
    })),
  );
  const used = new Set(about.flatMap((one) => one.rows));
  // No sets at all, said of a part that is not to be worked, is no mistake.
  const unknown = others.filter((row) => !used.has(row) && row.step !== null);
  // Who speaks of spots alone says nothing against the steps.
  const unsaid = others.length === 0 ? [] : about.filter((one) => one.rows.length === 0);
  return [
    ...unknown.map((row) => noSuchStep(row, panel, [...about, ...spots])),
    ...unsaid.map(({ name, step }) => notSaid(rows, name, step)),
    ...twice([...about, ...spots]),
  ];
}

function noSuchStep(
  { at, step, zone }: WorkedRow,
  { name }: Panel,
  all: readonly Told[],
): Diagnostic {
  const where = zone === null ? '' : ` in its ${zone} zone`;
  const steps = [...new Set(all.map((one) => one.step))].join(', ');
  return mistake(at, `the plan of the ${name} has no step "${step}"${where}`, `it has ${steps}`);
}

type Told = { readonly name: string; readonly step: string; readonly rows: Rows };

const twice = (all: readonly Told[]): readonly Diagnostic[] =>
  all.flatMap(({ name, step, rows: [, again] }) =>
    again === undefined
      ? []
      : [mistake(again.at, `${name}: ${step} is said twice`, 'say all sets of a step in one row')],
  );

const notSaid = ([first]: Rows, name: string, step: string): Diagnostic =>
  error('worked-mismatch', `${name}: nothing is said of ${step}`, {
    at: first?.at,
    hint: 'give its sets as well, 0 where it was not worked',
  });
