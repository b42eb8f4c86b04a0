/**
 * Words of JSON Schema for rules between keys, which zod keeps in code where a published schema cannot see them.
 * They stand as `.meta()` beside the code that refuses, so that an editor refuses what the program does.
 */

/** A part of a JSON Schema. */
export type Words = Readonly<Record<string, unknown>>;

export const has = (...keys: readonly string[]): Words => ({ required: keys });

/** With the key, and its value as these words have it. */
export const hasSuch = (key: string, words: Words): Words => ({
  required: [key],
  properties: { [key]: words },
});

export const anyOf = (...parts: readonly Words[]): Words => ({ anyOf: parts });
export const allOf = (...parts: readonly Words[]): Words => ({ allOf: parts });
export const not = (words: Words): Words => ({ not: words });

/** Where the first holds, the second does. */
export const where = (first: Words, second: Words): Words => anyOf(not(first), second);
