/**
 * A list of jobs as JSON: an array with an object a job, its keys named by what they say. `readings`
 * and `spots` may be several files; every other value is a text or a number.
 */
import * as z from 'zod';
import {
  type Diagnostic,
  error,
  found,
  hasErrors,
  type Outcome,
  type Place,
  refused,
} from '../base/diagnostics.ts';
import { kindSaid, takenAs } from '../base/own-files.ts';
import { type JsonDocument, parseJson } from './json/json-text.ts';
import { text } from './json/setting-values.ts';
import { validate } from './json/validate.ts';

type ListCell = { readonly text: string; readonly at: Place };

export type ListedJob = {
  readonly at: Place;
  /** By key: a text, or several. */
  readonly cells: ReadonlyMap<string, readonly ListCell[]>;
};

type JsonColumns = {
  readonly columns: readonly string[];
  readonly needed: readonly string[];
  readonly several: readonly string[];
  /** What is said of a key that is no column, as of a column of a table. */
  readonly unknown: (key: string, at: Place) => Diagnostic;
};

export function readBatchListJson(
  file: string,
  json: string,
  columns: JsonColumns,
): Outcome<readonly ListedJob[]> {
  const { value: document, diagnostics } = parseJson(file, json);
  if (document === undefined) return { diagnostics };
  const { placeOf } = document;
  const other = otherKind(document);
  if (other !== undefined) return refused(other);
  const unknown = unknownKeys(document, columns);
  if (hasErrors(unknown)) return refused(...unknown);
  const checked = validate(listSchema(columns), document);
  if (checked.value === undefined) return { diagnostics: checked.diagnostics };
  const jobs = checked.value.map((typed, i): ListedJob => {
    const cells = Object.entries(typed as Typed).map(([key, value]) => {
      const texts = Array.isArray(value)
        ? value.map((text, k) => ({ text, at: placeOf([i, key, k]) }))
        : [{ text: String(value), at: placeOf([i, key]) }];
      return [key, texts] as const;
    });
    return { at: placeOf([i]), cells: new Map(cells) };
  });
  return found(jobs, [...checked.diagnostics, ...unknown]);
}

/** Each where it stands first. */
function unknownKeys(
  { value, placeOf }: JsonDocument,
  { columns, unknown }: JsonColumns,
): readonly Diagnostic[] {
  const first = new Map<string, number>();
  for (const [i, job] of (Array.isArray(value) ? value : []).entries()) {
    if (typeof job !== 'object' || job === null) continue;
    for (const key of Object.keys(job)) if (!first.has(key)) first.set(key, i);
  }
  return [...first].flatMap(([key, i]) =>
    columns.includes(key) || key === '__proto__' ? [] : [unknown(key, placeOf([i, key], 'key'))],
  );
}

/** A settings file or a record of ours, which is no list. */
function otherKind({ value, placeOf }: JsonDocument): Diagnostic | undefined {
  if (typeof value !== 'object' || value === null || !('schema' in value)) return undefined;
  const kind = kindSaid(value.schema);
  if (kind === undefined) return undefined;
  const message = `this is a ${kind.kind} file, where a list of jobs is wanted`;
  return error('file-other-kind', message, { at: placeOf(['schema']), hint: takenAs(kind) });
}

type Typed = Readonly<Record<string, string | number | readonly string[]>>;

/** Keys of the shop's own are left out. */
const listSchema = ({ columns, needed, several }: JsonColumns) => {
  const plain = z.union([text, z.number()]);
  const entries = columns.map((key) => {
    const value = several.includes(key) ? z.union([text, z.array(text).min(1)]) : plain;
    return [key, needed.includes(key) ? value : value.optional()] as const;
  });
  return z.array(z.object(Object.fromEntries(entries)));
};
