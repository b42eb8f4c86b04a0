import { describe, expect, it } from 'vitest';
import {
  ladderOn,
  type PaintKnowledge,
  strongestTried,
  workableOn,
} from '../../../src/correction/removal/removal-knowledge.ts';
import { shopWith, untried } from '../shop.ts';

const model = shopWith('da', 'da-small', 'hand');
const rungs = ladderOn(untried, model);
const ids = rungs.map(({ id }) => id);
const triedAt = (...places: readonly number[]): PaintKnowledge => ({
  ...untried,
  triedHere: new Set(places.map((place) => ids[place] ?? '')),
});
const workable = (paint: PaintKnowledge): readonly string[] =>
  workableOn(paint, model).map(({ id }) => id);

describe('what may be worked on a paint', () => {
  it('is all that the shop has, mildest first, where the paint left the factory', () => {
    expect(workable(untried)).toEqual(ids);
    expect(strongestTried(untried, rungs)).toBeUndefined();
    const each = rungs.map(({ perSet }) => perSet);
    expect(each).toEqual([...each].sort((a, b) => a - b));
  });

  it('is, on repaint, what was tried there and all that is milder, and nothing stronger', () => {
    const last = ids.length - 1;
    for (const place of [0, 1, Math.floor(last / 2), last - 1, last]) {
      expect(workable(triedAt(place))).toEqual(ids.slice(0, place + 1));
      expect(strongestTried(triedAt(place), rungs)?.id).toBe(ids[place]);
    }
  });

  it('goes as far as the strongest of several that were tried, in whatever order', () => {
    for (const tried of [triedAt(2, 5), triedAt(5, 2), triedAt(0, 5, 3)]) {
      expect(workable(tried)).toEqual(ids.slice(0, 6));
    }
  });

  it('is nothing on repaint where nothing was proved, or only what the shop has no more', () => {
    expect(workable(triedAt())).toEqual([]);
    expect(workable({ ...untried, triedHere: new Set(['sold']) })).toEqual([]);
  });
});
