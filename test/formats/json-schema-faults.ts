/**
 * A judge of JSON Schema (draft 2020-12) apart from the library that writes our schemas: the words they
 * use, and no other; a word that it does not know is an error, so that nothing passes unjudged.
 */
type Schema = { readonly [word: string]: unknown };

const NOTES = new Set(['$schema', '$id', 'title', 'description']);

/** Where a value breaks the schema: `/panels/0: is no object`. */
export function schemaFaults(schema: Schema, value: unknown, at = ''): readonly string[] {
  return Object.entries(schema).flatMap(([word, rule]) => {
    if (NOTES.has(word)) return [];
    const judge = judges[word];
    if (judge === undefined) throw new Error(`${word} is a word that nobody judges`);
    return judge(rule, value, at, schema);
  });
}

type Judge = (rule: unknown, value: unknown, at: string, around: Schema) => readonly string[];

const when = (broken: boolean, fault: string): readonly string[] => (broken ? [fault] : []);
const isObject = (value: unknown): value is Schema =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const ofNumbers =
  (fault: string, broken: (value: number, bound: number) => boolean): Judge =>
  (rule, value, at) =>
    when(typeof value === 'number' && broken(value, rule as number), `${at}: is ${fault} ${rule}`);

const types: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: isObject,
  array: Array.isArray,
  string: (value) => typeof value === 'string',
  number: (value) => typeof value === 'number',
  integer: Number.isInteger,
  boolean: (value) => typeof value === 'boolean',
  null: (value) => value === null,
};

const isType = (name: unknown, value: unknown): boolean => {
  const is = types[String(name)];
  if (is === undefined) throw new Error(`${String(name)} is no type`);
  return is(value);
};

const judges: Readonly<Record<string, Judge>> = {
  type: (rule, value, at) =>
    when(
      ![rule].flat().some((name) => isType(name, value)),
      `${at}: is no ${[rule].flat().join(' or ')}`,
    ),
  const: (rule, value, at) => when(value !== rule, `${at}: is not ${JSON.stringify(rule)}`),
  enum: (rule, value, at) =>
    when(!(rule as unknown[]).includes(value), `${at}: is none of ${JSON.stringify(rule)}`),
  not: (rule, value, at) =>
    when(schemaFaults(rule as Schema, value, at).length === 0, `${at}: is what may not be`),
  allOf: (rule, value, at) =>
    (rule as readonly Schema[]).flatMap((part) => schemaFaults(part, value, at)),
  anyOf: (rule, value, at) => {
    const forms = (rule as readonly Schema[]).map((form) => schemaFaults(form, value, at));
    return forms.some((faults) => faults.length === 0) ? [] : (forms[0] ?? []);
  },
  if: (rule, value, at, around) => {
    const holds = schemaFaults(rule as Schema, value, at).length === 0;
    return schemaFaults((around[holds ? 'then' : 'else'] ?? {}) as Schema, value, at);
  },
  // biome-ignore lint/suspicious/noThenProperty: it is a word of JSON Schema
  then: () => [],
  else: () => [],
  properties: (rule, value, at) =>
    !isObject(value)
      ? []
      : Object.entries(rule as Schema).flatMap(([key, inner]) =>
          Object.hasOwn(value, key)
            ? schemaFaults(inner as Schema, value[key], `${at}/${key}`)
            : [],
        ),
  required: (rule, value, at) =>
    !isObject(value)
      ? []
      : (rule as readonly string[])
          .filter((key) => !Object.hasOwn(value, key))
          .map((key) => `${at}: lacks ${key}`),
  additionalProperties: (rule, value, at, around) => {
    if (!isObject(value)) return [];
    const known = Object.keys((around['properties'] ?? {}) as Schema);
    return Object.keys(value)
      .filter((key) => !known.includes(key))
      .flatMap((key) =>
        rule === false
          ? [`${at}: ${key} means nothing`]
          : schemaFaults(rule as Schema, value[key], `${at}/${key}`),
      );
  },
  propertyNames: (rule, value, at) =>
    !isObject(value)
      ? []
      : Object.keys(value).flatMap((key) => schemaFaults(rule as Schema, key, `${at}/${key}`)),
  items: (rule, value, at) =>
    !Array.isArray(value)
      ? []
      : value.flatMap((one, i) => schemaFaults(rule as Schema, one, `${at}/${i}`)),
  minItems: (rule, value, at) =>
    when(Array.isArray(value) && value.length < Number(rule), `${at}: has fewer than ${rule}`),
  maxItems: (rule, value, at) =>
    when(Array.isArray(value) && value.length > Number(rule), `${at}: has more than ${rule}`),
  pattern: (rule, value, at) =>
    when(
      typeof value === 'string' && !new RegExp(String(rule), 'u').test(value),
      `${at}: does not fit ${rule}`,
    ),
  minimum: ofNumbers('under', (value, bound) => value < bound),
  maximum: ofNumbers('over', (value, bound) => value > bound),
  exclusiveMinimum: ofNumbers('not over', (value, bound) => value <= bound),
};
