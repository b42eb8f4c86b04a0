/**
 * Gloss before and after at the same places: it tells of the look, and nothing of the film.
 *
 * Gloss units of two angles have nothing to do with one another and are never subtracted. ISO 2813 and
 * ASTM D523 read at 60°, above 70 GU there also at 20°, and under 10 GU at 85°, where differences show better.
 */
import { differenceInterval, pairedDifference } from '../../base/stats/mean-difference.ts';
import { mean } from '../../base/stats/summary.ts';
import type { Panel } from '../template/template.ts';

/** Degrees from the perpendicular. */
export type GlossAngle = 20 | 60 | 85;

export type GlossPlace = {
  readonly panel: Panel;
  readonly point: string;
  readonly angle: GlossAngle;
  /** Gloss units. */
  readonly before: number;
  readonly after: number;
  /** Haze units (ISO 13803), where they were read. */
  readonly haze: { readonly before: number; readonly after: number } | null;
};

export type GlossChange = {
  readonly panel: Panel;
  readonly angle: GlossAngle;
  readonly places: number;
  readonly before: number;
  readonly after: number;
  /** After less before: above 0 the panel shines more. */
  readonly gained: number;
  /** 95 % interval; null for a single place. */
  readonly interval: readonly [low: number, high: number] | null;
  readonly haze: { readonly before: number; readonly after: number } | null;
  /** The angle that the standards would read at as well; null where this one is right. */
  readonly betterAngle: GlossAngle | null;
};

const CONFIDENCE = 0.95;
/** At 60°: above this read at 20°, under that at 85° (ISO 2813, ASTM D523). */
const HIGH_GLOSS = 70;
const LOW_GLOSS = 10;

/** By panel and angle, in the order given. */
export function glossChanges(places: readonly GlossPlace[]): readonly GlossChange[] {
  const alike = (one: GlossPlace) => (other: GlossPlace) =>
    other.panel.id === one.panel.id && other.angle === one.angle;
  const firsts = places.filter((one, i) => places.findIndex(alike(one)) === i);
  return firsts.map((first) => changeOf(first, places.filter(alike(first))));
}

function changeOf({ panel, angle }: GlossPlace, places: readonly GlossPlace[]): GlossChange {
  const after = places.map((place) => place.after);
  const before = places.map((place) => place.before);
  const hazes = places.flatMap(({ haze }) => haze ?? []);
  const [was, is] = [mean(before), mean(after)];
  return {
    panel,
    angle,
    places: places.length,
    before: was,
    after: is,
    gained: is - was,
    interval:
      places.length < 2 ? null : differenceInterval(pairedDifference(after, before), CONFIDENCE),
    haze:
      hazes.length === 0
        ? null
        : {
            before: mean(hazes.map((haze) => haze.before)),
            after: mean(hazes.map((haze) => haze.after)),
          },
    betterAngle: betterAngle(angle, is),
  };
}

/** What 60° says of the angle to read at. */
function betterAngle(angle: GlossAngle, gloss: number): GlossAngle | null {
  if (angle !== 60) return null;
  if (gloss > HIGH_GLOSS) return 20;
  return gloss < LOW_GLOSS ? 85 : null;
}
