import { hasErrors } from '../../base/diagnostics.ts';
import { isTouched } from '../../correction/plan/plan.ts';
import { planBlocks } from '../../report/plan/plan-blocks.ts';
import { planRecord } from '../../report/plan/plan-record.ts';
import { planTable } from '../../report/plan/plan-table.ts';
import { workCardBlocks } from '../../report/plan/work-card-blocks.ts';
import { planFiles } from '../../tasks/plan/plan-files.ts';
import { type Command, failed } from '../command.ts';
import { loadSurveyInputs } from '../load/load-gauge.ts';
import { surveyRequest } from '../load/load-inputs.ts';
import { formats } from '../options/output-specs.ts';
import { readingOptions } from '../options.ts';
import { pageOptions } from '../page-options.ts';
import { version } from '../version.ts';

export const planCommand: Command = {
  name: 'plan',
  summary: 'plan the mildest steps within every limit, with time and materials',
  operands: '<readings.csv …> | -',
  options: [
    'template',
    'job',
    'filmRecord',
    'shop',
    'gauge',
    'rates',
    'defects',
    'spots',
    'vehicle',
    'panel',
    'why',
    'aim',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    'history',
    'card',
    ...readingOptions,
  ],
  formats,
  byVehicle: true,
  examples: [
    'leastcut plan samples/sound-saloon/readings.csv --job samples/sound-saloon/job.json',
    'leastcut plan samples/older-coupe/readings.csv --aim enhance --shop samples/shop.json',
    'leastcut plan samples/sound-saloon/readings.csv --why bonnet',
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
    const planned = result.value;
    return {
      pages: () =>
        planned.map(({ result: one, panels }) =>
          options.card === true ? workCardBlocks(one, panels, page) : planBlocks(one, panels, page),
        ),
      records: () =>
        planned.map(({ result: one, panels }) => planRecord(one, panels, { version, diagnostics })),
      table: () => planTable(planned),
      readings: () => planned.map(({ result: one }) => one.request.readings),
      diagnostics,
      color: inputs.value.settings.color,
      answersNo: planned.map(({ result: { plan }, panels }) => {
        const ids = new Set(panels.map(({ id }) => id));
        return !plan.panels.some((one) => ids.has(one.survey.panel.id) && isTouched(one));
      }),
    };
  },
};
