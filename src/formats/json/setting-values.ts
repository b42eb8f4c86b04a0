/** Values that more than one kind of settings file takes. */
import * as z from 'zod';
import { isDay } from '../../base/calendar.ts';
import { roundTo } from '../../base/rounding.ts';
import { dateAdvice, finishAdvice } from '../trade-words.ts';
import { advised } from './advised.ts';

export const text = z.string().regex(/\S/).describe('text that is not blank');
export const identifier = text;

/** Both checks at once: each `min` and `max` of its own would make the schema anew, which every start pays for. */
export const between = (least: number, most: number): z.ZodNumber =>
  z.number().check(z.gte(least), z.lte(most));
export const wholeBetween = (least: number, most: number): z.ZodInt =>
  z.int().check(z.gte(least), z.lte(most));
/** What people are shown: blanks around it are no part of it, and could set it in under another name. */
export const shownName = text.trim();

/** A remark for whoever reads the file; nothing is computed from it. */
export const note = z
  .union([z.string(), z.array(z.string())])
  .describe('text, or a list of lines in brackets');

/** Made once for all keys that take it: every schema costs every start that reads such a file. */
export const optionalText = text.optional();
export const optionalNote = note.optional();

const DAY_SHAPE = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;

/** A day, in the form that sorts as text. */
export const date = advised(
  z
    .string()
    .regex(DAY_SHAPE)
    .refine((day) => !DAY_SHAPE.test(day) || isDay(day), 'is no day of the calendar')
    .describe('a date like "2026-03-31"'),
  dateAdvice,
);

export const combination = z
  .string()
  .regex(/^[^\s/]+\/[^\s/]+\/[^\s/]+$/)
  .describe('a combination: machine/pad/product');

export const aim = z.union([z.enum(['enhance', 'correct', 'full']), between(1, 99)]);
export const policy = z.enum(['standard', 'strict']);
export const riskPct = advised(between(0.1, 50), (value) =>
  typeof value === 'number' && value > 0 && value < 0.1
    ? `it is in per cent: write ${roundTo(100 * value, 3)} for ${roundTo(100 * value, 3)} %`
    : undefined,
);

export const finish = advised(
  z.enum([
    'clear-over-base',
    'single-stage-solid',
    'single-stage-metallic',
    'lacquer',
    'matte',
    'unknown',
  ]),
  finishAdvice,
);

/** How much of the visible defects is to go: a named aim, or per cent of them. */
export type Aim = z.output<typeof aim>;
export type Policy = z.output<typeof policy>;
export type Finish = z.output<typeof finish>;
