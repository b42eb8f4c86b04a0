/**
 * Strict JSON with positions: the value as `JSON.parse` gives it, and where each part of it stands.
 *
 * `JSON.parse` judges validity and makes the value, so that `__proto__` and `constructor` are keys
 * like any other; a key written twice, which it would pass over in silence, is refused.
 */
import { findNodeAtLocation, type Node, parseTree } from 'jsonc-parser';
import {
  type Diagnostic,
  error,
  found,
  type Outcome,
  type Place,
  refused,
} from '../../base/diagnostics.ts';
import { deepestNesting, findSyntaxFaults, type SyntaxFault } from './json-syntax.ts';
import { shorten } from './shorten.ts';
import { tableInstead } from './table-instead.ts';
import { type PlaceAt, textPlaces } from './text-places.ts';

export type JsonPath = readonly (string | number)[];

export type JsonDocument = {
  readonly value: unknown;
  /** Where a key or value stands; for a path that does not exist, its nearest ancestor. */
  readonly placeOf: (path: JsonPath, what?: 'key' | 'value') => Place;
};

/** Columns of the first line count from after a byte order mark, which no editor shows. */
export function parseJson(file: string, text: string): Outcome<JsonDocument> {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const placeAt = textPlaces(file, body);
  const judged = judge(body);
  // Nesting is the only fault of what is JSON: the search for others takes longer than all the rest.
  const faults = judged.valid && !mayBeDeep(body) ? [] : findSyntaxFaults(body);
  const table = faults.length === 0 ? undefined : tableInstead(body);
  if (table !== undefined) return refused(syntaxError(placeAt, table));
  if (faults.length > 0) return refused(...faults.map((fault) => syntaxError(placeAt, fault)));
  const root = parseTree(body);
  if (!judged.valid || root === undefined) {
    const whole = { offset: 0, length: body.length, message: 'this is not JSON', hint: 'check it' };
    return refused(syntaxError(placeAt, whole));
  }
  const repeated = repeatedKeys(root, placeAt);
  if (repeated.length > 0) return refused(...repeated);
  return found({ value: judged.value, placeOf: placeFinder(root, placeAt) });
}

const mayBeDeep = (text: string): boolean => text.split(/[[{]/).length > deepestNesting;

const syntaxError = (
  placeAt: PlaceAt,
  { offset, length, message, hint }: SyntaxFault,
): Diagnostic => error('json-syntax', message, { at: placeAt(offset, length), hint });

type Judgement = { readonly valid: true; readonly value: unknown } | { readonly valid: false };

function judge(text: string): Judgement {
  try {
    return { valid: true, value: JSON.parse(text) as unknown };
  } catch {
    return { valid: false };
  }
}

function repeatedKeys(node: Node, placeAt: PlaceAt): readonly Diagnostic[] {
  const seen = new Map<unknown, Node>();
  return (node.children ?? []).flatMap((child) => {
    if (node.type !== 'object') return repeatedKeys(child, placeAt);
    const [key, value] = child.children ?? [];
    if (key === undefined || value === undefined) return [];
    const first = seen.get(key.value);
    if (first === undefined) {
      seen.set(key.value, key);
      return repeatedKeys(value, placeAt);
    }
    const { line } = placeAt(first.offset, first.length);
    const message = `the key ${shorten(JSON.stringify(key.value))} is written twice; first on line ${line}`;
    const at = placeAt(key.offset, key.length);
    const repeat = error('json-duplicate-key', message, { at, hint: 'keep one of the two' });
    return [repeat, ...repeatedKeys(value, placeAt)];
  });
}

function placeFinder(root: Node, placeAt: PlaceAt): JsonDocument['placeOf'] {
  return (path, what = 'value') => {
    for (let depth = path.length; depth > 0; depth -= 1) {
      const node = findNodeAtLocation(root, path.slice(0, depth));
      if (node === undefined) continue;
      const key = node.parent?.type === 'property' ? node.parent.children?.[0] : undefined;
      const wanted = what === 'key' && key !== undefined && depth === path.length ? key : node;
      return placeAt(wanted.offset, wanted.length);
    }
    return placeAt(root.offset, root.length);
  };
}
