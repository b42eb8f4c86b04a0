import type { PageOptions } from '../report/page-options.ts';
import type { Settings } from '../tasks/settings/settings.ts';
import type { TypedOptions } from './options.ts';

/** How a page is to be written, as settings and options say. */
export const pageOptions = (
  { showUnit }: Pick<Settings, 'showUnit'>,
  { verbose, format }: TypedOptions,
): PageOptions => ({
  unit: showUnit.value,
  verbose: verbose ?? false,
  drawn: format === 'html',
  onPaper: format === 'html' || format === 'md',
});
