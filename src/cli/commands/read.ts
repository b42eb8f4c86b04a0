import { hasErrors } from '../../base/diagnostics.ts';
import { readBlocks } from '../../report/read-blocks.ts';
import { readRecord } from '../../report/read-record.ts';
import { readVehicles } from '../../tasks/read-vehicles.ts';
import { type Command, failed } from '../command.ts';
import { loadGauge, readRequest } from '../load-inputs.ts';
import { version } from '../version.ts';

export const readCommand: Command = {
  name: 'read',
  summary: 'show the readings as understood, and every decision taken on the way',
  operands: '<readings.csv ...| ->',
  options: ['template', 'vehicle', 'readingUnit'],
  examples: [
    'leastcut read samples/older-coupe/readings.csv',
    'leastcut read samples/plastic-bumpers/readings.tsv --format json',
    'cat samples/sound-saloon/readings.csv | leastcut read - --show-unit mil',
  ],
  run: async (operands, options, world) => {
    const gauge = await loadGauge(operands, world);
    if (gauge.value === undefined || hasErrors(gauge.diagnostics)) {
      return failed(gauge.diagnostics);
    }
    const read = readVehicles(readRequest(gauge.value, options, undefined, true));
    const diagnostics = [...gauge.diagnostics, ...read.diagnostics];
    if (read.value === undefined) return failed(diagnostics);
    const all = read.value;
    return {
      pages: all.vehicles.map((vehicle) => readBlocks(vehicle, all, options.showUnit ?? 'um')),
      records: all.vehicles.map((vehicle) => readRecord(vehicle, all, { version, diagnostics })),
      diagnostics,
    };
  },
};
