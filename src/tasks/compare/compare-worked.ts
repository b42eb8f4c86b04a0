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
import { nameWithZone } from '../../film/survey.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { ForetoldPanel } from '../../formats/plan-file.ts';
import { readWorkedFile, type WorkedRow } from '../../intake/read-worked-file.ts';
import { rowsByPanelId } from '../read/match-panels.ts';
import type { LoadedFile } from '../read/read-request.ts';
import type { Planned } from './compare-plan.ts';

export type Worked = {
  /** The plan with its steps as they were worked; panels that no file speaks of as worked in full. */
  readonly done: Planned;
  /** Ids of the panels that a file speaks of; null where none was given. */
  readonly said: ReadonlySet<string> | null;
};

export function asWorked(
  planned: Planned,
  file: LoadedFile | undefined,
  template: VehicleTemplate,
): Outcome<Worked> {
  if (file === undefined) return { value: { done: planned, said: null }, diagnostics: [] };
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
  return hasErrors(diagnostics)
    ? { diagnostics }
    : { value: { done, said: new Set(rowsOf.keys()) }, diagnostics };
}

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
  if (plan.zones.length === 0) return workedPart(plan, rows);
  return { ...plan, zones: plan.zones.map((zone) => workedPart(zone, rows)) };
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
  const parts = partsOf(plan).filter(({ steps }) => steps.length > 0);
  if (parts.length === 0) return notInPlan(panel, rows);
  const about = parts.flatMap((part) =>
    part.steps.map((step, place) => ({
      name: nameWithZone(panel.name, part.zone),
      step: `step ${place + 1} (${step.combination})`,
      rows: rowsAbout(part, place, rows),
    })),
  );
  const used = new Set(about.flatMap((one) => one.rows));
  const steps = [...new Set(about.map(({ step }) => step))].join(', ');
  return [
    ...rows.flatMap((row) => {
      // No sets at all, said of a part that is not to be worked, is no mistake.
      if (used.has(row) || row.step === null) return [];
      const where = row.zone === null ? '' : ` in its ${row.zone} zone`;
      return [
        mistake(
          row.at,
          `the plan of the ${panel.name} has no step "${row.step}"${where}`,
          `it has ${steps}`,
        ),
      ];
    }),
    ...about.flatMap(({ name, step, rows: [first, again] }) => {
      if (first === undefined) return [unsaid(rows, name, step)];
      return again === undefined
        ? []
        : [
            mistake(
              again.at,
              `${name}: ${step} is said twice`,
              'say all sets of a step in one row',
            ),
          ];
    }),
  ];
}

const unsaid = ([first]: Rows, name: string, step: string): Diagnostic =>
  error('worked-mismatch', `${name}: nothing is said of ${step}`, {
    at: first?.at,
    hint: 'give its sets as well, 0 where it was not worked',
  });
