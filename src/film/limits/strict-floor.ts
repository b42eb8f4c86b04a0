import { hasNoClear } from '../coat-of.ts';
import type { Finish } from '../film-model.ts';

/** The paint of which no strict floor is known, so that the strict policy changes nothing; else null. */
export function withoutStrictFloor(finish: Finish): string | null {
  if (!hasNoClear(finish)) return null;
  return finish === 'lacquer' ? 'lacquer' : 'single-stage paint';
}
