/** What is held of a panel's paint, in the records of survey and plan: each value with its origin. */
import * as z from 'zod';
import { finish } from '../json/setting-values.ts';
import { type KeptAs, later, origin } from './record-parts.ts';

const effective = <S extends z.ZodType>(value: S) =>
  z.strictObject({ value, origin, where: z.string() });

const spread = { value: z.number(), sd: z.number().min(0) };
const layer = z.strictObject({ ...spread, of: z.enum(['panel', 'car']) }).nullable();

export const facts = (as: KeptAs) =>
  z.strictObject({
    finish: effective(finish),
    taken_um: effective(z.number().min(0).nullable()),
    taken_sd_um: later(effective(z.number().min(0)), as),
    recorded_um: effective(
      z.strictObject({ ...spread, gained_um: later(z.number().min(0).nullable(), as) }).nullable(),
    ),
    clear_um: effective(layer),
    under_um: effective(layer),
    galvanised: effective(z.boolean()),
    covered: effective(z.boolean()),
    clear_coat_failure: effective(z.boolean()),
    painted_days_ago: effective(z.int().min(0).nullable()),
  });
