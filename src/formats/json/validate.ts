/**
 * A JSON document against a zod schema: the typed value, or every problem where it stands, in a
 * sentence that quotes the user's own text.
 *
 * zod says of a misspelt required key both that it is unknown and that another is missing: one
 * diagnostic here. zod drops `__proto__` in silence: it is refused here as a key that means nothing.
 */
import * as z from 'zod';
import {
  type Diagnostic,
  error,
  found,
  type Outcome,
  type Place,
  refused,
} from '../../base/diagnostics.ts';
import { closest, suggest } from '../../base/did-you-mean.ts';
import { kindSaid } from '../../base/own-files.ts';
import { adviceOn, keyAdviceOn } from './advised.ts';
import type { JsonDocument, JsonPath } from './json-text.ts';
import { keyHint, sameInOtherUnit } from './key-words.ts';
import {
  bare,
  describeSchema,
  homesOf,
  keysOf,
  objectForm,
  type Schema,
  schemaAt,
  wordsOf,
} from './schema-words.ts';
import { shorten } from './shorten.ts';
import { toldOnce } from './told-once.ts';

type Issue = z.core.$ZodIssue;
type Request = { readonly schema: z.ZodType; readonly document: JsonDocument };

export function validate<S extends z.ZodType>(
  schema: S,
  document: JsonDocument,
): Outcome<z.output<S>> {
  const request = { schema, document };
  // A file is checked once or twice: a parser compiled for its schema would take longer than it saves.
  const result = schema.safeParse(document.value, { jitless: true });
  const lost = pathsOfPrototypeKeys(document.value).map((path) => unknownKey(request, path));
  if (result.success && lost.length === 0) return found(result.data);
  const issues = result.success
    ? []
    : result.error.issues.flatMap((issue) => inside(issue, request));
  const otherKind = namesAnotherKind(request, issues);
  if (otherKind !== undefined) return refused(otherKind);
  const told = withoutMisspelt(request, issues).flatMap((issue) => tell(request, issue));
  return refused(...toldOnce([...told, ...lost].sort(byPlace)));
}

/** What may be a plain value or an object, and is an object, is wrong where the object is wrong. */
function inside(issue: Issue, { schema, document }: Request): readonly Issue[] {
  const path = plainPath(issue.path);
  const form = objectForm(schemaAt(schema, path));
  const { value } = lookUp(document.value, path);
  if (issue.code !== 'invalid_union' || form === undefined || !isObject(value)) return [issue];
  const { error: problem } = form.safeParse(value);
  return (problem?.issues ?? []).map((each) => ({ ...each, path: [...issue.path, ...each.path] }));
}

const isObject = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function tell(request: Request, issue: Issue): readonly Diagnostic[] {
  const path = plainPath(issue.path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys
      .filter((key) => key !== '__proto__')
      .map((key) => unknownKey(request, [...path, key]));
  }
  return [path[0] === 'schema' ? wrongKind(request) : invalid(request, issue, path)];
}

const plainPath = (path: readonly PropertyKey[]): JsonPath =>
  path.map((step) => (typeof step === 'number' ? step : String(step)));

function unknownKey({ schema, document }: Request, path: JsonPath): Diagnostic {
  const key = String(path.at(-1));
  const around = schemaAt(schema, path.slice(0, -1));
  return error(
    'settings-unknown-key',
    `the key ${shorten(JSON.stringify(key))} means nothing here`,
    {
      at: document.placeOf(path, 'key'),
      hint:
        (around === undefined ? undefined : keyAdviceOn(around, key)) ??
        placeHint({ schema, document }, path) ??
        keyHint(key, keysOf(around), lookUp(document.value, path).value),
    },
  );
}

/** Where a key belongs that is known elsewhere in the file. */
function placeHint({ schema }: Request, path: JsonPath): string | undefined {
  const key = String(path.at(-1));
  const word = JSON.stringify(key);
  const [home] = homesOf(schemaAt(schema, path.slice(0, -1)), key);
  if (home !== undefined) return `${word} stands inside ${JSON.stringify(home)}`;
  return path.length > 1 && keysOf(schema).includes(key)
    ? `${word} stands at the top of the file, not inside ${JSON.stringify(path[0])}`
    : undefined;
}

/** The `schema` key is missing or wrong. */
function wrongKind({ schema, document }: Request): Diagnostic {
  const [name] = wordsOf(schemaAt(schema, ['schema']));
  const wanted = JSON.stringify(name);
  const here = lookUp(document.value, ['schema']);
  const other = kindSaid(here.value);
  if (other !== undefined && here.value !== name) {
    const own = kindSaid(name);
    const message = `this is a ${other.kind} file, where a ${own?.kind ?? 'settings'} file is wanted`;
    return error('settings-schema', message, {
      at: document.placeOf(['schema']),
      hint: `name it with ${other.option}${own === undefined ? '' : `, and a ${own.kind} file with ${own.option}`}`,
    });
  }
  const message = here.found
    ? `"schema" is ${textOf(here.value, document.placeOf(['schema']))}; it takes ${wanted}`
    : 'the file does not say what kind it is';
  return error('settings-schema', message, {
    at: document.placeOf(here.found ? ['schema'] : []),
    hint: `"schema": ${wanted}`,
  });
}

