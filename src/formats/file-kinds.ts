/** Every kind of settings file: what it is for, the schema that checks it, and its reader. */
import type * as z from 'zod';
import type { Outcome } from '../base/diagnostics.ts';
import { builtInTemplates } from './data/templates.ts';
import { decisionsSchema, readDecisions } from './decisions.ts';
import { filmRecordSchema, readFilmRecord } from './film-record.ts';
import { gaugeSchema, readGauge } from './gauge.ts';
import { jobSchema } from './job/job-schema.ts';
import { readJob } from './job/read-job.ts';
import { settingsReader } from './json/settings-reader.ts';
import { ratesSchema, readRates } from './rates.ts';
import { planSchema } from './records/plan-record.ts';
import { readRubric, rubricSchema } from './rubric.ts';
import { readShop, shopSchema } from './shop/shop.ts';
import { readTemplate } from './template/template.ts';
import { templateSchema } from './template/template-schema.ts';

export type FileKindName =
  | 'job'
  | 'shop'
  | 'template'
  | 'film-record'
  | 'gauge'
  | 'rates'
  | 'rubric'
  | 'decisions'
  | 'plan';

export type FileKind = {
  readonly kind: FileKindName;
  /** As `"schema"` of the file says it. */
  readonly schemaName: string;
  readonly purpose: string;
  readonly schema: z.ZodType;
  readonly read: (file: string, text: string) => Outcome<unknown>;
};

const fileKind = (
  kind: FileKindName,
  purpose: string,
  schema: z.ZodType,
  read: FileKind['read'],
): FileKind => ({ kind, schemaName: `leastcut/${kind}/1`, purpose, schema, read });

export const fileKinds: readonly FileKind[] = [
  fileKind('job', 'what is known of one vehicle besides its readings', jobSchema, readJob),
  fileKind('shop', 'what a workshop has and how it works', shopSchema, readShop),
  fileKind('template', 'the panels of a kind of vehicle', templateSchema, (file, text) =>
    readTemplate(file, text, builtInTemplates),
  ),
  fileKind(
    'film-record',
    'what earlier visits took from each panel',
    filmRecordSchema,
    readFilmRecord,
  ),
  fileKind('gauge', 'what a gauge may be off by, and how it was checked', gaugeSchema, readGauge),
  fileKind('rates', 'what test spots showed in this shop', ratesSchema, readRates),
  fileKind('rubric', 'how surveys of trainees are marked', rubricSchema, readRubric),
  fileKind('decisions', 'how the exports of a gauge are read', decisionsSchema, readDecisions),
  fileKind(
    'plan',
    'the steps of one vehicle, as leastcut plan writes them with --format json',
    planSchema,
    settingsReader(planSchema, (typed) => typed),
  ),
];
