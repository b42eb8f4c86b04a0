import { surveyBlocks } from '../../report/survey-blocks.ts';
import { surveyRecord } from '../../report/survey-record.ts';
import { surveyFiles } from '../../tasks/survey-files.ts';
import { type Command, failed } from '../command.ts';
import { loadInputs, surveyRequest } from '../load-inputs.ts';
import { pageOptions } from '../options.ts';
import { version } from '../version.ts';

export const surveyCommand: Command = {
  name: 'survey',
  summary: 'say what is on each panel, how sure that is, how much may come off',
  operands: '<readings.csv ...| ->',
  options: [
    'template',
    'job',
    'shop',
    'vehicle',
    'panel',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    'readingUnit',
  ],
  examples: [
    'leastcut survey samples/sound-saloon/readings.csv',
    'leastcut survey samples/older-coupe/readings.csv --job samples/older-coupe/job.json',
    'cat samples/sound-saloon/readings.csv | leastcut survey - --panel bonnet --format json',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadInputs(operands, options, world);
    if (inputs.value === undefined) return failed(inputs.diagnostics);
    const result = surveyFiles(surveyRequest(inputs.value, options));
    const diagnostics = [...inputs.diagnostics, ...result.diagnostics];
    if (result.value === undefined) return failed(diagnostics);
    const page = pageOptions(inputs.value.settings, options);
    return {
      pages: result.value.map(({ result: one, panels }) => surveyBlocks(one, panels, page)),
      records: result.value.map(({ result: one, panels }) =>
        surveyRecord(one, panels, { version, diagnostics }),
      ),
      diagnostics,
      color: inputs.value.settings.color,
    };
  },
};
