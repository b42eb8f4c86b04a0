/** Files written out in full, and the readings that stand in them. */
import { instance, type Kind, kindsOf, type Rest, type TrueReading } from './kind.ts';

/** Points 1, 2 … of a panel. */
export const on = (panel: string, ...film: readonly number[]): readonly TrueReading[] =>
  film.map((um, i) => ({ vehicle: null, panel, point: String(i + 1), um }));

export const ofVehicle = (vehicle: string, ...readings: readonly TrueReading[]) =>
  readings.map((one) => ({ ...one, vehicle }));

export const lines = (...rows: readonly string[]): string => `${rows.join('\n')}\n`;

/** A kind of which every file is the same; its points are read as they may be. */
export function literalKinds(group: string) {
  const kind = kindsOf(group, 'layout');
  const write = (
    title: string,
    expected: Kind['expected'],
    content: string | Uint8Array,
    readings: readonly TrueReading[],
    rest: Rest = {},
  ): Kind => kind(title, expected, () => instance(content, readings, { points: 'open', ...rest }));
  return {
    read: (
      title: string,
      content: string | Uint8Array,
      readings: readonly TrueReading[],
      rest?: Rest,
    ) => write(title, 'read', content, readings, rest),
    refused: (title: string, content: string | Uint8Array, rest?: Rest) =>
      write(title, 'refused', content, [], rest),
    either: (
      title: string,
      content: string | Uint8Array,
      readings: readonly TrueReading[],
      rest?: Rest,
    ) => write(title, 'either-but-never-wrong', content, readings, rest),
  };
}
