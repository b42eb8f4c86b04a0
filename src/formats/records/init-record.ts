/** `leastcut/init/1`: the files that were written to start from. */
import * as z from 'zod';
import { recordOf, resultOf } from './record-parts.ts';

export const initRecordSchema = recordOf(
  'init',
  resultOf('init', { written: z.array(z.string()), next: z.string() }),
);
