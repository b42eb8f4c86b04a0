/** Whether the day of a quote fits the days on which its readings were taken. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { daysRead, dayTold } from '../read/days-read.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';

/** A day before all of them: what it promises from then on, nobody could know yet. */
export function dayDoubts(
  date: string | undefined,
  { request, inputs }: Pick<SurveyResult, 'request' | 'inputs'>,
): readonly Diagnostic[] {
  const days = date === undefined ? null : daysRead(request.readings, inputs);
  const [file] = request.readings.map(({ origin }) => origin.file);
  if (date === undefined || days === null || file === undefined) return [];
  if (date >= days.from.slice(0, date.length)) return [];
  return [
    warning(
      'quote-before-read',
      `--date ${date} is before ${shownFile(file)} was read, on ${dayTold(days)}: the quote rests on those readings`,
      {
        at: { file },
        hint: 'correct --date, or the days of the readings if the clock of the gauge was wrong',
      },
    ),
  ];
}
