import { hasErrors } from '../../base/diagnostics.ts';
import { quoteBlocks } from '../../report/quote/quote-blocks.ts';
import { customerBlocks } from '../../report/quote/quote-customer-blocks.ts';
import { quoteRecord } from '../../report/quote/quote-record.ts';
import { quoteTable } from '../../report/quote/quote-table.ts';
import { quoteFiles } from '../../tasks/quote/quote-files.ts';
import { heldToPrices } from '../../tasks/settings/price-problems.ts';
import { type Command, failed } from '../command.ts';
import { loadSurveyInputs } from '../load/load-gauge.ts';
import { surveyRequest } from '../load/load-inputs.ts';
import { formats } from '../options/output-specs.ts';
import { readingOptions } from '../options.ts';
import { pageOptions } from '../page-options.ts';
import { version } from '../version.ts';

export const quoteCommand: Command = {
  name: 'quote',
  summary: 'price the job: the aims side by side, what each takes and costs',
  operands: '<readings.csv …> | -',
  options: [
    'template',
    'job',
    'shop',
    'gauge',
    'rates',
    'history',
    'defects',
    'spots',
    'filmRecord',
    'vehicle',
    'panel',
    'aim',
    'kind',
    'date',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    ...readingOptions,
  ],
  formats,
  byVehicle: true,
  examples: [
    'leastcut quote samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json --shop samples/shop.json',
    'leastcut quote samples/older-coupe/readings.csv --shop samples/shop.json --kind quotation --aim 70',
    'leastcut quote samples/sound-saloon/readings.csv --shop samples/shop.json --date today --format html',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadSurveyInputs(operands, options, world);
    if (inputs.value === undefined) return failed(inputs.diagnostics);
    const { defects, settings } = inputs.value;
    const loaded = heldToPrices(inputs.diagnostics, settings.money);
    if (hasErrors(loaded)) return failed(loaded);
    const quoted = quoteFiles({
      ...surveyRequest(inputs.value, options),
      defects,
      date: options.date,
    });
    const diagnostics = [...loaded, ...quoted.diagnostics];
    if (quoted.value === undefined || hasErrors(diagnostics)) return failed(diagnostics);
    const date = options.date ?? null;
    const page = { ...pageOptions(settings, options), date };
    const all = quoted.value;
    const results = all.map(({ result }) => result);
    return {
      // A page of its own for the owner of the car: what is printed is what they get.
      pages: () =>
        all.map(({ result, panels }) =>
          options.format === 'html'
            ? customerBlocks(result, page)
            : quoteBlocks(result, panels, page),
        ),
      records: () => results.map((result) => quoteRecord(result, { version, diagnostics, date })),
      table: () => quoteTable(results),
      readings: () => results.map(({ request }) => request.readings),
      diagnostics,
      color: settings.color,
    };
  },
};
