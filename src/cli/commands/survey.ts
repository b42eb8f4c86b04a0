import type { Diagnostic } from '../../base/diagnostics.ts';
import { surveyBlocks } from '../../report/survey/survey-blocks.ts';
import { surveyRecord } from '../../report/survey/survey-record.ts';
import { areMeasured, measuredTable, surveyTable } from '../../report/survey/survey-table.ts';
import {
  measureFiles,
  type SurveyFilesRequest,
  surveyFiles,
} from '../../tasks/survey/survey-files.ts';
import { withHelp } from '../../tasks/survey/survey-help.ts';
import { namesIn } from '../chosen-fields.ts';
import { type Answer, type Command, failed } from '../command.ts';
import { loadSurveyInputs } from '../load/load-gauge.ts';
import { surveyRequest } from '../load/load-inputs.ts';
import { formats } from '../options/output-specs.ts';
import { readingOptions } from '../options.ts';
import { pageOptions } from '../page-options.ts';
import { version } from '../version.ts';

export const surveyCommand: Command = {
  name: 'survey',
  summary: 'say what is on each panel, how sure that is, how much may come off',
  operands: '<readings.csv …> | -',
  options: [
    'template',
    'job',
    'filmRecord',
    'shop',
    'gauge',
    'rates',
    'spots',
    'vehicle',
    'panel',
    'why',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    ...readingOptions,
  ],
  formats,
  byVehicle: true,
  rowsByVehicle: true,
  examples: [
    'leastcut survey samples/sound-saloon/readings.csv',
    'leastcut survey samples/older-coupe/readings.csv --job samples/older-coupe/job.json',
    'leastcut survey samples/sound-saloon/readings.csv --why bonnet --why "right quarter"',
    'leastcut survey samples/sound-saloon/readings.csv --format csv --fields panel,condition,budget_um',
    'cat samples/sound-saloon/readings.csv | leastcut survey - --panel bonnet --format json',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadSurveyInputs(operands, options, world);
    if (inputs.value === undefined) return failed(inputs.diagnostics);
    const request = surveyRequest(inputs.value, options);
    const names = options.format === 'csv' ? namesIn(options.fields ?? '') : [];
    if (names.length > 0 && areMeasured(names)) return measured(request, names, inputs.diagnostics);
    const result = surveyFiles(request);
    const diagnostics = [...inputs.diagnostics, ...result.diagnostics];
    if (result.value === undefined) return failed(diagnostics);
    const page = pageOptions(inputs.value.settings, options);
    const surveyed = result.value;
    const reports = surveyed.map(withHelp);
    return {
      pages: () => reports.map((report) => surveyBlocks(report, page)),
      records: () => reports.map((report) => surveyRecord(report, { version, diagnostics })),
      table: () => surveyTable(surveyed),
      readings: () => surveyed.map(({ result: one }) => one.request.readings),
      diagnostics,
      color: inputs.value.settings.color,
    };
  },
};

/** Where no column is asked for that a survey judges, none is judged. */
function measured(
  request: SurveyFilesRequest,
  names: readonly string[],
  noticed: readonly Diagnostic[],
): Answer {
  const { value, diagnostics: own } = measureFiles(request);
  const diagnostics = [...noticed, ...own];
  return value === undefined
    ? failed(diagnostics)
    : { pages: none, records: none, table: () => measuredTable(value, names), diagnostics };
}

const none = (): readonly never[] => [];
