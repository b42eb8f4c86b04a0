import type { Reading } from '../../film/reading.ts';
import type { ReadVehicles, VehicleReadings } from '../../tasks/read/read-request.ts';
import { envelope, type RecordContext } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recorded } from '../recorded.ts';

/** `leastcut/read/1`: one vehicle's readings as understood, and every cell left out of the input. */
export const readRecord = (
  vehicle: VehicleReadings,
  { inputs, excluded }: ReadVehicles,
  context: RecordContext,
): MachineRecord => ({
  ...envelope(
    'read',
    { vehicle: vehicle.vehicle, inputs, assumptions: vehicle.assumptions },
    context,
  ),
  template: vehicle.template?.id ?? null,
  readings: vehicle.readings.map(readingRecord),
  excluded: excluded.map(({ place: _, ...cell }) => cell),
});

const readingRecord = (reading: Reading) => ({
  file: reading.origin.file,
  line: reading.origin.line,
  column: reading.origin.column,
  panel: reading.panel,
  point: reading.point,
  repeat: reading.repeat,
  reading_um: recorded(reading.thickness),
  layer: reading.layer,
  place: reading.place,
  marked: reading.marked,
  curved: reading.curved,
  operator: reading.operator ?? null,
  time: reading.time ?? null,
  substrate: reading.substrate ?? null,
  u: reading.u ?? null,
  v: reading.v ?? null,
  note: reading.note ?? null,
});
