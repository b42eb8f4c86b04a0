/** What a panel lacks and may carry on both sides of the line of film cut back, by numbers laid out by hand. */
import { describe, expect, it } from 'vitest';
import { exactly } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import type { Condition } from '../../../src/film/condition/condition.ts';
import {
  compareWithLine,
  type LineComparison,
} from '../../../src/film/condition/line-comparison.ts';
import { NO_SIDES } from '../../../src/film/condition/possible-sides.ts';
import type { PanelFacts } from '../../../src/film/film-model.ts';
import type { AllowanceCase } from '../../../src/film/limits/allowance-case.ts';
import { clearTaken, isOnRecord, lifeSpent } from '../../../src/film/limits/earlier-work.ts';
import {
  acrossCutBack,
  missingFilm,
  missingOverSides,
  sideOfWord,
  topcoatsOverSides,
} from '../../../src/film/limits/over-sides.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { knownFacts } from '../car-builder.ts';

const um = micrometres;

/** Held to a baseline of 112 µm. */
const panelAt = (
  mean: number,
  word: Condition,
  rest: Partial<Omit<AllowanceCase, 'facts'>> & { readonly facts?: Partial<PanelFacts> } = {},
): AllowanceCase => ({
  film: {
    mean: um(mean),
    smallest: um(mean - 5),
    count: 5,
    spread: { sd: um(4), dof: 8 },
    calibration: um(2),
  },
  conditions: [word],
  baseline: um(112),
  sides: NO_SIDES,
  ...rest,
  facts: { ...knownFacts, ...rest.facts },
});

const line = (condition: Condition, at: number, otherSide: number): LineComparison => ({
  ...compareWithLine({
    compared: 'mean',
    condition,
    side: condition === 'cut-back' ? 'under' : 'over',
    figure: exactly(um(100)),
    line: exactly(um(at)),
    baseline: um(112),
  }),
  otherSide,
});
const nearCutBack = (otherSide: number) => ({
  lost: [],
  cutBack: line('cut-back', 100, otherSide),
});

describe('film that a panel lacks', () => {
  it('is what lies under the baseline of a panel cut back, and none of any other', () => {
    expect(missingFilm(panelAt(96, 'cut-back'))).toBe(16);
    expect(missingFilm(panelAt(96, 'original'))).toBe(0);
    expect(missingFilm(panelAt(96, 'thin', { conditions: ['thin', 'cut-back'] }))).toBe(16);
    expect(missingFilm(panelAt(96, 'cut-back', { baseline: null }))).toBe(0);
  });
  it('is less by what is known to have gone', () => {
    expect(missingFilm(panelAt(96, 'cut-back', { facts: { taken: um(3) } }))).toBe(13);
  });
  it('is lacking by the chance of it: none of an original panel is 12 µm of one on the line', () => {
    const near = panelAt(102, 'original', { sides: nearCutBack(0.2) });
    expect(missingOverSides(near)).toBeCloseTo(0.2 * 12, 12);
    const beyond = panelAt(96, 'cut-back', { sides: nearCutBack(0.25) });
    expect(missingOverSides(beyond)).toBeCloseTo(0.75 * 16, 12);
    expect(missingOverSides(panelAt(96, 'cut-back'))).toBe(16);
  });
});

describe('the other side of the line of film cut back', () => {
  it('is an original panel of the same film, the other words as they were', () => {
    const panel = panelAt(96, 'thin', { conditions: ['thin', 'cut-back'] });
    expect(acrossCutBack(panel, { line: um(100), baseline: um(112) })).toEqual({
      ...panel,
      conditions: ['thin'],
    });
  });
  it('is one cut back of a mean on the line, or of its own where that is less', () => {
    const there = (mean: number, facts: Partial<PanelFacts> = {}) => {
      const { film, conditions, baseline } = acrossCutBack(panelAt(mean, 'original', { facts }), {
        line: um(100),
        baseline: um(115),
      });
      expect(baseline).toBe(115);
      return [film.mean, ...conditions];
    };
    expect(there(102)).toEqual([100, 'original', 'cut-back']);
    expect(there(99)).toEqual([99, 'original', 'cut-back']);
    // With 3 µm put back a mean of 97 lies on it.
    expect(there(102, { taken: um(3) })).toEqual([97, 'original', 'cut-back']);
  });
  it('is named by cut-back where that is among the words, else by the first of them', () => {
    expect(sideOfWord(['thin', 'cut-back'])).toBe('cut-back');
    expect(sideOfWord(['thin', 'original'])).toBe('thin');
  });
});

