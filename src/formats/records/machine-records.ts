/** The schema of every machine record, by the command that writes it. */
import type * as z from 'zod';
import { batchRecordSchema } from './batch-record.ts';
import { compareRecordSchema } from './compare-record.ts';
import { doctorRecordSchema } from './doctor-record.ts';
import { explainRecordSchema } from './explain-record.ts';
import { gaugeRecordSchema } from './gauge-record.ts';
import { gradeRecordSchema } from './grade-record.ts';
import { initRecordSchema } from './init-record.ts';
import { methodsRecordSchema } from './methods-record.ts';
import { planRecordSchema } from './plan-record.ts';
import { quoteRecordSchema } from './quote-record.ts';
import { readRecordSchema } from './read-record.ts';
import { spotRecordSchema } from './spot-record.ts';
import { surveyRecordSchema } from './survey-record.ts';
import { templateRecordSchema } from './template-record.ts';

export type RecordName =
  | 'read'
  | 'survey'
  | 'plan'
  | 'quote'
  | 'spot'
  | 'compare'
  | 'grade'
  | 'gauge'
  | 'template'
  | 'methods'
  | 'explain'
  | 'doctor'
  | 'init'
  | 'batch';

export const machineRecords: Readonly<Record<RecordName, z.ZodType>> = {
  read: readRecordSchema,
  survey: surveyRecordSchema,
  plan: planRecordSchema,
  quote: quoteRecordSchema,
  spot: spotRecordSchema,
  compare: compareRecordSchema,
  grade: gradeRecordSchema,
  gauge: gaugeRecordSchema,
  template: templateRecordSchema,
  methods: methodsRecordSchema,
  explain: explainRecordSchema,
  doctor: doctorRecordSchema,
  init: initRecordSchema,
  batch: batchRecordSchema,
};
