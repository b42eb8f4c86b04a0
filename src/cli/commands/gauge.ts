import { hasErrors } from '../../base/diagnostics.ts';
import { micrometres } from '../../base/units.ts';
import { gaugeBlocks } from '../../report/gauge/gauge-blocks.ts';
import { gaugeFileText } from '../../report/gauge/gauge-file.ts';
import { gaugeRecord, gaugeTable } from '../../report/gauge/gauge-record.ts';
import { checkGaugeFiles } from '../../tasks/gauge/check-gauge.ts';
import { type Command, failed } from '../command.ts';
import { loadGaugeFile } from '../load/load-gauge.ts';
import { loadFiles } from '../load/load-inputs.ts';
import { loadShopSettings } from '../load/load-settings.ts';
import { formats } from '../options/output-specs.ts';
import type { TypedOptions } from '../options.ts';
import { version } from '../version.ts';

export const gaugeCommand: Command = {
  name: 'gauge',
  summary: 'check a gauge on shims: pass, fail or undecided, and how it drifted',
  operands: '<checks.csv> [after.csv] | -',
  options: [
    'shop',
    'gauge',
    'mpeUm',
    'mpePct',
    'shimUncertaintyUm',
    'adjust',
    'gaugeOut',
    'readingUnit',
  ],
  formats,
  examples: [
    'leastcut gauge samples/gauge-checks.csv --mpe-um 1 --mpe-pct 1',
    'leastcut gauge samples/gauge-checks.csv --adjust --gauge-out gauge.json',
    'cat samples/gauge-checks.csv | leastcut gauge - --format csv',
  ],
  run: async (operands, options, world) => {
    const files = await loadFiles(operands, world);
    const settings = await loadShopSettings(options, world);
    const before = [...files.diagnostics, ...settings.diagnostics];
    if (files.value === undefined || settings.value === undefined) return failed(before);
    const gauge = await loadGaugeFile(settings.value, world);
    const loaded = [...before, ...gauge.diagnostics];
    if (hasErrors(loaded)) return failed(loaded);
    const { shimUncertaintyUm } = options;
    const { value, diagnostics: found } = checkGaugeFiles({
      files: files.value,
      settings: settings.value,
      gauge: gauge.value?.file.value,
      permitted: typedError(options),
      shimUncertainty: shimUncertaintyUm === undefined ? undefined : micrometres(shimUncertaintyUm),
      adjust: options.adjust ?? false,
    });
    const diagnostics = [...loaded, ...found];
    if (value === undefined) return failed(diagnostics);
    const { gaugeOut } = options;
    const unit = settings.value.showUnit.value;
    return {
      pages: () => [gaugeBlocks(value, unit)],
      records: () => [gaugeRecord(value, { version, diagnostics })],
      table: () => gaugeTable(value),
      ...(gaugeOut === undefined
        ? {}
        : { files: [{ path: gaugeOut, text: gaugeFileText(value) }] }),
      diagnostics,
      color: settings.value.color,
      answersNo: [value.verdict === 'fail'],
    };
  },
};

const typedError = ({ mpeUm, mpePct }: TypedOptions) => ({
  ...(mpeUm === undefined ? {} : { fixed: micrometres(mpeUm) }),
  ...(mpePct === undefined ? {} : { proportional: mpePct / 100 }),
});
