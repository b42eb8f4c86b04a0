import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  type DiagnosticCode,
  type DiagnosticKind,
  diagnosticCatalogue,
} from '../../src/base/catalogue.ts';
import { askLeastcut } from '../cli/ask-leastcut.ts';
import { caseNames } from '../cli/case-command.ts';
import { expectRecorded, type Prepare, runCase } from '../cli/golden.ts';
import type { Run, RunOptions } from '../cli/run-command.ts';
import { projectRoot, runLeastcut } from '../cli/run-leastcut.ts';

/** As the help and the README list them. */
const exitCodeOfKind: Readonly<Record<DiagnosticKind, number>> = {
  usage: 2,
  data: 65,
  'input-file': 66,
  output: 73,
  settings: 78,
  remark: 0,
};

/** What must stand in the empty folder beforehand. */
const prepared: Partial<Record<DiagnosticCode, Prepare>> = {
  'output-exists': (tmp) => writeFileSync(join(tmp, 'report.txt'), 'a report of yesterday\n'),
  'init-exists': (tmp) => writeFileSync(join(tmp, 'job.json'), '{ "schema": "leastcut/job/1" }\n'),
  'output-is-input': (tmp) =>
    copyFileSync(join(projectRoot, 'samples/sound-saloon/readings.csv'), join(tmp, 'readings.csv')),
};

/** The threads of a batch, and what Node is told at its start, want a process of their own. */
const runCode = (words: readonly string[], options: RunOptions): Promise<Run> =>
  words[0] === 'batch' || options.env?.['NODE_OPTIONS'] !== undefined
    ? runLeastcut(words, options)
    : askLeastcut(words, options);

const codes = Object.keys(diagnosticCatalogue) as DiagnosticCode[];

test('every code of the catalogue has a folder that shows it, and no folder is without a code', () => {
  expect(caseNames(import.meta.dirname)).toEqual([...codes].sort());
});

describe.concurrent('the error catalogue', () => {
  test.each(codes)(
    '%s is said where it belongs, and decides the exit code by its kind',
    async (code) => {
      const folder = join(import.meta.dirname, code);
      const run = await runCase(folder, runCode, prepared[code]);
      const { kind } = diagnosticCatalogue[code];
      expect(run.err).toContain(`[${code}]: `);
      expect(run.code).toBe(exitCodeOfKind[kind]);
      const tellsAll = code === 'usage-several-vehicles' || code === 'batch-value';
      const goesElsewhere = code === 'output-ending';
      expect(run.out === '').toBe((kind !== 'remark' && !tellsAll) || goesElsewhere);
      expectRecorded(folder, run);
    },
  );
});
