import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { unitName } from '../../base/sentence.ts';
import type { ReadVehicles, VehicleReadings } from '../../tasks/read/read-request.ts';
import { type Block, type Column, cell, gap, list, paragraph, title } from '../model.ts';
import type { ShowUnit } from '../survey/film-table.ts';
import { counted } from '../words.ts';
import { decisionLines } from './decision-lines.ts';
import { leftOutLines } from './left-out-lines.ts';
import { valuesByPoint } from './values-by-point.ts';

const column = (name: string, align: Column['align'] = 'left'): Column => ({ title: name, align });

/** Lines for how the files were read, which leaves a screen room for their readings. */
const SCREEN = 16;
const LEAST_LINES = 3;

/** The readings as understood: how each file was read, then a row a panel. */
export function readBlocks(
  { vehicle, template, readings, assumptions }: VehicleReadings,
  { inputs, excluded }: ReadVehicles,
  unit: ShowUnit,
): readonly Block[] {
  const of = vehicle ?? sourceOf(inputs);
  const room = Math.max(LEAST_LINES, Math.floor(SCREEN / inputs.length));
  const panels = [...groupBy(readings, ({ panel }) => panel)];
  const nameOf = (id: string): string =>
    template?.panels.find((panel) => panel.id === id)?.name ?? id;
  return [
    title(`Readings of ${of}: ${readings.length} on ${counted(panels.length, 'panel')}`),
    ...inputs.flatMap(({ file, decisions }) =>
      decisions === null ? [] : [list(shownFile(file), decisionLines(decisions, room))],
    ),
    gap,
    {
      kind: 'table',
      columns: [
        column(`panel (${unitName(unit)})`),
        { ...column('n', 'right'), said: 'readings' },
        { ...column('readings'), said: 'values', unit: unitName(unit) },
      ],
      rows: panels.map(([id, own]) => [
        cell(nameOf(id)),
        cell(String(own.length)),
        cell(valuesByPoint(own, unit)),
      ]),
    },
    ...(excluded.length === 0 ? [] : [list('Left out', leftOutLines(excluded))]),
    ...(assumptions.length === 0
      ? []
      : [paragraph('Assumed', `${assumptions.map(({ text }) => text).join('; ')}.`)]),
  ];
}

/** What the readings are of, where no vehicle is named. */
const sourceOf = ([first, ...others]: ReadVehicles['inputs']): string =>
  first === undefined || others.length > 0
    ? counted(1 + others.length, 'file')
    : shownFile(first.file);
