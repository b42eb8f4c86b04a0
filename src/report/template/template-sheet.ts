/** A blank reading sheet: what to measure, in walking order, with a box for every point. */
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import { type Block, type DataTable, gap, type MachineRecord, paragraph, title } from '../model.ts';
import { counted } from '../words.ts';
import { templateEnvelope } from './template-record.ts';

const pointCount = (panels: readonly Panel[]): number =>
  panels.reduce((sum, { points }) => sum + points.length, 0);

/** To be printed and filled in by pen. */
export const sheetBlocks = (
  template: VehicleTemplate,
  panels: readonly Panel[],
  { points: { fewest, best, most } }: TemplateRules,
): readonly Block[] => [
  title(
    `Reading sheet: ${template.name}, ${counted(panels.length, 'panel')}, ${counted(pointCount(panels), 'point')}`,
  ),
  { kind: 'form', fields: ['Vehicle', 'Date', 'Operator', 'Gauge', 'Unit (µm or mil)'] },
  gap,
  {
    kind: 'form',
    fields: ['Gauge check before, foil', 'gauge showed', 'Gauge check after, foil', 'gauge showed'],
  },
  gap,
  paragraph(
    null,
    'In walking order, one reading in each box. Flat panels are drawn with their front edge at the top, side panels with their front to the left. Keep 25 mm from edges and off body lines. Left and right are those of someone sitting in the vehicle.',
  ),
  paragraph(
    null,
    `At least ${fewest} points on a panel, ${best} where it is large enough, up to ${most} where readings differ; more do not help.`,
  ),
  ...panels.flatMap((panel): readonly Block[] => [
    gap,
    { kind: 'boxes', label: labelOf(panel), places: placesOf(panel) },
  ]),
];

const isMetal = ({ substrate }: Panel): boolean =>
  substrate === 'steel' || substrate === 'aluminium';

/** What is not of metal cannot be read by a magnetic or eddy-current gauge. */
const labelOf = (panel: Panel): string =>
  isMetal(panel) ? panel.name : `${panel.name} (${panel.substrate})`;

const placesOf = ({ points }: Panel) => points.map(({ point, u, v }) => ({ name: point, u, v }));

/** To be filled in on a screen: once the readings stand in their column, `read` takes it as it is. */
export const sheetTable = (panels: readonly Panel[]): DataTable => ({
  columns: ['panel', 'point', 'reading_um', 'u', 'v', 'note'],
  rows: panels.flatMap(({ id, points }) =>
    points.map(({ point, u, v }) => [id, point, null, u, v, null]),
  ),
});

export const sheetRecord = (
  template: VehicleTemplate,
  panels: readonly Panel[],
  version: string,
): MachineRecord => ({
  ...templateEnvelope(version),
  template: template.id,
  sheet: panels.map(({ id, name, points }) => ({ panel: id, name, points })),
});
