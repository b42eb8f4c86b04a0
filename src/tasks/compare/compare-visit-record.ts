/**
 * What came off as a film record keeps it: with that record a survey of the later readings says what may still go,
 * whoever asks for it later.
 */
import { roundTo } from '../../base/rounding.ts';
import { standardUncertainty } from '../../base/uncertainty.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PointPair } from '../../film/compare/compare-points.ts';
import type { PanelComparison } from '../../film/compare/compare-surveys.ts';
import {
  type FilmRecord,
  type FilmRecordFile,
  type FilmRecordVisit,
  filmRecordOf,
} from '../../formats/film-record.ts';
import type { Placed } from '../../formats/json/placed.ts';

export type VisitPanels = FilmRecordVisit['panels'];

/** The panels of which a record can say something. */
export const visitPanels = (compared: readonly PanelComparison[]): VisitPanels =>
  compared.flatMap(panelEntry);

/** What a record takes: a difference that is less sure than this says nothing of a panel. */
const MOST_SD = 20;

/** As it was measured; film that came on is no removal, and is left out. */
function panelEntry({ panel, change, gained, pairs, zones }: PanelComparison): VisitPanels {
  if (change === null || gained || standardUncertainty(change.removed) > MOST_SD) return [];
  const parts = zones.flatMap((zone) =>
    zone.zone === null || zone.change === null
      ? []
      : [{ zone: zone.zone, ...taken(zone.change, zone.pairs) }],
  );
  return [
    {
      panel: panel.id,
      ...taken(change, pairs),
      ...(parts.length === 0 ? {} : { zones: parts }),
    },
  ];
}

const taken = ({ removed }: FilmChange, pairs: readonly PointPair[]) => ({
  taken_um: kept(Math.max(LEAST_TAKEN, removed.value)),
  taken_sd_um: kept(standardUncertainty(removed)),
  ...(pairs.length === 0
    ? {}
    : {
        points: pairs.map(({ point, before, after }) => ({
          point,
          before_um: kept(before),
          after_um: kept(after),
        })),
      }),
});

const LEAST_TAKEN = -20;
const DIGITS = 6;
const kept = (value: number): number => roundTo(value, DIGITS);

export type Records = {
  /** What earlier visits took, without this one. */
  readonly earlier: Placed<FilmRecord> | undefined;
  readonly withThis: Placed<FilmRecord>;
};

/** A record that holds this visit already, as one that is compared once more, is not given it twice. */
export function recordsAround(named: Placed<FilmRecord> | undefined, panels: VisitPanels): Records {
  const isThis = (visit: FilmRecordVisit): boolean =>
    JSON.stringify(visit.panels) === JSON.stringify(panels);
  const file: FilmRecordFile = named?.value.file ?? {
    schema: 'leastcut/film-record/1',
    visits: [],
  };
  const visits = file.visits.filter((visit) => !isThis(visit));
  const placeOf: Placed<FilmRecord>['placeOf'] = named?.placeOf ?? (() => ({ file: THESE }));
  const of = (all: FilmRecordFile['visits']): Placed<FilmRecord> => ({
    value: filmRecordOf({ ...file, visits: all }),
    placeOf,
  });
  return {
    earlier: named === undefined ? undefined : of(visits),
    withThis: of([...visits, { date: UNDATED, panels }]),
  };
}

const THESE = 'readings before and after';
/** No page tells the day. */
const UNDATED = '0000-00-00';
