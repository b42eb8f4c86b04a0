/** A class whose surveys lie near the rules of grading, so that each of these, set otherwise, shows. */
import { normal, seededRandom } from '../samples/seeded-random.ts';

const PANELS = ['bonnet', 'roof', 'boot', 'wing front left', 'wing front right', 'door front left'];
const MARKS = 5;
type Place = { readonly panel: number; readonly mark: number; readonly at: number };
type Readings = (place: Place) => readonly number[];

const places: readonly Place[] = PANELS.flatMap((_, panel) =>
  Array.from({ length: MARKS }, (__, mark) => ({ panel, mark, at: panel * MARKS + mark })),
);
const table = (readings: Readings): string =>
  `panel,point,reading_um,repeat,marked\n${places
    .flatMap((place) =>
      readings(place).map(
        (value, i) => `${PANELS[place.panel]},${place.mark + 1},${value.toFixed(2)},${i + 1},yes`,
      ),
    )
    .join('\n')}\n`;

const random = seededRandom(5_150);
const drawn = (sd: number): readonly number[] => places.map(() => sd * normal(random));
const film = drawn(5).map((off) => 112 + off);
const tenths = (value: number): number => Math.round(10 * value) / 10;
const honest = (): ((at: number) => number) => {
  const off = drawn(1.5);
  return (at) => tenths((film[at] ?? 0) + (off[at] ?? 0));
};

const [first, second, third, fourth] = [honest(), honest(), honest(), honest()];
const levels = [2.5, -2.5, 2.5, -2.5, 2.5, -2.5];
/** As many values are the same as tell a copy of a usual hand, and not of one that repeats so well. */
const partCopy =
  (of: (at: number) => number, same: number): Readings =>
  ({ at }) => [of(at) + (at % 3 === 0 && at < 3 * same ? 0 : 6 + 0.7 * (at % 5))];

export const classNearTheRules: Readonly<Record<string, string>> = {
  'reference.csv': table(({ at }) => [tenths(film[at] ?? 0)]),
  'creeps.csv': table(({ at, panel }) => [
    tenths(first(at) + (17 * at) / places.length + (levels[panel] ?? 0)),
  ]),
  // Of three panels only.
  'edges.csv': table(({ at, panel, mark }) =>
    panel > 2 ? [] : [tenths(second(at) - (mark % 4 === 0 ? 11 : 0))],
  ),
  // Four readings of five.
  'tenths.csv': table(({ at, panel }) => [panel === 5 ? third(at) : third(at) / 10]),
  'even.csv': table(({ at, panel, mark }) => [
    panel < 3 ? 112 + panel + 0.5 * mark * (mark % 2 === 0 ? 1 : -1) : fourth(at),
  ]),
  'plain.csv': table(({ at }) => [third(at)]),
  'part of plain.csv': table(partCopy(third, 10)),
  'fine.csv': table(({ at }) => [fourth(at) + 0.01 * (at % 7)]),
  'near fine.csv': table(({ at }) => [tenths(fourth(at) + 0.3 * Math.sin(at))]),
  'steady.csv': table(({ at }) => (at < 10 ? [second(at), second(at)] : [second(at)])),
  'part of steady.csv': table(partCopy(second, 10)),
};
