/** What each thing that would help is told to bring, from surveys of cars of known film. */
import { describe, expect, test } from 'vitest';
import { joinSentences, nextFact, tell } from '../../src/base/sentence.ts';
import { micrometres } from '../../src/base/units.ts';
import { type HelpTerms, whatWouldHelp } from '../../src/film/help/what-would-help.ts';
import { filmModel } from '../../src/formats/models.ts';
import { type HelpMeansOf, MEANS } from '../../src/report/survey/help-means.ts';
import { amongSound, type CarOptions, fiveAround, standardTerms } from '../film/car-builder.ts';

const terms: HelpTerms = {
  removal: standardTerms,
  logSdAfterSpot: 0.37,
  spotTakes: micrometres(1.3),
  withZinc: null,
  gaugeKnown: true,
  readAgain: () => [],
};

function clearRead(centre: number, facts: CarOptions['facts']) {
  const { panel } = amongSound(fiveAround('tested', centre), { facts: facts ?? {} });
  const own = whatWouldHelp(panel, terms, filmModel)
    .filter(({ code }) => code === 'clear')
    .map((help) => ({ ...help, part: panel }));
  const life = panel.limits.find(({ code }) => code === 'life')?.value ?? Number.NaN;
  const all = panel.budget + (own[0]?.gain ?? Number.NaN);
  return {
    said: tell(joinSentences(MEANS.clear(own, {} as HelpMeansOf), nextFact), 'um'),
    life,
    all,
  };
}

describe('a clear that is read', () => {
  test('is said to end at the limit over the life where that is what is left then', () => {
    const { said, life, all } = clearRead(112, { taken: micrometres(3) });
    expect(all).toBeCloseTo(life, 6);
    expect(said).toContain(`; ${life.toFixed(2)} µm in all at most (life)`);
  });
  test('is not where the clear still binds: a solid single-stage car has twice the life', () => {
    const { said, life, all } = clearRead(112, { finish: 'single-stage-solid' });
    expect(all).toBeLessThan(life - 1);
    expect(said).not.toContain('life');
    expect(said).toContain('; a loss if it reads thin');
  });
});
