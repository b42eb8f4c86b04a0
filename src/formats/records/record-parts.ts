/**
 * What machine records are made of. A record is strict, unknown is null and no key is ever absent;
 * a run that came to nothing is the envelope alone, with the error that says why.
 */
import * as z from 'zod';

export const count = z.int().min(0);
export const share = z.number().min(0).max(1);
export const percent = z.number().min(0).max(100);
/** A figure, or null where there is none. */
export const figure = z.number().nullable();
export const word = z.string().nullable();

/** The middle and the 90 % range of a factor. */
export const factor = {
  factor: z.number().min(0),
  low: z.number().min(0),
  high: z.number().min(0),
};

/** An enumeration from the keys of a table that must name every one. */
export const keyOf = <Key extends string>(table: Readonly<Record<Key, unknown>>) =>
  z.enum(Object.keys(table) as [Key, ...Key[]]);

export const origin = z.enum([
  'flag',
  'list',
  'environment',
  'job',
  'shop',
  'project',
  'user',
  'built-in',
  'readings',
]);

/** A stable code for machines, a sentence for people, and a figure where there is one. */
export const remark = z.strictObject({
  code: z.string(),
  text: z.string(),
  value: z.number().optional(),
});

/** A record as it is written, or one that is read back as a file, maybe from an earlier version. */
export type KeptAs = 'record' | 'file';

/** A key that earlier versions did not write: a record has it, a file may not. */
export const later = <Schema extends z.ZodType>(schema: Schema, as: KeptAs) =>
  as === 'record' ? schema : schema.optional();

/** A panel, and in it the zones it has, each with the keys of a panel; a zone has none itself. */
export const zoned = <Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject({
    ...shape,
    zones: z.array(
      z.strictObject({
        ...shape,
        zones: z.array(z.never()),
        zone: z.enum(['thinner', 'thicker']),
        points: z.array(z.string()),
      }),
    ),
  });

const input = z.strictObject({
  file: z.string(),
  sha256: z.string().regex(/^[\da-f]{64}$/),
  decisions: z
    .strictObject({
      encoding: z.string(),
      delimiter: z.string(),
      decimal: z.string(),
      layout: z.enum(['long', 'wide', 'repeats', 'blocks', 'list']),
      unit: z.enum(['um', 'mil', 'mm', 'inch', 'cm', 'nm']),
      header_line: z.int().min(0),
      columns: z.record(z.string(), z.array(z.string())),
      evidence: z.array(z.string()),
      metadata: z.array(
        z.strictObject({ key: z.string(), value: z.string(), line: z.int().min(1) }),
      ),
    })
    .nullable(),
});

const assumption = z.strictObject({ code: z.string(), text: z.string(), origin });

const position = z.int().min(1).nullable();

export const diagnostic = z.strictObject({
  code: z.string(),
  severity: z.enum(['error', 'warning', 'note']),
  message: z.string(),
  at: z
    .strictObject({
      file: z.string(),
      line: position,
      column: position,
      length: z.int().min(0).nullable(),
      line_text: word,
    })
    .nullable(),
  hint: word,
});

/** A setting in force. */
export const setting = z.strictObject({
  name: z.string(),
  value: z.union([z.string(), z.number(), z.boolean(), z.null(), z.array(z.string())]),
  origin,
  where: z.string(),
});

const envelope = <Command extends string>(command: Command) => ({
  schema: z.literal(`leastcut/${command}/1`),
  version: z.string(),
  command: z.literal(command),
  vehicle: word,
  inputs: z.array(input),
  assumptions: z.array(assumption),
  diagnostics: z.array(diagnostic),
});

/** A record of a command that came to a result. */
export const resultOf = <Command extends string, Shape extends z.core.$ZodLooseShape>(
  command: Command,
  shape: Shape,
) => z.strictObject({ ...envelope(command), ...shape });

/** A record of a command that did not. */
const failureOf = (command: string) =>
  z.strictObject({
    ...envelope(command),
    vehicle: z.null(),
    inputs: z.array(input).max(0),
    assumptions: z.array(assumption).max(0),
    diagnostics: z.array(diagnostic).min(1),
  });

/** Whatever a command may write: one of its results, or why there is none. */
export const recordOf = (command: string, ...results: readonly z.ZodObject[]) =>
  z.union([...results, failureOf(command)]);
