/** Gauge files → readings by vehicle, their panels matched to a template. */
import { error, hasErrors, type Outcome, ofVehicle } from '../../base/diagnostics.ts';
import { closest } from '../../base/did-you-mean.ts';
import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import type { Reading } from '../../film/reading.ts';
import {
  openRecogniser,
  panelRecogniser,
  placeRecogniser,
} from '../../film/template/panel-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { ReadingDecisions } from '../../formats/decisions.ts';
import { unusedPanelNames } from '../../intake/intake-options.ts';
import type { IntakeOptions } from '../../intake/read-gauge-file.ts';
import { unknownTemplate } from '../template/template-set.ts';
import { readWithRules } from './as-decided.ts';
import { decisionsToKeep } from './decisions-to-keep.ts';
import { withLeftOut } from './left-out.ts';
import { listed } from './match-panels.ts';
import { matchVehicle } from './match-vehicle.ts';
import { inputOf, type ReadRequest, type ReadVehicles } from './read-request.ts';
import type { ReadingRules } from './reading-rules.ts';
import { toldByVehicle } from './told-by-vehicle.ts';

export function readVehicles(request: ReadRequest): Outcome<ReadVehicles> {
  const named = namedTemplates(request);
  if (named.value === undefined) return { diagnostics: named.diagnostics };
  const templates = named.value;
  const rules = readingRules(request, templates);
  const read = request.files.map((file) => ({
    file,
    outcome: file.read ?? readWithRules(file, rules),
  }));
  const inputs = read.map(({ file, outcome }) => inputOf(file, outcome.value?.decisions ?? null));
  const seen = new Set(read.flatMap(({ outcome }) => [...(outcome.value?.panelsSeen ?? [])]));
  const unread = read.some(({ outcome }) => outcome.value === undefined);
  const readings = renumbered(read.map(({ outcome }) => outcome.value?.readings ?? []));
  const diagnostics = [
    ...toldByVehicle(
      read.flatMap(({ outcome }) => outcome.diagnostics),
      readings,
    ),
    ...(unread
      ? []
      : unusedPanelNames(
          inputs.map(({ file }) => file),
          rules.typed.panelNames?.keys() ?? [],
          seen,
        )),
  ];
  const excluded = read.flatMap(({ outcome }) => outcome.value?.excluded ?? []);
  if (hasErrors(diagnostics)) return { diagnostics };
  const chosen = byVehicle(readings, request);
  if (chosen.value === undefined) return { diagnostics: [...diagnostics, ...chosen.diagnostics] };
  const matched = [...chosen.value].map(([vehicle, own]) => ({
    vehicle,
    ...matchVehicle(vehicle, own, templates, request),
  }));
  const ofMatches = matched.flatMap((one) =>
    ofVehicle(one.vehicle, matched.length, one.diagnostics),
  );
  const all = [...diagnostics, ...ofMatches];
  const vehicles = matched.flatMap(({ value }) => value ?? []);
  return hasErrors(all)
    ? { diagnostics: all }
    : { value: { ...withLeftOut(vehicles, excluded), inputs }, diagnostics: all };
}

/** By what rules each file is read. */
const readingRules = (
  { intake, typed = {}, decided }: ReadRequest,
  templates: readonly VehicleTemplate[],
): ReadingRules => ({
  usual: {
    ...intake,
    isPanel: panelRecogniser(templates),
    mayBePanel: placeRecogniser(templates),
    leftOpen: openRecogniser(templates),
  },
  typed,
  decided,
});

/** How a file is read where no decisions file says otherwise. */
export function intakeOptions(request: ReadRequest): Outcome<IntakeOptions> {
  const templates = namedTemplates(request);
  if (templates.value === undefined) return { diagnostics: templates.diagnostics };
  const { usual, typed } = readingRules(request, templates.value);
  return { value: { ...usual, ...typed }, diagnostics: [] };
}

/** How the files were read, for a file of decisions. */
export function keepDecisions(request: ReadRequest): Outcome<ReadingDecisions> {
  const templates = namedTemplates(request);
  return templates.value === undefined
    ? { diagnostics: templates.diagnostics }
    : decisionsToKeep(request.files, readingRules(request, templates.value));
}

function namedTemplates({
  templates,
  templateId,
}: ReadRequest): Outcome<readonly VehicleTemplate[]> {
  if (templateId === undefined) return { value: templates, diagnostics: [] };
  const template = templates.find(({ id }) => id === templateId);
  return template === undefined
    ? { diagnostics: [unknownTemplate(templateId, templates)] }
    : { value: [template], diagnostics: [] };
}

/** Points repeated in a later file are further repeats of the same point, not a second first one. */
function renumbered(files: readonly (readonly Reading[])[]): readonly Reading[] {
  const [first = [], ...later] = files;
  if (later.length === 0) return first;
  const seen = new Map<string, number>();
  const keyOf = ({ vehicle, panel, point, layer, place }: Reading): string =>
    JSON.stringify([vehicle, panel, point, layer, place]);
  return files.flatMap((readings) => {
    const before = new Map(seen);
    return readings.map((reading) => {
      const key = keyOf(reading);
      const repeat = reading.repeat + (before.get(key) ?? 0);
      seen.set(key, Math.max(seen.get(key) ?? 0, repeat));
      return { ...reading, repeat };
    });
  });
}

/** Of many, one that the word comes near stands first. */
function listedWithNear(word: string, ids: readonly string[]): string {
  const near = closest(word, ids);
  return listed(near === undefined ? ids : [near, ...ids.filter((id) => id !== near)]);
}

function byVehicle(
  readings: readonly Reading[],
  { vehicle, files }: ReadRequest,
): Outcome<ReadonlyMap<string | null, readonly Reading[]>> {
  const vehicles = groupBy(readings, (reading) => reading.vehicle);
  if (vehicles.size === 0) {
    const names = files.map(({ name }) => shownFile(name)).join(', ');
    return { diagnostics: [error('no-readings', `${names} holds no reading`)] };
  }
  if (vehicle === undefined) return { value: vehicles, diagnostics: [] };
  const own = vehicles.get(vehicle);
  const ids = [...vehicles.keys()].flatMap((id) => id ?? []);
  return own === undefined
    ? {
        diagnostics: [
          error('usage-unknown-vehicle', `no reading belongs to vehicle "${vehicle}"`, {
            hint:
              ids.length === 0
                ? 'the input names no vehicle: leave --vehicle out'
                : `the input holds ${listedWithNear(vehicle, ids)}`,
          }),
        ],
      }
    : { value: new Map([[vehicle, own]]), diagnostics: [] };
}
