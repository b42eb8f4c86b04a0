/** A cell that gave no reading, and why. */
import * as z from 'zod';
import { word } from './record-parts.ts';

export const leftOutCell = z.strictObject({
  file: z.string(),
  line: z.int().min(1),
  column: z.int().min(1),
  point: word,
  text: z.string(),
  class: z.enum(['missing', 'over-range', 'error', 'deleted', 'not-film', 'statistics']),
  reason: z.string(),
});
