/** `leastcut/read/1`: one vehicle's readings as understood, and every cell left out. */
import * as z from 'zod';
import { leftOutCell } from './left-out-record.ts';
import { recordOf, resultOf, word } from './record-parts.ts';

const place = { file: z.string(), line: z.int().min(1), column: z.int().min(1) };

const reading = z.strictObject({
  ...place,
  panel: z.string(),
  point: z.string(),
  repeat: z.int().min(1),
  reading_um: z.number(),
  layer: z.string(),
  place: z.enum(['face', 'edge', 'shut']),
  marked: z.boolean(),
  curved: z.boolean(),
  operator: word,
  time: word,
  substrate: word,
  u: word,
  v: word,
  note: word,
});

export const readRecordSchema = recordOf(
  'read',
  resultOf('read', {
    template: word,
    readings: z.array(reading),
    excluded: z.array(leftOutCell.extend({ vehicle: word, panel: word })),
  }),
);
