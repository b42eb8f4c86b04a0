import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import type { TypedOptions } from '../options.ts';
import type { Surroundings } from '../surroundings.ts';

/** Files are of a day: one still to come puts a visit, or what a shop learnt, out of order for good. */
export const doubtDate = (
  { date }: TypedOptions,
  { today }: Pick<Surroundings, 'today'>,
): readonly Diagnostic[] =>
  date === undefined || date <= today
    ? []
    : [
        warning('date-in-future', `--date ${date} is still to come`, {
          hint: 'if the year or the day slipped, correct --date and write again what was written',
        }),
      ];