/** A file of another kind has nothing to say under this schema: its kind is the only problem. */
function namesAnotherKind(request: Request, issues: readonly Issue[]): Diagnostic | undefined {
  const { value } = lookUp(request.document.value, ['schema']);
  if (typeof value !== 'string' || !issues.some(({ path }) => path[0] === 'schema'))
    return undefined;
  const wanted = wordsOf(schemaAt(request.schema, ['schema']))[0] ?? '';
  const other = /^leastcut\/[a-z-]+\/\d+$/.test(value) && closest(value, [wanted]) === undefined;
  return other ? wrongKind(request) : undefined;
}

function invalid({ schema, document }: Request, issue: Issue, path: JsonPath): Diagnostic {
  const ofKey = issue.code === 'custom' && issue.params?.['key'] === true;
  const at = document.placeOf(path, issue.code === 'invalid_key' || ofKey ? 'key' : 'value');
  const here = lookUp(document.value, path);
  const name = path.length === 0 ? 'the file' : JSON.stringify(shorten(pathText(path)));
  const expected = schemaAt(schema, path);
  const takes = expected === undefined ? 'something else' : describeSchema(expected);
  if (!here.found) {
    return error('settings-invalid', `${name} is missing; it takes ${takes}`, { at });
  }
  if (issue.code === 'custom') {
    const hint: unknown = issue.params?.['hint'];
    return error('settings-invalid', `${name} ${issue.message}`, {
      at,
      hint: typeof hint === 'string' ? hint : undefined,
    });
  }
  if (issue.code === 'invalid_key') {
    const parent = schemaAt(schema, path.slice(0, -1));
    const names = parent instanceof z.ZodRecord ? describeSchema(parent.keyType) : 'something else';
    const message = `${shorten(JSON.stringify(path.at(-1)))} cannot be a key here; it takes ${names}`;
    return error('settings-invalid', message, { at });
  }
  return error('settings-invalid', `${name} is ${textOf(here.value, at)}; it takes ${takes}`, {
    at,
    hint: valueHint(here.value, schema, path),
  });
}

function valueHint(value: unknown, schema: z.ZodType, path: JsonPath): string | undefined {
  if (value === null && path.length > 0) return 'leave the key out when nothing is known';
  const expected = schemaAt(schema, path);
  const advice = expected === undefined ? undefined : adviceOn(expected, value);
  if (advice !== undefined || typeof value !== 'string') return advice;
  const near = suggest(value, wordsOf(expected));
  if (near !== undefined || expected === undefined) return near;
  try {
    const unquoted = JSON.parse(value) as unknown;
    const fits = z.safeParse(bare(expected), unquoted).success && typeof unquoted !== 'string';
    return fits ? `write it without quotes: ${shorten(value.trim())}` : undefined;
  } catch {
    return quotedNumberHint(value, expected);
  }
}

const QUOTED_NUMBER = /^\s*(-?\d+(?:[.,]\d+)?)\s*([\p{L}%/²°]*)\s*$/u;

/** `"2,5"`, `"49 N"`: the number alone, where one may stand. */
function quotedNumberHint(text: string, expected: Schema): string | undefined {
  const [, digits = '', unit = ''] = QUOTED_NUMBER.exec(text) ?? [];
  const number = Number(digits.replace(',', '.'));
  if (digits === '' || !z.safeParse(bare(expected), number).success) return undefined;
  return unit === ''
    ? `write it without quotes and with a point: ${number}`
    : `write the number alone, in the unit of the key: ${number}`;
}

/** `panels.bonnet.finish`, `machines[1]`. */
export const pathText = (path: JsonPath): string =>
  path
    .map((step, i) => (typeof step === 'number' ? `[${step}]` : i === 0 ? step : `.${step}`))
    .join('');

/** The value as the user wrote it; a list or object by its kind. */
function textOf(value: unknown, { lineText = '', column = 1, length = 0 }: Place): string {
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  return shorten(lineText.slice(column - 1, column - 1 + length));
}

type LookedUp = { readonly found: boolean; readonly value?: unknown };

function lookUp(value: unknown, path: JsonPath): LookedUp {
  let here = value;
  for (const step of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, step)) {
      return { found: false };
    }
    here = Reflect.get(here, step);
  }
  return { found: true, value: here };
}

/** Keys that an issue of our own says are missing. */
const lackingOf = ({ params }: Extract<Issue, { readonly code: 'custom' }>): readonly unknown[] => {
  const lacks: unknown = params?.['lacks'];
  return Array.isArray(lacks) ? lacks : [];
};

/** Leaves out what is missing where an unknown key beside it was meant to be it. */
function withoutMisspelt(
  { schema, document }: Request,
  issues: readonly Issue[],
): readonly Issue[] {
  const meant = new Set(
    issues.flatMap((issue) => {
      if (issue.code !== 'unrecognized_keys') return [];
      const path = plainPath(issue.path);
      const known = keysOf(schemaAt(schema, path));
      return issue.keys.map((key) => {
        const guess = sameInOtherUnit(key, known) ?? closest(key, known);
        return JSON.stringify([...path, guess]);
      });
    }),
  );
  return issues.filter((issue) => {
    const plain = plainPath(issue.path);
    if (issue.code === 'custom')
      return !lackingOf(issue).some((key) => meant.has(JSON.stringify([...plain, key])));
    return lookUp(document.value, plain).found || !meant.has(JSON.stringify(plain));
  });
}

function pathsOfPrototypeKeys(value: unknown, path: JsonPath = []): readonly JsonPath[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    return [...(key === '__proto__' ? [here] : []), ...pathsOfPrototypeKeys(child, here)];
  });
}

export const byPlace = (a: Diagnostic, b: Diagnostic): number =>
  (a.at?.line ?? 0) - (b.at?.line ?? 0) || (a.at?.column ?? 0) - (b.at?.column ?? 0);
