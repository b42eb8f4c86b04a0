/** A job file in which nothing is wrong, read without the schema: that and its library take a tenth of a plan to load. */
import type * as z from 'zod';
import { found, type Outcome } from '../../base/diagnostics.ts';
import { parseJson } from '../json/json-text.ts';
import type { Placed } from '../json/placed.ts';
import { plainValue, type Shape } from '../json/plain-value.ts';
import { type Job, toJob } from './job.ts';
import type { jobSchema } from './job-schema.ts';
import { withOrderChecked } from './job-scope.ts';

/** The published schema as text, which the build puts here. The sources have none, and leave every job to `readJob`. */
declare const JOB_SHAPE: string;
const published = typeof JOB_SHAPE === 'undefined' ? undefined : (JSON.parse(JOB_SHAPE) as Shape);

/** The same as `readJob` gives; `undefined` where that has to be asked. */
export function readPlainJob(
  file: string,
  text: string,
  shape = published,
): Outcome<Placed<Job>> | undefined {
  const { value: document } = parseJson(file, text);
  if (document === undefined) return undefined;
  const typed = plainValue(shape, document.value) as z.output<typeof jobSchema> | undefined;
  if (typed === undefined) return undefined;
  const { placeOf } = document;
  return withOrderChecked(found({ value: toJob(typed), placeOf }));
}
