/** Whose a film record is where the readings do not say so: told, and doubted where its last readings are other film. */
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { Reading } from '../../film/reading.ts';
import { panelMatcher } from '../../film/template/panel-names.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { FilmRecord } from '../../formats/film-record.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { Assumption } from '../settings/assumption.ts';

type RecordOf = Placed<FilmRecord> | undefined;

/** A record of another vehicle than the readings or the job name is refused; where they name none it is believed. */
export function recordAssumption(record: RecordOf, vehicle: string | null): readonly Assumption[] {
  const recorded = record?.value.vehicle;
  if (recorded === undefined || vehicle !== null) return [];
  return [
    {
      code: 'record-vehicle',
      text: `the readings are of vehicle "${recorded}", whose film record it is: neither they nor the job name one`,
      origin: 'job',
    },
  ];
}

/**
 * Most points read otherwise than after the last visit that read them, by more than tells two films apart on one panel:
 * no work between two visits takes as much, so it is another car, or its panels are others.
 */
export function recordDiffers(
  record: RecordOf,
  readings: readonly Reading[],
  template: VehicleTemplate,
  { zones: { meansApart } }: Pick<FilmModel, 'zones'>,
): readonly Diagnostic[] {
  if (record === undefined) return [];
  const last = lastRead(record.value, template);
  const both = readings
    .filter(({ layer, place }) => layer === '' && place === 'face')
    .flatMap(({ panel, point, thickness }) => {
      const before = last.get(pointKey(panel, point));
      return before === undefined ? [] : [Math.abs(thickness - before)];
    });
  const apart = both.filter((difference) => difference > meansApart).length;
  if (both.length < LEAST_COMPARED || 2 * apart <= both.length) return [];
  return [
    warning(
      'film-record-differs',
      `${apart} of ${both.length} readings differ by more than ${meansApart} µm from what the film record last read at the same points`,
      {
        at: record.placeOf(['visits']),
        hint: 'another car or other points? What the record took counts all the same: leave it out if it is not of this car',
      },
    ),
  ];
}

/** Of fewer points that both name one slip would be most of them. */
const LEAST_COMPARED = 3;

const pointKey = (panel: string, point: string): string => `${panel}\u0000${point}`;

function lastRead({ file }: FilmRecord, template: VehicleTemplate): ReadonlyMap<string, number> {
  const match = panelMatcher(template);
  return new Map(
    file.visits.flatMap(({ panels }) =>
      panels.flatMap(({ panel, points = [], zones = [] }) => {
        const found = match(panel);
        const all = [...points, ...zones.flatMap((zone) => zone.points ?? [])];
        if (found.kind !== 'match') return [];
        return all.flatMap(({ point, after_um: after }) =>
          after === undefined ? [] : [[pointKey(found.panel.id, point), after] as const],
        );
      }),
    ),
  );
}
