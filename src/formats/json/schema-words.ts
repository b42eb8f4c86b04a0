/**
 * A zod schema in plain words, and the part of it that stands at a path: what diagnostics need to
 * say what a place takes. A schema with a description is said by it.
 */

import * as z from 'zod';
import { inWords } from '../../base/in-words.ts';
import type { JsonPath } from './json-text.ts';

export type Schema = z.core.$ZodType;

/** The schema without the wrappers that make a key optional. */
export function bare(schema: Schema): Schema {
  return schema instanceof z.ZodOptional ? bare(schema.def.innerType) : schema;
}

/** The schema for the value at a path, or undefined where the schema says nothing. */
export function schemaAt(schema: Schema, path: JsonPath): Schema | undefined {
  const here = bare(schema);
  const [step, ...rest] = path;
  if (step === undefined) return here;
  const next = childOf(here, step);
  return next === undefined ? undefined : schemaAt(next, rest);
}

function childOf(schema: Schema, step: string | number): Schema | undefined {
  if (schema instanceof z.ZodNullable) return childOf(bare(schema.def.innerType), step);
  if (schema instanceof z.ZodArray) return schema.def.element;
  if (schema instanceof z.ZodRecord) return schema.def.valueType;
  const form = objectForm(schema);
  if (form !== undefined && form !== schema) return childOf(form, step);
  if (!(schema instanceof z.ZodObject)) return undefined;
  const shape: Readonly<Record<string, Schema>> = schema.shape;
  return Object.hasOwn(shape, step) ? shape[step] : undefined;
}

/** The schema of what is written in braces: itself, or the object among several forms. */
export function objectForm(schema: Schema | undefined): z.ZodObject | undefined {
  if (schema instanceof z.ZodObject) return schema;
  if (schema instanceof z.ZodNullable) return objectForm(bare(schema.def.innerType));
  return schema instanceof z.ZodUnion
    ? schema.options.map((option) => objectForm(bare(option))).find((form) => form !== undefined)
    : undefined;
}

/** The keys an object schema knows; none for any other. */
export const keysOf = (schema: Schema | undefined): readonly string[] =>
  Object.keys(objectForm(schema)?.shape ?? {});

/** Keys of the objects below a schema that know a key themselves: `vehicle` for `make`. */
export const homesOf = (schema: Schema | undefined, key: string): readonly string[] =>
  keysOf(schema).filter((name) => {
    const child = schemaAt(schema ?? z.never(), [name]);
    const inside = child === undefined ? undefined : entriesOf(child);
    return keysOf(inside).includes(key);
  });

/** What stands in a list or under the free keys of a record; anything else is itself. */
function entriesOf(schema: Schema): Schema {
  if (schema instanceof z.ZodRecord) return bare(schema.def.valueType);
  return schema instanceof z.ZodArray ? bare(schema.def.element) : schema;
}

/** The words a value may be, of an enumeration or of a choice between several things. */
export function wordsOf(schema: Schema | undefined): readonly string[] {
  if (schema instanceof z.ZodEnum) return schema.options.map(String);
  if (schema instanceof z.ZodLiteral) return [...schema.values].map(String);
  if (schema instanceof z.ZodNullable) return wordsOf(bare(schema.def.innerType));
  return schema instanceof z.ZodUnion
    ? schema.options.flatMap((option) => wordsOf(bare(option)))
    : [];
}

/** What a schema takes: `a number from 0.1 to 50`, `"light" or "dark"`. */
export const describeSchema = (schema: Schema): string => inWords(choices(bare(schema)), 'or');

function choices(schema: Schema): readonly string[] {
  const { description } = z.globalRegistry.get(schema) ?? {};
  if (description !== undefined) return [description];
  if (schema instanceof z.ZodNullable) return [...choices(bare(schema.def.innerType)), 'null'];
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((each) => choices(bare(each)));
  const words = wordsOf(schema);
  return words.length > 0 ? words.map((word) => JSON.stringify(word)) : [kindOf(schema)];
}

function kindOf(schema: Schema): string {
  if (schema instanceof z.ZodNumber) return describeNumber(schema);
  if (schema instanceof z.ZodArray)
    return `a list, each entry ${describeSchema(schema.def.element)}`;
  if (schema instanceof z.ZodObject || schema instanceof z.ZodRecord) return 'an object: { … }';
  if (schema instanceof z.ZodBoolean) return 'true or false';
  return schema instanceof z.ZodString ? 'text' : 'something else';
}

function describeNumber(schema: z.ZodNumber): string {
  const { minValue, maxValue, format } = schema;
  const kind = format === null ? 'a number' : 'a whole number';
  const least = bound(minValue);
  const most = bound(maxValue);
  if (least === undefined) return most === undefined ? kind : `${kind} of at most ${most}`;
  return most === undefined ? `${kind} of at least ${least}` : `${kind} from ${least} to ${most}`;
}

/** Whole numbers are bounded by what a double holds exactly: no bound that people set. */
const bound = (value: number | null): number | undefined =>
  value === null || Math.abs(value) >= Number.MAX_SAFE_INTEGER ? undefined : value;
