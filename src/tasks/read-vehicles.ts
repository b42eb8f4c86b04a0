/** Gauge files → readings by vehicle, their panels matched to a template. */
import { error, hasErrors, type Outcome, warning } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import { shownFile } from '../base/file-name.ts';
import { groupBy } from '../base/group-by.ts';
import { bestTemplate, panelMatcher, panelRecogniser } from '../film/panel-names.ts';
import type { Reading } from '../film/reading.ts';
import type { VehicleTemplate } from '../film/template.ts';
import { type TemplateRules, templateRules } from '../formats/data/template-defaults.ts';
import type { ReadingDecisions } from '../formats/decisions.ts';
import { decode, type GaugePiece } from '../intake/decode.ts';
import { unusedPanelNames } from '../intake/intake-options.ts';
import type { ExcludedCell, IntakeDecisions, IntakeOptions } from '../intake/read-gauge-file.ts';
import { lineAt } from '../intake/source.ts';
import { readWithRules } from './as-decided.ts';
import type { Assumption } from './assumption.ts';
import { decisionsToKeep } from './decisions-to-keep.ts';
import { listed, panelProblem } from './match-panels.ts';
import { namesTogether } from './names-together.ts';
import { takenAsOneVehicle } from './one-vehicle.ts';
import type { AsDecided, ReadingRules, TypedReading } from './reading-rules.ts';
import { type StatedSize, scaleToVehicle } from './scale-to-vehicle.ts';
import { unknownTemplate } from './template-set.ts';

/** A file's bytes as they were loaded, with their checksum. */
export type LoadedFile = {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly sha256: string;
  /** Given in place of bytes: whole vehicles of a long file. */
  readonly piece?: GaugePiece;
};

export type ReadInput = {
  readonly file: string;
  readonly sha256: string;
  readonly decisions: IntakeDecisions | null;
};

/** All readings of one vehicle; `template` is null where no template knows its panels. */
export type VehicleReadings = {
  readonly vehicle: string | null;
  readonly template: VehicleTemplate | null;
  readonly readings: readonly Reading[];
  readonly assumptions: readonly Assumption[];
};

export type ReadVehicles = {
  readonly vehicles: readonly VehicleReadings[];
  readonly excluded: readonly ExcludedCell[];
  readonly inputs: readonly ReadInput[];
};

export type ReadRequest = {
  readonly files: readonly LoadedFile[];
  readonly templates: readonly VehicleTemplate[];
  /** Named by the user; else the one that fits best. */
  readonly templateId: string | undefined;
  /** The size of the vehicle, to which the template is scaled; of one vehicle only. */
  readonly size?: StatedSize | undefined;
  /** The built-in ones where nothing is set. */
  readonly templateRules?: TemplateRules;
  readonly intake: Omit<IntakeOptions, 'isPanel'>;
  /** What the user settles by hand, which wins over all else. */
  readonly typed?: TypedReading | undefined;
  readonly decided?: AsDecided | undefined;
  /** Only this vehicle, where it is named. */
  readonly vehicle: string | undefined;
  /** True where a panel that no template knows may keep its name: nothing is computed from it. */
  readonly keepUnknownPanels: boolean;
};

export function readVehicles(request: ReadRequest): Outcome<ReadVehicles> {
  const named = namedTemplates(request);
  if (named.value === undefined) return { diagnostics: named.diagnostics };
  const templates = named.value;
  const rules = readingRules(request, templates);
  const read = request.files.map((file) => ({
    file,
    outcome: readWithRules(file, rules),
  }));
  const inputs = read.map(({ file, outcome }) => ({
    file: file.name,
    sha256: file.sha256,
    decisions: outcome.value?.decisions ?? null,
  }));
  const seen = new Set(read.flatMap(({ outcome }) => [...(outcome.value?.panelsSeen ?? [])]));
  const unread = read.some(({ outcome }) => outcome.value === undefined);
  const diagnostics = [
    ...read.flatMap(({ outcome }) => outcome.diagnostics),
    ...(unread
      ? []
      : unusedPanelNames(
          inputs.map(({ file }) => file),
          rules.typed.panelNames?.keys() ?? [],
          seen,
        )),
  ];
  const readings = renumbered(read.map(({ outcome }) => outcome.value?.readings ?? []));
  const excluded = read.flatMap(({ outcome }) => outcome.value?.excluded ?? []);
  if (hasErrors(diagnostics)) return { diagnostics };
  const chosen = byVehicle(readings, request);
  if (chosen.value === undefined) return { diagnostics: [...diagnostics, ...chosen.diagnostics] };
  const matched = [...chosen.value].map(([vehicle, own]) =>
    matchVehicle(vehicle, own, templates, request),
  );
  const all = [...diagnostics, ...matched.flatMap((outcome) => outcome.diagnostics)];
  const vehicles = matched.flatMap(({ value }) => value ?? []);
  return hasErrors(all)
    ? { diagnostics: all }
    : { value: { vehicles, excluded, inputs }, diagnostics: all };
}

/** By what rules each file is read. */
const readingRules = (
  { intake, typed = {}, decided }: ReadRequest,
  templates: readonly VehicleTemplate[],
): ReadingRules => ({
  usual: { ...intake, isPanel: panelRecogniser(templates) },
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
              suggest(vehicle, ids) ??
              (ids.length === 0 ? undefined : `the input holds ${listed(ids)}`),
          }),
        ],
      }
    : { value: new Map([[vehicle, own]]), diagnostics: [] };
}

