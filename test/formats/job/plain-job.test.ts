/** A job in which nothing is wrong is read without its schema: it must come out as its schema gives it, or be left to it. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { jobSchema } from '../../../src/formats/job/job-schema.ts';
import { readPlainJob } from '../../../src/formats/job/plain-job.ts';
import { readJob } from '../../../src/formats/job/read-job.ts';
import { plainValue, type Shape } from '../../../src/formats/json/plain-value.ts';
import { jsonSchemaOf } from '../../../src/formats/json-schemas.ts';

const shape = jsonSchemaOf('job');

const jobFiles = ['samples', 'test/cases'].flatMap((home) =>
  readdirSync(home, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('job.json'))
    .map((path) => `${home}/${path}`),
);

/** All that a reader gives, with the order of its keys: a record shows it. */
const written = (answer: ReturnType<typeof readPlainJob>) =>
  JSON.stringify(
    answer && { value: answer.value?.value, diagnostics: answer.diagnostics },
    (_, value: unknown) => (value instanceof Map ? [...value] : value),
  );

const plainly = (text: string) => written(readPlainJob('job.json', text, shape));
const bySchema = (text: string) => written(readJob('job.json', text));

/** Stands in a value for a number too great for a double, which only a text can say. */
const TOO_GREAT = 'too great';
const odd = fc.constantFrom<unknown>(
  ...[
    null,
    true,
    -1,
    0,
    0.05,
    1e9,
    1e300,
    2 ** 53,
    '',
    ' ',
    '7',
    'none',
    [],
    {},
    [1],
    [' x'],
    ['x'],
  ],
  ...[{ value: 1 }, { value: 1, sd: 0 }, { value: 1, sd: 2, by: 3 }, TOO_GREAT],
);
const texts = fc.constantFrom('x', 'Meridew 6', 'Å 1', ' x', 'x\t', '\u00a0x', ' ', '', '\u200b');
const names = fc.constantFrom('bonnet', 'left wing', '7', ' roof', 'constructor', '__proto__', '');

/** Values that a schema takes, and now and then another. */
function valueFor(part: Shape, spoiled: number): fc.Arbitrary<unknown> {
  const sound = soundFor(part, spoiled);
  return fc.oneof({ weight: 100, arbitrary: sound }, { weight: spoiled, arbitrary: odd });
}

function soundFor(part: Shape, spoiled: number): fc.Arbitrary<unknown> {
  const {
    minimum: min = 0,
    maximum: max = 0,
    anyOf,
    items,
    minItems: minLength = 0,
  } = part as {
    [word: string]: number;
  } & { anyOf?: Shape[]; items: Shape };
  if (part['const'] !== undefined) return fc.constant(part['const']);
  if (Array.isArray(part['enum'])) return fc.constantFrom<unknown>(...(part['enum'] as unknown[]));
  if (anyOf !== undefined) return fc.oneof(...anyOf.map((one) => valueFor(one, spoiled)));
  switch (part['type']) {
    case 'string':
      return spoiled === 0 ? fc.constantFrom('x', 'Meridew 6', 'Å 1') : texts;
    case 'boolean':
      return fc.boolean();
    case 'integer':
      return fc.integer({ min, max });
    case 'number':
      return fc.double({ min, max, noNaN: true });
    case 'array':
      return fc.array(valueFor(items, spoiled), { minLength, maxLength: 3 });
    default:
      return objectOf(part, spoiled);
  }
}

function objectOf({ properties, additionalProperties, required }: Shape, spoiled: number) {
  if (properties === undefined) {
    const keys = spoiled === 0 ? fc.constantFrom('bonnet', 'left wing', '7') : names;
    return fc.dictionary(keys, valueFor(additionalProperties as Shape, spoiled), { maxKeys: 3 });
  }
  const entries = Object.entries(properties as { [key: string]: Shape });
  const must = (required ?? []) as string[];
  const optional = entries.map(([key]) => key).filter((key) => !must.includes(key));
  const values = Object.fromEntries(entries.map(([key, part]) => [key, valueFor(part, spoiled)]));
  return fc
    .tuple(
      fc.subarray(optional, { maxLength: Math.min(8, optional.length) }),
      fc.nat(99),
      fc.record(values),
    )
    .chain(([some, luck, all]) =>
      fc
        .shuffledSubarray([...must, ...some], { minLength: must.length + some.length })
        .map((keys) => {
          const kept = keys.map((key) => [key, all[key]]);
          if (luck < spoiled / 2) kept.push(['colours', 'red']);
          return Object.fromEntries(luck >= 100 - spoiled / 2 ? kept.slice(1) : kept);
        }),
    );
}

