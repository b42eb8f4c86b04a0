/** `leastcut/batch/1`: a line for each job of a batch, with the record of its command, or why there is none. */
import * as z from 'zod';
import { diagnostic } from './record-parts.ts';

const sum = z.string().regex(/^[\da-f]{64}$/);

/** The result is the record of the command that `command` names, by the schema of that record. */
export const batchRecordSchema = z.strictObject({
  schema: z.literal('leastcut/batch/1'),
  version: z.string(),
  job: z.string(),
  seq: z.int().min(1),
  command: z.enum(['survey', 'plan', 'quote']),
  status: z.enum(['done', 'refused', 'failed']),
  exit: z.int().min(0).max(255),
  settings_sha256: sum,
  readings_sha256: sum.nullable(),
  inputs: z.array(z.strictObject({ file: z.string(), sha256: sum.nullable() })),
  diagnostics: z.array(diagnostic),
  result: z.looseObject({ schema: z.string() }).nullable(),
});
