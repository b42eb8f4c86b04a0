/** Readings of one vehicle → their panels by the ids of a template, and what that rests on. */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  type Place,
  warning,
} from '../../base/diagnostics.ts';
import { withoutMarks } from '../../base/letters.ts';
import type { Reading } from '../../film/reading.ts';
import { kerbWordIn } from '../../film/template/kerb-word.ts';
import { kerbHint, openHint } from '../../film/template/panel-advice.ts';
import { panelMatcher } from '../../film/template/panel-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { type BestTemplate, bestTemplate } from '../../film/template/template-fit.ts';
import { templateRules } from '../../formats/data/template-defaults.ts';
import { decode } from '../../intake/bytes/decode.ts';
import { shownLine } from '../../intake/rows/source.ts';
import type { Assumption } from '../settings/assumption.ts';
import { scaleToVehicle } from '../template/scale-to-vehicle.ts';
import type { MatchedVehicle } from './left-out.ts';
import { listed, panelProblem } from './match-panels.ts';
import { tellNameless } from './nameless-readings.ts';
import { namesByTemplate } from './names-by-template.ts';
import { namesTogether } from './names-together.ts';
import { takenAsOneVehicle } from './one-vehicle.ts';
import type { ReadRequest } from './read-request.ts';

/** `templates` are those to choose from: one, where it was named. */
export function matchVehicle(
  vehicle: string | null,
  readings: readonly Reading[],
  templates: readonly VehicleTemplate[],
  request: ReadRequest,
): Outcome<MatchedVehicle> {
  const nameless = tellNameless(readings, request.keepUnknownPanels, (own) => place(own, request));
  if (hasErrors(nameless)) return { diagnostics: nameless };
  const labels = [...new Set(readings.map(({ panel }) => panel))].filter((label) => label !== '');
  if (labels.length === 0 && nameless.length > 0) {
    return { value: { vehicle, template: null, readings, assumptions: [] }, diagnostics: nameless };
  }
  const [only] = templates;
  const best = request.templateId === undefined ? bestTemplate(labels, templates) : undefined;
  const unscaled = request.templateId === undefined ? best?.template : only;
  if (unscaled === undefined) return undecided(vehicle, readings, labels, request);
  const scaled = scaleToVehicle(unscaled, request.size, request.templateRules ?? templateRules);
  if (scaled.value === undefined) return { diagnostics: scaled.diagnostics };
  const { template } = scaled.value;
  const idOf = idsOf(labels, template);
  const written = asWritten(readings, idOf);
  const renamed = written.size === 0 ? readings : [...written.keys()];
  const isTogether = written.size > 0 && new Set(idOf.values()).size < idOf.size;
  const told = {
    nameOf: (id: string): string => template.panels.find((panel) => panel.id === id)?.name ?? id,
    placeOf: (reading: Reading) => place(written.get(reading) ?? reading, request),
  };
  const one = takenAsOneVehicle(vehicle, renamed, request.intake.plausible, told);
  if (hasErrors(one.diagnostics)) return { diagnostics: one.diagnostics };
  const assumptions = [
    ...(best === undefined ? [] : templateAssumption(template, best)),
    ...scaled.value.assumptions,
    ...one.assumptions,
  ];
  return {
    value: { vehicle, template, readings: samePoints(renamed), assumptions },
    diagnostics: [
      ...nameless,
      ...(idOf.size === labels.length ? [] : unknownPanels(readings, template, request)),
      ...(best === undefined
        ? []
        : namesByTemplate(readings, template, request.templates, (own) => place(own, request))),
      ...(isTogether ? namesTogether(written, told) : []),
      ...one.diagnostics,
    ],
  };
}

/** The panels of the template that labels name; of a label that names none there is nothing. */
function idsOf(labels: readonly string[], template: VehicleTemplate): ReadonlyMap<string, string> {
  const match = panelMatcher(template);
  const ids = new Map<string, string>();
  for (const label of labels) {
    const found = match(label);
    if (found.kind === 'match') ids.set(label, found.panel.id);
  }
  return ids;
}

/**
 * Each reading under the id of its panel, where that is known → the same as the file names it; nothing where the file
 * names every panel by its id.
 */
function asWritten(
  readings: readonly Reading[],
  idOf: ReadonlyMap<string, string>,
): ReadonlyMap<Reading, Reading> {
  if (areIds(idOf)) return new Map();
  return new Map(
    readings.map((reading) => {
      const panel = idOf.get(reading.panel);
      return [panel === undefined ? reading : { ...reading, panel }, reading];
    }),
  );
}

function areIds(idOf: ReadonlyMap<string, string>): boolean {
  for (const [label, id] of idOf) if (label !== id) return false;
  return true;
}

function unknownPanels(
  readings: readonly Reading[],
  template: VehicleTemplate,
  request: ReadRequest,
): readonly Diagnostic[] {
  const match = panelMatcher(template);
  const severity = request.keepUnknownPanels ? warning : error;
  const firsts = new Map(readings.toReversed().map((reading) => [reading.panel, reading]));
  return [...firsts].reverse().flatMap(([label, reading]) => {
    const answer = match(label);
    if (answer.kind === 'match' || label === '') return [];
    const problem = panelProblem(severity, label, answer, template, place(reading, request));
    return [
      {
        ...problem,
        hint:
          answer.kind === 'unknown'
            ? waysOut(label, answer, template, request.templates)
            : openHint(answer.why, label),
      },
    ];
  });
}

