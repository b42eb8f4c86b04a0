/**
 * The keys of a template file, `leastcut/template/1`. One object for both of its forms, so that each
 * problem is told where it stands: `panels` says everything, `base` with `remove`, `change` and `add`
 * changes a built-in template. Which keys go together is checked beside the schema.
 */

import * as z from 'zod';
import { figure } from '../../base/rounding.ts';
import { type TemplateRules, templateRules } from '../data/template-defaults.ts';
import { type Advice, advised } from '../json/advised.ts';
import { allOf, anyOf, has, hasSuch, not } from '../json/rule-words.ts';
import { note, shownName, text } from '../json/setting-values.ts';

export const shortName = z
  .string()
  .regex(/^[\p{L}\p{N}]+(?:[-_][\p{L}\p{N}]+)*$/u)
  .describe('a short name of letters, digits and hyphens');

const asShare: Advice = (value) =>
  typeof value === 'number' && value >= 2 && value <= 100
    ? `it is a share of the panel: ${value} % is ${figure(value / 100, 6)}`
    : undefined;
const share = advised(z.number().min(0).max(1), asShare);

/** A length in other units than asked for: hand measures come in millimetres and centimetres. */
const inUnit =
  (least: number, most: number, unit: string, factors: readonly [number, string][]): Advice =>
  (value) => {
    if (typeof value !== 'number') return undefined;
    const meant = factors.find(([factor]) => value * factor >= least && value * factor <= most);
    return meant === undefined
      ? undefined
      : `${value} ${meant[1]} is ${figure(value * meant[0], 6)} ${unit}`;
  };

const pointSchema = z.strictObject({
  point: z.union([text, z.int().min(0)]).describe('the name of a point: text or a whole number'),
  u: share,
  v: share,
});

/** Length, width or height of a vehicle. */
export const measure = advised(
  z.number().min(1).max(12),
  inUnit(1, 12, 'm', [
    [0.001, 'mm'],
    [0.01, 'cm'],
  ]),
);

const panelSchemas = ({ areas, points }: TemplateRules) => {
  const traits = {
    name: shownName,
    area_m2: z
      .number()
      .gt(0)
      .max(areas.largest)
      .describe(`an area in m², above 0 and at most ${areas.largest}`),
    substrate: z.enum(['steel', 'aluminium', 'plastic', 'composite']),
    facing: z.enum(['horizontal', 'vertical', 'low']),
    flat_width_mm: advised(z.number().min(10).max(3000), inUnit(10, 3000, 'mm', [[1000, 'm']])),
    trim_m: z.number().min(0).max(30),
  };
  const rest = z
    .object({
      mirror: shortName.nullable().describe('the id of the panel on the other side, or null'),
      points: z.array(pointSchema).min(1).describe('a list of points, at least one'),
      point_count: z.int().min(1).max(points.most),
      also: z.array(text),
      spans: z.array(z.enum(['length', 'width', 'height'])).max(2),
    })
    .partial().shape;
  return {
    whole: z.strictObject({ id: shortName, ...traits, ...rest }),
    added: z.strictObject({ id: shortName, after: shortName.optional(), ...traits, ...rest }),
    changed: z.strictObject({ ...traits, ...rest }).partial(),
  };
};

export function templateSchemaBy(rules: TemplateRules) {
  const panel = panelSchemas(rules);
  return z.strictObject({
    $schema: z.string().optional(),
    schema: z.literal('leastcut/template/1'),
    id: shortName.optional(),
    name: shownName,
    note: note.optional(),
    base: shortName.optional(),
    remove: z.array(shortName).optional(),
    change: z.record(text, panel.changed).optional(),
    add: z.array(panel.added).optional(),
    panels: z.array(panel.whole).optional(),
    length_m: measure.optional(),
    width_m: measure.optional(),
    height_m: measure.optional(),
  });
}

/** By the built-in rules: what an editor is told of the file. */
export const templateSchema = templateSchemaBy(templateRules).meta(
  anyOf(
    allOf(
      hasSuch('panels', { minItems: 1 }),
      not(anyOf(has('base'), has('remove'), has('change'), has('add'))),
    ),
    allOf(has('base'), not(has('panels'))),
  ),
);

export type TypedTemplate = z.output<ReturnType<typeof templateSchemaBy>>;
export type TypedPanel = z.output<ReturnType<typeof panelSchemas>['whole']>;
export type TypedChange = z.output<ReturnType<typeof panelSchemas>['changed']>;
