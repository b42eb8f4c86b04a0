import { hasErrors } from '../../base/diagnostics.ts';
import { isWorked } from '../../correction/plan.ts';
import { planBlocks } from '../../report/plan-blocks.ts';
import { planRecord } from '../../report/plan-record.ts';
import { planFiles } from '../../tasks/plan-files.ts';
import { type Command, failed } from '../command.ts';
import { loadSurveyInputs } from '../load-gauge.ts';
import { surveyRequest } from '../load-inputs.ts';
import { pageOptions, readingOptions } from '../options.ts';
import { version } from '../version.ts';

export const planCommand: Command = {
  name: 'plan',
  summary: 'plan the mildest steps within every limit, with time and materials',
  operands: '<readings.csv …> | -',
  options: [
    'template',
    'job',
    'shop',
    'gauge',
    'defects',
    'spots',
    'vehicle',
    'panel',
    'aim',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    ...readingOptions,
  ],
  byVehicle: true,
  examples: [
    'leastcut plan samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json',
    'leastcut plan samples/older-coupe/readings.csv --aim enhance --shop samples/shop.json',
    'cat samples/sound-saloon/readings.csv | leastcut plan - --defects samples/sound-saloon/defects.csv --format json',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadSurveyInputs(operands, options, world);
    if (inputs.value === undefined) return failed(inputs.diagnostics);
    const { defects } = inputs.value;
    const result = planFiles({ ...surveyRequest(inputs.value, options), defects });
    const diagnostics = [...inputs.diagnostics, ...result.diagnostics];
    if (result.value === undefined || hasErrors(diagnostics)) return failed(diagnostics);
    const page = pageOptions(inputs.value.settings, options);
    return {
      pages: result.value.map(({ result: one, panels }) => planBlocks(one, panels, page)),
      records: result.value.map(({ result: one, panels }) =>
        planRecord(one, panels, { version, diagnostics }),
      ),
      diagnostics,
      color: inputs.value.settings.color,
      answerIsNo: result.value.every(({ result: { plan }, panels }) => {
        const ids = new Set(panels.map(({ id }) => id));
        return !plan.panels.some((one) => ids.has(one.survey.panel.id) && isWorked(one));
      }),
    };
  },
};
