import { join } from 'node:path';
import { error } from '../../base/diagnostics.ts';
import { initBlocks, initRecord } from '../../report/start/init-pages.ts';
import { startFiles } from '../../tasks/start/start-files.ts';
import { type Command, failed } from '../command.ts';
import { version } from '../version.ts';

export const initCommand: Command = {
  name: 'init',
  summary: 'write a shop file and a job file to start from',
  operands: '[folder]',
  filesOf: () => [],
  options: [],
  examples: ['leastcut init', 'leastcut init jobs/AB-12', 'leastcut init jobs/AB-13 --format json'],
  run: async (operands, _options, world) => {
    const [folder = '.', ...excess] = operands;
    if (excess.length > 0) {
      const hint = 'leastcut init, or leastcut init <folder>';
      return failed([error('usage-option-value', 'init takes one folder', { hint })]);
    }
    const files = startFiles().map((file) => ({ ...file, path: join(folder, file.name) }));
    const diagnostics = await world.create(folder, files);
    if (diagnostics.length > 0) return failed(diagnostics);
    const [shop, job] = files.map(({ path }) => path);
    const next = `leastcut plan readings.csv --shop ${shop} --job ${job}`;
    return {
      pages: () => [initBlocks(files, next)],
      records: () => [initRecord(files, next, version)],
      diagnostics: [],
    };
  },
};
