/** What a job file takes of the work: scope, how the vehicle comes in, who works on it, in which order. */
import * as z from 'zod';
import { stageFacts } from '../data/stages.ts';
import { advised } from '../json/advised.ts';
import { between, wholeBetween } from '../json/setting-values.ts';
import { yesOrNoAdvice } from '../trade-words.ts';
import {
  arrivalAdvice,
  decontaminationAdvice,
  protectionAdvice,
  wheelsAdvice,
} from './work-words.ts';

export const optionalYesOrNo = advised(z.boolean(), yesOrNoAdvice).optional();

export const scopeSchema = z.strictObject({
  wheels: advised(z.enum(['on', 'off', 'none']), wheelsAdvice).optional(),
  shuts: optionalYesOrNo,
  decontamination: advised(
    z.enum(['full', 'chemical', 'clay', 'none']),
    decontaminationAdvice,
  ).optional(),
  trim: optionalYesOrNo,
  engine_bay: optionalYesOrNo,
  interior: optionalYesOrNo,
  glass: optionalYesOrNo,
  protection: advised(z.enum(['none', 'wax', 'sealant', 'coating']), protectionAdvice).optional(),
});

export const hands = wholeBetween(1, 20);
export const hoursPerDay = between(1, 16);
const optionalTemperature = between(-20, 90).optional();

/** Keys of a job file. */
export const workShape = {
  scope: scopeSchema.optional(),
  arrival: advised(z.enum(['light', 'usual', 'heavy']), arrivalAdvice).optional(),
  hands: hands.optional(),
  hours_per_day: hoursPerDay.optional(),
  order: z
    .array(z.enum(stageFacts.map(({ id }) => id)))
    .min(1)
    .describe('a list in brackets of stages of the job')
    .optional(),
  panel_c: optionalTemperature,
  room_c: optionalTemperature,
};
