import { shown } from '../base/rounding.ts';
import type { VehicleTemplate } from '../film/template.ts';
import { machine } from './envelope.ts';
import { type Block, type Column, cell, type MachineRecord, paragraph, title } from './model.ts';

const column = (name: string, align: Column['align'] = 'left'): Column => ({ title: name, align });
const area = ({ panels }: VehicleTemplate): number =>
  panels.reduce((sum, one) => sum + one.area, 0);
const tape = ({ panels }: VehicleTemplate): number =>
  panels.reduce((sum, one) => sum + one.trimLength, 0);

const BASIS =
  'Areas are derived (sums of simple shapes, ±25 %; no published table found), everything else is assumed.';

/** The templates there are, a row each. */
export const templateListBlocks = (templates: readonly VehicleTemplate[]): readonly Block[] => [
  title('Vehicle templates'),
  {
    kind: 'table',
    columns: [
      column('id'),
      column('body'),
      column('panels', 'right'),
      column('area m²', 'right'),
      column('tape m', 'right'),
    ],
    rows: templates.map((template) => [
      cell(template.id),
      cell(template.name),
      cell(String(template.panels.length)),
      cell(shown(area(template), 1)),
      cell(shown(tape(template), 0)),
    ]),
  },
  paragraph(null, BASIS),
];

/** One template, its panels in walking order. */
export const templateBlocks = (template: VehicleTemplate): readonly Block[] => [
  title(
    `${template.name}: ${template.panels.length} panels in walking order, ${shown(area(template), 1)} m²`,
  ),
  {
    kind: 'table',
    columns: [
      column('id'),
      column('panel'),
      column('m²', 'right'),
      column('substrate'),
      column('facing'),
      column('points', 'right'),
      column('flat mm', 'right'),
      column('tape m', 'right'),
    ],
    rows: template.panels.map((panel) => [
      cell(panel.id),
      cell(panel.name),
      cell(shown(panel.area, 2)),
      cell(panel.substrate),
      cell(panel.facing),
      cell(String(panel.points.length)),
      cell(String(panel.flatWidth)),
      cell(shown(panel.trimLength, 1)),
    ]),
  },
  paragraph(null, BASIS),
];

/** `leastcut/template/1`: the templates asked for, in full. */
export const templateRecord = (
  templates: readonly VehicleTemplate[],
  version: string,
): MachineRecord => ({
  schema: 'leastcut/template/1',
  version,
  command: 'template',
  vehicle: null,
  inputs: [],
  assumptions: [{ code: 'template-areas', text: BASIS, origin: 'built-in' }],
  diagnostics: [],
  templates: templates.map(({ id, name, panels }) => ({
    template: id,
    name,
    panels: panels.map((panel) => ({
      panel: panel.id,
      name: panel.name,
      area_m2: machine(panel.area),
      substrate: panel.substrate,
      facing: panel.facing,
      mirror: panel.mirror,
      flat_width_mm: machine(panel.flatWidth),
      trim_length_m: machine(panel.trimLength),
      points: panel.points,
    })),
  })),
});
