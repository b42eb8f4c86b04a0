/** What visits on record took of a panel, all together. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { RecordedRemoval } from '../../../src/film/film-model.ts';
import { takenInAll } from '../../../src/tasks/survey/taken-in-all.ts';

const gone = (mean: number, sd = 0) => ({ mean: micrometres(mean), sd: micrometres(sd) });
/** At one place alone. */
const spot = (mean: number, sd = 0): RecordedRemoval => ({ ...gone(mean, sd), allOver: gone(0) });

describe('what visits took of a panel', () => {
  it('is their sum, and as unsure as all of them', () => {
    expect(takenInAll([gone(1.5, 0.3), gone(2, 0.4)])).toEqual(gone(3.5, 0.5));
  });

  it('is nothing where film seems to have come on', () => {
    expect(takenInAll([gone(1), gone(-2)])).toEqual(gone(0));
  });

  it('is told apart by what went all over it and what went at a place', () => {
    expect(takenInAll([gone(2, 0.3), spot(1.5, 0.4)])).toEqual({
      ...gone(3.5, 0.5),
      allOver: gone(2, 0.3),
    });
  });

  it('has all that went at a place, where film seems to have come on all over it', () => {
    expect(takenInAll([gone(-2), spot(1.5)])).toEqual({ ...gone(1.5), allOver: gone(0) });
  });
});
