/** Every key of every machine record, with the places it stands in, from the schemas of the records. */
import * as z from 'zod';
import { machineRecords, type RecordName } from './machine-records.ts';

export type KeyPlace = {
  readonly record: RecordName;
  /** The keys that lead to it, itself last; `[]` follows one that holds a list: `panels[]`, `clear`, `low_um`. */
  readonly path: readonly string[];
  readonly nullable: boolean;
};

type InRecord = Omit<KeyPlace, 'record'>;

/** A zone has the keys of its panel, and two of its own. */
const OF_ZONES: readonly string[] = ['zone', 'points[]'];

export const recordKeyPlaces = (): readonly KeyPlace[] =>
  (Object.keys(machineRecords) as RecordName[]).flatMap((record) => {
    const places = keysIn(machineRecords[record], []);
    const once = new Map(places.map((place) => [placeText(place), place]));
    return [...once.values()].map((place) => ({ record, ...place }));
  });

/** What a schema may be besides null and absent. */
function formsOf(schema: unknown): readonly unknown[] {
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) {
    return formsOf(schema.unwrap());
  }
  return schema instanceof z.ZodUnion ? schema.options.flatMap(formsOf) : [schema];
}

function keysIn(schema: unknown, around: readonly string[]): readonly InRecord[] {
  return formsOf(schema).flatMap((form) => {
    if (form instanceof z.ZodArray) return keysIn(form.element, around);
    if (!(form instanceof z.ZodObject)) return [];
    return Object.entries(form.shape).flatMap(([key, inner]) => keysFrom(key, inner, around));
  });
}

function keysFrom(key: string, inner: z.ZodType, around: readonly string[]): readonly InRecord[] {
  const isList = formsOf(inner).every((form) => form instanceof z.ZodArray);
  const own = isList ? `${key}[]` : key;
  if (around.at(-1) === 'zones[]' && !OF_ZONES.includes(own)) return [];
  const path = [...around, own];
  return [{ path, nullable: mayBeNull(inner) }, ...keysIn(inner, path)];
}

const mayBeNull = (schema: unknown): boolean =>
  schema instanceof z.ZodNullable ||
  schema instanceof z.ZodNull ||
  (schema instanceof z.ZodUnion && schema.options.some(mayBeNull));

/** The key itself, without the mark of a list. */
export const keyOfPlace = ({ path }: Pick<KeyPlace, 'path'>): string =>
  (path.at(-1) ?? '').replace('[]', '');

/** As one types it after a record's name: `panels[].clear.low_um`. */
export const placeText = ({ path }: Pick<KeyPlace, 'path'>): string => path.join('.');
