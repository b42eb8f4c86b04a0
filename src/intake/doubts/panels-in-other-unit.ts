/**
 * Panels of a car that were written in mil among others in µm: not one reading of them can be paint in µm, and all are
 * as thick as the other panels in mil. One panel alone may be bare metal, and is told reading by reading.
 */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { median } from '../../base/stats/summary.ts';
import type { FilmModel } from '../../film/film-model.ts';
import type { Reading } from '../../film/reading.ts';
import { micrometresPer } from '../cells/unit.ts';
import { readingPlace } from '../readings/reading-place.ts';
import type { Source } from '../rows/source.ts';

type Doubtful = Pick<FilmModel['measurement'], 'doubtfulUnder'>;

const fewestPanels = 2;
/** On each: one reading may be of any spot. */
const fewestReadings = 2;
/** Panels of one car differ less, but for filler. */
const ALIKE = 2;

export function doubtPanelsInMil(
  readings: readonly Reading[],
  { doubtfulUnder }: Doubtful,
  source: Source,
): readonly Diagnostic[] {
  const film = readings.filter(({ layer, place }) => layer === '' && place === 'face');
  const thin = film.filter(({ thickness }) => thickness < doubtfulUnder);
  if (thin.length < fewestPanels || thin.length === film.length) return [];
  const panels = [...groupBy(film, ({ vehicle, panel }) => `${vehicle}\0${panel}`).values()];
  const isThin = ({ thickness }: Reading): boolean => thickness < doubtfulUnder;
  const others = panels.filter((own) => !own.some(isThin)).flat();
  if (others.length === 0) return [];
  const middle = median(others.map(({ thickness }) => thickness));
  const asOthers = ({ thickness }: Reading): boolean => {
    const ratio = (thickness * micrometresPer.mil) / middle;
    return ratio > 1 / ALIKE && ratio < ALIKE;
  };
  const inMil = panels.filter(
    (own) => own.length >= fewestReadings && own.every((one) => isThin(one) && asOthers(one)),
  );
  const [first] = inMil.flat();
  if (first === undefined || inMil.length < fewestPanels) return [];
  const message = `${inMil.length} panels read 1/25.4 of the others, from "${first.panel}" on: are they in mil?`;
  const hint = 'name the unit of each row in a column "unit", or write all readings in one unit';
  return [error('unit-doubtful', message, { at: readingPlace(source, first), hint })];
}
