/**
 * The template file, `leastcut/template/1`: the panels of a vehicle in walking order, either in full
 * or as a few changes to a built-in template. Every problem of the file is told at once.
 */
import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  type Place,
} from '../../base/diagnostics.ts';
import { metres, millimetres, squareMetres } from '../../base/units.ts';
import { pointsOverFace } from '../../film/template/point-layout.ts';
import { scaleTemplate } from '../../film/template/scale-template.ts';
import type { Panel, VehicleSize, VehicleTemplate } from '../../film/template/template.ts';
import { type TemplateRules, templateRules } from '../data/template-defaults.ts';
import { asQuantity, given } from '../json/given.ts';
import { type JsonPath, parseJson } from '../json/json-text.ts';
import { byPlace, validate } from '../json/validate.ts';
import { templateFaults } from './template-faults.ts';
import {
  type TypedChange,
  type TypedPanel,
  type TypedTemplate,
  templateSchemaBy,
} from './template-schema.ts';

export type TemplateFile = {
  readonly template: VehicleTemplate;
  /** Where the file speaks of a panel; of one it leaves as in the base, where it names the base. */
  readonly placeOfPanel: (id: string) => Place | undefined;
};

export function readTemplate(
  file: string,
  text: string,
  builtIn: readonly VehicleTemplate[],
  rules: TemplateRules = templateRules,
): Outcome<TemplateFile> {
  const { value: document, diagnostics } = parseJson(file, text);
  if (document === undefined) return { diagnostics };
  const checked = validate(templateSchemaBy(rules), document);
  // A file of another kind is not looked into.
  if (checked.diagnostics.some(({ code }) => code === 'settings-schema')) {
    return { diagnostics: checked.diagnostics };
  }
  const faults = templateFaults(document.value, builtIn, rules).map(
    ({ path, what, message, hint }): Diagnostic =>
      error('settings-invalid', message, { at: document.placeOf(path, what), hint }),
  );
  const problems = [...checked.diagnostics, ...faults].sort(byPlace);
  if (checked.value === undefined || hasErrors(problems)) return { diagnostics: problems };
  const typed = checked.value;
  return {
    value: {
      template: toTemplate(file, typed, builtIn, rules),
      placeOfPanel: (id) => document.placeOf(pathOfPanel(typed, id), 'key'),
    },
    diagnostics: problems,
  };
}

function pathOfPanel({ panels = [], add = [], change = {} }: TypedTemplate, id: string): JsonPath {
  const at = panels.findIndex((panel) => panel.id === id);
  if (at !== -1) return ['panels', at, 'id'];
  const added = add.findIndex((panel) => panel.id === id);
  if (added !== -1) return ['add', added, 'id'];
  return Object.hasOwn(change, id) ? ['change', id] : ['base'];
}

function toTemplate(
  file: string,
  typed: TypedTemplate,
  builtIn: readonly VehicleTemplate[],
  rules: TemplateRules,
): VehicleTemplate {
  const base = builtIn.find(({ id }) => id === typed.base);
  const size = sizeOf(typed);
  const own = [
    ...(typed.panels ?? []).map(({ id }) => id),
    ...Object.keys(typed.change ?? {}),
    ...(typed.add ?? []).map(({ id }) => id),
  ];
  return {
    id: typed.id ?? idOfFile(file),
    name: typed.name,
    panels:
      base === undefined
        ? (typed.panels ?? []).map((panel) => toPanel(panel, rules))
        : changed(typed, scaleTemplate(base, size).panels, rules),
    size: { ...base?.size, ...size },
    origin: { file, base: base?.id ?? null, own },
  };
}

const sizeOf = ({ length_m, width_m, height_m }: TypedTemplate): Partial<VehicleSize> =>
  given({
    length: asQuantity(metres, length_m),
    width: asQuantity(metres, width_m),
    height: asQuantity(metres, height_m),
  });

/** `our-vans/Long Van.json` → `Long-Van`. */
const idOfFile = (file: string): string => {
  const words = file
    .replace(/^.*[\\/]/, '')
    .replace(/\.json$/i, '')
    .match(/[\p{L}\p{N}]+/gu);
  return words?.join('-') ?? 'own';
};

/** Of the panels of the base, grown to the stated size, some go, some change, and some come. */
function changed(
  { remove = [], change = {}, add = [] }: TypedTemplate,
  base: readonly Panel[],
  rules: TemplateRules,
): readonly Panel[] {
  const changes = new Map(Object.entries(change));
  const kept = base
    .filter(({ id }) => !remove.includes(id))
    .map((panel) => withChange(panel, changes.get(panel.id), remove));
  return add.reduce<readonly Panel[]>((panels, { after, ...typed }) => {
    const at = after === undefined ? -1 : panels.findIndex(({ id }) => id === after);
    const before = at === -1 ? panels.length : at + 1;
    return [...panels.slice(0, before), toPanel(typed, rules), ...panels.slice(before)];
  }, kept);
}

/** What is not said of a panel of the base stays; a panel whose other side went stands alone. */
function withChange(
  panel: Panel,
  change: TypedChange | undefined,
  removed: readonly string[],
): Panel {
  const alone = panel.mirror !== null && removed.includes(panel.mirror);
  return {
    ...panel,
    ...(alone ? { mirror: null } : {}),
    ...(change === undefined ? {} : traitsOf(change)),
  };
}

function toPanel(typed: TypedPanel, { points }: TemplateRules): Panel {
  return {
    id: typed.id,
    name: typed.name,
    area: squareMetres(typed.area_m2),
    substrate: typed.substrate,
    facing: typed.facing,
    mirror: null,
    flatWidth: millimetres(typed.flat_width_mm),
    trimLength: metres(typed.trim_m),
    points: pointsOverFace(Math.round(points.best)),
    ...traitsOf(typed),
  };
}

const traitsOf = (typed: TypedChange): Partial<Panel> =>
  given({
    name: typed.name,
    area: asQuantity(squareMetres, typed.area_m2),
    substrate: typed.substrate,
    facing: typed.facing,
    mirror: typed.mirror,
    flatWidth: asQuantity(millimetres, typed.flat_width_mm),
    trimLength: asQuantity(metres, typed.trim_m),
    points:
      typed.points?.map(({ point, ...place }) => ({ point: String(point), ...place })) ??
      (typed.point_count === undefined ? undefined : pointsOverFace(typed.point_count)),
    also: typed.also,
    spans: typed.spans,
  });
