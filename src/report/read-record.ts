import type { Reading } from '../film/reading.ts';
import type { ReadVehicles, VehicleReadings } from '../tasks/read-vehicles.ts';
import { envelope, machine, type RecordContext } from './envelope.ts';
import type { MachineRecord } from './model.ts';

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
  excluded,
});

const readingRecord = ({ origin, panel, point, repeat, thickness, layer, place }: Reading) => ({
  file: origin.file,
  line: origin.line,
  column: origin.column,
  panel,
  point,
  repeat,
  reading_um: machine(thickness),
  layer,
  place,
});
