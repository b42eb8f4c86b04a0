import { surveyBlocks } from '../../report/survey/survey-blocks.ts';
import { surveyRecord } from '../../report/survey/survey-record.ts';
import { surveyTable } from '../../report/survey/survey-table.ts';
import { surveyFiles } from '../../tasks/survey/survey-files.ts';
import { withHelp } from '../../tasks/survey/survey-help.ts';
import { type Command, failed } from '../command.ts';
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
    const result = surveyFiles(surveyRequest(inputs.value, options));
    const diagnostics = [...inputs.diagnostics, ...result.diagnostics];
    if (result.value === undefined) return failed(diagnostics);
    const page = pageOptions(inputs.value.settings, options);
    const surveyed = result.value;
    const reports = surveyed.map(withHelp);
    return {
      pages: () => reports.map((report) => surveyBlocks(report, page)),
      records: () => reports.map((report) => surveyRecord(report, { version, diagnostics })),
      table: () => surveyTable(surveyed),
      diagnostics,
      color: inputs.value.settings.color,
    };
  },
};
