/** Invented surveys: panels of the built-in templates with paint, refinish and filler on them. */
import { builtInTemplates } from '../../../src/formats/data/templates.ts';
import type { Random } from './random.ts';

/** One value as the gauge showed it, in the unit of its survey. */
export type Shot = {
  readonly vehicle: string | null;
  readonly panel: string;
  readonly point: string;
  readonly repeat: number;
  readonly value: number;
};
export type Survey = { readonly unit: 'um' | 'mil'; readonly shots: readonly Shot[] };

export type Wish = {
  readonly panels?: readonly string[];
  readonly panelCount?: number;
  readonly points?: number | readonly string[];
  readonly repeats?: number;
  readonly vehicles?: readonly string[];
  readonly unit?: 'um' | 'mil';
  /** At least one panel of filler, over 1000 µm. */
  readonly filler?: boolean;
  /** Decimals of a value; at least one of a file's values uses them. */
  readonly decimals?: number;
};

type Film = 'paint' | 'refinish' | 'filler';

/** Micrometres of a panel: factory paint, a second coat, or filler (ordinary trade figures). */
function levelOf(film: Film, random: Random): number {
  if (film === 'paint') return random.int(95, 150);
  return film === 'refinish' ? random.int(190, 380) : random.int(1050, 1900);
}

const pointNames = (points: number | readonly string[]): readonly string[] =>
  typeof points === 'number' ? Array.from({ length: points }, (_, i) => String(i + 1)) : points;

export function inventSurvey(random: Random, wish: Wish = {}): Survey {
  const { unit = 'um', repeats = 1, decimals = unit === 'mil' ? 2 : 1 } = wish;
  const template = random.pick(builtInTemplates);
  const panels =
    wish.panels ??
    random
      .shuffled(template.panels.map(({ name }) => name))
      .slice(0, wish.panelCount ?? random.int(3, 6));
  const scale = 10 ** decimals;
  const shots = (wish.vehicles ?? [null]).flatMap((vehicle) =>
    panels.flatMap((panel, p) => {
      const film: Film =
        wish.filler === true && p === 0 ? 'filler' : random.pick(['paint', 'paint', 'refinish']);
      const level = levelOf(film, random);
      return pointNames(wish.points ?? random.int(3, 5)).flatMap((point) =>
        Array.from({ length: repeats }, (_, r): Shot => {
          const um = level * (1 + 0.08 * (random.next() - 0.5));
          const shown = Math.round((unit === 'mil' ? um / 25.4 : um) * scale);
          // A whole number would hide which decimal mark the file uses.
          const value = (decimals > 0 && shown % 10 === 0 ? shown + 1 : shown) / scale;
          return { vehicle, panel, point, repeat: r + 1, value };
        }),
      );
    }),
  );
  return { unit, shots };
}

/** Micrometres of a shown value; 1 mil is 25.4 µm exactly. */
export const inMicrometres = (value: number, unit: 'um' | 'mil'): number =>
  unit === 'mil' ? value * 25.4 : value;

export const panelsOf = ({ shots }: Survey): readonly string[] => [
  ...new Set(shots.map(({ panel }) => panel)),
];
export const pointsOf = ({ shots }: Survey): readonly string[] => [
  ...new Set(shots.map(({ point }) => point)),
];
/** The values at one place, in order. */
export const valuesAt = ({ shots }: Survey, panel: string, point?: string): readonly number[] =>
  shots
    .filter((shot) => shot.panel === panel && (point === undefined || shot.point === point))
    .map(({ value }) => value);
