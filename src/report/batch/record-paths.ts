/** What stands in a record that was read again as JSON. */
import type { DataCell, MachineRecord } from '../model.ts';

/** What stands under a path of keys; undefined where nothing does. */
export const at = (record: unknown, ...path: readonly string[]): unknown =>
  path.reduce<unknown>((here, key) => {
    const is = typeof here === 'object' && here !== null && Object.hasOwn(here, key);
    return is ? (here as Readonly<Record<string, unknown>>)[key] : undefined;
  }, record);

export const list = (record: unknown, key: string): readonly MachineRecord[] => {
  const value = at(record, key);
  return Array.isArray(value) ? value : [];
};

export const plain = (value: unknown): DataCell =>
  typeof value === 'string' || typeof value === 'number' ? value : null;

export const textAt = (record: unknown, ...path: readonly string[]): string | null => {
  const value = at(record, ...path);
  return typeof value === 'string' ? value : null;
};

export const numberAt = (record: unknown, ...path: readonly string[]): number | null => {
  const value = at(record, ...path);
  return typeof value === 'number' ? value : null;
};
