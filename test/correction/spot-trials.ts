/** Test spots for tests: two sets worked on swirl marks of grade 3, of which nothing was read or seen yet. */
import { degreesCelsius, micrometres } from '../../src/base/units.ts';
import { type Combination, ladder } from '../../src/correction/removal/combination.ts';
import type { SpotMark, SpotTrial } from '../../src/correction/spot/spot-trial.ts';
import { defect, shopWith } from './shop.ts';

export const model = shopWith('rotary', 'da', 'da-small', 'hand');
const rungs = ladder(model);

export function combination(id: string): Combination {
  const found = rungs.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no combination ${id}`);
  return found;
}

export const marks = (
  ...pairs: readonly (readonly [before: number, after: number])[]
): readonly SpotMark[] =>
  pairs.map(([before, after], i) => ({
    name: `${i + 1}`,
    before: micrometres(before),
    after: micrometres(after),
  }));

export const trial = (id: string, rest: Partial<SpotTrial> = {}): SpotTrial => ({
  spot: 'A',
  panel: 'bonnet',
  combination: combination(id),
  sets: 2,
  marks: [],
  gained: [],
  defect: defect('swirl-marks', 3),
  cleared: null,
  haze: null,
  colourOnPad: null,
  temperature: degreesCelsius(25),
  notes: [],
  ...rest,
});
