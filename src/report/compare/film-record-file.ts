/** `leastcut/film-record/1`: what these readings say came off, added to what earlier visits took. */
import { standardUncertainty } from '../../base/uncertainty.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PointPair } from '../../film/compare/compare-points.ts';
import type { PanelComparison } from '../../film/compare/compare-surveys.ts';
import type { FilmRecord, FilmRecordFile, FilmRecordVisit } from '../../formats/film-record.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import { machine } from '../envelope.ts';

type Written = Pick<CompareResult, 'vehicle' | 'total'>;

export const filmRecordText = (
  result: Written,
  date: string,
  earlier: FilmRecord | undefined,
): string => `${JSON.stringify(filmRecordFile(result, date, earlier), null, 2)}\n`;

/** The visits as they stood, and this one after them; one that stands there already is not added again. */
export function filmRecordFile(
  { vehicle, total }: Written,
  date: string,
  earlier: FilmRecord | undefined,
): FilmRecordFile {
  const before = earlier?.file;
  const name = before?.vehicle ?? vehicle;
  const visit = { date, panels: total.panels.flatMap(panelEntry) };
  const visits = before?.visits ?? [];
  const stands = visits.some((one) => JSON.stringify(one) === JSON.stringify(visit));
  return {
    ...before,
    schema: 'leastcut/film-record/1',
    ...(name === null ? {} : { vehicle: name }),
    visits: stands ? visits : [...visits, visit],
  };
}

type PanelEntry = FilmRecordVisit['panels'][number];

/** What a record takes: a difference that is less sure than this says nothing of a panel. */
const MOST_SD = 20;

/** As it was measured; film that came on is no removal, and is left out. */
function panelEntry({
  panel,
  change,
  gained,
  pairs,
  zones,
}: PanelComparison): readonly PanelEntry[] {
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
  taken_um: machine(Math.max(LEAST_TAKEN, removed.value)),
  taken_sd_um: machine(standardUncertainty(removed)),
  ...(pairs.length === 0
    ? {}
    : {
        points: pairs.map(({ point, before, after }) => ({
          point,
          before_um: machine(before),
          after_um: machine(after),
        })),
      }),
});

const LEAST_TAKEN = -20;
