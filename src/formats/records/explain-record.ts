/** `leastcut/explain/1`: every meaning of every word asked for. */
import * as z from 'zod';
import { basisMeanings } from '../data/state-meanings.ts';
import { keyOf, origin, recordOf, resultOf } from './record-parts.ts';

const number = z.strictObject({
  value: z.number(),
  unit: z.string(),
  origin,
  where: z.string(),
  built_in: z.number(),
  least: z.number(),
  most: z.number(),
  basis: keyOf(basisMeanings),
  source: z.string(),
  formula: z.string(),
  used: z.string(),
  change: z.string(),
});

const example = z.strictObject({
  command: z.string(),
  files: z.array(z.strictObject({ name: z.string(), text: z.string() })),
});

const topic = z.strictObject({
  word: z.string().nullable(),
  kind: z.string(),
  id: z.string(),
  also: z.array(z.string()),
  meaning: z.string(),
  details: z.array(z.strictObject({ label: z.string(), text: z.string() })),
  number: number.nullable(),
  example: example.nullable(),
});

export const explainRecordSchema = recordOf(
  'explain',
  resultOf('explain', { topics: z.array(topic) }),
);
