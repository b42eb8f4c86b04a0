/** Files that the program writes for later runs keep to the schemas that it publishes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { optionSpecs } from '../../src/cli/options.ts';
import { fileKinds } from '../../src/formats/file-kinds.ts';
import { jsonSchemaOf } from '../../src/formats/json-schemas.ts';
import { schemaFaults } from '../formats/json-schema-faults.ts';
import { runLeastcut } from './run-leastcut.ts';
import { temporaryFolder } from './temporary-folder.ts';

const coupe = 'samples/older-coupe';
const saloon = 'samples/sound-saloon';
const day = ['--date', '2026-11-25'];
const written = [
  { option: '--decisions', words: ['read', `${coupe}/readings.csv`] },
  { option: '--gauge-out', words: ['gauge', 'samples/gauge-checks.csv', '--adjust'] },
  {
    option: '--rates-out',
    words: ['spot', `${coupe}/spots.csv`, '--job', `${coupe}/job.json`, ...day],
  },
  {
    option: '--record',
    words: [
      'compare',
      `${saloon}/readings.csv`,
      `${saloon}/after.csv`,
      '--job',
      `${saloon}/job.json`,
      ...day,
    ],
  },
] as const;

describe.concurrent('a file that is written', () => {
  test.each(written)(
    'by $option keeps to its published schema, and doctor finds it sound',
    async ({ option, words }) => {
      const file = join(temporaryFolder(), 'written.json');
      const { code, err } = await runLeastcut([...words, option, file, '--quiet']);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      const content = JSON.parse(readFileSync(file, 'utf8')) as { readonly schema: string };
      const kind = fileKinds.find(({ schemaName }) => schemaName === content.schema)?.kind;
      expect(kind).toBeDefined();
      if (kind !== undefined) expect(schemaFaults(jsonSchemaOf(kind), content)).toEqual([]);
      const doctor = await runLeastcut(['doctor', file]);
      expect(doctor.code).toBe(0);
    },
  );

  test('is asked for by an option whose summary says that it writes, and by no other', () => {
    const writes = Object.values(optionSpecs).filter(({ summary }) =>
      /^write (?!to )/.test(summary),
    );
    const names = writes.map(({ flags }) => flags.split(' ')[0]);
    // Those of a batch, which grow or are written at its end.
    expect(names.filter((name) => name !== '--summary' && name !== '--reorder').sort()).toEqual(
      written.map(({ option }) => option).sort(),
    );
  });
});
