import { type Diagnostic, error, found, type Outcome } from '../../base/diagnostics.ts';
import { inPlaceOrder } from '../../base/place-order.ts';
import { renderJson } from '../../render/json.ts';
import { decisionsFile } from '../../report/read/decisions-file.ts';
import { readBlocks } from '../../report/read/read-blocks.ts';
import { readRecord } from '../../report/read/read-record.ts';
import { readingsTable } from '../../report/read/readings-table.ts';
import type { ReadRequest, ReadVehicles } from '../../tasks/read/read-request.ts';
import { keepDecisions, readVehicles } from '../../tasks/read/read-vehicles.ts';
import { type Answer, type Command, failed } from '../command.ts';
import { STANDARD_OUTPUT, terminalOn } from '../files/standard-output.ts';
import { loadInputs, readRequest } from '../load/load-inputs.ts';
import { formats } from '../options/output-specs.ts';
import { readingOptions, type TypedOptions } from '../options.ts';
import { version } from '../version.ts';

export const readCommand: Command = {
  name: 'read',
  summary: 'show the readings as understood, and each decision taken on the way',
  operands: '<readings.csv …> | -',
  options: ['template', 'shop', 'vehicle', ...readingOptions, 'decisions'],
  formats,
  isAboutReading: true,
  byVehicle: true,
  examples: [
    'leastcut read samples/older-coupe/readings.csv',
    'leastcut read samples/plastic-bumpers/readings.tsv --format json',
    'leastcut read samples/older-coupe/readings.csv --format csv',
    'cat samples/sound-saloon/readings.csv | leastcut read - --show-unit mil',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadInputs(operands, options, world);
    if (inputs.value === undefined) return failed(inputs.diagnostics);
    const { settings } = inputs.value;
    const request = { ...readRequest(inputs.value, options), keepUnknownPanels: true };
    const read = readVehicles(request);
    const kept = keptDecisions(read, request, options);
    const diagnostics = [...inputs.diagnostics, ...read.diagnostics, ...kept.diagnostics];
    if (read.value === undefined || kept.value === undefined) return failed(diagnostics);
    const all = read.value;
    if (options.format === 'csv' && someUnnamed(all)) return failed([...diagnostics, unnamed]);
    return {
      files: kept.value,
      table: () => readingsTable(all.vehicles),
      pages: () => all.vehicles.map((vehicle) => readBlocks(vehicle, all, settings.showUnit.value)),
      records: () =>
        all.vehicles.map((vehicle) => readRecord(vehicle, all, { version, diagnostics })),
      diagnostics: inPlaceOrder(isReadTogether(options) ? besides(diagnostics, all) : diagnostics),
      color: settings.color,
    };
  },
};

/** Who reads the page at a terminal reads what is said on standard error there as well. */
const isReadTogether = ({ format = 'text', out }: TypedOptions): boolean =>
  format === 'text' && out === undefined && terminalOn(STANDARD_OUTPUT).isTTY === true;

/** What the page does not tell already: why a cell is left out stands there. */
const besides = (
  diagnostics: readonly Diagnostic[],
  { excluded }: ReadVehicles,
): readonly Diagnostic[] =>
  diagnostics.filter(
    ({ severity, at, hint }) =>
      severity === 'error' ||
      hint !== undefined ||
      !excluded.some(
        ({ file, line, column }) => at?.file === file && at.line === line && at.column === column,
      ),
  );

/** An empty cell beside named vehicles would say that a name is missing. */
const someUnnamed = ({ vehicles }: ReadVehicles): boolean =>
  vehicles.length > 1 && vehicles.some(({ vehicle }) => vehicle === null);

const unnamed = error(
  'usage-several-vehicles',
  'some readings name their vehicle and others none: one table cannot say so',
  { hint: 'read the files that name none by themselves' },
);

/** The file that --decisions asks for. */
function keptDecisions(
  { value }: Outcome<unknown>,
  request: ReadRequest,
  { decisions: path }: TypedOptions,
): Outcome<NonNullable<Answer['files']>> {
  if (path === undefined || value === undefined) return found([]);
  const kept = keepDecisions(request);
  return kept.value === undefined
    ? { diagnostics: kept.diagnostics }
    : found([{ path, text: renderJson(decisionsFile(kept.value)) }]);
}
