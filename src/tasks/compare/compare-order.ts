/** Whether visits are named in the order of the days that their readings tell, and whether a record's day is one of them. */
import { type Diagnostic, error, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { type DaysRead, dayTold } from '../read/days-read.ts';

export type DatedVisit = { readonly file: string; readonly days: DaysRead | null };
type Told = DatedVisit & { readonly days: DaysRead };

const areTold = (visits: readonly DatedVisit[]): readonly Told[] =>
  visits.flatMap(({ file, days }) => (days === null ? [] : [{ file, days }]));

/** A file that was surely read before one that is named before it: what came off would be told the wrong way round. */
export function outOfOrder(visits: readonly DatedVisit[]): readonly Diagnostic[] {
  const told = areTold(visits);
  const isLater = (one: Told, other: Told): boolean => one.days.from > other.days.to;
  const first = told.flatMap((later, i) => {
    const earlier = told.slice(0, i).find((before) => isLater(before, later));
    return earlier === undefined ? [] : [{ later, earlier }];
  })[0];
  if (first === undefined) return [];
  const { later, earlier } = first;
  const files = inOrder(visits, told).map(shownFile).join(' ');
  return [
    error(
      'compare-files-order',
      `${shownFile(later.file)} was read on ${dayTold(later.days)}, and ${shownFile(earlier.file)}, named before it, on ${dayTold(earlier.days)}: visits are named the earliest first`,
      {
        at: { file: later.file },
        hint: `leastcut compare ${files}; if a clock was wrong, correct the days in its file`,
      },
    ),
  ];
}

/** By their days; a file that tells none stays behind the one it was named after. */
function inOrder(visits: readonly DatedVisit[], told: readonly Told[]): readonly string[] {
  const dayOf = (place: number): string =>
    told.find(({ file }) => file === visits.slice(0, place + 1).findLast(isTold)?.file)?.days
      .from ?? '';
  return visits
    .map(({ file }, place) => ({ file, day: dayOf(place) }))
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
    .map(({ file }) => file);
}

const isTold = ({ days }: DatedVisit): boolean => days !== null;

/** The day of a visit lies between its readings; a record keeps its visits in the order of their days. */
export function dayDoubts(
  date: string | undefined,
  visits: readonly DatedVisit[],
): readonly Diagnostic[] {
  if (date === undefined) return [];
  const told = areTold(visits);
  const [first, last] = [told[0], told.at(-1)];
  if (first === undefined || last === undefined) return [];
  const side =
    date > last.days.to.slice(0, date.length)
      ? { word: 'after', of: last }
      : date < first.days.from.slice(0, date.length)
        ? { word: 'before', of: first }
        : undefined;
  return side === undefined
    ? []
    : [
        warning(
          'compare-day-differs',
          `--date ${date} is ${side.word} ${shownFile(side.of.file)} was read, on ${dayTold(side.of.days)}`,
          {
            at: { file: side.of.file },
            hint: 'give the day of the work: a record keeps its visits in the order of their days',
          },
        ),
      ];
}
