/** `leastcut/film-record/1`: what these readings say came off, added to what earlier visits took. */
import type { FilmRecord, FilmRecordFile } from '../../formats/film-record.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { takenText } from '../../tasks/compare/compare-visit-record.ts';

type Written = Pick<CompareResult, 'vehicle' | 'visit'>;

export const filmRecordText = (
  result: Written,
  date: string,
  earlier: FilmRecord | undefined,
): string => `${JSON.stringify(filmRecordFile(result, date, earlier), null, 2)}\n`;

/** The visits as they stood, and this one among them by its day; one that stands there already is not added again. */
export function filmRecordFile(
  { vehicle, visit: panels }: Written,
  date: string,
  earlier: FilmRecord | undefined,
): FilmRecordFile {
  const before = earlier?.file;
  const name = before?.vehicle ?? vehicle;
  const visit = { date, panels };
  const visits = before?.visits ?? [];
  const stands = visits.some((one) => takenText(one) === takenText(visit));
  return {
    ...before,
    schema: 'leastcut/film-record/1',
    ...(name === null ? {} : { vehicle: name }),
    visits: stands ? visits : visits.toSpliced(placeOf(date, visits), 0, visit),
  };
}

/** After every visit that is not later. */
const placeOf = (date: string, visits: FilmRecordFile['visits']): number =>
  visits.findLastIndex((one) => one.date <= date) + 1;
