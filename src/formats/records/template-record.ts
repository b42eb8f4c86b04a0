/** `leastcut/template/1` as the command writes it: templates in full, or the points of a sheet. */
import * as z from 'zod';
import { basisMeanings } from '../data/state-meanings.ts';
import { count, figure, keyOf, recordOf, resultOf, share, word } from './record-parts.ts';

const points = z.array(z.strictObject({ point: z.string(), u: share, v: share }));

const panel = z.strictObject({
  panel: z.string(),
  name: z.string(),
  area_m2: z.number().gt(0),
  substrate: z.enum(['steel', 'aluminium', 'plastic', 'composite']),
  facing: z.enum(['horizontal', 'vertical', 'low']),
  mirror: word,
  flat_width_mm: z.number().gt(0),
  trim_m: z.number().min(0),
  also: z.array(z.string()),
  spans: z.array(z.enum(['length', 'width', 'height'])),
  n_points: count,
  points,
  origin: z.enum(['file', 'built-in']),
});

const template = z.strictObject({
  template: z.string(),
  name: z.string(),
  file: word,
  base: word,
  length_m: figure,
  width_m: figure,
  height_m: figure,
  n_panels: count,
  area_m2: z.number().gt(0),
  trim_m: z.number().min(0),
  panels: z.array(panel),
});

const grounds = z.strictObject({ basis: keyOf(basisMeanings), source: z.string() });

export const templateRecordSchema = recordOf(
  'template',
  resultOf('template', {
    templates: z.array(template),
    basis: z.strictObject({
      area_m2: grounds,
      substrate: grounds,
      facing: grounds,
      flat_width_mm: grounds,
      trim_m: grounds,
      points: grounds,
      length_m: grounds,
      spans: grounds,
    }),
  }),
  resultOf('template', {
    template: z.string(),
    repeats: z.number(),
    sheet: z.array(
      z.strictObject({
        panel: z.string(),
        name: z.string(),
        place: z.enum(['face', 'shut']),
        points: z.array(
          z.strictObject({ point: z.string(), u: share.nullable(), v: share.nullable() }),
        ),
      }),
    ),
  }),
);