describe('the topcoats that a panel may carry', () => {
  const topcoats = (panel: AllowanceCase) =>
    topcoatsOverSides(panel, 'standard', filmModel, (topcoat) => topcoat);
  const besides = (panel: AllowanceCase) =>
    topcoats(panel)[0]?.besides.map(({ condition, chance }) => [condition, chance]);

  it('are as its word says where nothing else is near', () => {
    expect(besides(panelAt(102, 'original'))).toEqual([]);
  });
  it('are beside what is lost and what is cut back, each where none before it holds', () => {
    const sides = {
      lost: [line('filler', 500, 0.1), line('refinished', 150, 0.05)],
      cutBack: line('cut-back', 100, 0.2),
    };
    const panel = panelAt(102, 'original', { sides });
    expect(besides(panel)).toEqual([
      ['filler', expect.closeTo(0.1, 12)],
      ['refinished', expect.closeTo(0.9 * 0.05, 12)],
      ['cut-back', expect.closeTo(0.9 * 0.95 * 0.2, 12)],
    ]);
    const [own] = topcoats(panel);
    expect(own?.besides.map(({ topcoat }) => topcoat === null)).toEqual([true, true, false]);
    // Cut back it lacks 12 µm of its clear.
    const cut = own?.besides[2]?.topcoat?.told;
    expect([cut?.film.mean, cut?.film.taken.mean]).toEqual([100, 12]);
    expect([own?.told.film.mean, own?.told.film.taken.mean]).toEqual([102, 0]);
    expect(besides(panelAt(102, 'original', { sides: { ...sides, cutBack: null } }))).toHaveLength(
      2,
    );
  });
  it('are original beside cut back where the word is that', () => {
    expect(besides(panelAt(96, 'cut-back', { sides: nearCutBack(0.25) }))).toEqual([
      ['original', 0.25],
    ]);
  });
  it('are the same on both sides where the clear was read by itself', () => {
    const clear = { mean: um(40), sd: um(0.01), of: 'panel' } as const;
    const sides = nearCutBack(0.25);
    expect(besides(panelAt(100, 'original', { sides, facts: { clear } }))).toEqual([]);
  });
  it('are each beside its own kind where nobody knows the finish', () => {
    const unknown = topcoats(
      panelAt(102, 'original', { sides: nearCutBack(0.2), facts: { finish: 'unknown' } }),
    );
    expect(unknown.map(({ finish, besides: [other] }) => [finish, other?.topcoat?.finish])).toEqual(
      [
        ['clear-over-base', 'clear-over-base'],
        ['single-stage', 'single-stage'],
      ],
    );
  });
});

describe('what earlier work took', () => {
  const earlier = { unknownClear: um(3), unknownLife: um(5) };
  const facts = (rest: Partial<PanelFacts>): PanelFacts => ({ ...knownFacts, ...rest });
  const recorded = { mean: um(2), sd: um(0.4) };
  it('is what is stated, on record and missing, with the doubts about the first two', () => {
    const known = facts({ taken: um(1), takenSd: um(0.3), recorded });
    expect(clearTaken(known, um(4), earlier)).toEqual({ mean: 7, sd: 0.5 });
    expect(clearTaken(known, um(-4), earlier).mean).toBe(3);
  });
  it('is assumed where nobody knows, more of the life than of the clear', () => {
    const unknown = facts({ taken: null });
    expect(clearTaken(unknown, um(4), earlier)).toEqual({ mean: 7, sd: 0 });
    expect(lifeSpent(unknown, um(4), earlier)).toEqual({ mean: 9, sd: 0 });
  });
  it('does not count what is missing for the life of a panel whose history or clear is known', () => {
    const clear = (of: 'panel' | 'car') => ({ mean: um(40), sd: um(2), of });
    const spent = (rest: Partial<PanelFacts>) => lifeSpent(facts(rest), um(4), earlier).mean;
    expect(spent({ taken: um(1) })).toBe(1);
    expect(spent({ taken: null, clear: clear('panel') })).toBe(5);
    expect(spent({ taken: null, clear: clear('car') })).toBe(9);
  });
  it('is on record where visits took some, and not where test spots alone did', () => {
    const on = (mean: number, by?: string) =>
      isOnRecord({ recorded: { mean: um(mean), sd: um(0), ...(by === undefined ? {} : { by }) } });
    expect([on(2), on(0), on(2, 'test spots'), on(2, 'film record')]).toEqual([
      true,
      false,
      false,
      true,
    ]);
    expect(isOnRecord({ recorded: null })).toBe(false);
  });
});
