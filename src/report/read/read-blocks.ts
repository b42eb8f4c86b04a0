import { counted } from '../../base/counted.ts';
import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { ReadVehicles, VehicleReadings } from '../../tasks/read/read-request.ts';
import { assumedBlocks } from '../assumption-blocks.ts';
import { column, figures } from '../columns.ts';
import { decisionLines } from '../decision-lines.ts';
import { type Block, cell, gap, list, title } from '../model.ts';
import { leftOutLines } from './left-out-lines.ts';
import { valuesByPoint } from './values-by-point.ts';

/** Lines for how the files were read, which leaves a screen room for their readings. */
const SCREEN = 16;
const LEAST_LINES = 3;

/** The readings as understood: how each file was read, then a row a panel. */
export function readBlocks(
  { vehicle, template, readings, assumptions }: VehicleReadings,
  { inputs, excluded }: ReadVehicles,
  unit: LengthUnit,
): readonly Block[] {
  const of = vehicle ?? sourceOf(inputs);
  const room = Math.max(LEAST_LINES, Math.floor(SCREEN / inputs.length));
  const panels = [...groupBy(readings, ({ panel }) => panel)];
  const nameOf = (id: string): string =>
    id === '' ? '(not named)' : (template?.panels.find((panel) => panel.id === id)?.name ?? id);
  const named = panels.filter(([id]) => id !== '');
  const where = named.length === 0 ? 'no panel named' : counted(named.length, 'panel');
  return [
    title(`Readings of ${of}: ${readings.length} on ${where}`),
    ...inputs.flatMap(({ file, decisions }) =>
      decisions === null ? [] : [list(shownFile(file), decisionLines(decisions, room))],
    ),
    gap,
    {
      kind: 'table',
      columns: [
        column(`panel (${unitName(unit)})`),
        { ...figures('n'), said: 'readings' },
        { ...column('readings'), said: 'values', unit: unitName(unit) },
      ],
      rows: panels.map(([id, own]) => [
        cell(nameOf(id)),
        cell(String(own.length)),
        cell(valuesByPoint(own, unit)),
      ]),
    },
    ...(excluded.length === 0 ? [] : [list('Left out', leftOutLines(excluded))]),
    ...assumedBlocks(assumptions, unit),
  ];
}

/** What the readings are of, where no vehicle is named. */
const sourceOf = ([first, ...others]: ReadVehicles['inputs']): string =>
  first === undefined || others.length > 0
    ? counted(1 + others.length, 'file')
    : shownFile(first.file);
