/** `leastcut/template/1`: the templates asked for, in full. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { shown } from '../../base/rounding.ts';
import { spansOf } from '../../film/template/scale-template.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import { templateRules } from '../../formats/data/template-defaults.ts';
import { templateBasis } from '../../formats/data/templates.ts';
import { envelope } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

export const templateEnvelope = (
  version: string,
  diagnostics: readonly Diagnostic[] = [],
): MachineRecord =>
  envelope('template', { vehicle: null, inputs: [], assumptions: [] }, { version, diagnostics });

/** Keys of a panel are those of a template file, beside `panel` for its id. */
export const templateRecord = (
  templates: readonly VehicleTemplate[],
  version: string,
  diagnostics: readonly Diagnostic[] = [],
): MachineRecord => ({
  ...templateEnvelope(version, diagnostics),
  assumptions: [{ code: 'template-areas', text: BASIS, origin: 'built-in' }],
  templates: templates.map((template) => ({
    template: template.id,
    name: template.name,
    file: template.origin?.file ?? null,
    base: template.origin?.base ?? null,
    length_m: recordedOrNull(template.size?.length),
    width_m: recordedOrNull(template.size?.width),
    height_m: recordedOrNull(template.size?.height),
    n_panels: template.panels.length,
    area_m2: recorded(areaOf(template)),
    trim_m: recorded(trimOf(template)),
    panels: template.panels.map((panel) => panelRecord(panel, template)),
  })),
  basis: {
    area_m2: plainBasis(templateBasis),
    substrate: plainBasis(templateBasis.fields.substrate),
    facing: plainBasis(templateBasis.fields.facing),
    flat_width_mm: plainBasis(templateBasis.fields.flatWidth),
    trim_m: plainBasis(templateBasis.fields.trimLength),
    points: plainBasis(templateBasis.fields.points),
    length_m: plainBasis(templateBasis.fields.size),
    spans: plainBasis(templateBasis.fields.spans),
  },
});

const plainBasis = ({ basis, source }: { readonly basis: string; readonly source: string }) => ({
  basis,
  source,
});

const panelRecord = (panel: Panel, { origin }: VehicleTemplate): MachineRecord => ({
  panel: panel.id,
  name: panel.name,
  area_m2: recorded(panel.area),
  substrate: panel.substrate,
  facing: panel.facing,
  mirror: panel.mirror,
  flat_width_mm: recorded(panel.flatWidth),
  trim_m: recorded(panel.trimLength),
  also: panel.also ?? [],
  spans: spansOf(panel),
  n_points: panel.points.length,
  points: panel.points,
  origin:
    origin !== undefined && (origin.base === null || origin.own.includes(panel.id))
      ? 'file'
      : 'built-in',
});

export const areaOf = ({ panels }: VehicleTemplate): number =>
  panels.reduce((sum, { area }) => sum + area, 0);
export const trimOf = ({ panels }: VehicleTemplate): number =>
  panels.reduce((sum, { trimLength }) => sum + trimLength, 0);

const uncertainty = shown(100 * templateRules.areas.uncertainty, 0);

/** One sentence on the grounds of the built-in numbers. */
export const BASIS = `Areas are derived (sums of simple shapes, ±${uncertainty} %; no published table found), everything else is assumed.`;
