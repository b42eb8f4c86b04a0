/** The reader of a job file that says what is wrong in it. */
import { settingsReader } from '../json/settings-reader.ts';
import { toJob } from './job.ts';
import { jobSchema } from './job-schema.ts';
import { withOrderChecked } from './job-scope.ts';

const readShape = settingsReader(jobSchema, toJob);

export const readJob: typeof readShape = (file, text) => withOrderChecked(readShape(file, text));
