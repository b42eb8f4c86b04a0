/**
 * The candidate closest to a misspelt word, or none when nothing is near.
 *
 * Distance is that of Damerau and Levenshtein in its optimal string alignment form (insertions,
 * deletions, substitutions, swaps of neighbours), letters compared without case. A candidate is near
 * when its distance is at most 2, and less than half the length of the word.
 */
import { at } from './at.ts';

export function closest(word: string, candidates: Iterable<string>): string | undefined {
  const typed = word.toLowerCase();
  const reach = Math.min(2, Math.max(1, Math.ceil(typed.length / 2) - 1));
  let best: { candidate: string; distance: number } | undefined;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - typed.length) > reach) continue;
    const distance = alignmentDistance(typed, candidate.toLowerCase());
    if (distance <= reach && (best === undefined || distance < best.distance)) {
      best = { candidate, distance };
    }
  }
  return best?.candidate;
}

/** A hint ready for a diagnostic: `did you mean "bonnet"?`, or undefined. */
export function suggest(word: string, candidates: Iterable<string>): string | undefined {
  const near = closest(word, candidates);
  return near === undefined ? undefined : `did you mean "${near}"?`;
}

function alignmentDistance(a: string, b: string): number {
  const width = b.length + 1;
  let beforePrevious = new Array<number>(width).fill(0);
  let previous = Array.from({ length: width }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const current = new Array<number>(width).fill(i);
    for (let j = 1; j < width; j += 1) {
      const substitution = at(previous, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(at(previous, j) + 1, at(current, j - 1) + 1, substitution);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, at(beforePrevious, j - 2) + 1);
      }
      current[j] = least;
    }
    beforePrevious = previous;
    previous = current;
  }
  return at(previous, b.length);
}
