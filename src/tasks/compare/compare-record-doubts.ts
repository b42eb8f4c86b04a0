/** What is told of visits on record that the readings compared speak of: a removal counts once. */
import { type Diagnostic, error, note, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import type { KnownVisit } from '../../formats/film-record.ts';
import type { DatedVisit } from './compare-order.ts';
import { isMeasured } from './compare-visit-record.ts';
import type { VisitsOnRecord } from './visits-on-record.ts';

type RecordCase = {
  readonly visits: readonly KnownVisit[];
  readonly found: VisitsOnRecord;
  readonly first: DatedVisit;
  readonly last: DatedVisit;
  /** Whether a record is written, and of which day. */
  readonly recording: boolean;
  readonly date: string | undefined;
};

/** A record that would hold the same work twice is refused. */
export const recordDoubts = (one: RecordCase): readonly Diagnostic[] => [
  ...unclearVisits(one),
  ...visitsAround(one),
  ...visitAgain(one),
  ...visitsWithin(one),
  ...visitsPerhapsAround(one),
  ...visitsBetween(one),
];

const daysOf = (places: readonly number[], visits: readonly KnownVisit[]): string =>
  places.map((place) => visits[place]?.date ?? 'no day').join(', ');

const filesOf = ({ first, last }: RecordCase): string =>
  `from ${shownFile(first.file)} to ${shownFile(last.file)}`;

const AFTER_IT = 'compare from the readings after that visit on';

function unclearVisits({ visits, found, first, last }: RecordCase): readonly Diagnostic[] {
  if (found.unclear.length === 0) return [];
  return [
    error(
      'compare-visit-twice',
      `${shownFile(last.file)} is what was read after the visit of ${daysOf(found.unclear, visits)} on the record, and nothing says that ${shownFile(first.file)} was read before it`,
      {
        at: { file: last.file },
        hint: 'after each visit compare its own readings; for several at once name those from before the first of them first',
      },
    ),
  ];
}

/** Counted beside it, this would count twice; in its place, what else it took would be forgotten. */
function visitsAround(one: RecordCase): readonly Diagnostic[] {
  const { visits, found, last } = one;
  if (found.around.length === 0) return [];
  return [
    error(
      'compare-visit-twice',
      `the visit of ${daysOf(found.around, visits)} on the record contains what came off ${filesOf(one)}: it would count twice`,
      {
        at: { file: last.file },
        hint: 'take that visit off the record and compare each visit by its own readings, or leave the film record out',
      },
    ),
  ];
}

function visitAgain({ visits, found, last, recording, date }: RecordCase): readonly Diagnostic[] {
  const day = found.again === null ? null : visits[found.again]?.date;
  if (!recording || day === null || (day === date && !found.anew)) return [];
  const anew = found.completes
    ? 'what is measured now takes the place of what its plan foretold'
    : 'the panels that were read anew take the place of what stood there';
  const follows = [
    ...(day === date ? [] : [`it is not added again as of ${date}`]),
    ...(found.anew ? [anew] : []),
  ];
  const told = found.completes && day === date ? note : warning;
  return [
    told(
      'compare-visit-again',
      `the film record has this visit already, of ${day}: ${follows.join('; ')}`,
      { at: { file: last.file }, hint: 'if the day on the record is wrong, correct it there' },
    ),
  ];
}

/** Of panels that a visit holds by its plan alone, nothing measured is lost. */
function foretoldAlone({ visits, found }: RecordCase): string {
  const ids = found.within.flatMap((place) =>
    (visits[place]?.panels ?? []).filter((one) => !isMeasured(one)).map(({ panel }) => panel),
  );
  return ids.length === 0
    ? ''
    : `; of ${[...new Set(ids)].join(', ')}, not read after it, compare the readings alone: they take the place of its forecast`;
}

function visitsWithin(one: RecordCase): readonly Diagnostic[] {
  const { visits, found, last, recording } = one;
  if (found.within.length === 0) return [];
  const at = { file: last.file };
  const isPart = `the visit of ${daysOf(found.within, visits)} on the record is a part of what came off ${filesOf(one)}`;
  return recording
    ? [
        error('compare-visit-twice', `${isPart}: a record with both would count it twice`, {
          at,
          hint: `${AFTER_IT}; if it is this visit read anew, take it off the record first${foretoldAlone(one)}`,
        }),
      ]
    : [warning('compare-visit-within', `${isPart}: it is counted once`, { at })];
}

/** A gauge that moved since makes later readings lie so as well: told, and not refused. */
function visitsPerhapsAround(one: RecordCase): readonly Diagnostic[] {
  const { visits, found, last, recording } = one;
  if (found.perhapsAround.length === 0) return [];
  const follows = recording
    ? 'it would stand on the record twice'
    : 'it may count twice, and less seem to be left than is';
  return [
    warning(
      'compare-visit-within',
      `the visit of ${daysOf(found.perhapsAround, visits)} on the record began with more film and ended with less: it may contain what came off ${filesOf(one)}, then ${follows}`,
      {
        at: { file: last.file },
        hint: 'if it was read during that visit, leave it off the record; if after it, the gauge reads higher now: check it',
      },
    ),
  ];
}

function visitsBetween(one: RecordCase): readonly Diagnostic[] {
  const { visits, found, last } = one;
  if (found.perhaps.length === 0) return [];
  return [
    warning(
      'compare-visit-within',
      `the visit of ${daysOf(found.perhaps, visits)} on the record lies between the days read, ${filesOf(one)}: what it took may count twice, and less seem to be left than is`,
      { at: { file: last.file }, hint: AFTER_IT },
    ),
  ];
}
