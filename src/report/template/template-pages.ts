/** The vehicle templates as pages: the list of them, one in full, and what a check found. */

import { counted } from '../../base/counted.ts';
import { shown } from '../../base/rounding.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import { templateBasis } from '../../formats/data/templates.ts';
import { column, figures, measures } from '../columns.ts';
import { type Block, cell, type DataTable, list, paragraph, title } from '../model.ts';
import { recorded } from '../recorded.ts';
import { areaOf, BASIS, trimOf } from './template-record.ts';

/** The templates there are, a row each. */
export const templateListBlocks = (templates: readonly VehicleTemplate[]): readonly Block[] => [
  title('Vehicle templates'),
  {
    kind: 'table',
    columns: [
      column('id'),
      column('body'),
      figures('panels'),
      measures('area', 'm²'),
      measures('tape', 'm'),
      measures('L × W × H', 'm'),
    ],
    rows: templates.map((template) => [
      cell(template.id),
      cell(template.name),
      cell(String(template.panels.length)),
      cell(shown(areaOf(template), 1)),
      cell(shown(trimOf(template), 0)),
      cell(sizeText(template)),
    ]),
  },
  ...ownTemplates(templates),
  paragraph(null, BASIS),
];

const ownTemplates = (templates: readonly VehicleTemplate[]): readonly Block[] => {
  const own = templates.flatMap(({ id, origin }) =>
    origin === undefined ? [] : [`${id}: ${origin.file}${basedOn(origin.base)}`],
  );
  return own.length === 0 ? [] : [list('From files', own)];
};

const basedOn = (base: string | null): string => (base === null ? '' : `, changes ${base}`);

const sizeText = ({ size = {} }: Pick<VehicleTemplate, 'size'>): string =>
  [size.length, size.width, size.height]
    .map((measure) => (measure === undefined ? '–' : shown(measure, 2)))
    .join(' × ');

/** One template, its panels in walking order, and the grounds of its numbers. */
export const templateBlocks = (template: VehicleTemplate): readonly Block[] => [
  title(
    `${template.name}: ${counted(template.panels.length, 'panel')} in walking order, ${shown(areaOf(template), 1)} m²`,
  ),
  {
    kind: 'table',
    columns: [
      column('id'),
      column('panel'),
      { ...figures('m²'), said: 'area', unit: 'm²' },
      column('substrate'),
      column('facing'),
      { ...figures('n'), said: 'points' },
      measures('flat', 'mm'),
      measures('tape', 'm'),
    ],
    rows: template.panels.map((panel) => [
      cell(panel.id),
      cell(panel.name),
      cell(shown(panel.area, 2)),
      cell(panel.substrate),
      cell(panel.facing),
      cell(String(panel.points.length)),
      cell(shown(panel.flatWidth, 0)),
      cell(shown(panel.trimLength, 1)),
    ]),
  },
  ...alsoCalled(template.panels),
  list('Where the numbers come from', [...fileGrounds(template), ...builtInGrounds(template)]),
];

const alsoCalled = (panels: readonly Panel[]): readonly Block[] => {
  const called = panels.flatMap(({ name, also = [] }) =>
    also.length === 0 ? [] : [`${name}: ${also.join(', ')}`],
  );
  return called.length === 0 ? [] : [list('Also called', called)];
};

function fileGrounds({ origin }: VehicleTemplate): readonly string[] {
  if (origin === undefined) return [];
  const { file, base, own } = origin;
  if (base === null) return [`everything: as stated in ${file}`];
  return [
    own.length === 0
      ? `every panel: as in the built-in template ${base}`
      : `as stated in ${file}: ${own.join(', ')}; the others as in the built-in template ${base}`,
  ];
}

/** Of a template that says everything itself, nothing is built in. */
function builtInGrounds({ origin, size }: VehicleTemplate): readonly string[] {
  if (origin !== undefined && origin.base === null) return [];
  const { fields } = templateBasis;
  const ground = (what: string, { basis, source }: { basis: string; source: string }): string =>
    `${what}: ${basis}; ${source}`;
  return [
    ground('areas', templateBasis),
    ground('substrate', fields.substrate),
    ground('facing', fields.facing),
    ground('flat width', fields.flatWidth),
    ground('tape', fields.trimLength),
    ground('points', fields.points),
    ...(size === undefined ? [] : [ground(`of a vehicle of ${sizeText({ size })} m`, fields.size)]),
  ];
}

/** What a check of a template came to; what is unusual is said beside it. */
export const checkBlocks = (template: VehicleTemplate, unusual: number): readonly Block[] => [
  title(
    `${template.id} (${template.name}): ${counted(template.panels.length, 'panel')}, ${shown(areaOf(template), 1)} m², nothing wrong`,
  ),
  paragraph(
    null,
    unusual === 0 ? 'Nothing unusual.' : `${counted(unusual, 'thing')} unusual: see the warnings.`,
  ),
];

/** One row a template. */
export const templateListTable = (templates: readonly VehicleTemplate[]): DataTable => ({
  columns: ['template', 'name', 'n_panels', 'area_m2', 'trim_m', 'length_m', 'width_m', 'height_m'],
  rows: templates.map((template) => [
    template.id,
    template.name,
    template.panels.length,
    recorded(areaOf(template)),
    recorded(trimOf(template)),
    template.size?.length ?? null,
    template.size?.width ?? null,
    template.size?.height ?? null,
  ]),
});

/** One row a panel. */
export const templateTable = ({ panels }: VehicleTemplate): DataTable => ({
  columns: [
    'panel',
    'name',
    'area_m2',
    'substrate',
    'facing',
    'mirror',
    'flat_width_mm',
    'trim_m',
    'n_points',
  ],
  rows: panels.map((panel) => [
    panel.id,
    panel.name,
    recorded(panel.area),
    panel.substrate,
    panel.facing,
    panel.mirror,
    recorded(panel.flatWidth),
    recorded(panel.trimLength),
    panel.points.length,
  ]),
});
