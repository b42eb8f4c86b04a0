/**
 * What the program refuses of a settings file for its shape, its published schema refuses too, and nothing else: an
 * editor that goes by the schema says the same as the program. Sound files are spoiled by keys that are taken out and
 * by keys that are put in with the example that is told of them.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { valueAt } from '../../src/base/at.ts';
import { checkSettingsFile } from '../../src/formats/check-file.ts';
import { keyMeanings } from '../../src/formats/data/key-meanings.ts';
import { type FileKindName, fileKinds } from '../../src/formats/file-kinds.ts';
import { jsonSchemaOf } from '../../src/formats/json-schemas.ts';
import { schemaFaults } from './json-schema-faults.ts';
import { soundFiles } from './recorded-files.ts';

type Json = unknown;
type Path = readonly (string | number)[];

/** What no JSON Schema can say: it compares values, or knows the calendar. */
const BEYOND_A_SCHEMA = [
  / again$/,
  /and the order leaves it out$/,
  / is counted in /,
  /not among the \w+ of this shop$/,
  /digits after the point$/,
  /no day of the calendar/,
  /which is the column of/,
  /there is no built-in template/,
  /has no panel "/,
  /is removed twice$/,
  /is both removed and changed$/,
  /no panel is left/,
];

const rich: readonly Json[] = [
  {
    schema: 'leastcut/shop/1',
    machines: [
      { id: 'own', motion: 'orbital', throw_mm: 15, orbits_per_min: 5000, pad_mm: 125 },
      { id: 'spun', like: 'rotary', rpm: 1200, arm_speed_m_per_s: 0.03 },
      { id: 'da', force_n: 50 },
      'hand',
    ],
    pads: [
      { id: 'own-pad', factor: 1, stages: ['cut'] },
      { id: 'foam-soft', factor: 0.5 },
    ],
    products: [{ id: 'own-product', like: 'fine' }],
    risk_pct: 4,
    minutes: { wipe_min_per_section: 1 },
    numbers: { 'film.limits.risk_pct': 5, 'work.per_section.wipe_min': 1 },
    prices: {
      currency: 'EUR',
      discount_pct: 5,
      tax: {
        preset: 'eu-e-invoice',
        name: 'VAT',
        rate_pct: 19,
        level: 'line',
        rounding: 'up',
        included: true,
      },
    },
  },
  {
    schema: 'leastcut/rates/1',
    observations: [
      {
        date: '2026-03-31',
        combination: 'da/a/b',
        sets: 2,
        removed_um: 1,
        standard_error_um: 0.2,
        cleared_pct: 70,
      },
      { date: '2026-03-31', steps: [{ combination: 'da/a/b', sets: 2 }], cleared_pct: 70 },
    ],
  },
  { schema: 'leastcut/rubric/1', pass_mark_pct: 70, weights: { accuracy: 1, coverage: 0 } },
  {
    schema: 'leastcut/gauge/1',
    permitted_error: { fixed_um: 1, proportional_pct: 2 },
    verdict: null,
  },
];

const schemaNameOf = (value: Json): string => String((value as { schema?: unknown }).schema);
const kindOf = (value: Json) =>
  fileKinds.find(({ schemaName }) => schemaName === schemaNameOf(value));

const schemas = new Map(fileKinds.map(({ kind }) => [kind, jsonSchemaOf(kind)]));
const schemaOf = (kind: FileKindName) => valueAt(schemas, kind);

const bases = [
  ...rich,
  ...soundFiles()
    .map(({ text }) => JSON.parse(text) as Json)
    .filter((value) => kindOf(value) !== undefined && JSON.stringify(value).length < 4000),
];

/** Every place in a file where a key stands or could. */
const placesOf = (value: Json, at: Path = []): readonly Path[] => {
  if (typeof value !== 'object' || value === null) return [];
  const own = Object.entries(value).flatMap(([key, inner]) => {
    const step = Array.isArray(value) ? Number(key) : key;
    return [[...at, step], ...placesOf(inner, [...at, step])];
  });
  return own;
};

const changed = (value: Json, [step, ...rest]: Path, to: Json): Json => {
  if (step === undefined) return to;
  if (Array.isArray(value))
    return value.map((one, i) => (i === step ? changed(one, rest, to) : one));
  const { [step]: before, ...others } = value as Record<string, Json>;
  const inner = changed(before, rest, to);
  return inner === undefined ? others : { ...others, [step]: inner };
};

/** But those that leave something out by dots. */
const examples = keyMeanings
  .filter(({ example }) => !example.includes('…'))
  .map(({ key, example }) => ({
    key,
    value: (JSON.parse(`{${example}}`) as Record<string, Json>)[key],
  }));

/** One of the files with a few keys taken out, or put in where others stand. */
const spoiled = fc.constantFrom(...bases).chain((base) => {
  const keys = placesOf(base).filter((path) => typeof path.at(-1) === 'string');
  const edit = fc.oneof(
    fc.constantFrom(...keys).map((path) => ({ path, to: undefined as Json })),
    fc
      .tuple(fc.constantFrom(...keys), fc.constantFrom(...examples))
      .map(([path, { key, value }]) => ({
        path: [...path.slice(0, -1), key],
        to: value,
      })),
  );
  return fc.array(edit, { minLength: 1, maxLength: 3 }).map((edits) =>
    edits.reduce((value, { path, to }) => {
      try {
        return changed(value, path, to);
      } catch {
        return value;
      }
    }, base),
  );
});

const refusals = (value: Json): readonly string[] =>
  checkSettingsFile('file.json', JSON.stringify(value)).diagnostics.flatMap(
    ({ severity, message }) => (severity === 'error' ? [message] : []),
  );

test('a file whose shape the program refuses is refused by its schema, and no other', () => {
  fc.assert(
    fc.property(spoiled, (value) => {
      const kind = kindOf(value)?.kind;
      if (kind === undefined) return;
      const told = refusals(value).filter(
        (one) => !BEYOND_A_SCHEMA.some((known) => known.test(one)),
      );
      const faults = schemaFaults(schemaOf(kind), value);
      expect({ told, faults: faults.length > 0 }).toEqual({ told, faults: told.length > 0 });
    }),
    { numRuns: 1500 },
  );
});
