/**
 * A value as a published JSON Schema takes it. It spares a start the validation library, which takes a tenth of a plan
 * to load. A value that surely fits is what the library would give; whatever may not fit, whatever the library would
 * change, and every word of a schema that is not known here is left to the library, which says what is wrong.
 */

/** A JSON Schema, or a part of one. */
export type Shape = { readonly [word: string]: unknown };

type Test = (said: unknown, value: unknown) => boolean;

const isObject = (value: unknown): value is Shape =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const types: Readonly<Record<string, (value: unknown) => boolean>> = {
  // Blanks around a name are taken off by the library.
  string: (value) => typeof value === 'string' && value === value.trim(),
  number: Number.isFinite,
  integer: Number.isSafeInteger,
  boolean: (value) => typeof value === 'boolean',
  array: Array.isArray,
  object: isObject,
};

const isNote: Test = () => true;
/** What a word of the schema asks of a value of its type. */
const tests: Readonly<Record<string, Test>> = {
  ...{ $schema: isNote, $id: isNote, title: isNote, description: isNote },
  // These are asked where the parts of a value are gone through.
  ...{ properties: isNote, additionalProperties: isNote, propertyNames: isNote, items: isNote },
  anyOf: isNote,
  type: (said, value) => types[said as string]?.(value) === true,
  const: (said, value) => value === said,
  enum: (said, value) => (said as unknown[]).includes(value),
  minimum: (said, value) => (value as number) >= (said as number),
  maximum: (said, value) => (value as number) <= (said as number),
  pattern: (said, value) => new RegExp(said as string).test(value as string),
  minItems: (said, value) => (value as unknown[]).length >= (said as number),
  required: (said, value) => (said as string[]).every((key) => Object.hasOwn(value as Shape, key)),
};

/** The value with its keys in the order of the schema; `undefined` where it does not surely fit. */
export function plainValue(shape: unknown, value: unknown): unknown {
  if (!isObject(shape) || (shape['type'] === undefined && shape['anyOf'] === undefined))
    return undefined;
  for (const word of Object.keys(shape))
    if (tests[word]?.(shape[word], value) !== true) return undefined;
  if (Array.isArray(shape['anyOf'])) return firstThatFits(shape['anyOf'], value);
  if (Array.isArray(value)) return whole(value.map((one) => plainValue(shape['items'], one)));
  return isObject(value) ? plainObject(shape, value) : value;
}

const whole = (parts: readonly unknown[]): readonly unknown[] | undefined =>
  parts.includes(undefined) ? undefined : parts;

function firstThatFits(shapes: readonly unknown[], value: unknown): unknown {
  for (const shape of shapes) {
    const plain = plainValue(shape, value);
    if (plain !== undefined) return plain;
  }
  return undefined;
}

function plainObject(shape: Shape, value: Shape): Shape | undefined {
  const { properties = {}, additionalProperties, propertyNames } = shape;
  const known = properties as Shape;
  const others = Object.keys(value).filter((key) => !Object.hasOwn(known, key));
  if (others.some((key) => key === '__proto__' || plainValue(propertyNames, key) === undefined))
    return undefined;
  const keys = [...Object.keys(known).filter((key) => Object.hasOwn(value, key)), ...others];
  const parts = whole(
    keys.map((key) => plainValue(known[key] ?? additionalProperties, value[key])),
  );
  return parts && Object.fromEntries(parts.map((part, i) => [keys[i], part]));
}