/** A panel of the file that the template has not: it may be one of its panels by another name, or none. */
function waysOut(
  label: string,
  { suggestion }: { readonly suggestion?: string },
  { id }: VehicleTemplate,
  templates: readonly VehicleTemplate[],
): string {
  const others = templates.filter((one) => panelMatcher(one)(label).kind === 'match');
  if (others.length > 0) {
    return `it is a panel of ${listed(others.map((one) => one.id))}: name the vehicle’s with --template; if the vehicle has none, take its rows out`;
  }
  const naming = (name: string): string => `--panel-names "${label}=${name}"`;
  return suggestion === undefined
    ? `say which panel it is: ${naming('NAME')} (leastcut template show ${id} lists the names); or take its rows out`
    : `did you mean "${suggestion}"? Then ${naming(suggestion)}; if it is no panel, take its rows out`;
}

/** Two labels of one panel ("hood", "Bonnet") may both have a point 1: repeats count on. */
function samePoints(readings: readonly Reading[]): readonly Reading[] {
  if (eachReadOnce(readings)) return readings;
  const taken = new Set<string>();
  return readings.map((reading) => {
    const { panel, point, layer, place } = reading;
    const at = `${panel}\0${point}\0${layer}\0${place}\0`;
    let { repeat } = reading;
    while (taken.has(`${at}${repeat}`)) repeat += 1;
    taken.add(`${at}${repeat}`);
    return repeat === reading.repeat ? reading : { ...reading, repeat };
  });
}

/** Nearly every vehicle: points on faces, panel by panel, none of them read again. */
function eachReadOnce(readings: readonly Reading[]): boolean {
  const panels = new Set<string>();
  /** The last panel with a point of that name. */
  const panelOf = new Map<string, string>();
  let above: string | undefined;
  for (const { panel, point, layer, place, repeat } of readings) {
    if (repeat !== 1 || layer !== '' || place !== 'face') return false;
    if (panel !== above && panels.has(panel)) return false;
    if (panelOf.get(point) === panel) return false;
    if (panel !== above) panels.add(panel);
    panelOf.set(point, panel);
    above = panel;
  }
  return true;
}

/** `coupe` of `coupé`: what is called as its id says is not named twice. */
const bare = (name: string): string => withoutMarks(name.normalize('NFD'));

function templateAssumption(
  { id, name }: VehicleTemplate,
  { tied, matched, unmatched }: BestTemplate,
): readonly Assumption[] {
  const some = unmatched.length === 0 ? 'the' : `${matched} of ${matched + unmatched.length}`;
  const also = tied.length === 0 ? '' : ` as well as ${tied.map((one) => one.id).join(', ')}`;
  return [
    {
      code: 'template',
      text: `template ${id}${bare(name) === id ? '' : ` (${name})`}, which ${some} panel names fit${also}: --template names yours`,
      origin: 'readings',
    },
  ];
}

function undecided(
  vehicle: string | null,
  readings: readonly Reading[],
  labels: readonly string[],
  request: ReadRequest,
): Outcome<MatchedVehicle> {
  const names = listed(labels.map((label) => `"${label}"`));
  const ids = request.templates.map(({ id }) => id).join(', ');
  const [reading] = readings;
  const at = reading === undefined ? undefined : place(reading, request);
  const kerb = labels.flatMap((label) => kerbWordIn(label) ?? [])[0];
  const sides = kerb === undefined ? undefined : kerbHint(kerb);
  if (request.keepUnknownPanels) {
    return {
      value: { vehicle, template: null, readings, assumptions: [] },
      diagnostics: [
        warning('panel-unmatched', `no template fits the panels ${names}: kept as they stand`, {
          at,
          hint: sides ?? `say which panels they are: --panel-names "${labels[0]}=PANEL"`,
        }),
      ],
    };
  }
  return {
    diagnostics: [
      error('template-undecided', `no template fits the panels ${names}`, {
        at,
        hint: sides ?? `name one with --template: ${ids}`,
      }),
    ],
  };
}

/** Where a reading's panel is named, in its line or the nearest one above, as the user wrote it. */
function place({ origin, panel }: Reading, { files, typed, decided, intake }: ReadRequest): Place {
  const file = files.find(({ name }) => name === origin.file);
  const encoding = typed?.encoding ?? decided?.decisions.encoding ?? intake.encoding;
  const source = file === undefined ? undefined : decode(file, { encoding }).value?.source;
  const lines = source?.text.split('\n') ?? [];
  const above = lines.slice(Math.max(0, origin.line - farthestAbove), origin.line);
  const from = above.findLastIndex((text) => text.includes(panel));
  const line = from === -1 ? origin.line : origin.line - above.length + 1 + from;
  const text = lines[line - 1];
  if (text === undefined) return { file: origin.file, line };
  const column = from === -1 ? origin.column : text.indexOf(panel) + 1;
  const length = from === -1 ? 1 : panel.length;
  return { file: origin.file, line, column, length, ...shownLine(text, column) };
}

/** How many lines above its readings a panel's name is looked for. */
const farthestAbove = 1_000;