function matchVehicle(
  vehicle: string | null,
  readings: readonly Reading[],
  templates: readonly VehicleTemplate[],
  request: ReadRequest,
): Outcome<VehicleReadings> {
  const labels = [...new Set(readings.map(({ panel }) => panel))];
  const [only] = templates;
  const best = request.templateId === undefined ? bestTemplate(labels, templates) : undefined;
  const unscaled = request.templateId === undefined ? best?.template : only;
  if (unscaled === undefined) return undecided(vehicle, readings, labels, request);
  const scaled = scaleToVehicle(unscaled, request.size, request.templateRules ?? templateRules);
  if (scaled.value === undefined) return { diagnostics: scaled.diagnostics };
  const { template } = scaled.value;
  const match = panelMatcher(template);
  const severity = request.keepUnknownPanels ? warning : error;
  const diagnostics = labels.flatMap((label) => {
    const answer = match(label);
    const reading = readings.find(({ panel }) => panel === label);
    return answer.kind === 'match' || reading === undefined
      ? []
      : [panelProblem(severity, label, answer, template, place(reading, request))];
  });
  const renamed = readings.map((reading) => {
    const found = match(reading.panel);
    return found.kind === 'match' ? { ...reading, panel: found.panel.id } : reading;
  });
  const nameOf = (id: string): string =>
    template.panels.find((panel) => panel.id === id)?.name ?? id;
  const asWritten = (reading: Reading): Reading => readings[renamed.indexOf(reading)] ?? reading;
  const placeOf = (reading: Reading) => place(asWritten(reading), request);
  const one = vehicle === null ? takenAsOneVehicle(renamed, { nameOf, placeOf }) : undefined;
  if (one !== undefined && hasErrors(one.diagnostics)) return { diagnostics: one.diagnostics };
  const together = [...groupBy(readings, ({ origin }) => origin.file).values()].flatMap((own) => {
    const firsts = new Map(own.toReversed().map((reading) => [reading.panel, reading]));
    const matched = [...firsts.keys()].reverse().flatMap((label) => {
      const answer = match(label);
      return answer.kind === 'match' ? [{ label, panel: answer.panel.id }] : [];
    });
    const placeOfLabel = (label: string) => {
      const reading = firsts.get(label);
      return reading === undefined ? undefined : place(reading, request);
    };
    return namesTogether(matched, { nameOf, placeOf: placeOfLabel });
  });
  const assumptions = [
    ...(best === undefined ? [] : templateAssumption(template, best.tied)),
    ...scaled.value.assumptions,
    ...(one?.assumptions ?? []),
  ];
  return {
    value: { vehicle, template, readings: samePoints(renamed), assumptions },
    diagnostics: [...diagnostics, ...together, ...(one?.diagnostics ?? [])],
  };
}

/** Two labels of one panel ("hood", "Bonnet") may both have a point 1: repeats count on. */
function samePoints(readings: readonly Reading[]): readonly Reading[] {
  const taken = new Set<string>();
  return readings.map((reading) => {
    const keyOf = (repeat: number): string =>
      JSON.stringify([reading.panel, reading.point, reading.layer, reading.place, repeat]);
    let { repeat } = reading;
    while (taken.has(keyOf(repeat))) repeat += 1;
    taken.add(keyOf(repeat));
    return repeat === reading.repeat ? reading : { ...reading, repeat };
  });
}

function templateAssumption(
  { id, name }: VehicleTemplate,
  tied: readonly VehicleTemplate[],
): readonly Assumption[] {
  const also = tied.length === 0 ? '' : ` as well as ${tied.map((one) => one.id).join(', ')}`;
  return [
    {
      code: 'template',
      text: `template ${id} (${name}), which the panel names fit${also}: --template names yours`,
      origin: 'readings',
    },
  ];
}

function undecided(
  vehicle: string | null,
  readings: readonly Reading[],
  labels: readonly string[],
  request: ReadRequest,
): Outcome<VehicleReadings> {
  const names = listed(labels.map((label) => `"${label}"`));
  const ids = request.templates.map(({ id }) => id).join(', ');
  const [reading] = readings;
  const at = reading === undefined ? undefined : place(reading, request);
  if (request.keepUnknownPanels) {
    return {
      value: { vehicle, template: null, readings, assumptions: [] },
      diagnostics: [
        warning('panel-unmatched', `no template fits the panels ${names}: kept as they stand`, {
          at,
        }),
      ],
    };
  }
  return {
    diagnostics: [
      error('template-undecided', `no template fits the panels ${names}`, {
        at,
        hint: `name one with --template: ${ids}`,
      }),
    ],
  };
}

/** Where a reading's panel is named, with the line as the user wrote it. */
function place({ origin, panel }: Reading, { files, typed, decided, intake }: ReadRequest) {
  const file = files.find(({ name }) => name === origin.file);
  const encoding = typed?.encoding ?? decided?.decisions.encoding ?? intake.encoding;
  const source = file === undefined ? undefined : decode(file, { encoding }).value?.source;
  const lineText = source === undefined ? undefined : lineAt(source, origin.line);
  const column = (lineText?.indexOf(panel) ?? -1) + 1;
  return {
    file: origin.file,
    line: origin.line,
    ...(lineText === undefined || column === 0 ? {} : { column, length: panel.length, lineText }),
  };
}
