/** Values that more than one kind of settings file takes, and the way they reach plain types. */
import * as z from 'zod';

export const text = z.string().regex(/\S/).describe('text that is not blank');
export const identifier = text;

export const aim = z.union([z.enum(['enhance', 'correct', 'full']), z.number().min(1).max(99)]);
export const policy = z.enum(['standard', 'strict']);
export const riskPct = z.number().min(0.1).max(50);

export const finish = z.enum([
  'clear-over-base',
  'single-stage-solid',
  'single-stage-metallic',
  'lacquer',
  'matte',
  'unknown',
]);

/** How much of the visible defects is to go: a named aim, or per cent of them. */
export type Aim = z.output<typeof aim>;
export type Policy = z.output<typeof policy>;
export type Finish = z.output<typeof finish>;

type Given<T> = { readonly [Key in keyof T]?: Exclude<T[Key], undefined> };

/** The keys that were given: absent rather than undefined. */
export const given = <T extends object>(values: T): Given<T> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Given<T>;

/** A number that was given, as a quantity. */
export const asQuantity = <Q>(
  make: (value: number) => Q,
  value: number | undefined,
): Q | undefined => (value === undefined ? undefined : make(value));