const textOf = (job: unknown) => JSON.stringify(job).replaceAll(JSON.stringify(TOO_GREAT), '1e999');

describe('a job read without its schema', () => {
  it('comes out as its schema gives it, in the order of its keys, wherever all of it is sound', () => {
    fc.assert(
      fc.property(valueFor(shape, 0), (job) => {
        const text = textOf(job);
        expect(plainly(text)).toBeDefined();
        expect(plainly(text)).toBe(bySchema(text));
      }),
    );
  });

  it('is left to its schema wherever that would change it or refuse it', () => {
    let taken = 0;
    let left = 0;
    fc.assert(
      fc.property(valueFor(shape, 4), (job) => {
        const text = textOf(job);
        const plain = plainly(text);
        if (plain === undefined) left += 1;
        else {
          taken += 1;
          expect(plain).toBe(bySchema(text));
        }
      }),
      { numRuns: 1000 },
    );
    expect(Math.min(taken, left)).toBeGreaterThan(100);
  });

  it.each(jobFiles)('is %s, unless its schema refuses that', (file) => {
    const text = readFileSync(file, 'utf8');
    const { diagnostics } = readJob('job.json', text);
    const refused = diagnostics.some(({ code }) => code !== 'stage-order');
    expect(plainly(text)).toBe(refused ? undefined : bySchema(text));
  });

  it.each([
    ['a key written twice', '{"schema": "leastcut/job/1", "aim": "full", "aim": "full"}'],
    ['a comment', '{"schema": "leastcut/job/1"} // mine'],
    ['no kind', '{}'],
    ['a list', '[]'],
    ['blanks around a name', '{"schema": "leastcut/job/1", "vehicle": {"id": " 7"}}'],
    ['a key of every object', '{"schema": "leastcut/job/1", "toString": 1}'],
    ['a prototype', '{"schema": "leastcut/job/1", "panels": {"__proto__": {}}}'],
    ['a null', '{"schema": "leastcut/job/1", "aim": null}'],
  ])('is left to its schema with %s', (_, text) => {
    expect(plainly(text)).toBeUndefined();
  });

  it('is told of an order against the rules as by its schema', () => {
    const text = '{"schema": "leastcut/job/1", "order": ["finish", "cut"]}';
    expect(plainly(text)).toContain('stage-order');
    expect(plainly(text)).toBe(bySchema(text));
  });
});

describe('the schema of a job', () => {
  it('asks nothing that its published form cannot say, but for blanks around a name', () => {
    const checks: string[] = [];
    z.toJSONSchema(jobSchema, {
      io: 'input',
      override: ({ zodSchema }) => {
        const { checks: own = [], type } = zodSchema._zod.def as z.core.$ZodTypeDef;
        checks.push(type, ...own.map((check) => check._zod.def.check));
      },
    });
    expect([...new Set(checks)].sort()).toEqual([
      ...[
        'array',
        'boolean',
        'enum',
        'greater_than',
        'less_than',
        'literal',
        'min_length',
        'number',
      ],
      ...['object', 'optional', 'overwrite', 'record', 'string', 'string_format', 'union'],
    ]);
  });
});

describe('a value read by a published schema', () => {
  it.each([
    ['a word of the schema is not known', { type: 'number', multipleOf: 2 }, 4],
    ['the schema says nothing', {}, 4],
    ['nothing may stand there', false, 4],
    ['a number is written as text', { type: 'number', minimum: 1 }, '4'],
    ['another key is written', { type: 'object', properties: {} }, { a: 1 }],
  ])('is left where %s', (_, part, value) => {
    expect(plainValue(part, value)).toBeUndefined();
  });
});
