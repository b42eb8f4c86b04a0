import { describe, expect, it } from 'vitest';
import { assessFilm } from '../../../src/film/assess-film.ts';
import { readAgainHelp } from '../../../src/film/help/read-again.ts';
import type { Reading } from '../../../src/film/reading.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  fiveAround,
  knownFacts,
  onFace,
  panelOf,
  plainPanel,
  plainTemplate,
  reading,
  standardTerms,
} from '../car-builder.ts';

const SOUND = ['a', 'b', 'c', 'd'];
const requestOf = (tested: readonly Reading[]) => ({
  template: plainTemplate(...[...SOUND, 'tested'].map((id) => plainPanel(id))),
  readings: [...SOUND.flatMap((id) => fiveAround(id, 119)), ...tested],
  factsOf: () => ({ ...knownFacts, taken: null }),
  terms: standardTerms,
  model: filmModel,
});
const budgetOf = (tested: readonly Reading[]): number =>
  panelOf(assessFilm(requestOf(tested)), 'tested').budget;
const gainOf = (tested: readonly Reading[]): number | undefined => {
  const request = requestOf(tested);
  const survey = assessFilm(request);
  return readAgainHelp(
    survey,
    request,
  )(panelOf(survey, 'tested')).find(({ code }) => code === 'read-again')?.gain;
};

describe('several points that stand out, read again', () => {
  const sound = [120, 117, 118, 123, 119, 118, 121];

  it('read each as its neighbours do, however far each was off', () => {
    const tested = onFace('tested', ...sound, 84, 152);
    const request = requestOf(tested);
    const { lowPoints, highPoints } = panelOf(assessFilm(request), 'tested');
    expect([lowPoints, highPoints]).toEqual([['8'], ['9']]);
    // The middle of 117, 118, 118, 119, 120, 121 and 123.
    const then = budgetOf(onFace('tested', ...sound, 119, 119));
    expect(gainOf(tested)).toBeCloseTo(then - budgetOf(tested), 9);
    expect(then).toBeGreaterThan(1);
  });

  it('keep the distance of each reading from the first of its own point', () => {
    const twice = (point: string, first: number, second: number) => [
      reading('tested', point, first),
      reading('tested', point, second, { repeat: 2 }),
    ];
    const others = onFace('tested', ...sound);
    const tested = [...others, ...twice('8', 84, 86), ...twice('9', 152, 151)];
    const then = budgetOf([...others, ...twice('8', 119, 121), ...twice('9', 119, 118)]);
    expect(gainOf(tested)).toBeCloseTo(then - budgetOf(tested), 9);
  });
});
