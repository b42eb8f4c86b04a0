/**
 * Test spots of the panels, those of a file and those that a film record keeps of earlier visits: what they took in all,
 * and which of them left colour.
 *
 * A trial of a file is one on record where everything that was worked and measured is the same: the spot's name, panel,
 * combination and sets, each mark's readings, and what was cleared and hazed. It then counts once, as recorded.
 */
import type { Outcome } from '../../base/diagnostics.ts';
import { roundTo } from '../../base/rounding.ts';
import { micrometres } from '../../base/units.ts';
import { onlyGained, type SpotMark, type SpotTrial } from '../../correction/spot/spot-trial.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { FilmRecord, RecordedSpot, WrittenSpot } from '../../formats/film-record.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { placeText, settingsPanelGroups } from '../settings/settings-panels.ts';
import type { TrialsByPanel } from './car-paint.ts';
import type { MadeSpots } from './colour-at-spots.ts';

/** A spot of a record, and where it stands there. */
export type PlacedSpot = RecordedSpot & { readonly where: string };

export type SpotsOnRecord = ReadonlyMap<string, readonly PlacedSpot[]>;

/** By the template's ids. */
export function spotsOnRecord(
  record: Placed<FilmRecord> | undefined,
  template: VehicleTemplate,
): Outcome<SpotsOnRecord> {
  if (record === undefined) return { value: new Map(), diagnostics: [] };
  const named = record.value.spots.map((spot) => ({
    name: spot.written.panel,
    value: { ...spot, where: placeText(record.placeOf([...spot.path, 'spot'])) },
    at: record.placeOf([...spot.path, 'panel']),
  }));
  const { value, diagnostics } = settingsPanelGroups(named, template);
  return value === undefined
    ? { diagnostics }
    : {
        value: new Map([...value].map(([id, spots]) => [id, spots.map((spot) => spot.value)])),
        diagnostics,
      };
}

/** Of a file, of a record, or of both. */
export type PanelSpot =
  | { readonly trial: SpotTrial; readonly recorded: null }
  | { readonly trial: SpotTrial; readonly recorded: PlacedSpot }
  | { readonly trial: null; readonly recorded: PlacedSpot };

export type SpotsByPanel = ReadonlyMap<string, readonly PanelSpot[]>;

export function allSpots(trials: TrialsByPanel, onRecord: SpotsOnRecord): SpotsByPanel {
  const ids = new Set([...trials.keys(), ...onRecord.keys()]);
  return new Map(
    [...ids].map((id) => [id, spotsOfPanel(id, trials.get(id) ?? [], onRecord.get(id) ?? [])]),
  );
}

function spotsOfPanel(
  panelId: string,
  trials: readonly SpotTrial[],
  onRecord: readonly PlacedSpot[],
): readonly PanelSpot[] {
  const left = [...onRecord];
  const ofFile = trials.map((trial): PanelSpot => {
    const key = trialKey(writtenTrial(trial, panelId));
    const at = left.findIndex(({ written }) => trialKey(written) === key);
    const [recorded] = at < 0 ? [] : left.splice(at, 1);
    return recorded === undefined ? { trial, recorded: null } : { trial, recorded };
  });
  return [...ofFile, ...left.map((recorded) => ({ trial: null, recorded }))];
}

type WrittenTrial = Omit<WrittenSpot, 'taken_um' | 'taken_sd_um'>;

const DIGITS = 6;
const kept = (value: number): number => roundTo(value, DIGITS);

export const writtenTrial = (
  { combination, ...trial }: SpotTrial,
  panelId: string,
): WrittenTrial => {
  // Where all that was read rose, the record is to show why it frees nothing.
  const marks = onlyGained(trial) ? trial.gained : trial.marks;
  return {
    spot: trial.spot,
    panel: panelId,
    combination: combination.id,
    sets: trial.sets,
    ...(marks.length === 0
      ? {}
      : {
          marks: marks.map(({ name, before, after }) => ({
            mark: name,
            before_um: kept(before),
            after_um: kept(after),
          })),
        }),
    cleared_pct: trial.cleared === null ? null : kept(100 * trial.cleared),
    haze_grade: trial.haze,
    colour_on_pad: trial.colourOnPad,
    ...(trial.place === undefined ? {} : { place: trial.place }),
  };
};

/** Of one panel. Colour and place are no part of it: whoever finds them out later, it was the same trial. */
const trialKey = ({ marks = [], ...trial }: WrittenTrial): string =>
  JSON.stringify([
    ...[trial.spot, trial.combination, trial.sets],
    ...[trial.cleared_pct ?? null, trial.haze_grade ?? null],
    ...marks.map(({ mark, before_um, after_um }) => [mark, kept(before_um), kept(after_um)]),
  ]);

/** The name alone may be another spot's at another visit: one on record is told with its day. */
export const nameOf = ({ trial, recorded }: PanelSpot): string =>
  recorded === null ? trial.spot : `${recorded.written.spot} of ${recorded.date}`;

export const spotColours = (spots: SpotsByPanel): MadeSpots =>
  new Map(
    [...spots].map(([id, own]) => [
      id,
      own.map((spot) => {
        const said = [spot.recorded?.written.colour_on_pad, spot.trial?.colourOnPad];
        const isColoured = said.includes(true);
        return {
          name: nameOf(spot),
          leftColour: isColoured,
          isWithoutColour: !isColoured && said.includes(false) && !hasRisen(spot),
          marks: filmsAt(spot).map(({ before }) => before),
        };
      }),
    ]),
  );

/** What its marks read, those that rose among them. */
export const filmsAt = ({ trial, recorded }: PanelSpot): readonly MarkFilms[] =>
  recorded === null
    ? [...trial.marks, ...trial.gained]
    : (recorded.written.marks ?? []).map(({ before_um, after_um }) => ({
        before: micrometres(before_um),
        after: micrometres(after_um),
      }));

type MarkFilms = Pick<SpotMark, 'before' | 'after'>;

/** Whether all of its marks read more after, beyond noise where its file says so: it frees nothing. */
export function hasRisen({ trial, recorded }: PanelSpot): boolean {
  if (recorded === null) return onlyGained(trial);
  const { marks = [] } = recorded.written;
  return marks.length > 0 && marks.every(({ before_um, after_um }) => after_um > before_um);
}
