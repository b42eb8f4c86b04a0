/** The words that cells other than readings may hold. */
import type { PointPlace } from '../film/reading.ts';

const noReading = new Set(['', '-', '--', '---', '–', '—', 'n/a', 'na', 'nan', 'null', 'none']);

/** A mark that says there is no reading: empty, a dash, `n/a` … */
export const meansNoReading = (text: string): boolean => noReading.has(text.toLowerCase());

const places: ReadonlyMap<string, PointPlace> = new Map([
  ['', 'face'],
  ['face', 'face'],
  ['edge', 'edge'],
  ['shut', 'shut'],
]);
export const placeNames = ['face', 'edge', 'shut'] as const;
export const placeNamed = (text: string): PointPlace | undefined => places.get(text.toLowerCase());

const flags: ReadonlyMap<string, boolean> = new Map([
  ['', false],
  ...['yes', 'y', 'true', '1', 'x'].map((word) => [word, true] as const),
  ...['no', 'n', 'false', '0'].map((word) => [word, false] as const),
]);
export const flagNames = ['yes', 'no', 'true', 'false'] as const;
export const flagNamed = (text: string): boolean | undefined => flags.get(text.toLowerCase());

/** `1`, `2`, `3` …: the number of a repeat. */
export const ordinal = (text: string): number | undefined =>
  /^0*[1-9]\d{0,8}$/.test(text) ? Number(text) : undefined;

const wholeFilm = new Set(['', 'total', 'all', 'film']);
export const layerNamed = (text: string): string => {
  const layer = text.toLowerCase();
  return wholeFilm.has(layer) ? '' : layer;
};
