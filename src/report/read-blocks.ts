import { groupBy } from '../base/group-by.ts';
import type { ReadVehicles, VehicleReadings } from '../tasks/read-vehicles.ts';
import { type ShowUnit, thickness, unitName } from './film-table.ts';
import { type Block, type Column, cell, gap, list, paragraph, title } from './model.ts';
import { counted } from './words.ts';

const column = (name: string, align: Column['align'] = 'left'): Column => ({ title: name, align });

/** The readings as understood: how each file was read, then a row a panel. */
export function readBlocks(
  { vehicle, template, readings, assumptions }: VehicleReadings,
  { inputs, excluded }: ReadVehicles,
  unit: ShowUnit,
): readonly Block[] {
  const of = vehicle === null ? '' : ` of ${vehicle}`;
  const panels = [...groupBy(readings, ({ panel }) => panel)];
  const nameOf = (id: string): string =>
    template?.panels.find((panel) => panel.id === id)?.name ?? id;
  return [
    title(`Readings${of}: ${readings.length} on ${counted(panels.length, 'panel')}`),
    ...inputs.flatMap(({ file, decisions }) =>
      decisions === null
        ? []
        : [
            paragraph(
              file,
              `${decisions.encoding}, ${decisions.layout} layout, header on line ${decisions.headerLine}, readings in ${decisions.unit === 'um' ? 'µm' : 'mil'}; ${decisions.evidence.join('; ')}`,
            ),
          ],
    ),
    gap,
    {
      kind: 'table',
      columns: [column(`panel (${unitName(unit)})`), column('n', 'right'), column('readings')],
      rows: panels.map(([id, own]) => [
        cell(nameOf(id)),
        cell(String(own.length)),
        cell(own.map((reading) => thickness(reading.thickness, unit)).join(' ')),
      ]),
    },
    ...(excluded.length === 0
      ? []
      : [
          list(
            'Left out',
            excluded.map(
              ({ file, line, column: at, text, reason }) =>
                `${file}:${line}:${at} "${text}" ${reason}`,
            ),
          ),
        ]),
    ...(assumptions.length === 0
      ? []
      : [paragraph('Assumed', `${assumptions.map(({ text }) => text).join('; ')}.`)]),
  ];
}
