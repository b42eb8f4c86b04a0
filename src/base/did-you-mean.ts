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
  let best: string | undefined;
  let nearest = reach + 1;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - typed.length) > reach) continue;
    const distance = alignmentDistance(typed, candidate.toLowerCase());
    if (distance < nearest) {
      best = candidate;
      nearest = distance;
    }
  }
  return best;
}

/** A hint ready for a diagnostic: `did you mean "bonnet"?`, or undefined. */
export function suggest(word: string, candidates: Iterable<string>): string | undefined {
  const near = closest(word, candidates);
  return near === undefined ? undefined : `did you mean "${near}"?`;
}

function alignmentDistance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  let beforePrevious = previous;
  for (let i = 1; i <= a.length; i += 1) {
    const current = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const substitution = at(previous, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(at(previous, j) + 1, at(current, j - 1) + 1, substitution);
      // Before the first letter there is none, which equals no letter.
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, at(beforePrevious, j - 2) + 1);
      }
      current.push(least);
    }
    beforePrevious = previous;
    previous = current;
  }
  return at(previous, b.length);
}
