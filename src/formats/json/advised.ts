/**
 * Advice on values that people are likely to get wrong, kept beside the schema that refuses them: a
 * word of the trade that has another name here, a date where a count of days is asked for.
 */
import * as z from 'zod';

/** What to write instead of a refused value, or nothing when it is not a mistake that is known. */
export type Advice = (value: unknown) => string | undefined;

const registry = z.registry<{ readonly advice: Advice }>();

/** The same schema, with advice for values it refuses. Attach it last: a changed schema is another. */
export function advised<S extends z.ZodType>(schema: S, advice: Advice): S {
  registry.add(schema, { advice });
  return schema;
}

/** A word of the trade that has another name here. */
export const wordAdvice =
  (words: ReadonlyMap<string, string>): Advice =>
  (value) => {
    const meant = typeof value === 'string' ? words.get(value.trim().toLowerCase()) : undefined;
    return meant === undefined ? undefined : `write "${meant}"`;
  };

const keyRegistry = z.registry<{ readonly keyAdvice: KeyAdvice }>();

/** What was meant by a key that means nothing in an object. */
export type KeyAdvice = (key: string) => string | undefined;

/** The same schema of an object, with advice for keys it does not know. Attach it last. */
export function keysAdvised<S extends z.ZodType>(schema: S, keyAdvice: KeyAdvice): S {
  keyRegistry.add(schema, { keyAdvice });
  return schema;
}

export const keyAdviceOn = (schema: z.core.$ZodType, key: string): string | undefined =>
  keyRegistry.get(schema)?.keyAdvice(key);

export const adviceOn = (schema: z.core.$ZodType, value: unknown): string | undefined =>
  registry.get(schema)?.advice(value);
