import { readBlocks } from '../../report/read-blocks.ts';
import { readRecord } from '../../report/read-record.ts';
import { readVehicles } from '../../tasks/read-vehicles.ts';
import { type Command, failed } from '../command.ts';
import { loadInputs, readRequest } from '../load-inputs.ts';
import { version } from '../version.ts';

export const readCommand: Command = {
  name: 'read',
  summary: 'show the readings as understood, and every decision taken on the way',
  operands: '<readings.csv ...| ->',
  options: ['template', 'shop', 'vehicle', 'readingUnit'],
  examples: [
    'leastcut read samples/older-coupe/readings.csv',
    'leastcut read samples/plastic-bumpers/readings.tsv --format json',
    'cat samples/sound-saloon/readings.csv | leastcut read - --show-unit mil',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadInputs(operands, options, world);
    if (inputs.value === undefined) return failed(inputs.diagnostics);
    const { gauge, settings, templates } = inputs.value;
    const request = readRequest(gauge, options, settings, templates);
    const read = readVehicles({ ...request, keepUnknownPanels: true });
    const diagnostics = [...inputs.diagnostics, ...read.diagnostics];
    if (read.value === undefined) return failed(diagnostics);
    const all = read.value;
    return {
      pages: all.vehicles.map((vehicle) => readBlocks(vehicle, all, settings.showUnit.value)),
      records: all.vehicles.map((vehicle) => readRecord(vehicle, all, { version, diagnostics })),
      diagnostics,
      color: settings.color,
    };
  },
};
