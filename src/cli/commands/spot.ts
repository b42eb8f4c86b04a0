import { spotBlocks } from '../../report/spot-blocks.ts';
import { spotRecord } from '../../report/spot-record.ts';
import { withGauge } from '../../tasks/gauge-in-use.ts';
import { spotFiles } from '../../tasks/spot-files.ts';
import { type Command, failed } from '../command.ts';
import { loadGaugeFile } from '../load-gauge.ts';
import { loadGauge } from '../load-inputs.ts';
import { loadSettings } from '../load-settings.ts';
import { pageOptions } from '../options.ts';
import { version } from '../version.ts';

export const spotCommand: Command = {
  name: 'spot',
  summary: 'say what test spots removed, how hard the paint is, what to try next',
  operands: '<spots.csv …> | -',
  options: ['job', 'shop', 'gauge', 'aim', 'riskPct', 'floorUm', 'policy', 'finish'],
  examples: [
    'leastcut spot samples/older-coupe/spots.csv --job samples/older-coupe/job.json',
    'leastcut spot samples/older-coupe/spots.csv --aim correct --shop samples/shop.json',
    'cat samples/older-coupe/spots.csv | leastcut spot - --format json',
  ],
  run: async (operands, options, world) => {
    const files = await loadGauge(operands, world);
    const loaded = await loadSettings(options, world);
    const before = [...files.diagnostics, ...loaded.diagnostics];
    if (files.value === undefined || loaded.value === undefined) return failed(before);
    const { job } = loaded.value;
    const gauge = await loadGaugeFile(loaded.value.settings, world);
    const settings = withGauge(loaded.value.settings, gauge.value);
    const known = [...before, ...gauge.diagnostics, ...settings.diagnostics];
    if (settings.value === undefined || files.value.length === 0) return failed(known);
    const spots = spotFiles({ files: files.value, settings: settings.value, job: job?.file });
    const diagnostics = [...known, ...spots.diagnostics];
    if (spots.value === undefined) return failed(diagnostics);
    return {
      pages: [spotBlocks(spots.value, pageOptions(settings.value, options))],
      records: [spotRecord(spots.value, { version, diagnostics })],
      diagnostics,
      color: settings.value.color,
    };
  },
};
