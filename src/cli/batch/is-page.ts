import type { TypedOptions } from '../options.ts';

/** Whether a batch makes one page of all jobs, once they are done; else it writes each as it is done. */
export const isPage = (format: TypedOptions['format'] = 'ndjson'): boolean =>
  format !== 'ndjson' && format !== 'csv';
