/** What lets nothing at all come off a panel, and in which words. */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import { inWords } from '../../../src/film/limits/limit.ts';
import { outrightLimits } from '../../../src/film/limits/outright-limits.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { knownFacts, plainPanel } from '../car-builder.ts';

type State = Parameters<typeof outrightLimits>[1];
const sound: State = { points: 5, isFactoryFilm: true, unread: null };
const repaint: State = { ...sound, isFactoryFilm: false };

const limitsOf = (facts: Partial<PanelFacts>, state: State = sound) =>
  outrightLimits({ ...knownFacts, ...facts }, state, filmModel)
    .map(inWords)
    .map(({ code, value, text }) => [code, value, text] as const);
const codesOf = (facts: Partial<PanelFacts>, state: State = sound): readonly string[] =>
  limitsOf(facts, state).map(([code]) => code);
const textOf = (facts: Partial<PanelFacts>, state: State, code: string): string =>
  limitsOf(facts, state).find(([one]) => one === code)?.[2] ?? '';

const nothing = micrometres(0);
const colour = (...colourAt: readonly string[]): Partial<PanelFacts> => ({
  recorded: { mean: nothing, sd: nothing, colourAt },
});

describe('what lets nothing come off', () => {
  it('is none on factory film that was read at points enough', () => {
    expect(limitsOf({})).toEqual([]);
    expect(limitsOf({ paintedDaysAgo: filmModel.freshPaintDays })).toEqual([]);
  });

  it('is each by its code, and nothing in µm', () => {
    expect(limitsOf({ clearCoatFailure: true })).toEqual([
      ['clear-coat-failure', 0, 'the clear coat has failed: refinish'],
    ]);
    expect(limitsOf({ finish: 'matte' })).toEqual([
      ['finish', 0, 'a matte finish is never polished'],
    ]);
    expect(limitsOf({ covered: true }, repaint)).toEqual([
      ['covered', 0, 'covered by film, wrap or coating: not paint to be polished'],
    ]);
    expect(limitsOf({ paintedDaysAgo: filmModel.freshPaintDays - 1 })).toEqual([
      ['fresh-paint', 0, 'painted 89 days ago, under 90'],
    ]);
    expect(limitsOf({}, { ...sound, points: 1 })).toEqual([
      ['readings', 0, 'one point is no basis for machine work: read at least 3, best 5'],
    ]);
  });

  it('is told together where several are there', () => {
    expect(codesOf({ finish: 'matte', clearCoatFailure: true }, { ...repaint, points: 1 })).toEqual(
      ['clear-coat-failure', 'finish', 'test-spot', 'readings'],
    );
  });

  it('is of a panel that was not read what its substrate makes of that, and no test spot', () => {
    const unread = (substrate: 'steel' | 'plastic'): State => ({
      points: 0,
      isFactoryFilm: false,
      unread: plainPanel('tested', { substrate }),
    });
    expect(limitsOf({}, unread('steel'))).toEqual([
      ['no-data', 0, 'nothing is known of it until it is read'],
    ]);
    expect(limitsOf({}, unread('plastic'))).toEqual([
      ['no-data', 0, 'a gauge for metal reads no film on plastic'],
    ]);
    expect(codesOf({}, { ...unread('steel'), points: 1 })).toEqual(['no-data']);
  });
});

describe('colour on the pad', () => {
  it('of its own spots is through the clear on factory film or film that nobody read, and ends all on repaint', () => {
    const through =
      'colour came on the pad at test spot B: it is through the clear there, or the finish is not what was said';
    expect(textOf(colour('B'), sound, 'colour-at-spot')).toBe(through);
    const unread = { ...repaint, points: 0, unread: plainPanel('tested') };
    expect(textOf(colour('B'), unread, 'colour-at-spot')).toBe(through);
    expect(limitsOf(colour('R', 'S'), repaint)).toEqual([
      ['colour-at-spot', 0, 'its test spots R, S left colour on the pad: leave it alone'],
    ]);
  });

  it('of spots elsewhere holds factory film of the same paint, each by its name', () => {
    const elsewhere = { colourElsewhere: ['B on roof', 'C on boot'] };
    expect(textOf(elsewhere, sound, 'colour-at-spot')).toMatch(
      /^colour came on the pad at B on roof, C on boot, and this is the same paint: not until /u,
    );
    expect(codesOf(elsewhere, repaint)).toEqual(['test-spot']);
    expect(codesOf({ ...elsewhere, finish: 'single-stage-solid' })).toEqual([]);
    const clear = { mean: micrometres(45), sd: micrometres(3) };
    expect(codesOf({ ...elsewhere, clear: { ...clear, of: 'panel' } })).toEqual([]);
    expect(codesOf({ ...elsewhere, clear: { ...clear, of: 'car' } })).toEqual(['colour-at-spot']);
    expect(codesOf({ colourElsewhere: [] })).toEqual([]);
    // Its own spots speak for themselves.
    expect(limitsOf({ ...elsewhere, ...colour('B') }).map(([, , text]) => text)).toEqual([
      'colour came on the pad at test spot B: it is through the clear there, or the finish is not what was said',
    ]);
  });

  it('is what paint without a clear gives, and on repaint of such a car still no leave', () => {
    const solid = { finish: 'single-stage-solid' as const };
    expect(codesOf({ ...solid, ...colour('B') })).toEqual([]);
    expect(limitsOf({ ...solid, ...colour('B') }, repaint)).toEqual([
      [
        'test-spot',
        0,
        'its test spot B left colour, which on repaint may be a base coat under clear: counts only once the job states the finish of this panel itself',
      ],
    ]);
  });
});

describe('a test spot on repaint', () => {
  it('comes first, and a clear that was read there does not stand in for it', () => {
    expect(textOf({}, repaint, 'test-spot')).toBe(
      'the total says nothing of refinish clear, a test spot comes first',
    );
    const clear = { mean: micrometres(45), sd: micrometres(3) };
    expect(textOf({ clear: { ...clear, of: 'panel' } }, repaint, 'test-spot')).toMatch(
      /^a clear that is read or stated does not count on repaint/u,
    );
    expect(textOf({ clear: { ...clear, of: 'car' } }, repaint, 'test-spot')).toMatch(
      /^the total says nothing/u,
    );
  });
});
