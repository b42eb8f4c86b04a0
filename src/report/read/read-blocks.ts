import { shownFile } from '../../base/file-name.ts';
import { groupBy } from '../../base/group-by.ts';
import { unitName } from '../../base/sentence.ts';
import type { Reading } from '../../film/reading.ts';
import type { ReadVehicles, VehicleReadings } from '../../tasks/read/read-request.ts';
import { type Block, type Column, cell, gap, list, paragraph, title } from '../model.ts';
import { type ShowUnit, thickness } from '../survey/film-table.ts';
import { counted } from '../words.ts';
import { decisionLines } from './decision-lines.ts';

const column = (name: string, align: Column['align'] = 'left'): Column => ({ title: name, align });

/** Readings in a line of the table: eight of a thousand µm and more stand within 80 columns. */
const IN_A_LINE = 8;
const inLines = (own: readonly Reading[]): readonly (readonly Reading[])[] =>
  own.flatMap((_, k) => (k % IN_A_LINE === 0 ? [k] : [])).map((k) => own.slice(k, k + IN_A_LINE));

/** Lines for how the files were read, which leaves a screen room for their readings. */
const SCREEN = 16;
const LEAST_LINES = 3;

/** The readings as understood: how each file was read, then a row a panel. */
export function readBlocks(
  { vehicle, template, readings, assumptions }: VehicleReadings,
  { inputs, excluded }: ReadVehicles,
  unit: ShowUnit,
): readonly Block[] {
  const of = vehicle === null ? '' : ` of ${vehicle}`;
  const room = Math.max(LEAST_LINES, Math.floor(SCREEN / inputs.length));
  const panels = [...groupBy(readings, ({ panel }) => panel)];
  const nameOf = (id: string): string =>
    template?.panels.find((panel) => panel.id === id)?.name ?? id;
  return [
    title(`Readings${of}: ${readings.length} on ${counted(panels.length, 'panel')}`),
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
      rows: panels.flatMap(([id, own]) =>
        inLines(own).map((some, k) => [
          cell(k === 0 ? nameOf(id) : ''),
          cell(k === 0 ? String(own.length) : ''),
          cell(some.map(({ thickness: value }) => thickness(value, unit)).join(' ')),
        ]),
      ),
    },
    ...(excluded.length === 0
      ? []
      : [
          list(
            'Left out',
            excluded.map(
              ({ file, line, column: at, text, reason }) =>
                `${shownFile(file)}:${line}:${at} "${text}" ${reason}`,
            ),
          ),
        ]),
    ...(assumptions.length === 0
      ? []
      : [paragraph('Assumed', `${assumptions.map(({ text }) => text).join('; ')}.`)]),
  ];
}
