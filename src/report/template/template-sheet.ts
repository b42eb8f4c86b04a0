/** A blank reading sheet: what to measure, in walking order, with a box for every point. */

import { counted } from '../../base/counted.ts';
import type { Diagnostic } from '../../base/diagnostics.ts';
import { panelView, seenPlace } from '../../film/template/panel-view.ts';
import type { MeasuringPoint, Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import type { SheetPanel } from '../../tasks/template/follow-up.ts';
import { joined } from '../facts.ts';
import {
  type Block,
  type BoxPanel,
  type DataTable,
  gap,
  type MachineRecord,
  paragraph,
  title,
} from '../model.ts';
import { templateEnvelope } from './template-record.ts';

const pointCount = (panels: readonly Panel[]): number =>
  panels.reduce((sum, { points }) => sum + points.length, 0);

/** What is to be read, and how often each point. */
export type Sheet = {
  readonly template: VehicleTemplate;
  readonly panels: readonly SheetPanel[];
  readonly repeats: number;
};

/** To be printed and filled in by pen. */
export const sheetBlocks = (
  { template, panels, repeats }: Sheet,
  { points: { fewest, best, most } }: TemplateRules,
): readonly Block[] => [
  title(
    `Reading sheet: ${template.name}, ${counted(new Set(panels.map(({ id }) => id)).size, 'panel')}, ${counted(pointCount(panels), 'point')}`,
  ),
  { kind: 'form', fields: ['Vehicle', 'Date', 'Operator', 'Gauge, and its unit (µm or mil)'] },
  gap,
  {
    kind: 'form',
    fields: ['Gauge check before, foil', 'gauge showed', 'Gauge check after, foil', 'gauge showed'],
  },
  gap,
  paragraph(
    null,
    joined(
      [
        `In walking order, ${readingsAsked(repeats)}.`,
        'Each panel is drawn as you see it when you stand before it, and the arrow says where the front of the vehicle is, or its left.',
        'Flat panels have their front edge at the top.',
        'Keep 25 mm from edges and off body lines.',
        'Left and right are those of someone sitting in the vehicle.',
      ],
      ' ',
    ),
  ),
  paragraph(
    null,
    `At least ${fewest} points on a panel, ${best} where it is large enough, up to ${most} where readings differ; more do not help.`,
  ),
  gap,
  { kind: 'boxes', panels: panels.map((panel) => boxPanel(panel, repeats)) },
];

const readingsAsked = (repeats: number): string =>
  repeats === 1
    ? 'a box for every point: one reading, or its repeats one under the other (three where a class is graded)'
    : `${repeats} boxes for every point, one under the other, for ${repeats} readings: lift the probe and set it down anew for each`;

const isMetal = ({ substrate }: Panel): boolean =>
  substrate === 'steel' || substrate === 'aluminium';

/** What is not of metal cannot be read by a magnetic or eddy-current gauge. */
const labelOf = (panel: SheetPanel): string =>
  panel.off !== undefined
    ? offName(panel)
    : isMetal(panel)
      ? panel.name
      : `${panel.name} (${panel.substrate})`;

/** `front left door, in the shut`. */
export const offName = ({ name, off }: SheetPanel): string =>
  off === undefined ? name : `${name}, ${OFF[off]}`;

const OFF: Readonly<Record<NonNullable<SheetPanel['off']>, string>> = {
  shut: 'in the shut',
  worked: 'where it was worked',
};

function boxPanel(panel: SheetPanel, boxes: number): BoxPanel {
  const view = panelView(panel);
  return {
    label: labelOf(panel),
    towards: panel.off === undefined ? view.towards : null,
    places: panel.points.map(({ point, ...place }) => ({ name: point, ...seenPlace(place, view) })),
    boxes,
  };
}

/** To be filled in on a screen: once the readings stand in their column, `read` takes it as it is. */
export function sheetTable(panels: readonly SheetPanel[], repeats: number): DataTable {
  const column = repeats === 1 ? [] : ['repeat'];
  const place = panels.some(({ off }) => off === 'shut') ? ['place'] : [];
  return {
    columns: ['panel', 'point', ...place, ...column, 'reading_um', 'u', 'v', 'note'],
    rows: panels.flatMap(({ id, points, off }) =>
      points.flatMap((point) =>
        countedTo(repeats).map((one) => {
          const { u, v } = positionOf(point, off);
          const at = place.map(() => (off === 'shut' ? 'shut' : null));
          return [id, point.point, ...at, ...column.map(() => one), null, u, v, null];
        }),
      ),
    ),
  };
}

/** Where a place off those of the template lies on its panel nobody has written down. */
const positionOf = (
  { u, v }: MeasuringPoint,
  off: SheetPanel['off'],
): { readonly u: number | null; readonly v: number | null } =>
  off === undefined ? { u, v } : { u: null, v: null };

const countedTo = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, k) => k + 1);

export const sheetRecord = (
  { template, panels, repeats }: Sheet,
  version: string,
  diagnostics: readonly Diagnostic[] = [],
): MachineRecord => ({
  ...templateEnvelope(version, diagnostics),
  template: template.id,
  repeats,
  sheet: panels.map(({ id, name, points, off }) => ({
    panel: id,
    name,
    place: off === 'shut' ? 'shut' : 'face',
    points: points.map((point) => ({ point: point.point, ...positionOf(point, off) })),
  })),
});
