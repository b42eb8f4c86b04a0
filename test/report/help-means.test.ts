/** What each thing that would help is told to bring, from surveys of cars of known film. */
import { describe, expect, test } from 'vitest';
import { joinSentences, nextFact, tell } from '../../src/base/sentence.ts';
import { micrometres, millimetres } from '../../src/base/units.ts';
import { type HelpTerms, whatWouldHelp } from '../../src/film/help/what-would-help.ts';
import { correctionModel, filmModel } from '../../src/formats/models.ts';
import { type HelpMeansOf, lostToPatch, MEANS } from '../../src/report/survey/help-means.ts';
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

describe('where a test spot is made best', () => {
  const { survey } = amongSound(fiveAround('tested', 112));
  const [part] = survey.panels;
  if (part === undefined) throw new Error('no panel');
  const sill = { facing: 'low', flatWidth: millimetres(90) } as const;
  const partOf = (name: string, budget: number, panel: Partial<typeof part.panel> = {}) => ({
    ...part,
    budget: micrometres(budget),
    panel: { ...part.panel, id: name, name, ...panel },
  });
  const bestOf = (...parts: readonly (typeof part)[]): string =>
    lostToPatch(parts, { settings: { correction: correctionModel } } as never)
      .map((one) => tell(one, 'um').replace(/.*, best on /, ''))
      .join();

  test('a large outer panel that may give what the patch takes is named before a sill that may give more', () => {
    expect(bestOf(partOf('sill', 4.5, sill), partOf('roof', 3.2), partOf('door', 4.2))).toBe(
      'door',
    );
  });

  test('as little is a narrow panel or a low bumper, whatever it may give', () => {
    const rail = partOf('rail', 4.4, { flatWidth: millimetres(60) });
    const bumper = partOf('bumper', 4.6, { facing: 'low' });
    expect(bestOf(rail, bumper, partOf('roof', 3.2))).toBe('roof');
  });

  test('a sill is where no large panel may give it', () => {
    expect(bestOf(partOf('sill', 4.5, sill), partOf('roof', 0.2))).toBe('sill');
  });
});
