import { spotBlocks } from '../../report/spot/spot-blocks.ts';
import { spotRecord } from '../../report/spot/spot-record.ts';
import { withGauge } from '../../tasks/settings/gauge-in-use.ts';
import { spotFiles } from '../../tasks/spot/spot-files.ts';
import { spotObservations } from '../../tasks/spot/spot-observations.ts';
import { type Command, failed } from '../command.ts';
import { loadGaugeFile } from '../load/load-gauge.ts';
import { loadFiles } from '../load/load-inputs.ts';
import { loadWithRates } from '../load/load-rates.ts';
import { loadSettings } from '../load/load-settings.ts';
import { pageOptions } from '../page-options.ts';
import { keptObservations, ratesOutProblem } from '../rates-out.ts';
import { version } from '../version.ts';

export const spotCommand: Command = {
  name: 'spot',
  summary: 'say what test spots removed, how hard the paint is, what comes next',
  operands: '<spots.csv …> | -',
  options: [
    'job',
    'shop',
    'gauge',
    'rates',
    'ratesOut',
    'date',
    'aim',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
  ],
  examples: [
    'leastcut spot samples/older-coupe/spots.csv --job samples/older-coupe/job.json',
    'leastcut spot samples/older-coupe/spots.csv --aim correct --shop samples/shop.json',
    'leastcut spot samples/older-coupe/spots.csv --rates samples/rates.json',
    'cat samples/older-coupe/spots.csv | leastcut spot - --format json',
  ],
  run: async (operands, options, world) => {
    const files = await loadFiles(operands, world);
    const loaded = await loadSettings(options, world);
    const before = [...files.diagnostics, ...loaded.diagnostics];
    if (files.value === undefined || loaded.value === undefined) return failed(before);
    const { job } = loaded.value;
    const rates = await loadWithRates(loaded.value.settings, world);
    if (rates.value === undefined) return failed([...before, ...rates.diagnostics]);
    const gauge = await loadGaugeFile(rates.value, world);
    const settings = withGauge(rates.value, gauge.value);
    const known = [...before, ...rates.diagnostics, ...gauge.diagnostics, ...settings.diagnostics];
    if (settings.value === undefined || files.value.length === 0) return failed(known);
    const vehicle = job?.file.value.vehicle?.id ?? null;
    const unwritable = ratesOutProblem(options, vehicle);
    if (unwritable !== undefined) return failed([...known, unwritable]);
    const spots = spotFiles({ files: files.value, settings: settings.value, job: job?.file });
    const diagnostics = [...known, ...spots.diagnostics];
    if (spots.value === undefined) return failed(diagnostics);
    const { trials, finishOf } = spots.value;
    const kept = keptObservations(settings.value, options, (date) =>
      vehicle === null ? [] : spotObservations(trials, { date, vehicle, finishOf }),
    );
    const result = { ...spots.value, kept };
    const page = pageOptions(settings.value, options);
    return {
      pages: () => [spotBlocks(result, page)],
      records: () => [spotRecord(result, { version, diagnostics })],
      ...(kept === null ? {} : { files: kept.files }),
      diagnostics,
      color: settings.value.color,
    };
  },
};
