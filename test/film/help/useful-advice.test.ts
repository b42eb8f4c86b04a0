import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { assessFilm } from '../../../src/film/assess-film.ts';
import { usefulAdvice } from '../../../src/film/help/useful-advice.ts';
import {
  type Help,
  type HelpTerms,
  whatWouldHelp,
} from '../../../src/film/help/what-would-help.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  knownFacts,
  panelOf,
  plainPanel,
  plainTemplate,
  standardTerms,
} from '../car-builder.ts';
import { helpTerms } from '../help-terms.ts';

const spent = amongSound(fiveAround('tested', 70)).panel;
const codes = (help: readonly Help[], panel = spent): readonly string[] =>
  usefulAdvice(panel, help).map(({ code }) => code);
const help = (rest: Partial<Help>): Help => ({
  code: 'read-again',
  gain: micrometres(0),
  time: null,
  points: null,
  ...rest,
});

describe('a panel of which nothing may go', () => {
  it('is beyond help where nothing that could be learnt frees film', () => {
    expect(spent.budget).toBe(0);
    expect(codes([])).toEqual(['beyond-help']);
    expect(codes([help({})])).toEqual(['beyond-help']);
    expect(codes([help({ gain: micrometres(-0.5) })])).toEqual(['beyond-help']);
    expect(codes([help({ otherwise: { gain: micrometres(0) } })])).toEqual(['beyond-help']);
    expect(codes([help({ elsewhere: [{ part: spent, gain: micrometres(0) }] })])).toEqual([
      'beyond-help',
    ]);
  });

  it('is not where something does: here, the other way round, or on another part of the car', () => {
    const gain = micrometres(0.5);
    for (const one of [
      help({ gain }),
      help({ otherwise: { gain } }),
      help({
        elsewhere: [
          { part: spent, gain: micrometres(0) },
          { part: spent, gain },
        ],
      }),
    ]) {
      expect(codes([one])).toEqual([]);
      expect(codes([help({}), one])).toEqual([]);
    }
  });

  it('has no advice at all where colour came on the pad: nothing learnt of its film makes that good', () => {
    const nothing = micrometres(0);
    const { panel } = amongSound(fiveAround('tested', 260), {
      factsOf: (id) =>
        id === 'tested' ? { recorded: { mean: nothing, sd: nothing, colourAt: ['B'] } } : {},
    });
    expect(panel.boundBy.code).toBe('colour-at-spot');
    // The edge of the repair is still told as what could be looked for.
    expect(panel.advice).not.toEqual([]);
    expect(codes([], panel)).toEqual([]);
  });
});

describe('a panel that is held to a reference which read none that could make a usual film', () => {
  it('is told what would help all the same: it has no baseline, and what it may lose hangs on its own film', () => {
    const ids = ['a', 'b', 'c', 'd'];
    const readings = ids.flatMap((id) => fiveAround(id, 106));
    const model = filmModel;
    const survey = assessFilm({
      template: plainTemplate(...ids.map((id) => plainPanel(id))),
      readings,
      // All of it repaint.
      baselineReadings: fiveAround('a', 260),
      factsOf: () => ({ ...knownFacts, taken: null }),
      terms: standardTerms,
      model,
    });
    const terms: HelpTerms = { ...helpTerms, spotTakes: null };
    const panel = panelOf(survey, 'a');
    expect([panel.baseline, panel.condition]).toEqual([null, 'original']);
    const untouched = assessFilm({
      template: plainTemplate(...ids.map((id) => plainPanel(id))),
      readings,
      baselineReadings: fiveAround('a', 260),
      factsOf: () => knownFacts,
      terms: standardTerms,
      model,
    });
    const history = whatWouldHelp(panel, terms, model).find(({ code }) => code === 'history');
    expect(history?.gain).toBeCloseTo(panelOf(untouched, 'a').budget - panel.budget, 10);
    expect(history?.gain).toBeGreaterThan(0.5);
  });
});
