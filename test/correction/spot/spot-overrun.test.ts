import { expect, test } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { nextRemark } from '../../../src/correction/spot/spot-advice.ts';
import { nextStep } from '../../../src/correction/spot/spot-next.ts';
import {
  overrunStop,
  type SpotOverrun,
  spotOverrun,
} from '../../../src/correction/spot/spot-overrun.ts';
import type { RemovedFilm } from '../../../src/correction/spot/spot-trial.ts';
import { model, trial } from '../spot-trials.ts';

const MEDIUM = 'da/foam-medium/medium';

const removed = (mean: number, low: number): RemovedFilm =>
  ({ mean, low, high: 2 * mean - low }) as RemovedFilm;

const overrun = (spot: string, mean: number): SpotOverrun => {
  const found = spotOverrun(trial(MEDIUM, { spot }), removed(mean, mean - 1), micrometres(3.5));
  if (found === null) throw new Error('the whole interval lies over what might go');
  return found;
};

const stopped = (overruns: readonly SpotOverrun[]) => {
  const trials = overruns.map(({ trial: one }) => one);
  const finishOf = () => 'clear-over-base' as const;
  const asked = { trials, finishOf, overruns, aim: 0.85, hazeAllowed: 1, model };
  const step = nextStep({ ...asked, ladder: [], paint: null } as never);
  return { step, said: nextRemark(step, asked).text };
};

test('a trial is over what might go only where its whole interval is, and where marks tell what might', () => {
  const one = trial(MEDIUM);
  expect(spotOverrun(one, removed(5, 3.5), micrometres(3.5))).toBeNull();
  expect(spotOverrun(one, removed(5, 3.6), null)).toBeNull();
  expect(spotOverrun(one, removed(5, 3.6), micrometres(3.5))?.removed.mean).toBe(5);
});

test('it stops before anything else is advised, and of several the one that took most is told', () => {
  const { step, said } = stopped([overrun('A', 6), overrun('B', 9), overrun('C', 7)]);
  expect(step).toEqual({ code: 'stop-overrun', combination: null });
  expect(said).toContain('stop: test spot B took 9.0 µm (8.0 to 10.0) in 2 sets');
  expect(said).toContain('3.50 µm might go by its marks');
});

test('a place where nothing might go says so', () => {
  const found = spotOverrun(trial(MEDIUM, { spot: 'D' }), removed(3, 2), micrometres(0));
  expect(found === null ? '' : overrunStop(found).text).toContain(
    'where nothing might go by its marks',
  );
});
