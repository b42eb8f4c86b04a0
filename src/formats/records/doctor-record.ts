/** `leastcut/doctor/1`: what a run finds around it, the settings in force, the files checked. */
import * as z from 'zod';
import { recordOf, resultOf, setting } from './record-parts.ts';

export const doctorRecordSchema = recordOf(
  'doctor',
  resultOf('doctor', {
    node: z.string(),
    platform: z.string(),
    locale: z.string(),
    terminal: z
      .strictObject({
        width: z.int().min(1),
        width_from: z.string(),
        color: z.boolean(),
        color_why: z.string(),
        ascii: z.boolean(),
        ascii_why: z.string(),
      })
      .nullable(),
    files: z.array(
      z.strictObject({
        kind: z.enum(['job', 'shop', 'project', 'user']),
        file: z.string(),
        state: z.enum(['named', 'found', 'not found']),
      }),
    ),
    settings: z.array(setting),
    checked: z.array(z.strictObject({ file: z.string(), kind: z.string() })),
  }),
);
